import assert from 'node:assert/strict';
import { test } from 'node:test';
import { parseDeclination, parseError, parseLatitude, parseLongitude } from '../../../core/angle/parse-position.js';
import type { Reading } from '../../../core/text/reading.js';
import { assertClose } from '../../support/assert-close.js';

// Which texts are read: the sexagesimal orders of ISO 6709 and of the EPSG registry (units
// 9107 to 9121), and common practice, no source. The values are sixtieths worked by hand.
const fiftyFour = 59.90833333333333; // 59 + 54.5/60

function reads(name: string, parse: (text: string) => Reading<number>, cases: readonly (readonly [string, number])[]): void {
  for (const [text, degrees] of cases) {
    test(`${name} ${text} is ${degrees}°`, () => {
      const reading = parse(text);
      assert.ok(reading.ok, JSON.stringify(reading));
      assertClose(reading.value, degrees, 1e-12);
      assert.ok(!Object.is(reading.value, -0));
    });
  }
}

function refuses(name: string, parse: (text: string) => Reading<number>, cases: readonly (readonly [string, string])[]): void {
  for (const [text, refusal] of cases) {
    test(`${name} ${JSON.stringify(text)} is refused: ${refusal}`, () => {
      assert.deepEqual(parse(text), { ok: false, refusal });
    });
  }
}

reads('latitude', parseLatitude, [
  ['59,9083', 59.9083], ['59.9083', 59.9083], ["59 deg 54,5'N", fiftyFour], ['59-54.5N', fiftyFour], ["59°54'.5N", fiftyFour],
  ["59 deg 54'.5N", fiftyFour], ['59°54′.5N', fiftyFour], ['59°54,5′ N', fiftyFour], ['N59°54.5', fiftyFour], ['n 59 54.5', fiftyFour],
  ['59:54.5 N', fiftyFour], ['59 - 54.5 N', fiftyFour], ['59– 54.5N', fiftyFour], ['５９－５４．５Ｎ', fiftyFour], ['59º54´30”N', fiftyFour],
  ['59°54′30″N', fiftyFour], ["59°54'30''N", fiftyFour], ['59-54-30N', fiftyFour], ['59:54:30N', fiftyFour], ['59 54 30 N', fiftyFour],
  ['59°54′29″.5N', 59.90819444444444], ['59 degrees 54.5 N', fiftyFour], ['59°-54.5′N', fiftyFour], ['59 ° 54 \' 30 " N', fiftyFour],
  ['33-24.0N', 33.4], ['33°24.0′N', 33.4], ['33.4', 33.4], ['33°.4N', 33.4], ['S 33 24', -33.4], ['-33.4', -33.4], ['−33,4', -33.4],
  ['- 33 24', -33.4], ['+33.4', 33.4], ['-0', 0], ['0S', 0], ['00-30S', -0.5], ['-0 30', -0.5], ['90N', 90], ['90 00.0 S', -90],
  ['-90', -90], ['-33.9', -33.9], ['33.N', 33], ['.5N', 0.5], ['0.30000000000000004', 0.30000000000000004], ['59 59.999N', 59.99998333333333],
]);

