import { checkInstant } from '../time/check-instant.js';
import { decimalYear } from '../time/decimal-year.js';
import type { FieldCoefficients } from './field-coefficients.js';
import { wmm2015Coefficients } from './wmm2015-coefficients.js';
import { wmm2015v2Coefficients } from './wmm2015v2-coefficients.js';
import { wmm2020Coefficients } from './wmm2020-coefficients.js';
import { wmm2025Coefficients } from './wmm2025-coefficients.js';

export type MagneticModelName = 'WMM2025' | 'WMM2020' | 'WMM2015v2' | 'WMM2015';

/** A published model and the years it holds for. */
export interface MagneticModel {
  readonly name: MagneticModelName;
  /** First and last decimal year of validity, both included. */
  readonly from: number;
  readonly until: number;
}

interface ModelWithCoefficients extends MagneticModel {
  readonly coefficients: FieldCoefficients;
}

/** The models that a date alone chooses among, newest first. */
const byDate: readonly ModelWithCoefficients[] = [
  { name: 'WMM2025', from: 2025, until: 2030, coefficients: wmm2025Coefficients },
  { name: 'WMM2020', from: 2020, until: 2025, coefficients: wmm2020Coefficients },
  { name: 'WMM2015v2', from: 2015, until: 2020, coefficients: wmm2015v2Coefficients },
];

/** With the one that is taken only when named: version 2 replaced plain WMM2015 for the whole of its five years. */
const byName: readonly ModelWithCoefficients[] = /* @__PURE__ */ byDate.concat({
  name: 'WMM2015',
  from: 2015,
  until: 2020,
  coefficients: wmm2015Coefficients,
});

/** The models, newest first. Unless one is named, a computation takes the first that holds for its instant, never plain WMM2015. */
export const magneticModels: readonly MagneticModel[] = /* @__PURE__ */ byName.map(({ name, from, until }) => ({ name, from, until }));

/** The first and last decimal year that any model holds for. */
export const magneticModelYears: { readonly from: number; readonly until: number } = { from: 2015, until: 2030 };

/** The first of some models that holds at an instant; `whose` years they are, for the error. */
function holding(models: readonly ModelWithCoefficients[], instant: Date, { from, until } = magneticModelYears, whose = 'the magnetic models'): ModelWithCoefficients {
  checkInstant('instant', instant);
  const year = decimalYear(instant);
  const found = models.find((model) => year >= model.from && year <= model.until);
  if (found) return found;
  throw new RangeError(`instant: ${instant.toISOString()} is outside ${from}.0 to ${until}.0, the years of ${whose}`);
}

/** The newest model that holds at an instant; throws `RangeError` naming `instant` outside the years of all. */
export function modelByDate(instant: Date): ModelWithCoefficients {
  return holding(byDate, instant);
}

/**
 * The model to use at an instant: the one named, or the newest that holds.
 * Throws `RangeError` naming `instant` outside the years of the model (or of all of
 * them), and naming `model` for an unknown name.
 */
export function modelAt(instant: Date, name?: MagneticModelName): ModelWithCoefficients {
  if (name === undefined) return modelByDate(instant);
  checkInstant('instant', instant);
  const named = byName.find((model) => model.name === name);
  if (!named) throw new RangeError(`model: ${String(name)} is not a magnetic model`);
  return holding([named], instant, named, name);
}
