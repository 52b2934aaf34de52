import { expect } from '@open-wc/testing';
import { RecordStore } from '../../../components/lms/record-store.js';
import { Cmi5Statements } from '../../../components/lms/cmi5-statements.js';

const launch = { endpoint: 'https://a.example/xapi/', fetch: 'https://a.example/f', actor: { account: {} }, registration: 'r', activityId: 'https://a.example/l' };

describe('a record store that answers a statement', () => {
  const ownFetch = window.fetch;
  afterEach(() => (window.fetch = ownFetch));

  // RFC 9110, 15.5.9 and 15.6, and RFC 6585, 4: what is busy or broken may be asked again; what was refused will be refused again.
  for (const [status, sent] of [[200, 'taken'], [204, 'taken'], [400, 'never'], [401, 'never'], [403, 'never'], [409, 'never'], [413, 'never'], [408, 'again'], [429, 'again'], [500, 'again'], [503, 'again']] as const) {
    it(`with ${status}: ${sent}`, async () => {
      window.fetch = () => Promise.resolve(new Response(null, { status }));
      expect(await new RecordStore(launch, 'dA==').send([{}])).to.equal(sent);
    });
  }

  it('not at all: again', async () => {
    window.fetch = () => Promise.reject(new TypeError('no network'));
    expect(await new RecordStore(launch, 'dA==').send([{}])).to.equal('again');
  });
});

// cmi5 9.3.4: passed is a scaled score of the mastery score or more.
describe('the mastery score of a platform', () => {
  const passes = (masteryScore: number, scaled: number): boolean =>
    new Cmi5Statements(launch, { contextTemplate: {}, launchMode: 'Normal', masteryScore, returnURL: null }).passes({ scaled, passed: false, complete: true, seconds: 1, answers: [] });
  it('is reached by as much', () => expect(passes(0.5, 0.5)).to.equal(true));
  it('is not reached by less', () => expect(passes(0.5, 0.4999)).to.equal(false));
  it('of nothing is reached by nothing', () => expect(passes(0, 0)).to.equal(true));
});
