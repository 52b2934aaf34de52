import { naturalEarth, naturalEarthLatitude } from '../../core/angle/natural-earth.js';
import { atan2Degrees, cosDegrees, sinDegrees } from '../../core/angle/trigonometry.js';
import { wrap180 } from '../../core/angle/wrap.js';
import type { Drawn } from './map-path.js';
import type { MapPlace, MapViewName } from './map-view-names.js';

/** The surroundings of a pole end at this latitude. */
export const POLAR_EDGE = 50;

/** A projection laid out for a width in CSS pixels. */
export interface MapLayout extends Drawn {
  readonly view: MapViewName;
  readonly width: number;
  readonly height: number;
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
const WORLD_SHAPE = (180 * naturalEarth(0).degree) / naturalEarth(90).height;
const WIDEST_POLAR = 620;

export const isPolar = (view: MapViewName): boolean => view === 'north' || view === 'south';

/** Room around the map for the figures of its edge. */
function margins(view: MapViewName, width: number): { readonly side: number; readonly above: number; readonly below: number } {
  return isPolar(view) ? { side: 34, above: 22, below: 22 } : { side: width < 480 ? 24 : 32, above: 6, below: 22 };
}

/** A projection with its way back: degrees, unless the point lies beside the map. */
interface Sheet extends Drawn {
  readonly outline: string;
  placeAt(x: number, y: number): readonly [longitude: number, latitude: number] | null;
}

/** The world in the projection Natural Earth, whose parallels are straight. */
function worldSheet(middle: number, centreX: number, centreY: number, half: number): Sheet {
  const scale = half / (180 * naturalEarth(0).degree);
  const project = (longitude: number, latitude: number): readonly [number, number] => {
    const { degree, height } = naturalEarth(latitude);
    return [centreX + (longitude - middle) * degree * scale, centreY - height * scale];
  };
  const edge = Array.from({ length: 73 }, (_, index) => index * 2.5 - 90);
  const outline = [...edge.map((latitude) => project(middle + 180, latitude)), ...edge.map((latitude) => project(middle - 180, -latitude))];
  return {
    middle,
    isNear: () => true,
    project,
    outline: `M${outline.map((point) => point.map((value) => value.toFixed(1)).join()).join('L')}Z`,
    placeAt(x, y) {
      const latitude = naturalEarthLatitude((centreY - y) / scale);
      const across = latitude === null ? NaN : (x - centreX) / scale / naturalEarth(latitude).degree;
      return latitude !== null && Math.abs(across) <= 180 ? [wrap180(middle + across), latitude] : null;
    },
  };
}

/** The surroundings of a pole: directions from it are true, and distances to scale. */
function polarSheet(sign: 1 | -1, centreX: number, centreY: number, half: number): Sheet {
  const scale = half / (90 - POLAR_EDGE);
  return {
    middle: null,
    isNear: (latitude) => sign * latitude > 0,
    project(longitude, latitude) {
      const distance = (90 - sign * latitude) * scale;
      return [centreX + distance * sinDegrees(longitude), centreY + sign * distance * cosDegrees(longitude)];
    },
    outline: `M${centreX - half},${centreY}a${half},${half} 0 1,0 ${2 * half},0a${half},${half} 0 1,0 ${-2 * half},0Z`,
    placeAt(x, y) {
      const [east, south] = [x - centreX, y - centreY];
      const distance = Math.hypot(east, south);
      return distance <= half ? [atan2Degrees(east, sign * south), sign * (90 - distance / scale)] : null;
    },
  };
}

/** Lays a view out for a width. */
export function layOut(view: MapViewName, width: number): MapLayout {
  const { side, above, below } = margins(view, width);
  const across = isPolar(view) ? Math.min(width, WIDEST_POLAR) - 2 * side : width - 2 * side;
  const down = isPolar(view) ? across : across / WORLD_SHAPE;
  const at = [width / 2, above + down / 2, across / 2] as const;
  const sheet = isPolar(view) ? polarSheet(view === 'north' ? 1 : -1, ...at) : worldSheet(view === 'pacific' ? 180 : 0, ...at);
  const { middle, project } = sheet;
  return {
    ...sheet,
    view,
    width,
    height: above + down + below,
    shows: ({ latitude }) => (isPolar(view) ? (view === 'north' ? latitude : -latitude) >= POLAR_EDGE : true),
    point: ({ latitude, longitude }) => project(middle === null || Math.abs(longitude - middle) <= 180 ? longitude : middle + wrap180(longitude - middle), latitude),
    place(x, y) {
      const found = sheet.placeAt(x, y);
      return found && { longitude: found[0], latitude: found[1] };
    },
  };
}
