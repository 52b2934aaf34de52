import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { choiceView } from '../shared/choice-view.js';
import type { FieldState } from '../shared/field.js';
import { fieldView } from '../shared/field-view.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { bearingField } from '../shared/trade-fields.js';
import { markFields, markNameField, partName } from './mark-fields.js';
import { markKinds, partsOf } from './mark-texts.js';
import type { MarkKind, MarkPart } from './mark-texts.js';

/** One line as it is shown: its place in the list, and what became of each part. */
export interface LineShown {
  readonly index: number;
  readonly kind: MarkKind;
  readonly several: boolean;
  readonly gyro: boolean;
  state(part: MarkPart): FieldState<number>;
  readonly name: FieldState<string>;
  remove(): void;
}

/** What a part is called; the one mark of a bearing is neither front nor rear. */
export function partLabel(host: LubberElement, part: MarkPart, kind: MarkKind, gyro: boolean): string {
  if (part === 'bearing') return host.t(gyro ? 'transit.bearing.gyro' : 'transit.bearing');
  return host.t(kind === 'one-mark' ? `transit.one.${part}` : `transit.${part}`);
}

function partView(host: LubberElement, line: LineShown, part: MarkPart): TemplateResult {
  const field = part === 'bearing' ? bearingField(line.gyro ? 'G' : 'C') : markFields[part];
  return fieldView(host, partName(part, line.index), field, line.state(part), {
    label: partLabel(host, part, line.kind, line.gyro),
    ...(part === 'charted' ? { hint: host.t('transit.charted.hint') } : {}),
  });
}

/** The fields of one line: what it is, where its marks are, how it bore, what it is called. */
export function lineView(host: LubberElement, line: LineShown): TemplateResult {
  const { index, kind } = line;
  const number = index + 1;
  return html`<div class="line-fields" role="group" aria-label=${host.t('transit.line', { number })}>
    ${line.several ? html`<h3>${host.t('transit.line', { number })}</h3>` : nothing}
    ${choiceView(
      host,
      partName('kind', index),
      host.t('transit.kind'),
      kind,
      markKinds.map((value) => ({ value, label: host.t(`transit.kind.${value}`) })),
    )}
    ${partsOf[kind].map((part) => partView(host, line, part))}
    ${fieldView(host, partName('name', index), markNameField, line.name, { label: host.t('transit.name') })}
    ${line.several && !host.isLocked('marks')
      ? html`<p class="no-print"><button part="button" type="button" class="plain" @click=${() => line.remove()}>${host.t('transit.remove', { number })}</button></p>`
      : nothing}
  </div>`;
}
