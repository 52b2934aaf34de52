import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { BearingSeries, NoSeries, ReducedShot } from '../../core/sight/bearing-series.js';
import { formatTimeOfDay } from '../../core/time/instant.js';
import { formatAngle, formatBearing, formatError } from '../shared/figures.js';
import { lockedMark } from '../shared/locked-mark.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { sentences } from '../shared/sentences.js';
import type { LineProblem } from './series-text.js';

function problemText(host: LubberElement, { line, part, refusal }: LineProblem): string {
  return host.t(`azimuth.series.line.${part}`, { line, refusal: host.t(`refusal.${refusal}`) });
}

/** The box the series is typed or pasted into, with what is wrong with any line of it. */
export function seriesField(host: LubberElement, text: string, problems: readonly LineProblem[]): TemplateResult {
  const said = problems.map((problem) => problemText(host, problem));
  return html`<div class="field" part="field">
    <label for="series">${host.t('azimuth.series.label')}${lockedMark(host, 'series')}</label>
    <textarea part="input"
      id="series"
      rows="5"
      dir="ltr"
      spellcheck="false"
      autocomplete="off"
      placeholder=${host.t('azimuth.series.example')}
      aria-invalid=${said.length > 0 ? 'true' : 'false'}
      aria-describedby="series-hint series-problem"
      ?readonly=${host.isLocked('series')}
      .defaultValue=${text}
      @input=${(event: Event) => host.change('series', (event.target as HTMLTextAreaElement).value)}
    ></textarea>
    <p class="problem" id="series-problem" ?hidden=${said.length === 0}>${sentences(host.t, ...said)}</p>
    <p class="hint" id="series-hint">${host.t('azimuth.series.hint')}</p>
  </div>`;
}

const counts = (host: LubberElement, { struck }: ReducedShot): string => host.t(struck ? `azimuth.series.struck.${struck}` : 'azimuth.series.yes');

/** Each bearing reduced to its own error; one that is struck stays, with its reason. */
export function seriesTable(host: LubberElement, series: BearingSeries | NoSeries): TemplateResult {
  // Where there is little room, what was typed and what the picture shows is left out.
  const wide = host.width.picture === 'wide';
  return html`<div class="scroll" role="group" aria-label=${host.t('azimuth.series')}>
      <table part="table" class="series">
        <thead>
          <tr>
            <th scope="col">${host.t('azimuth.series.time')}</th>
            <th scope="col" class="figure">${host.t('azimuth.series.bearing')}</th>
            ${wide ? html`<th scope="col" class="figure">${host.t('azimuth.series.head')}</th>` : nothing}
            <th scope="col" class="figure">${host.t('azimuth.series.error')}</th>
            ${wide ? html`<th scope="col" class="figure">${host.t('azimuth.series.residual')}</th>` : nothing}
            <th scope="col">${host.t('azimuth.series.counts')}</th>
          </tr>
        </thead>
        <tbody>
          ${series.shots.map(
            (shot) => html`<tr class=${shot.struck ? 'struck' : ''}>
              <td>${formatTimeOfDay(shot.instant)}</td>
              <td class="figure">${formatBearing(shot.compassBearing)}</td>
              ${wide ? html`<td class="figure">${shot.heading === undefined ? '–' : formatBearing(shot.heading)}</td>` : nothing}
              <td class="figure">${shot.error === null ? '–' : formatError(shot.error)}</td>
              ${wide ? html`<td class="figure">${shot.residual === null ? '–' : formatError(shot.residual)}</td>` : nothing}
              <td>${counts(host, shot)}</td>
            </tr>`,
          )}
        </tbody>
      </table>
    </div>
    ${'kept' in series
      ? html`<p class="small soft">
          ${host.t('azimuth.series.mean', {
            kept: series.kept,
            all: series.shots.length,
            scatter: formatAngle(series.scatter, 2),
            error: formatAngle(series.standardError, 2),
          })}
        </p>`
      : nothing}`;
}
