import { wrap180, wrap360 } from '../angle/wrap.js';
import { swing } from './swing.js';
import type { Swing, SwungRow } from './swing.js';
import type { SwingRow } from './swing-row.js';
import { usualSigmas } from './swing-settings.js';
import type { SwingSettings } from './swing-settings.js';

/** What a swing of the standard compass came to for the steering compass read beside it. */
export interface SteeringSwing extends Swing {
  /** For each of its rows the place of that reading among the rows given. */
  readonly places: readonly number[];
}

/** The magnetic head the standard compass gives, and the doubt of it and of reading two heads at once. */
function compared(row: SwingRow, swung: Extract<SwungRow, { ok: true }>, settings: SwingSettings): { magnetic: number; sigma: number } {
  const comparison = settings.sigmas?.gyro ?? usualSigmas.gyro;
  const read = (row.headingBy ?? 'compass') === 'compass';
  // Steadied by magnetic or gyro reckoning, the head does not hang on the standard compass's bearing.
  return { magnetic: wrap360(swung.heading + swung.deviation), sigma: read ? Math.hypot(swung.sigma, comparison) : comparison };
}

/**
 * The steering compass swung with the standard: on each heading its deviation is the magnetic
 * head by the standard compass less its own head. Where the standard's A is lost and taken
 * from nowhere, so is the steering compass's. Null where no row has both.
 *
 * Comparison of heads read together, common practice, no source.
 */
export function steeringSwing(rows: readonly SwingRow[], standard: Swing, settings: SwingSettings = {}): SteeringSwing | null {
  const lost = standard.constantLost && (settings.constant ?? null) === null;
  const places: number[] = [];
  const own: SwingRow[] = [];
  rows.forEach((row, place) => {
    const swung = standard.rows[place];
    if (row.steering === undefined || !swung?.ok) return;
    const { magnetic, sigma } = compared(row, swung, settings);
    const head = { heading: row.steering, sigma, struck: row.struck === true || row.steeringStruck === true };
    places.push(place);
    // Short of one constant on every heading, as a comparison with a gyro of unknown error is.
    if (lost) own.push({ ...head, method: 'gyro', reading: magnetic });
    else own.push({ ...head, method: 'deviation', deviation: wrap180(magnetic - row.steering) });
  });
  if (own.length === 0) return null;
  const { model, planned, limit } = settings;
  const found = swing(own, { planned, limit, ...(model ? { model } : {}) });
  return { ...found, commonDoubt: standard.commonDoubt, places };
}
