import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { AdjustedSwing, SwungCompass } from '../../core/swing/adjusted-swing.js';
import type { DeviationCard } from '../../core/deviation/deviation-card.js';
import type { Swing } from '../../core/swing/swing.js';
import { cautionsView, standingCautions } from '../shared/caution-view.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { signatureLines } from '../shared/signature-lines.js';
import { adviceView } from './advice-view.js';
import { changeView } from './change-view.js';
import { coefficientsView } from './coefficients-view.js';
import { curveView } from './curve-view.js';
import type { CurveBehind } from './curve-view.js';
import { inPageFigures } from './heading-lists.js';
import { judgeView } from './settings-view.js';
import type { SwingState } from './swing-state.js';

/** A swing to be shown, of one round and what both rounds came to. */
interface ShownResult {
  readonly state: SwingState;
  /** Of the round shown; null while nothing of it is worked out. */
  readonly result: (Swing & { readonly steering: Swing | null }) | null;
  /** What holds, and what was found. */
  readonly whole: AdjustedSwing | null;
  /** Hands the card of a compass to the ship, as that of the compass it was swung for. */
  useCard(compass: SwungCompass, as: SwungCompass): void;
}

/** The five terms are in use where the exact coefficients would serve better. */
const wantsExact = ({ model, fit }: Swing): boolean =>
  model === 'approximate' && fit.warnings.some(({ code }) => code === 'exact-fit-better' || code === 'beyond-approximate');

/** What may be done with a swing; only a card that holds can be taken into use. */
function nextSteps(host: LubberElement, result: Swing, compass: SwungCompass, holds: boolean, alone: boolean, useCard: ShownResult['useCard']): TemplateResult {
  const handed = holds && result.card && host.ship;
  const id = compass === 'standard' ? 'use-card' : 'use-steering-card';
  const label = host.t(compass === 'standard' ? 'swing.useCard' : 'swing.useCard.steering');
  return html`<p class="row no-print">
    ${wantsExact(result) && compass === 'standard' ? html`<button part="button" type="button" id="exact" @click=${() => host.change('model', 'exact')}>${host.t('swing.exact.offer')}</button>` : nothing}
    ${handed ? html`<button part="button" type="button" id=${id} @click=${() => useCard(compass, compass)}>${label}</button>` : nothing}
    ${handed && alone ? html`<button part="button" type="button" id="use-as-steering" @click=${() => useCard(compass, 'steering')}>${host.t('swing.useCard.asSteering')}</button>` : nothing}
  </p>`;
}

/** The curve behind this one: as found behind what is left, else the card in use until now. */
function behindOf(host: LubberElement, before: Swing | null, old: DeviationCard | null): CurveBehind | null {
  if (before) return before.card && { name: host.t('swing.stage.found'), card: before.card };
  return old && { name: host.t('swing.oldCard'), card: old };
}

/** What one compass came to: curve, cautions and coefficients. */
function compassView(host: LubberElement, shown: ShownResult, compass: SwungCompass, result: Swing): TemplateResult {
  const { state, whole, useCard } = shown;
  const found = state.two && state.stage === 'left' ? (whole?.found ?? null) : null;
  const before = compass === 'standard' ? found : (found?.steering ?? null);
  const held = compass === 'standard' ? whole : (whole?.steering ?? null);
  const holds = whole !== null && (!state.two || whole.stage === state.stage);
  const cautions = (holds ? held : result)?.cautions ?? [];
  // That it is beyond the limit is said with the answer.
  const ofCard = result.check?.cautions.filter(({ code }) => code !== 'beyond-limit') ?? [];
  const behind = behindOf(host, before, compass === 'standard' ? state.given.card : null);
  const name = host.t(state.two ? `swing.stage.${state.stage}` : 'swing.curve');
  return html`<div class="of-compass">
    ${state.steering ? html`<h3 class="compass">${host.t(`swing.compass.${compass}`)}</h3>` : nothing}
    ${curveView(host, result, { name, behind, limit: state.limit.largest, compass, paired: state.steering })} ${cautionsView(host, inPageFigures(host, [...cautions, ...ofCard]))}
    ${nextSteps(host, result, compass, holds, !state.steering, useCard)} ${before ? changeView(host, before, result) : nothing} ${coefficientsView(host, result)}
  </div>`;
}

/** What the readings came to: curve, cautions, coefficients, what they are judged by, advice. */
export function resultView(host: LubberElement, shown: ShownResult): TemplateResult {
  const { state, result } = shown;
  const open = host.answer === 'shown' && result?.rows.some(({ ok }) => ok) ? result : null;
  const steering = state.steering ? (open?.steering ?? null) : null;
  const titleOf = (compass: SwungCompass): string => (state.steering ? host.t(`swing.compass.${compass}`) : '');
  return html`<div class="of-compasses ${steering ? 'both' : ''}">${open ? compassView(host, shown, 'standard', open) : nothing} ${steering ? compassView(host, shown, 'steering', steering) : nothing}</div>
  ${judgeView(host, state)}
  ${open ? adviceView(host, open.advice, titleOf('standard')) : nothing} ${steering ? adviceView(host, steering.advice, titleOf('steering')) : nothing}
  <div class="ending">
    ${standingCautions(host)}
    <div class="paper-only">${signatureLines(host, ['card.sign.adjuster', 'card.place', 'card.sign.dated'])}</div>
  </div>`;
}
