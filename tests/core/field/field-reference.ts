import type { MagneticModelName } from '../../../core/field/magnetic-models.js';
import { reference } from '../../support/reference.js';

type Numbers = Readonly<Record<'X' | 'Y' | 'Z' | 'H' | 'F' | 'D' | 'I' | 'dX' | 'dY' | 'dZ' | 'dH' | 'dF' | 'dD' | 'dI', number>>;

export interface FieldLine extends Numbers {
  readonly model: MagneticModelName;
  readonly source: string;
  readonly decimal_year: number;
  readonly lat: number;
  readonly lon: number;
  readonly alt_km: number;
}

interface FieldReference {
  readonly official: readonly FieldLine[];
  readonly random_wmm2025: readonly (FieldLine & { readonly id: string; readonly utc: string })[];
  readonly table3b: FieldLine & Readonly<Record<'D_rad' | 'I_rad' | 'dD_rad', number>>;
  readonly poles: readonly {
    readonly model: MagneticModelName;
    readonly decimal_year: number;
    readonly north_dip_pole: { readonly lat: number; readonly lon: number };
    readonly south_dip_pole: { readonly lat: number; readonly lon: number };
    readonly north_geomagnetic_pole: {
      readonly lat_geocentric: number;
      readonly lat_geodetic: number;
      readonly lon: number;
      readonly south_pole_lon: number;
    };
  }[];
  readonly magnetic_equator: readonly {
    readonly model: MagneticModelName;
    readonly decimal_year: number;
    readonly lon: number;
    readonly lat: number;
    readonly H: number;
  }[];
}

/** Official test lines of NOAA and BGS, and an independent evaluation; the file's header names each. */
export const fieldReference = reference<FieldReference>('field.json');

interface PublishedCase {
  readonly id: string;
  readonly inputs: Readonly<Record<string, never>>;
  readonly expected: Readonly<Record<string, never>>;
}

/** Printed values about the field, each with its source in the file. */
export function published(id: string): PublishedCase {
  const found = reference<{ readonly cases: readonly PublishedCase[] }>('field-published.json').cases.find(
    (entry) => entry.id === id,
  );
  if (!found) throw new Error(`no printed case ${id}`);
  return found;
}
