import { geoAzimuthalEquidistant, geoNaturalEarth1 } from 'd3-geo';
import type { GeoProjection } from 'd3-geo';
import { arcOfDegrees } from '../../core/angle/trigonometry.js';
import { wrap180 } from '../../core/angle/wrap.js';
import { svgPath } from './map-path.js';
import type { MapPlace, MapViewName } from './map-view-names.js';

/** The surroundings of a pole end at this latitude. */
export const POLAR_EDGE = 50;

/** A projection laid out for a width in CSS pixels. */
export interface MapLayout {
  readonly view: MapViewName;
  readonly width: number;
  readonly height: number;
  readonly projection: GeoProjection;
  /** The edge of the map as a path of SVG; what the projection draws beyond it is to be clipped. */
  readonly outline: string;
  /** Whether a place is on this map. */
  shows(place: MapPlace): boolean;
  /** Where it is drawn. */
  point(place: MapPlace): readonly [number, number];
  /** The place under a point, or null beside the map. */
  place(x: number, y: number): MapPlace | null;
}

/** Width over height of the outline of the world as it is projected here. */
const WORLD_SHAPE = 1.9229;
const WIDEST_POLAR = 620;

export const isPolar = (view: MapViewName): boolean => view === 'north' || view === 'south';

/** Room around the map for the figures of its edge. */
function margins(view: MapViewName, width: number): { readonly side: number; readonly above: number; readonly below: number } {
  return isPolar(view) ? { side: 34, above: 22, below: 22 } : { side: width < 480 ? 24 : 32, above: 6, below: 22 };
}

interface Frame {
  readonly left: number;
  readonly above: number;
  readonly across: number;
  readonly down: number;
}

function worldProjection(view: MapViewName, { left, above, across, down }: Frame): GeoProjection {
  return geoNaturalEarth1()
    .rotate([view === 'pacific' ? 180 : 0, 0])
    .fitExtent([[left, above], [left + across, above + down]], { type: 'Sphere' });
}

/**
 * Half the world around a pole, of which the outline shows the middle: the library's own
 * clipping to less than half draws false chords between points far outside.
 */
function polarProjection(view: MapViewName, { left, above, across }: Frame): GeoProjection {
  return geoAzimuthalEquidistant()
    .rotate([0, view === 'north' ? -90 : 90])
    .clipAngle(90)
    .scale(across / 2 / arcOfDegrees(90 - POLAR_EDGE))
    .translate([left + across / 2, above + across / 2]);
}

function circle({ left, above, across }: Frame): string {
  const half = across / 2;
  return `M${left},${above + half}a${half},${half} 0 1,0 ${across},0a${half},${half} 0 1,0 ${-across},0Z`;
}

/** Lays a view out for a width. */
export function layOut(view: MapViewName, width: number): MapLayout {
  const { side, above, below } = margins(view, width);
  const across = isPolar(view) ? Math.min(width, WIDEST_POLAR) - 2 * side : width - 2 * side;
  const down = isPolar(view) ? across : across / WORLD_SHAPE;
  const left = (width - across) / 2;
  const frame = { left, above, across, down };
  const projection = (isPolar(view) ? polarProjection : worldProjection)(view, frame).precision(0.3);
  const outline = isPolar(view) ? circle(frame) : svgPath(projection, { type: 'Sphere' });
  const shows = ({ latitude }: MapPlace): boolean =>
    isPolar(view) ? (view === 'north' ? latitude : -latitude) >= POLAR_EDGE : true;
  const point = ({ latitude, longitude }: MapPlace): readonly [number, number] => projection([longitude, latitude]) ?? [NaN, NaN];
  const place = (x: number, y: number): MapPlace | null => {
    const [longitude = NaN, latitude = NaN] = projection.invert?.([x, y]) ?? [];
    if (!(Math.abs(latitude) <= 90) || !Number.isFinite(longitude)) return null;
    const found = { latitude, longitude: wrap180(longitude) };
    // Beside the outline the inverse goes on into places that are drawn elsewhere.
    const [backX, backY] = point(found);
    return shows(found) && Math.hypot(backX - x, backY - y) < 1 ? found : null;
  };
  return { view, width, height: above + down + below, projection, outline, shows, point, place };
}
