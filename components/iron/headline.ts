import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { cautionsView } from '../shared/caution-view.js';
import { formatNumber } from '../shared/figures.js';
import { sentences } from '../shared/sentences.js';
import { spokenBearing, spokenError } from '../shared/spoken.js';
import type { Caution } from '../../core/working/caution.js';
import type { BenchElement } from './bench-element.js';
import type { BenchResult } from './bench-result.js';
import { curvePicture } from './curve-picture.js';
import { coefficientText, deviationText, headingText, microtesla } from './iron-words.js';
import { placeTitle } from './place-view.js';
import { sliderView } from './slider-view.js';

const letters = ['A', 'B', 'C', 'D', 'E'] as const;

function part(label: string, value: string): TemplateResult {
  return html`<div><dt>${label}</dt><dd><bdi dir="ltr">${value}</bdi></dd></div>`;
}

function answer(bench: BenchElement, { onHeading, needle }: BenchResult): TemplateResult {
  const { deviation, compassHeading } = onHeading;
  if (deviation === null) return html`<p class="answer lost" part="answer">${bench.t(`iron.lost.${onHeading.lost ?? 'no-directive-force'}`)}</p>`;
  const steers = bench.t('iron.answer.compass', { heading: headingText(compassHeading) });
  return html`<p class="answer" part="answer">
    <span class="spoken">${bench.t('iron.deviation')} ${spokenError(deviation, bench.t)}</span>
    <span aria-hidden="true"><span class="name">${bench.t('iron.deviation')}</span> <bdi dir="ltr">${deviationText(deviation)}</bdi><small>${steers}</small></span>
    ${needle.behaviour === 'directs' ? nothing : html`<small class="trouble">${bench.t(`iron.trouble.${needle.behaviour}`)}</small>`}
  </p>`;
}

/** The lines wanted in the picture. */
function shownParts(bench: BenchElement): Set<string> {
  return new Set(bench.text('parts').split(/[ ,+]+/));
}

function toggles(bench: BenchElement, shown: ReadonlySet<string>): TemplateResult {
  const toggle = (name: string, on: boolean): void => {
    const next = shownParts(bench);
    if (on) next.add(name);
    else next.delete(name);
    bench.change('parts', [...letters, 'split'].filter((each) => next.has(each)).join(' ') || 'none');
  };
  return html`<fieldset class="parts no-print">
    <legend class="legend">${bench.t('iron.parts')}</legend>
    ${[...letters, 'split'].map(
      (name) => html`<label class=${name}>
        <input part="input" type="checkbox" .defaultChecked=${shown.has(name)} @change=${(event: Event) => toggle(name, (event.target as HTMLInputElement).checked)} />
        ${bench.t(name === 'split' ? 'iron.parts.split' : `iron.part.${name}`)}
      </label>`,
    )}
  </fieldset>`;
}

/** The deviation on the heading, the five coefficients, the curve, and the heading to turn her with. */
export function headlineView(
  bench: BenchElement,
  result: BenchResult,
  beside: { readonly curve: BenchResult['curve']; readonly label: string } | null,
  cautions: readonly Caution[],
): TemplateResult {
  const { approximate, exact, field, onHeading, worst } = result;
  const shown = shownParts(bench);
  const summary = worst
    ? bench.t('iron.curve.summary', {
        deviation: spokenError(worst.deviation ?? 0, bench.t),
        heading: spokenBearing(worst.compassHeading ?? 0, bench.t),
      })
    : bench.t('iron.curve.none');
  const where = bench.t('iron.curve.where', { place: placeTitle(bench, 'here'), h: microtesla(field.h), z: microtesla(field.z) });
  return html`${answer(bench, result)}
    <dl class="split" part="split">
      ${letters.map((name) => part(name, coefficientText(approximate?.[name])))} ${part('λ', formatNumber(exact.lambda, 3))}
      ${field.h === 0 ? nothing : part(bench.t('iron.directive.here'), `${Math.round((100 * onHeading.directiveForce) / field.h)} %`)}
    </dl>
    ${curvePicture({
      curve: result.curve,
      largest: result.largest,
      beside: beside?.curve ?? null,
      shown,
      compassHeading: onHeading.compassHeading,
      deviation: onHeading.deviation,
      summary,
      width: bench.picture.units,
      east: bench.t('iron.east'),
      west: bench.t('iron.west'),
    })}
    <p class="small soft legend-line">${sentences(bench.t, where, summary)}${beside ? html`${bench.t('list.gap')}<span class="dashed">${beside.label}</span>` : nothing}</p>
    ${cautionsView(bench, cautions)} ${sliderView(bench, 'heading', { label: bench.t('iron.heading'), unit: 'M' })} ${toggles(bench, shown)}`;
}
