import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { MagneticCompass, RecordEntry } from '../../core/record/entry.js';
import { entryMarks } from '../../core/record/entry-marks.js';
import { bodyName } from '../shared/body-name.js';
import { errorInColumn } from '../shared/error-parts.js';
import { formatError, formatLatitude, formatLongitude } from '../shared/figures.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { bearingText, fieldInWords, filledFields, shortInstant } from './entry-text.js';

/** What the table needs beside the entries. */
export interface TableState {
  readonly compass: MagneticCompass;
  readonly struck: ReadonlyMap<number, number>;
  /** The entry shown in full; 0 for none. */
  readonly shown: number;
  readonly narrow: boolean;
  /** Whether rows may be opened and corrected; not on paper. */
  readonly live: boolean;
  show(number: number): void;
  correct(entry: RecordEntry): void;
}

interface Column {
  readonly key: string;
  readonly figure: boolean;
  readonly narrow: boolean;
  /** Left out first where the window is not wide. */
  readonly spare: boolean;
  text(entry: RecordEntry): string | TemplateResult;
}

const errorText = (value: number | null): string | TemplateResult => (value === null ? '' : errorInColumn(value));

function columnsFor(compass: MagneticCompass): readonly Column[] {
  const standard = compass === 'standard';
  const figure = (key: string, text: Column['text'], narrow = false): Column => ({ key, figure: true, narrow, spare: key === 'bearing' || key === 'variation', text });
  const own = (value: (entry: RecordEntry) => number | null) => (entry: RecordEntry) => (entry.deviationOf === compass ? errorText(value(entry)) : '');
  return [
    figure('head', (entry) => bearingText(standard ? entry.headingStandard : entry.headingSteering), true),
    figure('bearing', ({ bearing }) => bearingText(bearing)),
    figure('true', ({ trueBearing }) => bearingText(trueBearing)),
    figure('error', (entry) => errorText(standard ? entry.errorStandard : entry.errorSteering)),
    figure('variation', ({ variation }) => errorText(variation)),
    figure('deviation', own(({ deviation }) => deviation), true),
    figure('card', own(({ cardDeviation }) => cardDeviation)),
    figure('difference', own(({ difference }) => difference), true),
  ];
}

/** On paper, where no row opens: where she was, without which nobody can check the variation. */
function place({ latitude, longitude }: RecordEntry): TemplateResult | typeof nothing {
  if (latitude === null || longitude === null) return nothing;
  const text = [formatLatitude(latitude, 0), formatLongitude(longitude, 0)].map((each) => each.replace(/\s/g, '')).join(' ');
  return html`<br /><small class="soft"><bdi dir="ltr">${text}</bdi></small>`;
}

/** The gyro's head and error: on paper below the compass's, on the screen in their place where the bearing was taken by gyro. */
function gyro(host: LubberElement, entry: RecordEntry, { key }: Column, alone: boolean): TemplateResult | typeof nothing {
  const text = key === 'head' ? bearingText(entry.headingGyro) : key === 'error' && entry.errorGyro !== null ? formatError(entry.errorGyro) : '';
  return text === '' ? nothing : html`${alone ? nothing : html`<br />`}<small class="soft">${host.t('north.G')} ${text}</small>`;
}

/** What was observed, in one cell: a body, else how the error was found; an event, or that there was nothing to see. */
function what(host: LubberElement, entry: RecordEntry): string {
  const kind = entry.kind === 'correction' ? (entry.replacement ?? 'correction') : entry.kind;
  if (kind === 'observation') return bodyName(host, entry.target) || fieldInWords(host, entry, 'method') || host.t(`record.kind.${entry.kind}`);
  return kind === 'event' && entry.event !== null ? host.t(`record.event.${entry.event}`) : host.t(`record.kind.${kind}`);
}

function notes(host: LubberElement, entry: RecordEntry, before: RecordEntry | null, struckBy: number | undefined): TemplateResult {
  return html`${struckBy === undefined ? nothing : html`<span class="note">${host.t('record.struck', { number: struckBy })}</span>`}
  ${entry.corrects === null ? nothing : html`<span class="note">${host.t('record.corrects', { number: entry.corrects })}</span>`}
  ${entry.remarks ? html`<span class="note"><bdi>${entry.remarks}</bdi></span>` : nothing}
  ${entryMarks(entry, before).map((mark) => html`<span class="mark">${host.t(`record.mark.${mark}`)}</span>`)}`;
}

