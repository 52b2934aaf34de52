import { html } from 'lit';
import type { TemplateResult } from 'lit';
import type { MagneticField } from '../../core/field/magnetic-field.js';
import { placeCautions } from '../../core/field/variation-cautions.js';
import { cautionsView } from '../shared/caution-view.js';
import { fieldElementsView } from '../shared/field-elements-view.js';
import { formatAngle, formatError } from '../shared/figures.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { spokenError } from '../shared/spoken.js';
import type { MapPlace } from './map-view-names.js';

/** The variation as it is said; where there is none, that. */
function spoken(host: LubberElement, { variation }: MagneticField): string {
  return variation === null ? host.t('caution.dip-pole') : `${host.t('earth.variation')} ${spokenError(variation, host.t)}.`;
}

/** The variation at the place picked in one line, then every element and what is odd there. */
function view(host: LubberElement, { latitude, longitude, field }: MapPlace & { readonly field: MagneticField }): TemplateResult {
  const figure = field.variation === null ? host.t('earth.none') : formatError(field.variation);
  return html`<p class="answer" part="answer">
      <span class="spoken">${spoken(host, field)}</span>
      <span aria-hidden="true">
        <span class="name">${host.t('earth.variation')}</span> <bdi dir="ltr">${figure}</bdi
        ><small><bdi dir="ltr">±&nbsp;${formatAngle(field.uncertainty.variation ?? 180)}</bdi>, ${field.model}</small>
      </span>
    </p>
    ${cautionsView(host, placeCautions({ latitude, longitude }, field))}
    <div class="after">${fieldElementsView(host, field)}</div>`;
}

export const placeAnswer = { spoken, view };
