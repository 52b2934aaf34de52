/**
 * Works an exercise out from what its learner is told and nothing else, with arithmetic of its
 * own: that shows the exercise can be answered, and that its key is right.
 */
import type { Exercise } from '../../../core/drill/exercise.js';

const rad = Math.PI / 180;
const turn = (x: number): number => ((x % 360) + 360) % 360;
const half = (x: number): number => turn(x + 180) - 180;

class Told {
  constructor(readonly exercise: Exercise) {}

  #value(code: string) {
    const found = this.exercise.givens.find((each) => each.code === code);
    if (!found) throw new Error(`${this.exercise.id} does not tell ${code}`);
    return found.value;
  }

  has(code: string): boolean {
    return this.exercise.givens.some((each) => each.code === code);
  }

  number(code: string): number {
    const value = this.#value(code);
    if (value.is !== 'quantity') throw new Error(`${code} is no quantity`);
    return value.quantity.value;
  }

  word(code: string): string {
    const value = this.#value(code);
    if (value.is !== 'word') throw new Error(`${code} is no word`);
    return value.word;
  }

  text(code: string): string {
    const value = this.#value(code);
    if (value.is !== 'text') throw new Error(`${code} is no text`);
    return value.text;
  }

  rows(code: string): readonly (readonly number[])[] {
    const value = this.#value(code);
    if (value.is !== 'table') throw new Error(`${code} is no table`);
    return value.rows;
  }

  /** Between the rows of the card by a straight line, as an officer does. */
  card(heading: number): number {
    const rows = this.rows('card');
    const step = 360 / rows.length;
    const at = turn(heading) / step;
    const before = Math.floor(at);
    const deviation = (index: number): number => rows[index % rows.length]?.[1] ?? NaN;
    return deviation(before) + (at - before) * (deviation(before + 1) - deviation(before));
  }

  /** The compass heading for a magnetic one, by trying. */
  compassFor(magnetic: number): number {
    let compass = magnetic;
    for (let i = 0; i < 60; i++) compass = magnetic - this.card(compass);
    return compass;
  }
}

type Answers = Record<string, number | string>;

/** The last lines of a sight. */
function end(told: Told, T: number): Answers {
  const gyro = told.word('compass') === 'compass.gyro';
  const error = half(T - told.number(gyro ? 'gyroBearing' : 'compassBearing'));
  const answers: Answers = { trueBearing: T, [gyro ? 'gyroError' : 'compassError']: error };
  if (told.has('variation')) answers['deviation'] = half(error - told.number('variation'));
  return answers;
}

function amplitude(told: Told): Answers {
  const [L, d] = [told.number('latitude'), told.number('declination')];
  const moment = told.word('moment').replace('moment.', '');
  let h = 0;
  if (told.has('trueAltitude')) h = told.number('trueAltitude');
  else if (moment !== 'celestial') {
    const limb = moment === 'upper-limb' ? -1 : moment === 'lower-limb' ? 1 : 0;
    h = (told.number('parallax') - 34 + limb * told.number('semidiameter')) / 60 - 0.0293 * Math.sqrt(told.number('heightOfEye'));
  }
  const Z = Math.acos((Math.sin(d * rad) - Math.sin(L * rad) * Math.sin(h * rad)) / (Math.cos(L * rad) * Math.cos(h * rad))) / rad;
  return end(told, told.word('event') === 'event.rising' ? Z : 360 - Z);
}

/** Hour angle and declination at the time by the clock, from the almanac's page. */
function fromAlmanac(told: Told): { gha: number; declination: number } {
  const [h = NaN, m = NaN, s = NaN] = (told.text('zoneTime').split(' ')[1] ?? '').split(':').map(Number);
  const zone = Number(told.text('zoneDescription').replace('−', '-').replace(' h', ''));
  const utc = h + m / 60 + s / 3600 + zone;
  const rows = told.rows('almanac');
  const row = (hour: number): readonly number[] => rows.find(([each]) => each === hour) ?? [];
  const [, gha = NaN, d = NaN] = row(Math.floor(utc));
  const [, nextGha = NaN, nextD = NaN] = row(Math.floor(utc) + 1);
  const part = utc - Math.floor(utc);
  return { gha: gha + part * turn(nextGha - gha), declination: d + part * (nextD - d) };
}

