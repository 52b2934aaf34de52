import type { GridElement } from '../../core/field/isolines.js';
import { formatNumber } from '../shared/figures.js';
import { longitudeText } from './map-ground.js';

/** Which lines of equal value the map shows. */
export type MapLines = 'variation' | 'dip' | 'horizontal';

export const mapLinesNames: readonly MapLines[] = ['variation', 'dip', 'horizontal'];

/** How a line is drawn: the zero line, and the lines on either side of it. */
export type LineKind = 'zero' | 'positive' | 'negative';

export const elementOf: Readonly<Record<MapLines, GridElement>> = { variation: 'variation', dip: 'inclination', horizontal: 'h' };

function range(from: number, to: number, step: number): readonly number[] {
  return Array.from({ length: Math.round((to - from) / step) + 1 }, (_, index) => from + index * step);
}

/** The levels drawn, degrees or nT: fewer where there is little room. The zero line comes first, lest it stay without a label. */
export function levelsOf(lines: MapLines, crowded: boolean): readonly number[] {
  if (lines === 'horizontal') return range(0, 40_000, crowded ? 10_000 : 5000).slice(1);
  const step = crowded ? 20 : 10;
  const levels = lines === 'variation' ? range(crowded ? -60 : -180 + step, crowded ? 60 : 180, step) : range(-90 + (crowded ? 10 : step), 90 - (crowded ? 10 : step), step);
  return [0, ...levels.filter((level) => level !== 0)];
}

export function kindOf(lines: MapLines, level: number): LineKind {
  if (level === 0) return 'zero';
  return level > 0 || lines === 'horizontal' ? 'positive' : 'negative';
}

/** The label of a line: `10°W`, `−60°`, `30`, the last in µT. */
export function levelText(lines: MapLines, level: number): string {
  if (lines === 'horizontal') return formatNumber(level / 1000, 0);
  if (lines === 'dip') return `${formatNumber(level, 0)}°`;
  return longitudeText(level);
}
