import { html, nothing, svg } from 'lit';
import type { TemplateResult } from 'lit';
import { cosDegrees, sinDegrees } from '../../core/angle/trigonometry.js';
import type { Polarity, PolarityOfShip } from '../../core/iron/induced-polarity.js';
import type { LubberElement } from '../shared/lubber-element.js';

function letterOf(host: LubberElement, polarity: Polarity): string {
  return polarity ? host.t(`iron.letter.${polarity}`) : '';
}

/** The ship from above, magnetic north upwards, her ends in their colours. */
function plan(host: LubberElement, polarity: PolarityOfShip, heading: number): TemplateResult {
  const { keel, beam } = polarity;
  const ends: readonly (readonly [Polarity, number, number])[] = [
    [keel.bow, heading, 62],
    [keel.stern, heading + 180, 60],
    [beam.starboard, heading + 90, 32],
    [beam.port, heading + 270, 32],
  ];
  return svg`<g transform="translate(80 84)">
    <path d="M-66 18V-30M-70 -22L-66 -30L-62 -22" class="north" fill="none"></path>
    <text class="soft" x="-66" y="-36" text-anchor="middle">${host.t('iron.north')}</text>
    <g transform="rotate(${heading})">
      <path d="M0 -50 Q14 -34 16 -16 V40 Q0 46 -16 40 V-16 Q-14 -34 0 -50Z" class="hull"></path>
      <path d="M-15 -16Q-14 -34 0 -50Q14 -34 15 -16" class="piece ${keel.bow ?? 'plain'}"></path>
      <path d="M-15 30V40Q0 46 15 40V30" class="piece ${keel.stern ?? 'plain'}"></path>
      <path d="M16 -12V26" class="piece ${beam.starboard ?? 'plain'}"></path>
      <path d="M-16 -12V26" class="piece ${beam.port ?? 'plain'}"></path>
    </g>
    ${ends.map(([colour, bearing, away]) =>
      colour
        ? svg`<text x=${(sinDegrees(bearing) * away).toFixed(1)} y=${(-cosDegrees(bearing) * away + 5).toFixed(1)} text-anchor="middle" class="pole">${letterOf(host, colour)}</text>`
        : nothing,
    )}
  </g>`;
}

/** The ship from her side, bow to the right: mast and hull. */
function side(host: LubberElement, { mast, deck }: PolarityOfShip): TemplateResult {
  return svg`<g transform="translate(176 20)">
    <path d="M0 84H112Q120 82 126 76L112 116H10Q0 112 0 84Z" class="hull"></path>
    <path d="M20 84V62H46V84" class="hull"></path>
    <line x1="72" x2="72" y1="8" y2="46" class="piece ${mast.top ?? 'plain'}"></line>
    <line x1="72" x2="72" y1="46" y2="84" class="piece ${mast.foot ?? 'plain'}"></line>
    <path d="M2 85H112Q119 83 124 78" class="piece ${deck.upper ?? 'plain'}"></path>
    <path d="M11 115H111" class="piece ${deck.lower ?? 'plain'}"></path>
    <text x="80" y="16" class="pole">${letterOf(host, mast.top)}</text>
    <text x="80" y="78" class="pole">${letterOf(host, mast.foot)}</text>
    <text x="10" y="78" class="pole" text-anchor="end">${letterOf(host, deck.upper)}</text>
    <text x="60" y="133" class="pole" text-anchor="middle">${letterOf(host, deck.lower)}</text>
  </g>`;
}

/** What colour each end takes, in words: the picture's twin. */
function polarityText(host: LubberElement, { keel, beam, mast }: PolarityOfShip): string {
  const word = (polarity: Polarity): string => host.t(`iron.polarity.${polarity ?? 'none'}`);
  return host.t('iron.polarity', {
    bow: word(keel.bow),
    stern: word(keel.stern),
    starboard: word(beam.starboard),
    port: word(beam.port),
    top: word(mast.top),
    foot: word(mast.foot),
  });
}

export function polarityPicture(host: LubberElement, polarity: PolarityOfShip, heading: number, title: string): TemplateResult {
  const words = polarityText(host, polarity);
  return html`<figure>
    <svg part="picture" viewBox="0 0 310 164" role="img" aria-label="${title}: ${words}" class="polarity">
      ${plan(host, polarity, heading)}${side(host, polarity)}
    </svg>
    <figcaption class="small soft">${title}. ${words}</figcaption>
  </figure>`;
}
