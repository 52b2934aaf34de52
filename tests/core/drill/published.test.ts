import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { deviationAt } from '../../../core/deviation/approximate-deviation.js';
import { eightPointAnalysis } from '../../../core/deviation/eight-point-analysis.js';
import { courseMistakes } from '../../../core/answer/course-mistakes.js';
import type { NumberQuestion, Question } from '../../../core/answer/question.js';
import { markAnswer } from '../../../core/answer/mark.js';
import { numberQuestion } from '../../../core/answer/make-question.js';
import { sightQuestions } from '../../../core/drill/sight-questions.js';
import { assessorsTolerances } from '../../../core/answer/tolerances.js';
import { altitudeAzimuth } from '../../../core/sky/altitude-azimuth.js';
import { amplitude } from '../../../core/sky/amplitude.js';
import { geographicalPosition } from '../../../core/sky/geographical-position.js';
import { reference } from '../../support/reference.js';

interface Case {
  readonly id: string;
  readonly source: string;
  readonly inputs: Readonly<Record<string, number & string & readonly number[]>>;
  readonly expected: Readonly<Record<string, number & string>>;
}

const { cases } = reference<{ cases: readonly Case[] }>('drill-published.json');

function printed(id: string): Case {
  const found = cases.find((each) => each.id === id);
  if (!found) throw new Error(`no case ${id}`);
  return found;
}

function marked(questions: readonly Question[], code: string, text: string): string {
  const question = questions.find((each) => each.code === code);
  if (!question) throw new Error(`nobody asked ${code}`);
  const mark = markAnswer(question, text);
  if (mark.outcome === 'unreadable') return mark.refusal;
  return mark.outcome === 'wrong' ? (mark.mistake ?? 'wrong') : mark.outcome;
}

const letter = (degrees: number): string => `${Math.abs(degrees)}${degrees < 0 ? 'W' : 'E'}`;

/** A course of a printed example as a question, with the mistakes of the exercises. */
function course(from: number, way: 1 | -1, variation: number, deviation: number): NumberQuestion {
  const answer = from + way * (variation + deviation);
  return numberQuestion({ code: 'course', part: 'result', form: 'bearing', tolerance: 1, answer, mistakes: courseMistakes(from, way, variation, deviation) });
}

describe('printed examples marked as exercises', () => {
  const { inputs: az, expected: azFound, source } = printed('az-lin-ce');
  it(`takes the answers of ${source}`, () => {
    const { azimuth } = altitudeAzimuth({ latitude: Number(az['lat_deg']), declination: Number(az['dec_deg']), localHourAngle: Number(az['lha_deg']) });
    const questions = sightQuestions(
      { compass: 'magnetic', trueBearing: azimuth ?? 0, compassBearing: Number(az['compass_bearing']), variation: Number(az['variation']), wrongBearings: [] },
      assessorsTolerances,
    );
    assert.equal(marked(questions, 'trueBearing', String(azFound['Zn'])), 'right');
    assert.equal(marked(questions, 'compassError', letter(Number(azFound['error']))), 'right');
    assert.equal(marked(questions, 'deviation', letter(Number(azFound['deviation']))), 'right');
    assert.equal(marked(questions, 'deviation', '2E'), 'sign');
    assert.equal(marked(questions, 'deviation', '12W'), 'error-for-deviation');
    assert.equal(marked(questions, 'deviation', '22W'), 'variation-sign');
  });

  const gyro = printed('az-bow-1701');
  it(`takes the gyro error of ${gyro.source}`, () => {
    const { inputs } = gyro;
    const { azimuth } = altitudeAzimuth({ latitude: Number(inputs['lat_deg']), declination: Number(inputs['dec_deg']), localHourAngle: Number(inputs['lha_deg']) });
    const questions = sightQuestions(
      { compass: 'gyro', trueBearing: azimuth ?? 0, compassBearing: Number(inputs['gyro_bearing']), variation: null, wrongBearings: [] },
      assessorsTolerances,
    );
    assert.equal(marked(questions, 'gyroError', letter(Number(gyro.expected['gyro_error']))), 'right');
    assert.equal(marked(questions, 'gyroError', '1.2W'), 'sign');
  });

  const examination = printed('amp-uscg-0111');
  it(`names what is wrong with the printed choices of ${examination.source}`, () => {
    const { inputs } = examination;
    const { declination } = geographicalPosition('Sun', new Date(String(inputs['utc'])));
    const trueBearing = amplitude({ latitude: Number(inputs['lat_deg']), declination })?.rising ?? 0;
    const questions = sightQuestions(
      { compass: 'magnetic', trueBearing, compassBearing: Number(inputs['compass_bearing']), variation: Number(inputs['variation']), wrongBearings: [] },
      assessorsTolerances,
    );
    assert.equal(marked(questions, 'deviation', String(examination.expected['answer'])), 'right');
    assert.equal(marked(questions, 'deviation', '1.4W'), 'sign');
    assert.equal(marked(questions, 'deviation', '4.6E'), 'wrong');
  });

  const toTrue = printed('cv-uscg-3');
  it(`takes the course of ${toTrue.source}`, () => {
    const question = course(Number(toTrue.inputs['psc']), 1, Number(toTrue.inputs['var']), Number(toTrue.inputs['dev']));
    assert.equal(marked([question], 'course', String(toTrue.expected['true'])), 'right');
    assert.equal(marked([question], 'course', '080'), 'both-signs');
    assert.equal(marked([question], 'course', '090'), 'variation-sign');
    assert.equal(marked([question], 'course', '060'), 'deviation-sign');
  });

  const toCompass = printed('cv-qa-3');
  it(`takes the course of ${toCompass.source}`, () => {
    const question = course(Number(toCompass.inputs['true']), -1, Number(toCompass.inputs['var']), Number(toCompass.inputs['dev']));
    assert.equal(marked([question], 'course', String(toCompass.expected['compass'])), 'right');
    assert.equal(marked([question], 'course', '095'), 'both-signs');
  });

  const swing = printed('dev-226-501');
  it(`takes the coefficients of ${swing.source}`, () => {
    const [N = 0, NE = 0, E = 0, SE = 0, S = 0, SW = 0, W = 0, NW = 0] = swing.inputs['deviations'] as unknown as number[];
    const found = eightPointAnalysis({ N, NE, E, SE, S, SW, W, NW });
    for (const name of ['A', 'B', 'C', 'D', 'E'] as const) {
      const question = numberQuestion({ code: name, part: 'result', form: 'signed', tolerance: 0.5, answer: found[name], mistakes: [{ code: 'not-halved', value: 2 * found[name] }] });
      const answer = Number(swing.expected[name]);
      assert.equal(marked([question], name, `+${answer}`), 'right');
      assert.equal(marked([question], name, String(answer)), 'letter-missing');
      if (name === 'B') assert.equal(marked([question], name, '+24'), 'not-halved');
    }
    // North by compass: the swing itself had 10.5 E there.
    assert.ok(Math.abs(deviationAt(found, 0) - 10.5) < 0.5);
  });

  it('allows what the assessor allows: STCW A-II/1 by US NVIC 12-14', () => {
    const { expected } = printed('reg-stcw');
    assert.equal(assessorsTolerances.error, expected['tol_mag_error']);
    assert.equal(assessorsTolerances.error, expected['tol_gyro_range']);
    assert.equal(assessorsTolerances.deviation, expected['tol_deviation']);
    assert.equal(assessorsTolerances.course, expected['tol_course']);
    assert.equal(assessorsTolerances.azimuth, expected['tol_sun_azimuth']);
    assert.equal(assessorsTolerances.variation, expected['tol_variation_only']);
  });
});
