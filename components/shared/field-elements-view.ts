import { html } from 'lit';
import type { TemplateResult } from 'lit';
import { roundTo } from '../../core/angle/format-angle.js';
import type { MagneticField } from '../../core/field/magnetic-field.js';
import { formatAngle, formatError, formatNumber } from './figures.js';
import type { LubberElement } from './lubber-element.js';

/** A force in microtesla, as it is shown to people. */
export const microtesla = (nanotesla: number): string => `${formatNumber(nanotesla / 1000, 2)} µT`;

/** Close to a dip pole the variation may change by whole degrees in a year; beyond half a turn, as the pole goes by, what it does now tells nothing of a year. */
const FAST = 10;
const BEYOND = 180;

/** A change of direction in a year: minutes of arc with their letter, `7.9′ E`, or degrees where they are many. */
export function yearlyMinutes(degrees: number): string {
  if (Math.abs(degrees) > BEYOND) return '–';
  if (Math.abs(degrees) >= FAST) return `${formatNumber(Math.abs(degrees), 0)}° ${degrees > 0 ? 'E' : 'W'}`;
  const minutes = formatNumber(Math.abs(degrees) * 60, 1);
  return `${minutes}′${roundTo(degrees * 60, 1) === 0 ? '' : degrees > 0 ? ' E' : ' W'}`;
}

const signedMinutes = (degrees: number): string => `${formatNumber(degrees * 60, 1)}′`;
const signedNanotesla = (change: number): string => `${formatNumber(change, 0)} nT`;

/** Every element with its doubt and what it changes in a year. */
export function fieldElementsView(host: LubberElement, field: MagneticField): TemplateResult {
  const { annualChange: change, uncertainty: sigma } = field;
  const none = host.t('earth.none');
  const or = <T>(value: T | null, write: (value: T) => string): string => (value === null ? none : write(value));
  const force = (name: 'h' | 'z' | 'f'): readonly string[] => [
    host.t(`earth.${name}`),
    microtesla(field[name]),
    microtesla(sigma[name]),
    or(change[name], signedNanotesla),
  ];
  const rows = [
    [host.t('earth.variation'), or(field.variation, (value) => formatError(value, 2)), or(sigma.variation, (value) => formatAngle(value, 2)), or(change.variation, yearlyMinutes)],
    [host.t('earth.inclination'), formatAngle(field.inclination, 2), formatAngle(sigma.inclination, 2), or(change.inclination, signedMinutes)],
    force('h'),
    force('z'),
    force('f'),
  ];
  const figure = (text: string | undefined): TemplateResult => html`<td class="figure"><bdi dir="ltr">${text}</bdi></td>`;
  return html`<div class="scroll" part="elements" role="group" aria-label=${host.t('earth.elements')}>
    <table part="table" class="elements">
      <caption class="small soft">
        ${host.t('earth.elements')}, ${field.model}
      </caption>
      <thead>
        <tr>
          <th scope="col">${host.t('earth.element')}</th>
          <th scope="col" class="figure">${host.t('earth.value')}</th>
          <th scope="col" class="figure">${host.t('earth.sigma')}</th>
          <th scope="col" class="figure">${host.t('earth.change')}</th>
        </tr>
      </thead>
      <tbody>
        ${rows.map(([label, value, doubt, yearly]) => html`<tr>
          <th scope="row">${label}</th>
          ${figure(value)} ${figure(doubt)} ${figure(yearly)}
        </tr>`)}
      </tbody>
    </table>
  </div>`;
}
