import { partsOnHeading } from '../../core/iron/deviation-parts.js';
import type { DeviationParts } from '../../core/iron/deviation-parts.js';
import type { CurveScale } from './curve-line.js';

/** One part of the deviation as a line of its own. */
export interface PartLine {
  readonly label: string;
  readonly kind: 'A' | 'B' | 'C' | 'D' | 'E';
  /** What vertical iron induces, where that is drawn apart from the permanent share. */
  readonly induced: boolean;
  /** The heading beside which its letter stands: where it is largest. */
  readonly labelAt: number;
  value(parts: DeviationParts): number;
}

const whole: readonly PartLine[] = [
  { label: 'A', kind: 'A', induced: false, labelAt: 352, value: (parts) => parts.A },
  { label: 'B', kind: 'B', induced: false, labelAt: 90, value: (parts) => parts.permanentB + parts.inducedB },
  { label: 'C', kind: 'C', induced: false, labelAt: 180, value: (parts) => parts.permanentC + parts.inducedC },
  { label: 'D', kind: 'D', induced: false, labelAt: 225, value: (parts) => parts.D },
  { label: 'E', kind: 'E', induced: false, labelAt: 270, value: (parts) => parts.E },
];

const apart: readonly PartLine[] = [
  { label: 'P', kind: 'B', induced: false, labelAt: 82, value: (parts) => parts.permanentB },
  { label: 'cZ', kind: 'B', induced: true, labelAt: 98, value: (parts) => parts.inducedB },
  { label: 'Q', kind: 'C', induced: false, labelAt: 172, value: (parts) => parts.permanentC },
  { label: 'fZ', kind: 'C', induced: true, labelAt: 188, value: (parts) => parts.inducedC },
];

/** The lines chosen; `split` draws permanent and induced apart. */
export function partLines(shown: ReadonlySet<string>): PartLine[] {
  const lines = shown.has('split') ? [...whole.filter(({ kind }) => kind !== 'B' && kind !== 'C'), ...apart] : whole;
  return lines.filter(({ kind }) => shown.has(kind));
}

export function partPath(line: PartLine, largest: DeviationParts, { x, y }: CurveScale): string {
  let path = '';
  for (let heading = 0; heading <= 360; heading += 5) {
    path += `${heading === 0 ? 'M' : 'L'}${x(heading).toFixed(1)} ${y(line.value(partsOnHeading(largest, heading))).toFixed(1)}`;
  }
  return path;
}
