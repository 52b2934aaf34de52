import { geoStream } from 'd3-geo';
import type { GeoPermissibleObjects, GeoProjection, GeoStream } from 'd3-geo';

/**
 * Draws as a path of SVG, to a tenth of a pixel, what a projection makes of a geometry. The
 * library's own path also measures areas and centres, which would double its weight here.
 */
export function svgPath(projection: GeoProjection, geometry: GeoPermissibleObjects): string {
  let path = '';
  let inPolygon = false;
  let isFirst = true;
  const sink: GeoStream = {
    point(x, y) {
      path += `${isFirst ? 'M' : 'L'}${x.toFixed(1)},${y.toFixed(1)}`;
      isFirst = false;
    },
    lineStart() {
      isFirst = true;
    },
    lineEnd() {
      if (inPolygon) path += 'Z';
    },
    polygonStart() {
      inPolygon = true;
    },
    polygonEnd() {
      inPolygon = false;
    },
  };
  geoStream(geometry, projection.stream(sink));
  return path;
}
