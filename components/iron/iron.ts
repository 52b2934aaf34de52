import { html, nothing } from 'lit';
import type { CSSResultGroup, PropertyValues, TemplateResult } from 'lit';
import { approximateOf, benchResult } from './bench-result.js';
import type { BenchQuestion, BenchResult } from './bench-result.js';
import { addCorrectors } from '../../core/iron/add-correctors.js';
import { exactCoefficients } from '../../core/iron/exact-coefficients.js';
import { inducedPolarity } from '../../core/iron/induced-polarity.js';
import { ironParameterNames } from '../../core/iron/iron-parameters.js';
import type { IronParameters } from '../../core/iron/iron-parameters.js';
import { warning } from '../../core/working/caution.js';
import type { Caution } from '../../core/working/caution.js';
import { answerStyles } from '../shared/answer-styles.js';
import { selectView } from '../shared/choice-view.js';
import type { FieldInput } from '../shared/field.js';
import { sharedStyles } from '../shared/lubber-element.js';
import { mainButtonStyles } from '../shared/main-button-styles.js';
import { inReadingOrder } from '../shared/reading-order.js';
import { missingView } from '../shared/missing-view.js';
import type { FieldName } from '../shared/missing-view.js';
import { errorColumnStyles } from '../shared/error-column-styles.js';
import { sliderStyles } from '../shared/slider-styles.js';
import { tickStyles } from '../shared/tick-styles.js';
import { benchCorrectors } from './bench-correctors.js';
import { BenchElement } from './bench-element.js';
import type { ViewName } from './bench-state.js';
import { besideCurve, explanationView } from './explanation.js';
import { headlineView } from './headline.js';
import { ironMessages } from './iron-messages.js';
import { ironStyles } from './iron-styles.js';
import { coefficientText } from './iron-words.js';
import { correctorPanel, heelPanel, ironPanel, placePanel, separatePanel, slipPanel, voyagePanel } from './panels.js';
import { partsOf, placeField, sourceOf } from './place-field.js';
import { placeFieldName } from './place-names.js';
import { presetNames, presets } from './presets.js';
import type { PresetName } from './presets.js';
import { tabsView } from './tabs-view.js';
import { zoneCaution } from './zone-caution.js';

/** Every field the answer needs, by how it is given; the others may be at fault without hiding it. */
const always = ['heading', 'heel', ...ironParameterNames] as const;

/**
 * The teaching bench: the Earth's field at a place, the ship's iron as nine rods and three
 * permanent forces, and what they do to her compass: at once, on every heading, elsewhere,
 * heeled, and with correctors.
 *
 * @element lubber-iron
 * @fires lubber-result - when the user changed something and there is a curve: `inputs` (the state), `result`
 * @csspart frame - the whole widget
 * @csspart title - the heading
 * @csspart field - one field with its label
 * @csspart label - what a field is called
 * @csspart input - what is typed or chosen into
 * @csspart problem - what is wrong with a field
 * @csspart button - what is pressed
 * @csspart summary - the head of what opens
 * @csspart table - a table
 * @csspart picture - a drawing, to scale
 * @csspart answer - the deviation on the heading
 * @csspart split - the coefficients
 * @csspart force - the directive force
 * @csspart working - the steps of the working
 * @csspart cautions - what is odd about the result
 * @csspart standing - the line that says what the answer is for
 * @csspart caution - one of the cautions
 */
export class LubberIron extends BenchElement {
  static override styles: CSSResultGroup = [sliderStyles, tickStyles, sharedStyles, mainButtonStyles, answerStyles, errorColumnStyles, ironStyles];

  protected readonly messages = ironMessages;

  #question: BenchQuestion | null = null;
  #result: BenchResult | null = null;

  /** The last result as plain data: field, iron with correctors (nT), coefficients, curve; null where there is none. */
  get result(): BenchResult | null {
    this.#compute();
    return this.#result;
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    super.willUpdate(changed);
    this.#compute();
  }

