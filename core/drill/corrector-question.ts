import { addCorrectors } from '../iron/add-correctors.js';
import type { HorizontalMagnet } from '../iron/correctors.js';
import { noIron } from '../iron/iron-parameters.js';
import type { Chance } from './chance.js';
import type { Draft } from './exercise.js';
import { givenWord } from './given.js';
import { choiceQuestion } from '../answer/make-question.js';

const ends = ['forward', 'aft', 'starboard', 'port'] as const;
type End = (typeof ends)[number];

const opposite: Record<End, End> = { forward: 'aft', aft: 'forward', starboard: 'port', port: 'starboard' };
const across: Record<End, End> = { forward: 'starboard', aft: 'port', starboard: 'forward', port: 'aft' };

function magnet(redEnd: End, place: HorizontalMagnet['place']): HorizontalMagnet {
  const kind = redEnd === 'forward' || redEnd === 'aft' ? 'fore-and-aft-magnet' : 'athwartship-magnet';
  return { kind, redEnd, place, force: 1 };
}

/** Which way the red end of a magnet goes to take a coefficient away. */
export function redEndQuestion(chance: Chance): Draft | null {
  const name = chance.pick(['B', 'C'] as const);
  const sign = chance.pick([1, -1] as const);
  const place = chance.pick(['below', 'below', 'end-on'] as const);
  const answer = ends.find((end) => {
    const { P, Q } = addCorrectors(noIron, [magnet(end, place)]);
    return name === 'B' ? P * sign < 0 : Q * sign < 0;
  });
  if (answer === undefined) return null;
  return {
    task: `polarity.corrector-${place}`,
    givens: [givenWord('coefficientFound', `coefficient.${sign > 0 ? '+' : '−'}${name}`)],
    asked: [
      choiceQuestion('redEnd', ends, answer, [
        // A magnet end-on to the needle acts the other way.
        { code: place === 'end-on' ? 'end-on' : 'red-end', value: opposite[answer] },
        { code: 'other-coefficient', value: across[answer] },
        { code: 'other-coefficient-and-sign', value: opposite[across[answer]] },
      ]),
    ],
    steps: [],
  };
}