function azimuth(told: Told): Answers {
  const L = told.number('latitude');
  const found = told.has('almanac') ? fromAlmanac(told) : null;
  const d = found ? found.declination : told.number('declination');
  const P = told.has('localHourAngle') ? told.number('localHourAngle') : (found ? found.gha : told.number('greenwichHourAngle')) + told.number('longitude');
  const north = Math.sin(d * rad) * Math.cos(L * rad) - Math.cos(d * rad) * Math.cos(P * rad) * Math.sin(L * rad);
  const east = -Math.cos(d * rad) * Math.sin(P * rad);
  return end(told, turn(Math.atan2(east, north) / rad));
}

function transit(told: Told): Answers {
  if (told.has('lineBearing')) return end(told, told.number('lineBearing'));
  if (told.has('lineOutwards')) return end(told, turn(told.number('lineOutwards') + 180));
  const [from, to] = [told.number('frontLatitude'), told.number('rearLatitude')];
  // Middle latitude: good to a few hundredths of a degree over a few miles.
  const east = half(told.number('rearLongitude') - told.number('frontLongitude')) * Math.cos(((from + to) / 2) * rad);
  return end(told, turn(Math.atan2(east, to - from) / rad));
}

function conversion(told: Told, task: string): Answers {
  const V = (): number => told.number('variation');
  switch (task) {
    case 'conversion.compass-to-true': {
      const M = told.number('compassCourse') + told.number('deviation');
      return { magneticCourse: M, trueCourse: M + V() };
    }
    case 'conversion.true-to-compass': {
      const M = told.number('trueCourse') - V();
      return { magneticCourse: M, compassCourse: M - told.number('deviation') };
    }
    case 'conversion.gyro-to-true':
      return { trueCourse: told.number('gyroCourse') + told.number('gyroError') };
    case 'conversion.true-to-gyro':
      return { gyroCourse: told.number('trueCourse') - told.number('gyroError') };
    case 'conversion.compass-to-true-by-card': {
      const deviation = told.card(told.number('compassCourse'));
      return { deviation, trueCourse: told.number('compassCourse') + deviation + V() };
    }
    case 'conversion.true-to-compass-by-card': {
      const M = told.number('trueCourse') - V();
      const C = told.compassFor(M);
      return { deviation: half(M - C), compassCourse: C };
    }
    case 'conversion.bearing-compass-to-true': {
      const deviation = told.card(told.number('headOfShip'));
      return { deviation, trueBearingAsked: told.number('compassBearing') + deviation + V() };
    }
    case 'conversion.bearing-true-to-compass': {
      const deviation = told.card(told.number('headOfShip'));
      return { deviation, compassBearingAsked: told.number('trueBearing') - deviation - V() };
    }
    default: {
      const T = told.number('gyroHeading') + told.number('gyroError');
      const error = half(T - told.number('compassHeadingRead'));
      return { trueHeading: T, compassError: error, deviation: half(error - V()) };
    }
  }
}

function chartVariation(told: Told): Answers {
  const rose = told.number('roseVariation');
  const date = new Date(`${told.text('date')}T00:00:00Z`);
  const years = date.getUTCFullYear() + date.getUTCMonth() / 12 - Number(told.text('roseYear'));
  const towardsZero = told.word('changeDirection') === 'change.decreasing';
  const change = ((told.number('annualChange') * years) / 60) * Math.sign(rose) * (towardsZero ? -1 : 1);
  return { change, variation: rose + change };
}