  #compute(): void {
    const field = placeField(this, 'here');
    const heading = this.value('heading');
    const heel = this.value('heel');
    const ship = this.#ship;
    this.#question =
      field && ship && heading !== undefined && heel !== undefined
        ? { ship, correctors: benchCorrectors(this).correctors, field: { h: field.h, z: field.z }, heading, heel }
        : null;
    this.#result = this.#question && benchResult(this.#question);
  }

  /** Her iron in nT; null while one of the twelve is refused. */
  get #ship(): IronParameters | null {
    const entries = ironParameterNames.map((name) => [name, this.value(name)] as const);
    if (entries.some(([, value]) => value === undefined)) return null;
    return Object.fromEntries(
      entries.map(([name, value = 0]) => [name, 'PQR'.includes(name) ? value * 1000 : value]),
    ) as unknown as IronParameters;
  }

  override shownCoefficient(name: string): string {
    const question = this.#question;
    const field = placeField(this, name.startsWith('here') ? 'here' : 'there');
    if (!question || !field) return '';
    const exact = exactCoefficients(addCorrectors(question.ship, question.correctors), field);
    return coefficientText(approximateOf(exact)?.[name.endsWith('B') ? 'B' : 'C'], 2);
  }

  protected override resultDetail() {
    const result = this.result;
    return result && { inputs: { ...this.state }, result };
  }

  get #view(): ViewName {
    return this.text('view') as ViewName;
  }

  #panel(): TemplateResult {
    const { field = null, heading = 0, heel = 0 } = this.#result ?? {};
    switch (this.#view) {
      case 'place':
        return placePanel(this);
      case 'slip':
        return slipPanel(this);
      case 'iron':
        return ironPanel(this, field && inducedPolarity(field, heading, heel));
      case 'heel':
        return heelPanel(this);
      case 'correctors':
        return correctorPanel(this);
      case 'voyage':
        return voyagePanel(this);
      case 'separate':
        return separatePanel(this);
    }
  }

  #cautions(result: BenchResult): Caution[] {
    const place = placeField(this, 'here');
    const spheres = benchCorrectors(this).touching ? [warning('iron.spheres-touch')] : [];
    return [...result.cautions, ...(place ? zoneCaution(place) : []), ...spheres];
  }

  #missing(): TemplateResult {
    const names = partsOf(sourceOf(this, 'here')).map((part) => ({ name: placeFieldName('here', part), label: this.t(`iron.${part}`) }));
    const needed: FieldName[] = [
      ...names.map(({ name, label }) => ({ state: this.number(name), label, needed: true })),
      ...(sourceOf(this, 'here') === 'position' ? [{ state: this.day(), label: this.t('iron.date'), needed: true }] : []),
      ...always.map((name) => ({ state: this.number(name), label: this.t(`iron.short.${name}`), needed: true })),
    ];
    return missingView(this, needed);
  }

  #presets(): TemplateResult {
    const options = presetNames.map((value) => ({ value, label: this.t(`iron.preset.${value}`) }));
    return selectView(this, 'preset', this.t('iron.preset'), this.#preset, [
      { label: this.t('iron.preset.ships'), options: [{ value: '', label: this.t('iron.preset.own') }, ...options] },
    ]);
  }

  /** The ship of the scenario whose iron is on the bench; empty for any other. */
  get #preset(): PresetName | '' {
    const same = (preset: PresetName): boolean => ironParameterNames.every((name) => this.value(name) === Number(presets[preset][name] ?? 0));
    return presetNames.find(same) ?? '';
  }

  override change(name: string, value: FieldInput): void {
    if (name !== 'preset') return super.change(name, value);
    const preset = presetNames.find((each) => each === value);
    if (preset) this.takePreset(preset);
  }

  protected override render(): TemplateResult {
    const result = this.#result;
    const question = this.#question;
    const view = this.#view;
    const shown = this.answer === 'shown';
    const beside = question && besideCurve(this, view, question);
    // Room for the figures only: the words beside them are left to the legend.
    const tight = this.picture.units < 420 ? 'tight' : '';
    const fields = html`<div class="fields" id="panel" role="tabpanel" aria-labelledby="tab-${view}">${this.#panel()}</div>`;
    const headline = html`<div class="headline ${tight}">
        ${result && shown ? headlineView(this, result, beside && { curve: beside, label: this.t(`iron.beside.${view}`) }, this.#cautions(result)) : nothing}
        ${result ? nothing : this.#missing()}
      </div>`;
    return this.frame(html`
      <div class="top">
        <h2 part="title">${this.t('iron.title')}</h2>
        <div class="no-print">${this.#presets()}</div>
      </div>
      ${tabsView(this, view)}
      <div class="columns">
        ${inReadingOrder(this, fields, headline)}
        <div class="explanation ${tight}">${result && question && shown ? explanationView(this, view, question, result) : nothing}</div>
      </div>
    `);
  }
}
