import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { addCorrectors } from '../../core/iron/add-correctors.js';
import { inducedPolarity } from '../../core/iron/induced-polarity.js';
import { zoneCaution } from './zone-caution.js';
import { cautionsView, standingCautions } from '../shared/caution-view.js';
import type { BenchElement } from './bench-element.js';
import { benchCorrectors } from './bench-correctors.js';
import { shipAtPlace } from './bench-result.js';
import type { BenchQuestion, BenchResult } from './bench-result.js';
import type { ViewName } from './bench-state.js';
import { coefficientsView, compareView } from './coefficients-view.js';
import { heelView } from './heel-view.js';
import { placeField } from './place-field.js';
import { placeTitle } from './place-view.js';
import { polarityPicture } from './polarity-picture.js';
import { benchWorking, curveTable, forceView } from './readings-view.js';
import { separation } from './separation.js';
import { separationView } from './separation-view.js';
import { slipPolarity } from './slip.js';
import { stateLink } from './state-link.js';
import { voyageView } from './voyage-view.js';

function placeExplained(bench: BenchElement, { field, heading, heel }: BenchResult): TemplateResult {
  return polarityPicture(bench, inducedPolarity(field, heading, heel), heading, bench.t('iron.polarity.induced'));
}

function slipExplained(bench: BenchElement): TemplateResult | typeof nothing {
  const polarity = slipPolarity(bench);
  if (!polarity) return nothing;
  return html`${polarityPicture(bench, polarity, bench.value('slipHeading') ?? 0, bench.t('iron.polarity.permanent'))}
    <p>${bench.t('iron.slip.stays')}</p>`;
}

function voyageExplained(bench: BenchElement, result: BenchResult): TemplateResult {
  const field = placeField(bench, 'there');
  if (!field) return html`<p class="soft">${bench.t('iron.voyage.none')}</p>`;
  const there = shipAtPlace(result.iron, field, result.heel);
  const titles = [placeTitle(bench, 'here'), placeTitle(bench, 'there')] as const;
  return html`${voyageView(bench, result, there, titles)}
    ${cautionsView(bench, zoneCaution(field))}`;
}

function separateExplained(bench: BenchElement, { iron, field }: BenchResult): TemplateResult {
  const there = placeField(bench, 'there');
  const swings = there && [
    { field, B: bench.value('hereB'), C: bench.value('hereC') },
    { field: there, B: bench.value('thereB'), C: bench.value('thereC') },
  ];
  const found = swings && separation(iron, swings, placeField(bench, 'third'), bench.value('lambda'));
  return found ? separationView(bench, found) : html`<p class="soft">${bench.t('iron.separate.missing')}</p>`;
}

/** What stands below the curve: first what the station chosen is about, then what is always there to open. */
export function explanationView(bench: BenchElement, view: ViewName, question: BenchQuestion, result: BenchResult): TemplateResult {
  const stations: Readonly<Record<ViewName, () => TemplateResult | typeof nothing>> = {
    place: () => placeExplained(bench, result),
    slip: () => slipExplained(bench),
    iron: () => coefficientsView(bench, result),
    heel: () => heelView(bench, result),
    correctors: () =>
      compareView(bench, shipAtPlace(question.ship, question.field, question.heel), result, [
        bench.t('iron.correctors.before'),
        bench.t('iron.correctors.after'),
      ]),
    voyage: () => voyageExplained(bench, result),
    separate: () => separateExplained(bench, result),
  };
  return html`<section aria-label=${bench.t(`iron.view.${view}`)}>${stations[view]()}</section>
    <div class="after">
      ${view === 'iron'
        ? nothing
        : html`<details>
            <summary part="summary">${bench.t('iron.coefficients')}</summary>
            ${coefficientsView(bench, result)}
          </details>`}
      ${forceView(bench, result)} ${curveTable(bench, result)} ${benchWorking(bench, result)} ${stateLink(bench)}
    </div>
    ${standingCautions(bench)}`;
}

/** The curve drawn beside the ship's own: uncorrected, upright, or at the other place. */
export function besideCurve(bench: BenchElement, view: ViewName, question: BenchQuestion): BenchResult['curve'] | null {
  const { ship, field, heel, correctors } = question;
  if (view === 'correctors') return benchCorrectors(bench).correctors.length > 0 ? shipAtPlace(ship, field, heel).curve : null;
  const iron = addCorrectors(ship, correctors);
  if (view === 'heel') return heel === 0 ? null : shipAtPlace(iron, field, 0).curve;
  const there = view === 'voyage' ? placeField(bench, 'there') : null;
  return there && shipAtPlace(iron, there, heel).curve;
}
