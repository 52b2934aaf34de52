import { html } from 'lit';
import type { TemplateResult } from 'lit';
import { readsFromRight } from '../shared/reads-from-right.js';
import { views } from './bench-state.js';
import type { ViewName } from './bench-state.js';
import type { BenchElement } from './bench-element.js';

/** To the right is onwards, or back where the tabs stand from right to left. */
function target(key: string, index: number, mirrored: boolean): number | null {
  switch (key) {
    case mirrored ? 'ArrowLeft' : 'ArrowRight':
      return (index + 1) % views.length;
    case mirrored ? 'ArrowRight' : 'ArrowLeft':
      return (index + views.length - 1) % views.length;
    case 'Home':
      return 0;
    case 'End':
      return views.length - 1;
    default:
      return null;
  }
}

/** The benches' stations in the order of a lecture; one tab stop, arrow keys between them. */
export function tabsView(bench: BenchElement, chosen: ViewName): TemplateResult {
  const onKey = (event: KeyboardEvent, index: number): void => {
    const tab = event.currentTarget as HTMLElement;
    const to = target(event.key, index, readsFromRight(tab));
    const tabs = tab.parentElement?.children;
    if (to === null || !tabs || event.altKey || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    bench.change('view', views[to]);
    (tabs[to] as HTMLElement).focus();
  };
  return html`<div class="tabs no-print" role="tablist" aria-label=${bench.t('iron.views')}>
    ${views.map(
      (view, index) => html`<button part="button"
        type="button"
        role="tab"
        id="tab-${view}"
        aria-selected=${view === chosen ? 'true' : 'false'}
        aria-controls="panel"
        tabindex=${view === chosen ? 0 : -1}
        @click=${() => bench.change('view', view)}
        @keydown=${(event: KeyboardEvent) => onKey(event, index)}
      >
        ${bench.t(`iron.view.${view}`)}
      </button>`,
    )}
  </div>`;
}
