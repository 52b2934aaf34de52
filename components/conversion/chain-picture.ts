import { html, nothing, svg } from 'lit';
import type { SVGTemplateResult, TemplateResult } from 'lit';
import type { ChainValues, Reckoning } from '../../core/sight/chain-steps.js';
import { formatBearing, formatError } from '../shared/figures.js';
import type { LubberElement } from '../shared/lubber-element.js';
import type { Conversion } from '../../core/sight/conversion.js';

/** From the gyro to the compass; without a gyro error the chain begins at true. */
const order: readonly Reckoning[] = ['gyro', 'true', 'magnetic', 'compass'];

interface Link {
  readonly letter: string;
  readonly error: number | null;
}

function linksOf({ gyroError, variation, deviation }: Conversion): readonly Link[] {
  return [
    { letter: 'gyroError', error: gyroError },
    { letter: 'variation', error: variation },
    { letter: 'deviation', error: deviation },
  ];
}

const shown = (value: number | null): string => (value === null ? '–' : formatBearing(value));

/** What is applied on the way: its letter, and the figure, which runs from left to right behind letters of any language. */
function linkText(host: LubberElement, link: Link | undefined): SVGTemplateResult {
  return svg`${host.t(`conversion.symbol.${link?.letter ?? ''}`)} <tspan>${link?.error === null ? '–' : formatError(link?.error ?? 0)}</tspan>`;
}

/** A station of the chain; the one the direction was given in is filled. */
function station(at: { x: number; y: number }, given: boolean): SVGTemplateResult {
  return svg`<circle cx=${at.x} cy=${at.y} r="5" fill=${given ? 'var(--accent)' : 'var(--paper)'} stroke="var(--accent)" stroke-width="2"></circle>`;
}

function across(host: LubberElement, values: ChainValues, stations: readonly Reckoning[], links: readonly Link[], from: Reckoning): TemplateResult {
  const gap = 300 / (stations.length - 1);
  return html`${stations.map((name, place) => {
    const x = 40 + place * gap;
    const link = links[place];
    return svg`${
      place < stations.length - 1
        ? svg`<line x1=${x} x2=${x + gap} y1="44" y2="44" stroke="var(--edge)" stroke-dasharray=${link?.error === null ? '2 4' : 'none'}></line>
            <text class="soft" x=${x + gap / 2} y="34" text-anchor="middle">${linkText(host, link)}</text>`
        : nothing
    }
      ${station({ x, y: 44 }, name === from)}
      <text class="soft" x=${x} y="20" text-anchor="middle">${host.t(`conversion.by.${name}`)}</text>
      <text class="value" x=${x} y="68" text-anchor="middle">${shown(values[name])}</text>`;
  })}`;
}

function down(host: LubberElement, values: ChainValues, stations: readonly Reckoning[], links: readonly Link[], from: Reckoning): TemplateResult {
  const gap = 52;
  return html`${stations.map((name, place) => {
    const y = 18 + place * gap;
    const link = links[place];
    return svg`${
      place < stations.length - 1
        ? svg`<line x1="20" x2="20" y1=${y} y2=${y + gap} stroke="var(--edge)" stroke-dasharray=${link?.error === null ? '2 4' : 'none'}></line>
            <text class="soft" x="36" y=${y + gap / 2 + 4}>${linkText(host, link)}</text>`
        : nothing
    }
      ${station({ x: 20, y }, name === from)}
      <text class="value" x="36" y=${y + 5}>${shown(values[name])}</text>
      <text class="soft" x="108" y=${y + 5}>${host.t(`conversion.by.${name}`)}</text>`;
  })}`;
}

/** The direction by each reckoning with what lies between, in the order of the chain. */
export function chainPicture(host: LubberElement, result: Conversion, summary: string): TemplateResult {
  const { values, from } = result;
  const withGyro = values.gyro !== null || from === 'gyro';
  const stations = withGyro ? order : order.slice(1);
  const links = withGyro ? linksOf(result) : linksOf(result).slice(1);
  return host.width.picture === 'narrow'
    ? html`<svg part="picture" viewBox="0 0 280 ${stations.length * 52 - 16}" role="img" aria-label=${summary} class="chain down">${down(host, values, stations, links, from)}</svg>`
    : html`<svg part="picture" viewBox="0 0 380 80" role="img" aria-label=${summary} class="chain">${across(host, values, stations, links, from)}</svg>`;
}
