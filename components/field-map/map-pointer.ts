import type { MapPlace } from './map-view-names.js';
import type { MapLayout } from './map-views.js';

/** A pointer finds a place to about a pixel; more figures would pretend. */
const tenths = (degrees: number): number => Math.round(degrees * 10) / 10;

/** The place under a pointer on the map's sheet; null beside the map. */
export function pointedPlace(event: MouseEvent, layout: MapLayout): MapPlace | null {
  const box = (event.currentTarget as HTMLElement).querySelector('svg')?.getBoundingClientRect();
  if (!box) return null;
  const scale = layout.width / box.width;
  const place = layout.place((event.clientX - box.left) * scale, (event.clientY - box.top) * scale);
  return place && { latitude: tenths(place.latitude), longitude: tenths(place.longitude) };
}
