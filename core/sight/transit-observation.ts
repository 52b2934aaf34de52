import type { CompassKind } from './compass-kind.js';
import type { Position } from './geodesic-line.js';
import type { TransitDoubts } from './transit-doubts.js';
import type { TransitLine } from './transit-line.js';

/** A line ashore and how it bore by the compass, degrees [0, 360]. */
export interface Sighting {
  readonly line: TransitLine;
  readonly compassBearing: number;
}

export interface TransitObservation {
  /** One line or several, all on one heading. */
  readonly sightings: readonly Sighting[];
  /** The ship's place; needed where a line is one mark. */
  readonly ship?: Position;
  /** When, for the variation. */
  readonly instant?: Date;
  readonly compass: CompassKind;
  /** Degrees, east positive; the model's at the ship, or at a mark, where it is not given. */
  readonly variation?: number;
  /** What the deviation card says for the heading, degrees, east positive. */
  readonly cardDeviation?: number;
  readonly doubts?: Partial<TransitDoubts>;
}
