import { cosDegrees, tanDegrees } from '../angle/trigonometry.js';
import { altitudeAzimuth } from '../sky/altitude-azimuth.js';
import { azimuthByAltitude } from '../sky/azimuth-by-altitude.js';
import type { DoubtItem } from '../working/doubt.js';
import { quantity } from '../working/quantity.js';
import type { AltitudeSource } from './altitude-source.js';
import type { AzimuthBearing } from './azimuth-bearing.js';
import type { AzimuthSource } from './azimuth-source.js';
import { effectOf, usualDoubts } from './sight-doubts.js';
import type { SightDoubts } from './sight-doubts.js';

/** What is supposed of an azimuth besides, each one standard deviation. */
export interface AzimuthDoubts extends SightDoubts {
  /** Of an altitude by the sextant, degrees. */
  readonly altitude: number;
  /** Of declination and hour angle typed from an almanac, degrees. */
  readonly figures: number;
}

/** Common practice, no source: a minute for a sextant altitude, two tenths of a minute for figures of an almanac. */
export const usualAzimuthDoubts: AzimuthDoubts = { ...usualDoubts, altitude: 1 / 60, figures: 0.2 / 60 };

/** Past this a bearing is anyone's guess: no cause needs to do more. */
const WORST = 90;

const held = (effect: number): number => Math.min(WORST, effect);

function effect(change: number, of: (shift: number) => number | null): number {
  return held(effectOf(change, of) ?? WORST);
}

/** A circle tilted by t across the line of sight turns a bearing at altitude h by t · tan h. */
function tiltItem(altitude: number, tilt: number): DoubtItem {
  return { code: 'tilt', cause: quantity(tilt, 'angle'), effect: held(Math.abs(tilt * tanDegrees(altitude))) };
}

function timedItems(source: AzimuthSource, bearing: AzimuthBearing, doubts: AzimuthDoubts): DoubtItem[] {
  const { latitude, declination, localHourAngle } = bearing;
  const at = (north: number, west: number, up = 0): number | null =>
    Math.abs(latitude + north) > 90 || Math.abs(declination + up) > 90
      ? null
      : altitudeAzimuth({ latitude: latitude + north, declination: declination + up, localHourAngle: (localHourAngle ?? 0) + west }).azimuth;
  const mile = doubts.position / 60;
  // Next to a pole a mile is many degrees of longitude.
  const mileWest = Math.min(WORST, mile / Math.max(cosDegrees(latitude), 1e-9));
  const byPlace = Math.hypot(effect(mile, (shift) => at(shift, 0)), effect(mileWest, (shift) => at(0, shift)));
  const items: DoubtItem[] = [
    { code: 'position', cause: quantity(doubts.position, 'nauticalMiles'), effect: held(byPlace) },
    { code: 'time', cause: quantity(doubts.time, 'seconds'), effect: held(Math.abs(bearing.azimuthRate) * (doubts.time / 60)) },
  ];
  if (source.by === 'body') return items;
  const { figures } = doubts;
  const byFigures = Math.hypot(effect(figures, (shift) => at(0, shift)), effect(figures, (shift) => at(0, 0, shift)));
  return [...items, { code: 'figures', cause: quantity(figures * 60, 'arcminutes'), effect: held(byFigures) }];
}

function altitudeItems(source: AltitudeSource, bearing: AzimuthBearing, doubts: AzimuthDoubts): DoubtItem[] {
  const { latitude, declination, altitude } = bearing;
  const side = source.side === 'east' ? 'rising' : 'setting';
  const at = (north: number, up: number, rise: number): number | null => {
    const triangle = { latitude: latitude + north, declination: declination + up, altitude: altitude + rise };
    return Object.values(triangle).some((angle) => Math.abs(angle) > 90) ? null : (azimuthByAltitude(triangle)?.[side] ?? null);
  };
  const items: DoubtItem[] = [
    { code: 'altitude', cause: quantity(doubts.altitude * 60, 'arcminutes'), effect: effect(doubts.altitude, (shift) => at(0, 0, shift)) },
    {
      code: 'position',
      cause: quantity(doubts.position, 'nauticalMiles'),
      effect: effect(doubts.position / 60, (shift) => at(shift, 0, 0)),
    },
  ];
  if (source.declination === undefined) return items;
  return [...items, { code: 'declination', cause: quantity(doubts.figures * 60, 'arcminutes'), effect: effect(doubts.figures, (shift) => at(0, shift, 0)) }];
}

/** The causes of doubt of an azimuth and what each does to the error, degrees. */
export function azimuthDoubts(source: AzimuthSource, bearing: AzimuthBearing, doubts: AzimuthDoubts): DoubtItem[] {
  return [
    { code: 'reading', cause: quantity(doubts.reading, 'angle'), effect: doubts.reading },
    ...(source.by === 'altitude' ? altitudeItems(source, bearing, doubts) : timedItems(source, bearing, doubts)),
    tiltItem(bearing.altitude, doubts.tilt),
  ];
}
