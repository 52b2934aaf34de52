import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { Field, FieldState } from './field.js';
import { lockedMark } from './locked-mark.js';
import type { LubberElement } from './lubber-element.js';
import { sentences } from './sentences.js';

interface FieldViewOptions {
  readonly label: string;
  /** Shown while the field is empty: what then holds. */
  readonly placeholder?: string;
  readonly hint?: string;
  /** A button that fills the field, at the end of the label's line. */
  readonly action?: TemplateResult | undefined;
  /** Shown in place of the field's own echo. */
  readonly echo?: string;
}

function echoOf<T>(host: LubberElement, field: Field<T>, state: FieldState<T>): string {
  if (state.state !== 'value') return '';
  const shown = field.show(state.value) + (field.north ? ` ${host.t(`north.${field.north}`)}` : '');
  return state.assumed === undefined ? shown : shown + host.t('list.comma') + host.t('assumed', { what: state.assumed });
}

/** The refusal in words with what is accepted; empty while the user is still typing. */
function problemOf<T>(host: LubberElement, name: string, field: Field<T>, state: FieldState<T>): string {
  if (state.state !== 'refused' || !host.isSettled(name)) return '';
  return sentences(host.t, host.t(`refusal.${state.refusal}`), host.t(field.accepted));
}

function onKey<T>(host: LubberElement, name: string, field: Field<T>, state: FieldState<T>, event: KeyboardEvent): void {
  const direction = event.key === 'ArrowUp' ? 1 : event.key === 'ArrowDown' ? -1 : 0;
  if (direction === 0 || !field.step || state.state !== 'value' || host.isLocked(name) || event.altKey || event.ctrlKey || event.metaKey) return;
  event.preventDefault();
  host.change(name, field.write(field.step(state.value, direction)));
}

/**
 * One text field: label, what was typed, what was understood, and what is wrong with it,
 * all in the same shadow root so that assistive technology finds them together.
 */
export function fieldView<T>(host: LubberElement, name: string, field: Field<T>, state: FieldState<T>, options: FieldViewOptions): TemplateResult {
  const locked = host.isLocked(name);
  const problem = problemOf(host, name, field, state);
  const onInput = (event: Event): void => {
    if (state.state !== 'refused') host.unsettle(name);
    host.change(name, (event.target as HTMLInputElement).value);
  };
  return html`<div class="field ${options.action ? 'with-action' : ''}" part="field">
    <label part="label" for=${name}>${options.label}${lockedMark(host, name)}</label>
    <div class="entry">
      <input part="input"
        id=${name}
        type="text"
        dir="auto"
        inputmode=${field.inputMode ?? 'text'}
        autocomplete="off"
        autocapitalize="off"
        spellcheck="false"
        placeholder=${options.placeholder ?? ''}
        .defaultValue=${state.text}
        ?readonly=${locked}
        aria-invalid=${problem ? 'true' : 'false'}
        aria-describedby="${name}-echo ${name}-problem"
        @input=${onInput}
        @blur=${() => host.settle(name)}
        @keydown=${(event: KeyboardEvent) => onKey(host, name, field, state, event)}
      />
      <span class="echo" id="${name}-echo"><bdi dir="ltr">${options.echo ?? echoOf(host, field, state)}</bdi></span>
    </div>
    ${options.action ?? nothing}
    <p part="problem" class="problem" id="${name}-problem" ?hidden=${!problem}>${problem}</p>
    ${options.hint ? html`<p class="hint">${options.hint}</p>` : nothing}
  </div>`;
}
