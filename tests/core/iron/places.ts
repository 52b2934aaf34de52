import type { IronObservation } from '../../../core/iron/iron-observation.js';
import type { IronParameters } from '../../../core/iron/iron-parameters.js';
import type { KnownCoefficients } from '../../../core/iron/iron-from-exact.js';
import { reference } from '../../support/reference.js';

export interface Place {
  role: 'first' | 'second' | 'predicted';
  H: number;
  Z: number;
  exact: KnownCoefficients & { lambda: number };
  deviationByCompass24: number[];
  deviationByMagnetic24: number[];
  deviationObserved24?: number[];
}

export interface TravelledShip {
  id: string;
  group: string;
  parameters: IronParameters;
  lambda: number;
  separated: Record<'P' | 'c' | 'Q' | 'f' | 'PoverLambda' | 'cOverLambda' | 'QoverLambda' | 'fOverLambda', number>;
  sigma: number;
  compassHeadings24: number[];
  noiseAmplification: number;
  /** Degrees. */
  referencePredictionError?: { rms: number; max: number };
  places: Place[];
}

/** Ships at two magnetic latitudes with a third to predict, by an independent program: header of the file. */
export const { cases: travelledShips } = reference<{ cases: TravelledShip[] }>('iron-places.json');

export function fieldOf({ H, Z }: { H: number; Z: number }): { h: number; z: number } {
  return { h: H, z: Z };
}

/** A swing at a place that found its true coefficients, λ unknown. */
export function swingAt({ H, Z, exact }: Place): IronObservation {
  const { A, B, C, D, E } = exact;
  return { exact: { A, B, C, D, E }, field: fieldOf({ H, Z }) };
}

export function placeOf(ship: TravelledShip, role: Place['role']): Place {
  const found = ship.places.find((place) => place.role === role);
  if (!found) throw new Error(`${ship.id} has no ${role} place`);
  return found;
}
