import { LitElement } from 'lit';
import type { PropertyValues } from 'lit';
import { property } from 'lit/decorators.js';
import { FormPart } from './form-part.js';
import type { FormAnswer } from './form-part.js';

/** What a browser asks of an element that takes part in a form, as its own inputs do. */
export abstract class FormElement extends LitElement {
  static readonly formAssociated: boolean = true;

  /** Under which name a form is given the result: JSON text of the plain data that the event tells. */
  @property({ reflect: true }) name?: string;

  /** Whether a form may be sent only once there is a result. */
  @property({ type: Boolean, reflect: true }) required = false;

  /** Nothing can be changed, and no form is given anything; a disabled fieldset around does the same. */
  @property({ type: Boolean, reflect: true }) disabled = false;

  protected readonly formPart = new FormPart(this);

  constructor() {
    super();
    this.addEventListener('invalid', () => this.#takeFocus());
  }

  /** Firefox leads only to what can have the focus itself: for that moment a widget can, and hands it on. */
  #takeFocus(): void {
    if (this.hasAttribute('tabindex')) return;
    this.tabIndex = -1;
    const handOn = (): void => this.#missing()?.focus();
    const leave = (): void => {
      this.removeAttribute('tabindex');
      this.removeEventListener('focus', handOn);
      this.removeEventListener('focusout', leave);
    };
    this.addEventListener('focus', handOn);
    this.addEventListener('focusout', leave);
    // A page may only have asked whether all is well, and lead nowhere.
    setTimeout(() => this.matches(':focus-within') || leave());
  }

  /** The first field in which something is to be entered: empty, and nothing said to stand in for it. */
  #missing(): HTMLElement | undefined {
    const fields = [...this.renderRoot.querySelectorAll<HTMLInputElement>('input:read-write, select:enabled, textarea:read-write')];
    return fields.find(({ value, placeholder }) => !(value + placeholder)) ?? fields[0];
  }

  /** What the form is given; null where there is no result. */
  protected abstract formAnswer(): FormAnswer | null;

  /** What is said where a result is required and there is none. */
  protected abstract requiredText(): string;

  /** Whether nothing here can be changed. */
  get isDisabled(): boolean {
    return this.disabled || this.formPart.disabled;
  }

  /** The form the widget belongs to. */
  get form(): HTMLFormElement | null {
    return this.formPart.internals?.form ?? null;
  }

  get validity(): ValidityState | undefined {
    return this.formPart.internals?.validity;
  }

  get validationMessage(): string {
    return this.formPart.internals?.validationMessage ?? '';
  }

  checkValidity(): boolean {
    return this.formPart.internals?.checkValidity() ?? true;
  }

  reportValidity(): boolean {
    return this.formPart.internals?.reportValidity() ?? true;
  }

  formAssociatedCallback(): void {
    this.requestUpdate();
  }

  formDisabledCallback(disabled: boolean): void {
    this.formPart.disabled = disabled;
    this.requestUpdate();
  }

  /** The form goes back to what the page had given; nobody is told of a result. */
  formResetCallback(): void {
    this.formPart.reset();
    this.requestUpdate();
  }

  /** The browser brings back what was typed before another page was shown. */
  abstract formStateRestoreCallback(state: unknown): void;

  protected override updated(changed: PropertyValues<this>): void {
    super.updated(changed);
    // A result may be long: it is written out only where somebody wants it.
    if (changed.has('required') || this.required || this.form) this.formPart.tell(this.formAnswer(), this.required, this.requiredText(), this.#missing());
  }
}
