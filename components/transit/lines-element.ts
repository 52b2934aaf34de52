import type { PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
import { isUnset, textOf } from '../shared/field.js';
import type { FieldInput, FieldState } from '../shared/field.js';
import { SightElement } from '../shared/sight-element.js';
import { markFields, markNameField, partName, partNamed } from './mark-fields.js';
import { givenMarks, noMark, partsOf } from './mark-texts.js';
import type { MarkPart, MarkTexts } from './mark-texts.js';

/**
 * The list of lines ashore: taken over from the host, then the user's. A part of a line is no
 * property of the element, but is read, changed, locked and left as the field of one is.
 */
export abstract class LinesElement extends SightElement {
  /** True bearing of the first line as charted, degrees. */
  @property() charted?: string | number;

  /** Bearing of the first line by the compass, degrees. */
  @property() bearing?: string | number;

  /**
   * Several lines: an array, or JSON, of `kind` (`charted`, `two-marks`, `one-mark`), `name`, `bearing`,
   * `charted`, `frontLatitude`, `frontLongitude`, `rearLatitude`, `rearLongitude`.
   */
  @property() marks?: string | readonly Partial<MarkTexts>[];

  /** The lines as they stand. */
  @state() protected lines: readonly MarkTexts[] = [noMark];

  /** A part of a line is no property of the element: it stands in the list of lines. */
  override change(name: string, value: FieldInput): void {
    // The whole list, as the browser has kept it for the form.
    if (name === 'lines') {
      this.#setLines(givenMarks(value));
      this.#settleAll();
      return;
    }
    const named = partNamed(name);
    if (!named) {
      super.change(name, value);
      return;
    }
    const text = value === undefined || value === null ? '' : String(value);
    this.#setLines(this.lines.map((mark, index) => (index === named.index ? { ...mark, [named.part]: text } : mark)));
  }

  #setLines(lines: readonly MarkTexts[]): void {
    // A list is no field's value, but it is changed by the user as one is.
    super.change('lines', lines as unknown as FieldInput);
  }

  protected override input(name: string): FieldInput {
    const named = partNamed(name);
    return named ? this.lines[named.index]?.[named.part as keyof MarkTexts] : super.input(name);
  }

  override isLocked(name: string): boolean {
    const part = partNamed(name)?.part;
    return super.isLocked(name) || (part !== undefined && (super.isLocked(part) || super.isLocked('marks')));
  }

  override settle(name: string): void {
    // An empty part of a line has nothing that stands in for it.
    if (!partNamed(name) || this.input(name) !== '') super.settle(name);
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    this.#takeOver(changed);
    super.willUpdate(changed);
  }

  /** What the host set of the lines goes into the list; what is wrong with it is said at once. */
  #takeOver(changed: PropertyValues<this>): void {
    const before = this.lines;
    if (changed.has('marks') && this.marks) {
      const given = givenMarks(this.marks);
      if (given.length > 0) this.lines = given;
    }
    for (const part of ['charted', 'bearing'] as const) {
      if (!changed.has(part)) continue;
      const text = textOf(markFields[part], this[part]);
      // Taken away it goes, unless the user has typed something else.
      const before = textOf(markFields[part], changed.get(part) as FieldInput);
      if (isUnset(this[part]) && this.lines[0]?.[part] !== before) continue;
      this.lines = this.lines.map((mark, index) => (index === 0 ? { ...mark, [part]: text } : mark));
    }
    if (this.lines !== before) this.#settleAll();
  }

  /** What is wrong with any part of a line is said: it was set by the host, or has come to another place in the list. */
  #settleAll(): void {
    this.lines.forEach((mark, index) => Object.keys(mark).forEach((part) => this.settle(partName(part, index))));
  }

  protected markPart(part: MarkPart, index: number): FieldState<number> {
    return this.read(markFields[part], partName(part, index));
  }

  protected nameOf(index: number): FieldState<string> {
    return this.read(markNameField, partName('name', index));
  }

  #focusLater(selector: string): void {
    void this.updateComplete.then(() => this.renderRoot.querySelector<HTMLElement>(selector)?.focus());
  }

  protected addLine(): void {
    const kind = this.lines[this.lines.length - 1]?.kind ?? 'charted';
    this.#setLines([...this.lines, { ...noMark, kind }]);
    this.#focusLater(`#${partName(partsOf[kind][0] ?? 'bearing', this.lines.length - 1)}`);
  }

  protected removeLine(index: number): void {
    this.#setLines(this.lines.filter((_, at) => at !== index));
    this.#settleAll();
    this.say(this.t('transit.removed', { number: index + 1 }));
    // The button that was pressed is gone; the way on begins at the next one.
    this.#focusLater('#add-line');
  }
}
