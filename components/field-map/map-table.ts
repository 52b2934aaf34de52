import { html } from 'lit';
import type { TemplateResult } from 'lit';
import type { MagneticFieldGrid } from '../../core/field/magnetic-field-grid.js';
import { formatAngle, formatError, formatNumber } from '../shared/figures.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { latitudeText, longitudeText } from './map-ground.js';
import { elementOf } from './map-levels.js';
import type { MapLines } from './map-levels.js';
import type { MapViewName } from './map-view-names.js';

const writers: Readonly<Record<MapLines, (value: number) => string>> = {
  variation: (value) => formatError(value, 0),
  dip: (value) => formatAngle(value, 0),
  horizontal: (value) => formatNumber(value / 1000, 1),
};

const parallels: Readonly<Record<MapViewName, readonly number[]>> = {
  atlantic: [80, 60, 40, 20, 0, -20, -40, -60, -80],
  pacific: [80, 60, 40, 20, 0, -20, -40, -60, -80],
  north: [88, 84, 80, 76, 70, 60, 50],
  south: [-50, -60, -64, -70, -76, -80, -88],
};

/** The map in figures: the element at the crossings of a graticule. */
export function mapTable(host: LubberElement, lines: MapLines, view: MapViewName, grid: MagneticFieldGrid): TemplateResult {
  const middle = view === 'pacific' ? 180 : 0;
  const meridians = Array.from({ length: 12 }, (_, index) => ((index * 30 + middle + 360) % 360) - 180);
  const values = grid[elementOf[lines]];
  const at = (latitude: number, longitude: number): number => {
    const row = Math.round((90 - latitude) / grid.step);
    return values[row * grid.longitudes.length + Math.round((longitude + 180) / grid.step)] ?? 0;
  };
  return html`<details part="table">
    <summary part="summary">${host.t('field-map.table')}</summary>
    <div class="scroll" role="group" aria-label=${host.t('field-map.table')}>
      <table part="table" class="world">
        <caption class="small soft">${host.t(`field-map.table.${lines}`)}</caption>
        <thead>
          <tr>
            <th scope="col">${host.t('sight.latitude')}</th>
            ${meridians.map((longitude) => html`<th scope="col" class="figure">${longitudeText(longitude)}</th>`)}
          </tr>
        </thead>
        <tbody>
          ${parallels[view].map(
            (latitude) => html`<tr>
              <th scope="row">${latitudeText(latitude)}</th>
              ${meridians.map((longitude) => html`<td class="figure">${writers[lines](at(latitude, longitude))}</td>`)}
            </tr>`,
          )}
        </tbody>
      </table>
    </div>
  </details>`;
}
