import { html } from 'lit';
import type { TemplateResult } from 'lit';
import type { CivilDate } from '../../core/time/parse-date.js';
import { choiceView } from '../shared/choice-view.js';
import type { FieldState } from '../shared/field.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { dateView } from './date-view.js';
import { mapLinesNames } from './map-levels.js';
import type { MapLines } from './map-levels.js';
import { mapViewNames } from './map-view-names.js';
import type { MapViewName } from './map-view-names.js';

/** What is drawn: which lines, which part of the world, of which day. */
export function mapControls(host: LubberElement, lines: MapLines, view: MapViewName, day: { readonly date: FieldState<CivilDate>; readonly year: number }): TemplateResult {
  const choice = (name: 'lines' | 'view', chosen: string, values: readonly string[]): TemplateResult =>
    choiceView(host, name, host.t(`field-map.${name}`), chosen, values.map((value) => ({ value, label: host.t(`field-map.${name}.${value}`) })));
  return html`<div class="controls">${choice('lines', lines, mapLinesNames)} ${choice('view', view, mapViewNames)} ${dateView(host, day.date, day.year)}</div>`;
}
