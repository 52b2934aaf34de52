import { atan2Degrees } from '../angle/trigonometry.js';
import { roundTo } from '../angle/format-angle.js';
import { wrap180, wrap360 } from '../angle/wrap.js';
import { transitSight } from '../sight/transit-sight.js';
import type { TransitLine } from '../sight/transit-line.js';
import { constant, sum, symbol } from '../working/expression.js';
import { quantity } from '../working/quantity.js';
import type { Step } from '../working/step.js';
import { anyInstant, anyPlace, anyReading, givenReading } from './any-sight.js';
import type { AnyPlace } from './any-sight.js';
import type { Chance } from './chance.js';
import type { Draft, Given, Level } from './exercise.js';
import type { Distractor } from '../answer/question.js';
import { given } from './given.js';
import { sightQuestions } from './sight-questions.js';
import type { Tolerances } from '../answer/tolerances.js';

/** A line ashore as a chart gives it, and what it is mistaken for. */
interface AnyLine {
  readonly line: TransitLine;
  readonly trueBearing: number;
  readonly givens: readonly Given[];
  readonly wrongBearings: readonly Distractor<number>[];
  readonly steps: readonly Step[];
}

/** The bearing printed on the chart: seaward to shore, or from the marks outwards. */
function chartedLine(chance: Chance, outwards: boolean): AnyLine {
  const bearing = chance.between(0, 359.5, 2);
  const printed = outwards ? wrap360(bearing + 180) : bearing;
  const reverse: Step = {
    code: 'drill.reciprocal',
    symbol: 'T',
    expression: printed < 180 ? sum([symbol('B'), constant(180)]) : sum([symbol('B')], [constant(180)]),
    values: { B: quantity(printed, 'bearing') },
    result: quantity(bearing, 'bearing'),
  };
  return {
    line: { kind: 'charted', bearing },
    trueBearing: bearing,
    givens: [given(outwards ? 'lineOutwards' : 'lineBearing', printed, 'bearing')],
    wrongBearings: [{ code: 'reciprocal', value: wrap360(bearing + 180) }],
    steps: outwards ? [reverse] : [],
  };
}

/** Two marks by their places, miles apart, each to the tenth of a minute. */
function marksInLine(chance: Chance, front: AnyPlace): AnyLine | null {
  const north = chance.either(0, 30) / 600;
  const east = chance.either(0, 40) / 600;
  const rear = { latitude: roundTo((front.latitude + north) * 600, 0) / 600, longitude: wrap180(roundTo((front.longitude + east) * 600, 0) / 600) };
  const line = { kind: 'two-marks', front, rear } as const;
  const sight = transitSight({ sightings: [{ line, compassBearing: 0 }], compass: 'gyro' });
  const found = sight.determined ? sight.marks[0] : undefined;
  // A few miles, as leading marks and islands lie.
  if (!found || found.markDistance === null || found.markDistance < 2500) return null;
  const { trueBearing } = found;
  return {
    line,
    trueBearing,
    givens: [
      given('frontLatitude', front.latitude, 'latitude'),
      given('frontLongitude', front.longitude, 'longitude'),
      given('rearLatitude', rear.latitude, 'latitude'),
      given('rearLongitude', rear.longitude, 'longitude'),
    ],
    wrongBearings: [
      { code: 'no-departure', value: wrap360(atan2Degrees(east, north)) },
      { code: 'reciprocal', value: wrap360(trueBearing + 180) },
      { code: 'longitude-name', value: wrap360(-trueBearing) },
    ],
    steps: [],
  };
}

/** Error or deviation from two marks in line: as the chart prints it, the other way round, from their places. */
export function transitExercise(chance: Chance, level: Level, tolerances: Tolerances): Draft | null {
  const place = anyPlace(chance, 5, 62);
  const found = level === 3 ? marksInLine(chance, place) : chartedLine(chance, level === 2);
  if (!found) return null;
  const reading = anyReading(chance, level, found.trueBearing, place, anyInstant(chance));
  if (!reading) return null;
  const { compass, compassBearing, variation } = reading;
  const sight = transitSight({ sightings: [{ line: found.line, compassBearing }], compass, ...(variation === null ? {} : { variation }) });
  if (!sight.determined) return null;
  return {
    task: `transit.${variation === null ? compass : 'deviation'}${level === 3 ? '.marks' : ''}`,
    givens: [...found.givens, ...givenReading(reading)],
    asked: sightQuestions({ ...reading, trueBearing: found.trueBearing, wrongBearings: found.wrongBearings }, tolerances),
    steps: level === 2 ? [...found.steps, ...sight.steps.filter(({ code }) => code !== 'transit.true.charted')] : sight.steps,
  };
}
