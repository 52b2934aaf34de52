import type { Pole } from '../../core/field/magnetic-poles.js';
import { formatLatitude, formatLongitude } from '../shared/figures.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { sentences } from '../shared/sentences.js';
import type { MapDrawing } from './map-drawing.js';
import type { MapLines } from './map-levels.js';

const placed = ({ latitude, longitude }: Pole): string => `${formatLatitude(latitude, 0)}, ${formatLongitude(longitude, 0)}`;

/** What the map shows, in a few sentences: the poles, the zones and where the equator of the field runs. */
export function mapSummary(host: LubberElement, lines: MapLines, date: string, drawing: MapDrawing): string {
  const { dip, geomagnetic } = drawing.poles;
  return sentences(
    host.t,
    host.t('field-map.summary', { lines: host.t(`field-map.table.${lines}`), date, model: drawing.grid.model }),
    host.t('field-map.summary.dip', { north: placed(dip.north), south: placed(dip.south) }),
    host.t('field-map.summary.geomagnetic', { north: placed(geomagnetic.north), south: placed(geomagnetic.south) }),
  );
}
