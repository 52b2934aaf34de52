import { html, nothing, svg } from 'lit';
import type { TemplateResult } from 'lit';
import { cosDegrees, sinDegrees } from '../../core/angle/trigonometry.js';

const SIZE = 270;
const CENTRE = SIZE / 2;
const OUTER = 108;
const INNER = 82;

const x = (direction: number, radius: number): number => CENTRE + radius * sinDegrees(direction);
const y = (direction: number, radius: number): number => CENTRE - radius * cosDegrees(direction);
const every = (step: number): readonly number[] => Array.from({ length: 360 / step }, (_, index) => index * step);

/** A ring of the rose, its zero turned to a direction: a tick every ten degrees, a long one every thirty. */
function ring(radius: number, turn: number): TemplateResult<2> {
  const ticks = every(10).map((mark) => {
    const length = mark % 90 === 0 ? 12 : mark % 30 === 0 ? 9 : 5;
    return `M${x(mark + turn, radius).toFixed(1)} ${y(mark + turn, radius).toFixed(1)}L${x(mark + turn, radius - length).toFixed(1)} ${y(mark + turn, radius - length).toFixed(1)}`;
  });
  return svg`<circle class="ring" cx=${CENTRE} cy=${CENTRE} r=${radius} fill="none"></circle><path class="ticks" d=${ticks.join('')}></path>`;
}

/** A needle from the centre, with a barb on one side: the old mark of magnetic north. */
function needle(direction: number, kind: string, barbed: boolean): TemplateResult<2> {
  const barb = barbed ? `L${x(direction - 7, INNER - 16)} ${y(direction - 7, INNER - 16)}L${x(direction, INNER - 16)} ${y(direction, INNER - 16)}` : '';
  return svg`<path class=${kind} d="M${CENTRE} ${CENTRE}L${x(direction, INNER)} ${y(direction, INNER)}${barb}"></path>`;
}

/** The angle from true to magnetic north, shaded. */
function wedge(variation: number): TemplateResult<2> | typeof nothing {
  if (Math.abs(variation) < 0.5) return nothing;
  const radius = INNER - 30;
  const far = Math.abs(variation) > 180 ? 1 : 0;
  return svg`<path class="wedge" d="M${CENTRE} ${CENTRE}V${CENTRE - radius}A${radius} ${radius} 0 ${far} ${variation > 0 ? 1 : 0} ${x(variation, radius)} ${y(variation, radius)}Z"></path>`;
}

/** A compass rose: the outer ring by true north, the inner by magnetic north of the model, the chart's north dashed. */
export function rosePicture(modelled: number | null, charted: number | null, summary: string): TemplateResult {
  const magnetic = modelled ?? charted;
  return html`<svg part="picture" viewBox="0 0 ${SIZE} ${SIZE}" role="img" aria-label=${summary} class="rose">
    ${ring(OUTER, 0)} ${magnetic === null ? nothing : html`${ring(INNER, magnetic)} ${wedge(magnetic)}`}
    <path class="true" d="M${CENTRE} ${CENTRE}V${CENTRE - OUTER}M${CENTRE - 4} ${CENTRE - OUTER + 12}L${CENTRE} ${CENTRE - OUTER}L${CENTRE + 4} ${CENTRE - OUTER + 12}"></path>
    ${modelled === null ? nothing : needle(modelled, 'magnetic', true)} ${charted === null ? nothing : needle(charted, 'chart', modelled === null)}
    ${every(90).map(
      (mark) => svg`<text class="soft" x=${x(mark, OUTER + 14)} y=${y(mark, OUTER + 12) + 4} text-anchor="middle">${String(mark).padStart(3, '0')}</text>`,
    )}
    <circle cx=${CENTRE} cy=${CENTRE} r="2.5" fill="var(--ink)"></circle>
  </svg>`;
}
