import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { ChartRose } from '../../core/field/charted-variation.js';
import type { MagneticField } from '../../core/field/magnetic-field.js';
import { roseSteps } from '../../core/field/rose-steps.js';
import type { VariationReport } from '../../core/field/variation-report.js';
import { fieldSteps } from '../../core/iron/field-steps.js';
import { cautionsView, standingCautions } from '../shared/caution-view.js';
import { fieldElementsView, microtesla } from '../shared/field-elements-view.js';
import { formatAngle } from '../shared/figures.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { spokenError } from '../shared/spoken.js';
import { stepsView } from '../shared/working-view.js';
import { forcePicture } from './force-picture.js';
import { rosePicture } from './rose-picture.js';
import { isOfRose } from './variation-answer.js';

function roseInWords(host: LubberElement, { field, rose }: VariationReport): string {
  const modelled = field?.variation ?? null;
  const shown = modelled ?? rose?.charted ?? null;
  if (shown === null) return host.t('variation.rose.picture.none');
  const said = host.t('variation.rose.picture', { variation: spokenError(shown, host.t) });
  return modelled === null || !rose ? said : `${said} ${host.t('variation.rose.picture.chart', { variation: spokenError(rose.charted, host.t) })}`;
}

function forces(host: LubberElement, field: MagneticField): TemplateResult {
  const summary = host.t('variation.forces', {
    h: microtesla(field.h),
    z: microtesla(Math.abs(field.z)),
    way: host.t(`variation.forces.${field.z < 0 ? 'up' : 'down'}`),
    f: microtesla(field.f),
    dip: formatAngle(field.inclination),
  });
  return html`<figure>
    ${forcePicture(field, host.width.picture !== 'wide', { summary, level: host.t('variation.forces.level') })}
    <figcaption class="small soft">${host.t('variation.triangle')}</figcaption>
  </figure>`;
}

function pictures(host: LubberElement, report: VariationReport): TemplateResult {
  const modelled = report.field?.variation ?? null;
  const charted = report.rose?.charted ?? null;
  const key = modelled === null ? 'variation.key.chart' : charted === null ? 'variation.key.model' : 'variation.key';
  return html`<div class="pictures">
    <figure>
      ${rosePicture(modelled, charted, roseInWords(host, report))}
      <figcaption class="small soft">${host.t(key)}</figcaption>
    </figure>
    ${report.field ? forces(host, report.field) : nothing}
  </div>`;
}

function working(host: LubberElement, { field }: VariationReport, rose: ChartRose | undefined, instant: Date): TemplateResult | typeof nothing {
  if (host.working === 'none' || (!field && !rose)) return nothing;
  return html`<details part="working" ?open=${host.working === 'open'}>
    <summary part="summary">${host.t('working')}</summary>
    ${rose ? html`<h3>${host.t('variation.working.rose')}</h3>${stepsView(host, roseSteps(rose, instant), host.t('variation.working.rose'))}` : nothing}
    ${field ? html`<h3>${host.t('variation.working.field')}</h3>${stepsView(host, fieldSteps(field), host.t('variation.working.field'))}` : nothing}
  </details>`;
}

/** What stands below the answer: what to do about it, the rose and the forces drawn, every element, the working. */
export function explanationView(host: LubberElement, report: VariationReport, rose: ChartRose | undefined, instant: Date): TemplateResult {
  return html`${cautionsView(host, report.cautions.filter(isOfRose))}
    ${report.field || report.rose ? pictures(host, report) : nothing}
    ${report.field ? html`${fieldElementsView(host, report.field)}<p class="small soft">${host.t('earth.sigma.note')}</p>` : nothing}
    <div class="after">${working(host, report, rose, instant)}</div>
    ${standingCautions(host)}`;
}
