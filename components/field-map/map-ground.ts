import { landOfTheWorld } from './coastline.js';
import { areasPath, linesPath } from './map-path.js';
import type { Line } from './map-path.js';
import { isPolar } from './map-views.js';
import type { MapLayout } from './map-views.js';

/** A figure at the edge of the map. */
export interface EdgeFigure {
  readonly x: number;
  readonly y: number;
  readonly text: string;
  readonly anchor: 'start' | 'middle' | 'end';
}

/** What of a map does not change with the date: paths of SVG, and the figures of its edge. */
export interface MapGround {
  readonly land: string;
  readonly graticule: string;
  readonly figures: readonly EdgeFigure[];
}

export const latitudeText = (latitude: number): string => `${Math.abs(latitude)}°${latitude === 0 ? '' : latitude > 0 ? 'N' : 'S'}`;

export function longitudeText(longitude: number): string {
  const size = Math.abs(longitude);
  return `${size}°${size === 0 || size === 180 ? '' : longitude > 0 ? 'E' : 'W'}`;
}

function polarFigures(layout: MapLayout): EdgeFigure[] {
  const sign = layout.view === 'north' ? 1 : -1;
  const [middleX, middleY] = layout.point({ latitude: sign * 90, longitude: 0 });
  const around = Array.from({ length: 12 }, (_, index) => index * 30 - 150).map((longitude) => {
    const [x, y] = layout.point({ latitude: sign * 50, longitude });
    const length = Math.hypot(x - middleX, y - middleY);
    const [outX, outY] = [(x - middleX) / length, (y - middleY) / length];
    const anchor = outX > 0.3 ? 'start' : outX < -0.3 ? 'end' : 'middle';
    return { x: x + 6 * outX, y: y + 10 * outY + 4, text: longitudeText(longitude), anchor } as const;
  });
  const along = (layout.width < 480 ? [70] : [60, 70, 80]).map((size) => {
    const [x, y] = layout.point({ latitude: sign * size, longitude: 0 });
    return { x: x + 3, y: y - 3, text: latitudeText(sign * size), anchor: 'start' } as const;
  });
  return [...around, ...along];
}

function worldFigures(layout: MapLayout): EdgeFigure[] {
  const middle = layout.view === 'pacific' ? 180 : 0;
  // The pole's line, along which they stand, is half as long as the map is wide.
  const step = layout.width < 480 ? 120 : layout.width < 860 ? 60 : 30;
  const parallels = [60, 30, 0, -30, -60].map((latitude) => {
    const [x, y] = layout.point({ latitude, longitude: middle - 179.999 });
    return { x: x - 4, y: y + 4, text: latitudeText(latitude), anchor: 'end' } as const;
  });
  const meridians: EdgeFigure[] = [];
  for (let from = -120; from <= 120; from += step) {
    const longitude = from + middle > 180 ? from + middle - 360 : from + middle;
    const [x, y] = layout.point({ latitude: -90, longitude });
    meridians.push({ x, y: y + 15, text: longitudeText(longitude), anchor: 'middle' });
  }
  return [...parallels, ...meridians];
}

const steps = (from: number, to: number, step: number): readonly number[] =>
  Array.from({ length: Math.round((to - from) / step) + 1 }, (_, index) => from + index * step);

/** Every thirtieth meridian, and parallels at a distance in degrees; with points between, for both may be curves. */
function graticule(apart: number): Line[] {
  const meridians = steps(-180, 150, 30).map((longitude) => steps(-90, 90, 5).map((latitude) => [longitude, latitude] as const));
  const parallels = steps(-90 + apart, 90 - apart, apart).map((latitude) => steps(-180, 180, 3).map((longitude) => [longitude, latitude] as const));
  return [...meridians, ...parallels];
}

/** Draws coast, outline and graticule of a layout. */
export function mapGround(layout: MapLayout): MapGround {
  return {
    land: areasPath(layout, landOfTheWorld()),
    graticule: linesPath(layout, graticule(isPolar(layout.view) ? 10 : 30)),
    figures: isPolar(layout.view) ? polarFigures(layout) : worldFigures(layout),
  };
}
