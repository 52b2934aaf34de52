import type { LubberElement } from '../shared/lubber-element.js';
import type { GridContent } from './grid-content.js';
import type { TypedColumn } from './grid-row.js';

/** How a row of the grid lies: in one line, or where there is little room in several. */
export interface GridShape {
  /** The typed columns of the standard compass. */
  readonly own: readonly TypedColumn[];
  /** A column for the head by compass, where it was not read. */
  readonly byCompass: boolean;
  /** What a row came to stands in one column, one figure below the other. */
  readonly stacked: boolean;
  /** Steering compass, method and north stand in lines of their own. */
  readonly below: boolean;
  /** Columns in all. */
  readonly width: number;
}

/** Columns of figures that a narrow grid has room for beside what is typed. */
const FEW = 2;
/** Columns beside those: use; and of the steering compass its head, two figures and use. */
const USE = 1;
const STEERING = 4;

export function gridShape(host: LubberElement, { state, worked, columns, mixed }: GridContent): GridShape {
  const own = columns.filter((column) => column !== 'steering');
  const byCompass = state.headingBy !== 'compass' || worked.rows.some(({ headingBy }) => headingBy !== 'compass');
  const below = host.width.narrow;
  const stacked = below && own.length + (byCompass ? 1 : 0) > FEW;
  const figures = stacked ? 1 : byCompass ? 3 : 2;
  const aside = below ? 0 : (mixed ? 2 : 0) + (state.steering ? STEERING : 0);
  return { own, byCompass, stacked, below, width: own.length + figures + USE + aside };
}
