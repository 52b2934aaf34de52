import type { PropertyValues } from 'lit';
import { property } from 'lit/decorators.js';
import { translate } from './catalogue.js';
import { textsOf } from './catalogue-text.js';
import type { Catalogue, Values } from './catalogue.js';
import { isUnset, readField } from './field.js';
import type { Field, FieldInput, FieldState, StatesOf } from './field.js';
import { followed } from './entries.js';
import { FormElement } from './form-element.js';
import { typedTexts } from './form-part.js';
import { PageController } from './page-controller.js';
import { sharedMessages } from './shared-messages.js';
import type { Ship } from './ship-context.js';
import { ShipListener } from './ship-listener.js';
import { unknownWord } from './unknown-words.js';
import type { Choice } from './unknown-words.js';

/**
 * The fields of a widget: what the page has set, the user has typed or the ship around says, what
 * became of it, and what may not be changed. A field's property is its text.
 */
export abstract class FieldElement extends FormElement {
  readonly page = new PageController(this);

  readonly #around = new ShipListener(this);

  /** The ship around the widget, where there is one: position, time, variation and card. */
  get ship(): Ship | undefined {
    return this.#around.ship;
  }

  /** Names of fields the user may not change, parted by spaces. */
  @property() locked = '';

  /** Fields whose refusal is shown: those the user has left. */
  readonly #settled = new Set<string>();

  /** English of the widget itself; shared words come with every widget. */
  protected abstract readonly messages: Catalogue;

  /** The fields by the property each stands for. */
  protected abstract readonly fields: Readonly<Record<string, Field<unknown>>>;

  /** The words of each choice, by its property: what is none of them is told, and there is no answer. */
  protected readonly words: Readonly<Record<string, Choice>> = {};

  readonly #lastRead = new Map<string, { readonly field: unknown; readonly input: FieldInput; readonly words: string; readonly state: FieldState<unknown> }>();

  #showEntries?: () => void;

  /** Whether the user has changed something since the last update. */
  protected changedByUser = false;

  /** The text of a catalogue key in the page's language. */
  readonly t = (key: string, values?: Values): string =>
    translate(this.page.language, textsOf(this.messages)[key] === undefined ? sharedMessages : this.messages, key, values);

  /** What became of the field of a property. */
  protected read<T>(field: Field<T>, name: string, words = this.t('entry.words')): FieldState<T> {
    const input = this.input(name);
    const last = this.#lastRead.get(name);
    // Several views ask for the same field in one update; a date may have been changed within.
    if (last?.field === field && last.input === input && last.words === words && typeof input !== 'object') return last.state as FieldState<T>;
    const state = readField(field, input, words);
    this.#lastRead.set(name, { field, input, words, state });
    return state;
  }

  /** What became of each of several fields, by the names of their properties. */
  protected readAll<F extends Readonly<Record<string, Field<unknown>>>>(fields: F): StatesOf<F> {
    const words = this.t('entry.words');
    return Object.fromEntries(Object.entries(fields).map(([name, field]) => [name, this.read(field, name, words)])) as StatesOf<F>;
  }

  /** The property of a field as it stands; where it is not set, the ship's value. */
  protected input(name: string): FieldInput {
    const own = this.#own(name);
    return isUnset(own) && !this.formPart.isTyped(name, own) ? (this.ship?.values as Record<string, FieldInput> | undefined)?.[name] : own;
  }

  #own(name: string): FieldInput {
    return (this as unknown as Record<string, FieldInput>)[name];
  }

  /** What stands in a choice and is none of its words; empty where all is well. */
  unknownWord(name: string): string {
    return unknownWord(this.words[name], this.#own(name));
  }

  /** Such words of all choices as a page writes them, `compass="abc"`: while there is one nothing is worked out. */
  get unknownWords(): string[] {
    const { elementProperties } = this.constructor as typeof FieldElement;
    return Object.keys(this.words).flatMap((name) => {
      const attribute = elementProperties.get(name)?.attribute;
      const word = this.unknownWord(name);
      return word ? [`${typeof attribute === 'string' ? attribute : name}="${word}"`] : [];
    });
  }

  /** Whether a choice is not understood. */
  protected get hasUnknownWord(): boolean {
    return this.unknownWords.length > 0;
  }

  /** Whether the host has fixed a field; both spellings of a name are understood, and an instant is its date and time. */
  isLocked(name: string): boolean {
    if (this.isDisabled) return true;
    const kebab = name.replace(/[A-Z]/g, '-$&').toLowerCase();
    // A page may set a list, or take the names away: what is left then, `null`, is no field's.
    const locked = String(this.locked).split(/[\s,]+/);
    const whole = name === 'date' || name === 'time' ? 'instant' : name;
    return [name, kebab, whole].some((each) => locked.includes(each));
  }

  isSettled(name: string): boolean {
    return this.#settled.has(name);
  }

  /** The user has left a field: from now on what is wrong with it is said. */
  settle(name: string): void {
    // A field left empty goes back to what stands in for it; where nothing does, nothing has changed.
    if (this.#own(name) === '') {
      const changedBefore = this.changedByUser;
      this.change(name, undefined);
      if (isUnset(this.input(name))) this.changedByUser = changedBefore;
    }
    if (!this.#settled.has(name)) {
      this.#settled.add(name);
      this.#showSettled();
    }
  }

  /** The user has begun to type in a field that was in order: say nothing until it is left. */
  unsettle(name: string): void {
    if (this.#settled.delete(name)) this.#showSettled();
  }

  /** Named, so that a widget can tell it from a change of its figures. */
  #showSettled(): void {
    this.requestUpdate('settled', null);
  }

  /** Sets a property for the user; a result that follows from it is told to the page. */
  change(name: string, value: FieldInput): void {
    // The same again brings no update, and the next one may be the host's.
    const before = this.#own(name);
    if (before === value) return;
    (this as unknown as Record<string, FieldInput>)[name] = value;
    this.formPart.note(name, before, value);
    this.changedByUser = true;
  }

  /** The fields among the properties that have changed. */
  protected changedFields(changed: PropertyValues<this>): string[] {
    return Object.keys(this.fields).filter((name) => (changed as ReadonlyMap<PropertyKey, unknown>).has(name));
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    super.willUpdate(changed);
    // What the host set is no half-typed text: what is wrong with it is said at once.
    if (this.changedByUser) return;
    for (const name of this.changedFields(changed)) if (this.#own(name) !== undefined) this.#settled.add(name);
  }

  protected override update(changed: PropertyValues<this>): void {
    super.update(changed);
    (this.#showEntries ??= followed(this.renderRoot))();
  }

  override formResetCallback(): void {
    super.formResetCallback();
    this.#settled.clear();
  }

  override formStateRestoreCallback(state: unknown): void {
    // What the page has given is taken over first, or it would come over what was typed.
    if (!this.hasUpdated) this.performUpdate();
    for (const [name, text] of typedTexts(this, state)) {
      this.change(name, text);
      this.settle(name);
    }
    // The user did this on an earlier visit: it is not told again.
    this.changedByUser = false;
  }
}