refuses('latitude', parseLatitude, [
  // two coordinates in a field for one
  ['59,9083 10,7367', 'decimals-not-last'], ['59.9083 10.7367', 'decimals-not-last'], ['-33.9, 18.4', 'decimals-not-last'],
  ['59.9083N 10.7367E', 'two-letters'], ['N 59 54.5 E 10 44.2', 'two-letters'], ['33 -24', 'not-understood'], ['33° -24', 'not-understood'],
  ['+5954.5+01044.2/', 'not-understood'],
  // beyond the range
  ["59 deg 61'N", 'minutes-over-59'], ['59-60.0N', 'minutes-over-59'], ['59-54-60N', 'seconds-over-59'], ['91 0', 'out-of-range'],
  ['90 00.1 N', 'out-of-range'], ['-90.0001', 'out-of-range'], ['3324.0N', 'out-of-range'], ['0044N', 'out-of-range'], ['+5954.5', 'out-of-range'],
  // letters and signs
  ['-33.4S', 'sign-and-letter'], ['+33.4N', 'sign-and-letter'], ['S -33.4', 'sign-and-letter'], ['N33.4N', 'two-letters'], ['33.4NS', 'two-letters'],
  ['33.4E', 'wrong-letter'], ['33.4X', 'wrong-letter'], ['33.4O', 'letter-o'], ['33N24', 'not-understood'], ['NORTH 33', 'not-understood'],
  // what means nothing, or two things
  ['', 'empty'], [' \u00a0\u200b', 'empty'], ['N', 'not-understood'], ['-', 'not-understood'], ['33.5-24.0N', 'decimals-not-last'],
  ['33°.5 24', 'decimals-not-last'], ['33-24.5-30N', 'decimals-not-last'], ['33.24.0N', 'two-decimal-marks'], ['33-24.0.0N', 'two-decimal-marks'],
  ["54' .5N", 'not-understood'], ["33°24' .5N", 'not-understood'], ['33° .5N', 'not-understood'], ['33-N', 'not-understood'], ['33--24N', 'not-understood'],
  ["33'24°N", 'not-understood'], ['33°24″N', 'not-understood'], ['33 24 00 00N', 'not-understood'], ['33 1/2 N', 'not-understood'], ['3³N', 'not-understood'],
  ['33.4e0', 'not-understood'], ['NaN', 'not-understood'], ['.', 'not-understood'],
]);

reads('longitude', parseLongitude, [
  ['10,7367', 10.7367], ['010-44.2E', 10.73666666666667], ['10°44′.2 E', 10.73666666666667], ['W 071 42.5', -71.7083333333333], ['033°24′00″W', -33.4],
  ['180W', 180], ['180E', 180], ['-180', 180], ['179-59.9W', -179.99833333333333], ['W179°59′59″', -179.9997222222222], ['-0', 0], ['0 W', 0], ['18.4', 18.4],
]);

refuses('longitude', parseLongitude, [
  ['10 44.2 O', 'letter-o'], ['O 10 44.2', 'letter-o'], ['o10', 'letter-o'], ['180 00.1 W', 'out-of-range'], ['181', 'out-of-range'], ['01044.2E', 'out-of-range'],
  ['0044E', 'out-of-range'], ['10 44.2 N', 'wrong-letter'], ['-10E', 'sign-and-letter'], ['10-60E', 'minutes-over-59'], ['10EW', 'two-letters'],
]);

reads('compass error', parseError, [
  ['3.2E', 3.2], ['3,2 W', -3.2], ['W 2°30′', -2.5], ['4°15′W', -4.25], ['-3.2', -3.2], ['+3.2', 3.2], ['0', 0], ['0.0°', 0], ['-0.0', 0],
  ['180W', 180], ['180E', 180], ['179.9W', -179.9],
]);

refuses('compass error', parseError, [
  ['3.2', 'letter-missing'], ['2°30′', 'letter-missing'], ['3.2N', 'wrong-letter'], ['3.2O', 'letter-o'], ['-3.2E', 'sign-and-letter'], ['180.1E', 'out-of-range'], ['E', 'not-understood'],
]);

reads('declination', parseDeclination, [['S 23 26.1', -23.435], ['23.4N', 23.4]]);

test('a hemisphere taken for granted is named, one that was written is not', () => {
  assert.deepEqual(parseLatitude('33.4'), { ok: true, value: 33.4, assumed: 'N' });
  assert.deepEqual(parseLongitude('18.4'), { ok: true, value: 18.4, assumed: 'E' });
  for (const text of ['33.4N', '+33.4', '-33.4', '0']) {
    assert.deepEqual(Object.keys(parseLatitude(text)), ['ok', 'value'], text);
  }
});
