import { roundTo } from '../../core/angle/format-angle.js';
import { wrap180 } from '../../core/angle/wrap.js';
import { linesPath } from './map-path.js';
import { POLAR_EDGE } from './map-views.js';
import type { MapPlace, MapViewName } from './map-view-names.js';
import type { MapLayout } from './map-views.js';

const COARSE = 5;
const FINE = 1;

/** Where the cross-hair starts when no place is picked. */
export function startOf(view: MapViewName): MapPlace {
  if (view === 'north') return { latitude: 70, longitude: 0 };
  if (view === 'south') return { latitude: -70, longitude: 0 };
  return { latitude: 0, longitude: view === 'pacific' ? 180 : 0 };
}

/** The next value of a scale of steps, so that a cross-hair off the scale comes onto it. */
function next(value: number, direction: number, step: number): number {
  const onScale = direction > 0 ? Math.floor(value / step + 1e-9) : Math.ceil(value / step - 1e-9);
  return roundTo((onScale + direction) * step, 6);
}

/** The cross-hair after a key: up and down change the latitude, left and right the longitude; null for other keys. */
export function crossAfter(key: string, fine: boolean, { latitude, longitude }: MapPlace, view: MapViewName): MapPlace | null {
  const step = fine ? FINE : COARSE;
  const least = view === 'north' ? POLAR_EDGE : -90;
  const most = view === 'south' ? -POLAR_EDGE : 90;
  if (key === 'ArrowUp') return { latitude: Math.min(most, next(latitude, 1, step)), longitude };
  if (key === 'ArrowDown') return { latitude: Math.max(least, next(latitude, -1, step)), longitude };
  if (key === 'ArrowRight') return { latitude, longitude: wrap180(next(longitude, 1, step)) };
  if (key === 'ArrowLeft') return { latitude, longitude: wrap180(next(longitude, -1, step)) };
  return null;
}

/** The meridian and the parallel through a place, as a path of SVG. */
export function crossPath(layout: MapLayout, { latitude, longitude }: MapPlace): string {
  const meridian = Array.from({ length: 37 }, (_, index): [number, number] => [longitude, index * 5 - 90]);
  // A pole has no parallel.
  const parallel = Array.from({ length: 73 }, (_, index): [number, number] => [index * 5 - 180, latitude]);
  const coordinates = Math.abs(latitude) === 90 ? [meridian] : [meridian, parallel];
  return linesPath(layout, coordinates);
}