function coefficients(told: Told): Answers {
  const [N = 0, NE = 0, E = 0, SE = 0, S = 0, SW = 0, W = 0, NW = 0] = told.rows('swing').map(([, deviation]) => deviation);
  const found = {
    coefficientA: (N + NE + E + SE + S + SW + W + NW) / 8,
    coefficientB: (E - W) / 2,
    coefficientC: (N - S) / 2,
    coefficientD: (NE - SE + SW - NW) / 4,
    coefficientE: (N - E + S - W) / 4,
  };
  if (!told.has('headOfShip')) return found;
  const z = told.number('headOfShip') * rad;
  const { coefficientA: a, coefficientB: b, coefficientC: c, coefficientD: d, coefficientE: e } = found;
  return { ...found, deviation: a + b * Math.sin(z) + c * Math.cos(z) + d * Math.sin(2 * z) + e * Math.cos(2 * z) };
}

/** The trade's rules as they are taught: common practice, no source. */
function polarity(told: Told, task: string): Answers {
  switch (task) {
    case 'polarity.error-magnetic':
    case 'polarity.error-gyro': {
      const read = told.number(task.endsWith('gyro') ? 'gyroBearing' : 'compassBearing');
      // Compass least, error east; compass best, error west.
      return { nameOfError: half(told.number('trueBearingOfMark') - read) > 0 ? 'east' : 'west' };
    }
    case 'polarity.upright': {
      const top = told.word('piece').endsWith('.top');
      return { colour: told.number('dip') > 0 === top ? 'blue' : 'red' };
    }
    case 'polarity.level': {
      const outward = { bow: 0, starboard: 90, stern: 180, port: 270 }[told.word('piece').split('.')[2] ?? ''] ?? NaN;
      // The end nearer north is red.
      return { colour: Math.cos((told.number('magneticHeading') + outward) * rad) > 0 ? 'red' : 'blue' };
    }
    case 'polarity.slip-deck':
      return { colour: told.number('dipOfSlip') > 0 ? 'blue' : 'red' };
    case 'polarity.slip-coefficient':
      return { coefficient: ['−B', '+C', '+B', '−C'][told.number('slipHeading') / 90] ?? '' };
    default: {
      const below = { '+B': 'forward', '−B': 'aft', '+C': 'starboard', '−C': 'port' };
      const endOn = { '+B': 'aft', '−B': 'forward', '+C': 'port', '−C': 'starboard' };
      const name = told.word('coefficientFound').replace('coefficient.', '') as keyof typeof below;
      return { redEnd: (task.endsWith('below') ? below : endOn)[name] };
    }
  }
}

function latitude(told: Told, task: string): Answers {
  const [first, H1] = [told.number('coefficient1'), told.number('H1')];
  if (task.startsWith('latitude.permanent')) return { [`coefficient${task.slice(-1)}`]: (first * H1) / told.number('H2') };
  const [Z1, H2, Z2] = [told.number('Z1'), told.number('H2'), told.number('Z2')];
  if (task === 'latitude.induced-B') return { coefficientB: (first * (Z2 / H2)) / (Z1 / H1) };
  // H B = P + c Z at both places: two equations, by Cramer's rule.
  const second = told.number('coefficient2');
  const P = (H1 * first * Z2 - H2 * second * Z1) / (Z2 - Z1);
  const c = (H2 * second - H1 * first) / (Z2 - Z1);
  return { coefficientB: (P + c * told.number('Z3')) / told.number('H3') };
}

export function solve(exercise: Exercise): Answers {
  const told = new Told(exercise);
  const { kind, task } = exercise;
  switch (kind) {
    case 'amplitude':
      return amplitude(told);
    case 'azimuth':
      return azimuth(told);
    case 'transit':
      return transit(told);
    case 'conversion':
      return conversion(told, task);
    case 'chart-variation':
      return chartVariation(told);
    case 'coefficients':
      return coefficients(told);
    case 'polarity':
      return polarity(told, task);
    case 'latitude':
      return latitude(told, task);
    case 'card': {
      if (task === 'card.compass') return { deviation: told.card(told.number('headOfShip')) };
      const M = told.number('magneticHeading');
      const C = told.compassFor(M);
      return { deviation: half(M - C), compassHeading: C };
    }
  }
}
