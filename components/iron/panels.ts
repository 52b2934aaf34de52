import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { PolarityOfShip } from '../../core/iron/induced-polarity.js';
import type { IronParameterName } from '../../core/iron/iron-parameters.js';
import type { Field } from '../shared/field.js';
import { choiceView } from '../shared/choice-view.js';
import { fieldView } from '../shared/field-view.js';
import type { BenchElement } from './bench-element.js';
import { numberFields } from './bench-fields.js';
import { choices } from './bench-state.js';
import { fieldPicture } from './field-picture.js';
import { placeField } from './place-field.js';
import type { PlaceName } from './place-names.js';
import { dateView, placeTitle, placeView } from './place-view.js';
import { rodPicture } from './rod-picture.js';
import { sliderView } from './slider-view.js';

export function placePanel(bench: BenchElement): TemplateResult {
  return html`${placeView(bench, 'here', bench.t('iron.place.here'))} ${dateView(bench, ['here'])} ${fieldAt(bench, 'here')}`;
}

/** The field of a place, drawn; nothing while the place is not complete. */
function fieldAt(bench: BenchElement, place: PlaceName): TemplateResult | typeof nothing {
  const field = placeField(bench, place);
  return field ? fieldPicture(bench, field, placeTitle(bench, place)) : nothing;
}

export function slipPanel(bench: BenchElement): TemplateResult {
  return html`<p class="small soft">${bench.t('iron.slip.lead')}</p>
    ${placeView(bench, 'slip', bench.t('iron.place.slip'))} ${dateView(bench, ['slip'])}
    ${sliderView(bench, 'slipHeading', { label: bench.t('iron.slip.heading'), unit: 'M' })}
    ${sliderView(bench, 'slipStrength', { label: bench.t('iron.slip.strength'), unit: '%' })}
    <p class="row"><button part="button" type="button" class="main" ?disabled=${bench.slipUnknown} @click=${() => bench.build()}>${bench.t('iron.slip.build')}</button></p>`;
}

/** The iron by what it does to the curve, the first group open. */
const groups: readonly { readonly key: string; readonly names: readonly IronParameterName[] }[] = [
  { key: 'semicircular', names: ['P', 'c', 'Q', 'f'] },
  { key: 'quadrantal', names: ['a', 'e'] },
  { key: 'unsymmetrical', names: ['b', 'd'] },
  { key: 'heeling', names: ['R', 'k', 'g', 'h'] },
];

export function ironPanel(bench: BenchElement, polarity: PolarityOfShip | null): TemplateResult {
  const letters = { red: bench.t('iron.letter.red'), blue: bench.t('iron.letter.blue') };
  const slider = (name: IronParameterName): TemplateResult =>
    sliderView(bench, name, {
      label: bench.t(`iron.rod.${name}`),
      unit: 'PQR'.includes(name) ? 'µT' : '',
      picture: rodPicture(name, bench.value(name) ?? 0, polarity, letters),
    });
  return html`${groups.map(
    ({ key, names }, index) => html`<details ?open=${index === 0}>
      <summary part="summary">${bench.t(`iron.group.${key}`)}</summary>
      ${names.map(slider)}
    </details>`,
  )}`;
}

export function heelPanel(bench: BenchElement): TemplateResult {
  return html`<p class="small soft">${bench.t('iron.heel.lead')}</p>
    ${sliderView(bench, 'heel', { label: bench.t('iron.heel'), unit: '°' })}`;
}

function either(bench: BenchElement, name: string, label: string): TemplateResult {
  const options = (choices[name] ?? []).map((value) => ({ value, label: bench.t(`iron.way.${value}`) }));
  return choiceView(bench, name, bench.t(label), bench.text(name), options);
}

export function correctorPanel(bench: BenchElement): TemplateResult {
  const slider = (name: string, unit: string): TemplateResult => sliderView(bench, name, { label: bench.t(`iron.${name}`), unit });
  return html`<p class="small soft">${bench.t('iron.correctors.lead')}</p>
    <details open>
      <summary part="summary">${bench.t('iron.correctors.magnets')}</summary>
      ${slider('foreAftForce', 'µT')} ${either(bench, 'foreAftRed', 'iron.redEnd')}
      ${slider('athwartForce', 'µT')} ${either(bench, 'athwartRed', 'iron.redEnd')}
    </details>
    <details>
      <summary part="summary">${bench.t('iron.correctors.spheres')}</summary>
      ${slider('sphereDiameter', 'cm')} ${slider('sphereDistance', 'cm')} ${slider('sphereBearing', '°')}
    </details>
    <details>
      <summary part="summary">${bench.t('iron.correctors.flinders')}</summary>
      ${slider('flindersStrength', '')} ${either(bench, 'flindersPlace', 'iron.flinders.place')}
    </details>
    <details>
      <summary part="summary">${bench.t('iron.correctors.heeling')}</summary>
      ${slider('heelingForce', 'µT')} ${either(bench, 'heelingRed', 'iron.redEnd')}
    </details>
    <p class="row"><button part="button" type="button" @click=${() => bench.removeCorrectors()}>${bench.t('iron.correctors.remove')}</button></p>`;
}

export function voyagePanel(bench: BenchElement): TemplateResult {
  return html`${placeView(bench, 'there', bench.t('iron.place.there'))} ${dateView(bench, ['there'])}
    <p class="row"><button part="button" type="button" class="main" @click=${() => bench.sail()}>${bench.t('iron.voyage.sail')}</button></p>
    <p class="small soft">${bench.t('iron.voyage.lead')}</p>
    ${(['here', 'there'] as const).map((place) => html`<h3><bdi>${placeTitle(bench, place)}</bdi></h3>${fieldAt(bench, place)}`)}`;
}

export function separatePanel(bench: BenchElement): TemplateResult {
  const swung = (name: string): TemplateResult =>
    fieldView(bench, name, numberFields[name] as Field<number>, bench.number(name), {
      label: bench.t('iron.separate.observed', { name: name.slice(-1) }),
      placeholder: bench.shownCoefficient(name),
      echo: '°',
    });
  return html`<p class="small soft">${bench.t('iron.separate.lead')}</p>
    ${placeView(bench, 'here', bench.t('iron.place.first'))}
    <div class="pair">${swung('hereB')} ${swung('hereC')}</div>
    ${placeView(bench, 'there', bench.t('iron.place.second'))}
    <div class="pair">${swung('thereB')} ${swung('thereC')}</div>
    ${fieldView(bench, 'lambda', numberFields['lambda'] as Field<number>, bench.number('lambda'), {
      label: bench.t('iron.separate.lambda'),
      placeholder: bench.t('iron.separate.lambda.unknown'),
      echo: '',
    })}
    ${placeView(bench, 'third', bench.t('iron.place.third'))} ${dateView(bench, ['here', 'there', 'third'])}`;
}
