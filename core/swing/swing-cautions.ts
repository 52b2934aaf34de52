import { formatBearing } from '../angle/format-angle.js';
import type { DeviationFit } from '../deviation/fit-deviation.js';
import { repeatedReadings } from '../deviation/heading-gaps.js';
import { reversedNaming } from '../deviation/reversed-naming.js';
import type { CompassZone } from '../field/zone.js';
import { METRES_PER_MILE } from '../sight/line-bearing.js';
import { beyondSight, transitLine } from '../sight/transit-line.js';
import { formatDate, formatTimeOfDay } from '../time/instant.js';
import { note, warning } from '../working/caution.js';
import type { Caution } from '../working/caution.js';
import { quantity } from '../working/quantity.js';
import { largestParallax } from './circle-parallax.js';
import { missingHeadings } from './planned-headings.js';
import { headingReckonings } from './swing-row.js';
import type { SwingRow } from './swing-row.js';
import type { SwingSettings } from './swing-settings.js';
import type { SettledReading } from './unknown-constants.js';

interface SwingFindings {
  readonly rows: readonly SwingRow[];
  readonly settings: SwingSettings;
  readonly counted: readonly SettledReading[];
  readonly fit: DeviationFit;
  readonly constantLost: boolean;
  /** Of the place, where it is known: how far a compass can be trusted there. */
  readonly zone: CompassZone | null;
}

/** A parallax below this, degrees, is lost in the readings: common practice, no source. */
const SMALL_PARALLAX = 0.1;
/** The Sun higher than this makes its bearing doubtful, degrees: trade practice for azimuths. */
const HIGH_SUN = 30;

function aboutObject({ rows, settings }: SwingFindings): Caution[] {
  const near = rows.some(({ method }) => method === 'known-object' || method === 'unknown-object');
  const { circle } = settings;
  if (!near || !circle || circle.turning) return [];
  const largest = largestParallax(circle);
  return largest < SMALL_PARALLAX ? [] : [warning('parallax', { largest: quantity(largest, 'angle') })];
}

/** Marks nobody sees from there: a place is typed on the wrong side, and with it goes the variation. */
function aboutMarks({ rows, settings }: SwingFindings): Caution[] {
  const { transit, place } = settings;
  if (!transit || (transit.kind === 'one-mark' && !place) || !rows.some(({ method }) => method === 'transit')) return [];
  const found = transitLine(transit, place);
  if (!found.determined) return [];
  const farthest = Math.max(found.line.shipDistance ?? 0, found.line.markDistance ?? 0);
  return beyondSight(farthest) ? [warning('mark-beyond-sight', { distance: quantity(farthest / METRES_PER_MILE, 'nauticalMiles') })] : [];
}

function aboutConstant({ settings, constantLost }: SwingFindings): Caution[] {
  if (!constantLost) return [];
  const { constant } = settings;
  return constant === undefined || constant === null ? [warning('constant-lost')] : [note('constant-taken', { constant: quantity(constant, 'error') })];
}

/** A swing takes an hour or two: times of one day so far apart are those of two, milliseconds. */
const HALF_DAY = 43_200_000;

/** Bare times on either side of midnight are all taken on the day that is given. */
function aboutTimes({ rows }: SwingFindings): Caution[] {
  const times = rows.flatMap((row) => (row.method === 'sun' && !row.struck ? [row.instant] : [])).sort((a, b) => a.getTime() - b.getTime());
  const [first, last] = [times[0], times[times.length - 1]];
  if (!first || !last || formatDate(first) !== formatDate(last)) return [];
  const early = times.findIndex((time, place) => (times[place + 1] ?? time).getTime() - time.getTime() > HALF_DAY);
  const [before, after] = [times[early], times[early + 1]];
  return before && after ? [warning('past-midnight', { early: formatTimeOfDay(before), late: formatTimeOfDay(after) })] : [];
}

/** Headings named in a text. */
const named = (headings: readonly number[]): string => headings.map((heading) => formatBearing(heading, heading % 1 ? 1 : 0)).join(', ');

/** More headings than this taken twice are told in one sentence: a ship swung both ways has them all. */
const FEW = 2;

/** Headings taken more than once as the ship was steadied: by gyro, whose error has changed meanwhile, she is on another by compass. */
function aboutRepeats({ rows, counted }: SwingFindings): Caution[] {
  const repeated = headingReckonings.flatMap((by) =>
    repeatedReadings(counted.flatMap(({ index, deviation }) => {
      const row = rows[index];
      return row && (row.headingBy ?? 'compass') === by ? [{ heading: row.heading, deviation }] : [];
    })),
  );
  if (repeated.length <= FEW) return repeated.map(({ heading, apart }) => note('heading-twice', { heading: quantity(heading, 'bearing'), apart: quantity(apart, 'angle') }));
  const apart = Math.max(...repeated.map((one) => one.apart));
  return [note('headings-twice', { headings: named(repeated.map(({ heading }) => heading)), apart: quantity(apart, 'angle') })];
}

/** What a swing always has while there is no curve yet: each says no more than that headings are still to be taken. */
const OF_BEGINNING = new Set(['too-few-readings', 'too-few-to-find-slips', 'half-of-compass', 'wide-gap', 'no-fit']);

/**
 * What the user should know of a swing: the fit's own cautions, those of headings taken
 * twice as one `headings-twice` where they are many, and `headings-missing`, `past-midnight`, `mark-beyond-sight`, `parallax`,
 * `constant-lost`, `constant-taken`, `sun-high`, `reversed-naming`, `caution-zone`, `blackout-zone`. While headings planned are
 * missing and those taken give no curve, the headings still to be taken stand for all that follows from it.
 */
export function swingCautions(findings: SwingFindings): readonly Caution[] {
  const { settings, counted, fit, constantLost, zone } = findings;
  const observations = counted.map(({ heading, deviation, reading }) => ({ heading, deviation, sigma: reading.sigma }));
  // That A is lost has a sentence of its own.
  const { determined } = fit;
  let ofFit = fit.warnings.filter(({ code, values }) => code !== 'not-determined' || !(constantLost && values['coefficients'] === 'A'));
  const missing = settings.planned && counted.length > 0 ? missingHeadings(settings.planned, counted.map(({ heading }) => heading)) : [];
  if (missing.length > 0 && determined.length < (constantLost ? 4 : 5)) {
    // Which coefficients are lost is worth a word once some are found.
    ofFit = ofFit.filter(({ code }) => !OF_BEGINNING.has(code) && (code !== 'not-determined' || determined.length > 0));
  }
  const cautions = [...aboutRepeats(findings), ...ofFit.filter(({ code }) => code !== 'heading-twice')];
  if (missing.length > 0) cautions.push(note('headings-missing', { headings: named(missing) }));
  cautions.push(...aboutTimes(findings), ...aboutMarks(findings), ...aboutObject(findings), ...aboutConstant(findings));
  const highest = Math.max(...counted.map(({ reading }) => reading.altitude ?? -90));
  if (highest > HIGH_SUN) cautions.push(note('sun-high', { altitude: quantity(highest, 'angle') }));
  if (zone === 'caution' || zone === 'blackout') cautions.push(warning(`${zone}-zone`));
  const reversed = settings.oldCard ? reversedNaming(observations, settings.oldCard) : null;
  return reversed ? [reversed, ...cautions] : cautions;
}
