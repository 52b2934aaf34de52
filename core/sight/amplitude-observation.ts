import type { BodyName } from '../sky/body.js';
import type { HorizonMoment } from '../sky/horizon-altitude.js';
import type { CompassKind } from './compass-kind.js';
import type { SightDoubts } from './sight-doubts.js';

export interface AmplitudeObservation {
  readonly body: BodyName;
  /** Degrees [-90, 90], north positive. */
  readonly latitude: number;
  /** Degrees [-360, 360], east positive. */
  readonly longitude: number;
  readonly instant: Date;
  readonly moment: HorizonMoment;
  /** Metres; counts for the moments on the visible horizon. */
  readonly heightOfEye: number;
  /** Degrees [0, 360]. */
  readonly compassBearing: number;
  readonly compass: CompassKind;
  /** Degrees, east positive; the model's where it is not given. */
  readonly variation?: number;
  /** What the deviation card says for the heading, degrees, east positive. */
  readonly cardDeviation?: number;
  readonly doubts?: Partial<SightDoubts>;
}
