import { html, nothing, svg } from 'lit';
import type { TemplateResult } from 'lit';
import type { Polarity, PolarityOfShip } from '../../core/iron/induced-polarity.js';
import type { IronParameterName } from '../../core/iron/iron-parameters.js';
import { compassIn, rodShapes } from './rod-shape.js';
import type { RodEnd, RodView } from './rod-shape.js';

const outlines: Readonly<Record<RodView, string>> = {
  plan: 'M6 5 Q4 26 6 47 H54 Q71 42 80 26 Q71 10 54 5 Z',
  side: 'M6 28 H76 Q80 27 82 24 L74 44 H10 Q6 42 6 28 Z M30 28 V22 H46 V28',
  astern: 'M14 28 H70 L66 40 Q62 47 52 47 H32 Q22 47 18 40 Z M34 28 V22 H50 V28',
};

function colourOf(end: RodEnd, polarity: PolarityOfShip | null): Polarity {
  switch (end) {
    case 'red':
    case 'blue':
      return end;
    case 'bow':
    case 'stern':
      return polarity?.keel[end] ?? null;
    case 'port':
    case 'starboard':
      return polarity?.beam[end] ?? null;
    case 'top':
    case 'foot':
      return polarity?.mast[end] ?? null;
  }
}

/**
 * The rod of a parameter in its ship, as this field and heading colour it; a value of 0 is a
 * faint line where a rod above 0 would be. The name stands beside it, so it is hidden from speech.
 */
export function rodPicture(name: IronParameterName, value: number, polarity: PolarityOfShip | null, letters: { red: string; blue: string }): TemplateResult {
  const [above, below] = rodShapes[name];
  const { view, from, to, ends } = value < 0 ? below : above;
  const middle = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2] as const;
  const [cx, cy] = compassIn[view];
  const half = (end: readonly [number, number], which: RodEnd): TemplateResult => {
    const colour = value === 0 ? null : colourOf(which, polarity);
    const [dx, dy] = [Math.sign(end[0] - middle[0]), Math.sign(end[1] - middle[1])];
    const [x, y] = dx === 0 ? [end[0] + 7, end[1] + (dy < 0 ? 8 : 1)] : [end[0] - dx * 3, end[1] - 4];
    return svg`<line x1=${middle[0]} y1=${middle[1]} x2=${end[0]} y2=${end[1]} class="rod ${colour ?? 'plain'} ${value === 0 ? 'none' : ''}"></line>
      ${colour ? svg`<text x=${x} y=${y} text-anchor="middle">${letters[colour]}</text>` : nothing}`;
  };
  return html`<svg viewBox="0 0 84 52" class="rod-picture" aria-hidden="true">
    <path d=${outlines[view]} class="hull"></path>
    ${half(from, ends[0])}${half(to, ends[1])}
    <circle cx=${cx} cy=${cy} r="3.6" class="compass"></circle>
  </svg>`;
}