function details(host: LubberElement, entry: RecordEntry, columns: number, state: TableState): TemplateResult {
  return html`<tr>
    <td colspan=${columns}>
      <dl class="particulars" id="entry-${entry.number}">
        ${filledFields(host, entry).map(
          ({ name, label, text }) => html`<div class=${name === 'remarks' ? 'wide' : ''}><dt>${label}</dt><dd><bdi>${text}</bdi></dd></div>`,
        )}
        <div><dt>${host.t('field.written')}</dt><dd><bdi dir="ltr">${entry.written.replace('T', ' ').replace('Z', '')}</bdi></dd></div>
        <div class="wide"><dt>${host.t('field.hash')}</dt><dd>${entry.hash}</dd></div>
      </dl>
      ${state.struck.has(entry.number)
        ? nothing
        : html`<p class="no-print"><button part="button" type="button" @click=${() => state.correct(entry)}>${host.t('record.correct', { number: entry.number })}</button></p>`}
    </td>
  </tr>`;
}

function row(host: LubberElement, entry: RecordEntry, before: RecordEntry | null, columns: readonly Column[], state: TableState): TemplateResult {
  const struckBy = state.struck.get(entry.number);
  const shown = state.live && state.shown === entry.number;
  const { day, time } = shortInstant(entry.instant);
  return html`<tr class=${struckBy === undefined ? '' : 'struck'}>
      <td class="open figure">
        ${state.live
          ? html`<button part="button"
              type="button"
              class="plain open"
              aria-expanded=${shown ? 'true' : 'false'}
              aria-label=${host.t('record.show', { number: entry.number })}
              @click=${() => state.show(shown ? 0 : entry.number)}
            >
              ${entry.number}
            </button>`
          : entry.number}
      </td>
      <td class=${state.narrow ? '' : 'nowrap'}><bdi dir="ltr"><span class="nowrap">${day}</span> <span class="nowrap">${time}</span></bdi>${state.live ? nothing : place(entry)}</td>
      ${state.narrow ? nothing : html`<td>${what(host, entry)} ${notes(host, entry, before, struckBy)}</td>`}
      ${columns.map((column) => {
        const text = column.text(entry);
        return html`<td class="figure ${column.spare ? 'spare' : ''}"><bdi dir="ltr">${text}${state.live && (text || entry.bearingBy !== 'gyro') ? nothing : gyro(host, entry, column, !text)}</bdi></td>`;
      })}
      ${state.narrow ? nothing : html`<td class="nowrap"><bdi>${entry.observer}</bdi></td>`}
    </tr>
    ${state.narrow && (entry.kind !== 'observation' || entry.remarks !== '' || struckBy !== undefined || entryMarks(entry, before).length > 0)
      ? html`<tr><td></td><td colspan=${columns.length + 1}>${what(host, entry)} ${notes(host, entry, before, struckBy)}</td></tr>`
      : nothing}
    ${shown ? details(host, entry, columns.length + (state.narrow ? 2 : 4), state) : nothing}`;
}

/** Some entries of the book, newest first; `rows` holds each with the one before it. */
export function entryTable(
  host: LubberElement,
  rows: readonly { readonly entry: RecordEntry; readonly before: RecordEntry | null }[],
  state: TableState,
): TemplateResult {
  if (rows.length === 0) return html`<p class="soft">${host.t('record.table.empty')}</p>`;
  const columns = columnsFor(state.compass).filter(({ narrow }) => narrow || !state.narrow);
  const head = (key: string, figure = false, spare = false): TemplateResult => html`<th scope="col" class="${figure ? 'figure' : ''} ${spare ? 'spare' : ''}">${host.t(`record.column.${key}`)}</th>`;
  return html`<div class="scroll" role="group" aria-label=${host.t('record.table')}>
    <table part="table" class="book">
      <thead>
        <tr>
          ${head('number', true)} ${head('instant')} ${state.narrow ? nothing : head('target')}
          ${columns.map(({ key, spare }) => head(key, true, spare))} ${state.narrow ? nothing : head('observer')}
        </tr>
      </thead>
      <tbody>
        ${rows.map(({ entry, before }) => row(host, entry, before, columns, state))}
      </tbody>
    </table>
  </div>`;
}
