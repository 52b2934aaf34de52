import { hardIronPolarity, permanentFromSlip } from '../../core/iron/building-slip.js';
import type { BuildingSlip } from '../../core/iron/building-slip.js';
import type { PolarityOfShip } from '../../core/iron/induced-polarity.js';
import { roundTo } from '../../core/angle/format-angle.js';
import type { Bench } from './bench.js';
import { placeField } from './place-field.js';

/** Where she was built; null while a field of it is missing. */
function slipOf(bench: Bench): BuildingSlip | null {
  const field = placeField(bench, 'slip');
  const magneticHeading = bench.value('slipHeading');
  return field && magneticHeading !== undefined ? { field, magneticHeading } : null;
}

export function slipPolarity(bench: Bench): PolarityOfShip | null {
  const slip = slipOf(bench);
  return slip && hardIronPolarity(slip);
}

/** P, Q and R, µT, to the tenth the sliders show, of a ship left to the hammering on this slip. */
export function permanentOfSlip(bench: Bench): { P: number; Q: number; R: number } | null {
  const slip = slipOf(bench);
  const percent = bench.value('slipStrength');
  if (!slip || percent === undefined) return null;
  const strength = percent / 100;
  const { P, Q, R } = permanentFromSlip(slip, { horizontal: strength, vertical: strength });
  return { P: roundTo(P / 1000, 3), Q: roundTo(Q / 1000, 3), R: roundTo(R / 1000, 3) };
}
