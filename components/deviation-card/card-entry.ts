import { html } from 'lit';
import type { TemplateResult } from 'lit';
import type { DeviationCard } from '../../core/deviation/deviation-card.js';
import type { DeviationLimit } from '../../core/deviation/deviation-limits.js';
import { choiceView } from '../shared/choice-view.js';
import { deviationTableView } from '../shared/deviation-table-field.js';
import type { Field, FieldState } from '../shared/field.js';
import { fieldView } from '../shared/field-view.js';
import { limitView } from '../shared/limit-view.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { cardFields } from './card-fields.js';
import type { Correctors } from '../../core/deviation/corrector-states.js';
import { correctorsEntry } from '../shared/correctors-entry.js';

export interface EntryStates {
  readonly table: FieldState<DeviationCard>;
  /** Whether a card is shown that nobody typed. */
  readonly given: boolean;
  readonly every: 10 | 15;
  readonly format: 'a4' | 'pocket';
  readonly limit: DeviationLimit;
  readonly correctors: Correctors;
  read<T>(field: Field<T>, name: string): FieldState<T>;
}

/** All that is typed for a card; on paper none of it stands. */
export function cardEntry(host: LubberElement, states: EntryStates): TemplateResult {
  const words = (name: 'vessel' | 'compassName' | 'serial' | 'place' | 'remarks'): TemplateResult =>
    fieldView(host, name, cardFields[name], states.read(cardFields[name], name), { label: host.t(`card.${name}`) });
  return html`${deviationTableView(host, 'table', states.table, host.t('card.entry'), states.given)}
    ${choiceView(
      host,
      'every',
      host.t('card.every'),
      String(states.every),
      ['10', '15'].map((value) => ({ value, label: host.t(`card.every.${value}`) })),
    )}
    ${choiceView(
      host,
      'format',
      host.t('card.format'),
      states.format,
      ['a4', 'pocket'].map((value) => ({ value, label: host.t(`card.format.${value}`) })),
    )}
    ${limitView(host, states.limit)} ${words('vessel')} ${words('compassName')} ${words('serial')} ${words('place')}
    ${fieldView(host, 'date', cardFields.date, states.read(cardFields.date, 'date'), { label: host.t('card.date') })}
    <div class="pair long">
      ${fieldView(host, 'horizontal', cardFields.horizontal, states.read(cardFields.horizontal, 'horizontal'), { label: host.t('card.horizontal') })}
      ${fieldView(host, 'vertical', cardFields.vertical, states.read(cardFields.vertical, 'vertical'), { label: host.t('card.vertical') })}
    </div>
    <details>
      <summary part="summary">${host.t('card.correctors')}</summary>
      ${correctorsEntry(host, states.correctors, host.isLocked('correctors'), (changed) => host.change('correctors', JSON.stringify(changed)))}
    </details>
    ${words('remarks')}`;
}
