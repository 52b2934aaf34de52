import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { correctorNames, readCorrectors } from '../../core/deviation/corrector-states.js';
import type { Correctors } from '../../core/deviation/corrector-states.js';
import { choiceView } from '../shared/choice-view.js';
import { correctorsEntry } from '../shared/correctors-entry.js';
import { deviationTableView } from '../shared/deviation-table-field.js';
import { fieldView } from '../shared/field-view.js';
import { cardProblemView } from '../shared/given-card-view.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { errorField } from '../shared/trade-fields.js';
import { cardText } from './card-text.js';
import { ofCompass } from './of-compass.js';
import { cardForms, cardOf, coefficientNames, enteredCard } from './ship-card.js';
import type { CardStates } from './ship-card.js';
import type { CompassName, ShipCorrectors } from './ship-correctors.js';

/** The properties that hold the card of each compass. */
const properties = { standard: { card: 'card', table: 'table' }, steering: { card: 'steeringCard', table: 'steeringTable' } } as const;

function entryView(host: LubberElement, table: string, states: CardStates): TemplateResult {
  const { form, coefficients } = states;
  const forms = cardForms.map((value) => ({ value, label: host.t(`ship.cardForm.${value}`) }));
  return html`${coefficients ? choiceView(host, 'cardForm', host.t('ship.cardForm'), form, forms) : nothing}
  ${coefficients && form === 'coefficients'
    ? html`<div class="pair">
        ${coefficientNames.map((name) => fieldView(host, name, errorField, coefficients[name], { label: host.t('ship.coefficient', { letter: name.slice(-1) }), placeholder: '0' }))}
      </div>`
    : deviationTableView(host, table, states.table, host.t('ship.card'))}`;
}

/** What is said of a card handed over, and the way to put it aside. */
function handedView(host: LubberElement, compass: CompassName): TemplateResult {
  const { card } = properties[compass];
  const words = host.t('ship.card.remove');
  const putAside = (): void => {
    // The value of a property that is no field.
    host.change(card, null);
    host.say(ofCompass(host, compass, host.t('ship.card.removed')));
  };
  return html`<p class="hint">${host.t('ship.card.handed')}</p>
    ${host.isLocked(card) ? nothing : html`<p><button part="button" type="button" id="remove-${card}" aria-label=${ofCompass(host, compass, words)} @click=${putAside}>${words}</button></p>`}`;
}

function correctorsView(host: LubberElement, compass: CompassName, known: ShipCorrectors): TemplateResult {
  const correctors = readCorrectors(known[compass]);
  const noted = correctorNames.filter((name) => Object.values(correctors[name]).some(Boolean)).map((name) => host.t(`card.corrector.${name}`));
  const take = (changed: Correctors): void => host.change('correctors', JSON.stringify({ ...known, [compass]: changed }));
  return html`<details>
    <summary part="summary">${host.t('ship.correctors', { which: noted.join(host.t('list.comma')) || host.t('ship.correctors.none') })}</summary>
    ${host.closed.view(false, () => correctorsEntry(host, correctors, host.isLocked('correctors'), take))}
  </details>`;
}

/** One compass of the ship: which card is in use, where it may be entered, and how its correctors stood. */
export function compassView(host: LubberElement, compass: CompassName, states: CardStates, known: ShipCorrectors): TemplateResult {
  const { table } = properties[compass];
  return html`<div><details id=${compass} ?open=${compass === 'standard'}>
    <summary part="summary">${ofCompass(host, compass, cardText(host, cardOf(states)))}</summary>
    ${entryView(host, table, states)} ${states.given.card && !enteredCard(states) ? handedView(host, compass) : nothing} ${cardProblemView(host, states.given)}
    ${correctorsView(host, compass, known)}
  </details></div>`;
}
