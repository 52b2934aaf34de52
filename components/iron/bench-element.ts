import { property, state } from 'lit/decorators.js';
import type { CivilDate } from '../../core/time/parse-date.js';
import { isUnset, textOf, valueOf } from '../shared/field.js';
import type { Field, FieldInput, FieldState } from '../shared/field.js';
import { LubberElement } from '../shared/lubber-element.js';
import { inOwnFigures } from '../shared/own-figures.js';
import { benchFields, numberFields } from './bench-fields.js';
import { signedNumber } from './iron-words.js';
import { nextFrame } from './next-frame.js';
import { PictureWidth } from './picture-width.js';
import { placeFieldName } from './place-names.js';
import type { PlacePart } from './place-names.js';
import { placeChanges, placeOfChoice, placeTitle } from './place-view.js';
import { permanentOfSlip } from './slip.js';
import { beginning, choices, readState, stateNames, stateText } from './bench-state.js';
import type { BenchState } from './bench-state.js';
import { openingPreset, presets } from './presets.js';
import type { PresetName } from './presets.js';

/** The fields that are attributes of their own, as in the other widgets. */
const own = ['latitude', 'longitude', 'date', 'heading', 'heel'] as const;

/**
 * Where everything set on the bench is kept: the text of each field by its name, so that the
 * whole bench can be put into a link and nothing typed is lost.
 */
export abstract class BenchElement extends LubberElement {
  /** Where she is: degrees, north positive, or text such as `43-30S`. */
  @property() latitude?: string | number;

  /** Degrees, east positive, or text such as `149-00E`. */
  @property() longitude?: string | number;

  /** The day for the magnetic model, 2015-01-01 to 2030-01-01. */
  @property() date?: string;

  /** Magnetic heading the readings are for, degrees. */
  @property() heading?: string | number;

  /** Degrees, starboard side down positive. */
  @property() heel?: string | number;

  @state() private entries: BenchState = { ...presets[openingPreset], view: 'iron' };

  /**
   * All that is set, by name: plain data, its JSON, or the text of a link (`c=0.08&P=2`).
   * Setting it puts everything it does not name back to the beginning, but for the
   * attributes the widget has of its own. What is no state is ignored.
   */
  @property()
  get state(): BenchState {
    const set: Record<string, string> = {};
    for (const name of stateNames) {
      const text = this.text(name);
      if (text !== (beginning[name] ?? '')) set[name] = text;
    }
    return set;
  }

  set state(input: BenchState | string | null | undefined) {
    const read = readState(input);
    if (!read) return;
    this.entries = Object.fromEntries(Object.entries(read).filter(([, value]) => value !== ''));
    // What the host set is no half-typed text: what is wrong with it is said at once.
    for (const name of Object.keys(this.entries)) this.settle(name);
    for (const name of own) if (read[name] !== undefined) (this as Record<string, unknown>)[name] = read[name];
  }

  /** The state as the text of a link. */
  get stateText(): string {
    return stateText(this.state);
  }

  protected readonly fields = benchFields as Readonly<Record<string, Field<unknown>>>;

  protected override input(name: string): FieldInput {
    // A ship around the bench shares her head by compass; the bench turns her by the magnetic.
    const shared = name === 'heading' ? (isUnset(this.heading) ? undefined : this.heading) : super.input(name);
    return shared ?? this.entries[name] ?? beginning[name];
  }

  /** What stands in a field, or was chosen. */
  text(name: string): string {
    const field = this.fields[name];
    const text = field ? textOf(field, this.input(name)) : String(this.input(name) ?? '');
    const allowed = choices[name];
    return allowed && !allowed.includes(text) ? (allowed[0] ?? '') : text;
  }

  number(name: string): FieldState<number> {
    return this.read(numberFields[name] as Field<number>, name);
  }

  /** The number in a field; undefined where there is none. */
  value(name: string): number | undefined {
    return valueOf(this.number(name));
  }

  day(): FieldState<CivilDate> {
    return this.read(benchFields.date, 'date');
  }

  readonly picture = new PictureWidth(this);

  readonly dateField = benchFields.date;

  /** Whether what happens now comes of a slider in motion: then one drawing a frame is enough. */
  #sliding = false;

  /** Sets a field from its slider. */
  slide(name: string, value: number): void {
    this.#sliding = true;
    this.change(name, (numberFields[name] as Field<number>).write(value));
  }

  protected override async scheduleUpdate(): Promise<void> {
    if (this.#sliding) await nextFrame();
    this.#sliding = false;
    super.scheduleUpdate();
  }

  override change(name: string, value: FieldInput): void {
    const place = placeOfChoice(name);
    if (place) return this.take(placeChanges(place, String(value)));
    if ((own as readonly string[]).includes(name)) return super.change(name, value);
    // All of them, as the browser has kept them for the form.
    if (name === 'entries') return this.#takeKept(String(value));
    const entries: Record<string, string | number> = { ...this.entries };
    if (value === undefined || value === null) delete entries[name];
    else entries[name] = typeof value === 'number' ? value : String(value);
    super.change('entries', entries as unknown as FieldInput);
  }

  #takeKept(text: string): void {
    const kept = readState(text);
    if (!kept) return;
    super.change('entries', kept as unknown as FieldInput);
    for (const name of Object.keys(kept)) this.settle(name);
  }

  override settle(name: string): void {
    if (this.entries[name] === '') this.change(name, undefined);
    super.settle(name);
  }

  /** Sets several fields for the user, but for those the host has locked. */
  take(changes: Readonly<Record<string, string | number | undefined>>): void {
    for (const [name, value] of Object.entries(changes)) if (!this.isLocked(name)) this.change(name, value);
  }

  /** What the ship on the bench shows at a place for a coefficient a swing may have found: `hereB`. */
  abstract shownCoefficient(name: string): string;

  /** Whether the slip does not yet tell what it left in her iron. */
  get slipUnknown(): boolean {
    return permanentOfSlip(this) === null;
  }

  /** Lays her down on the slip: P, Q and R become what it leaves in her. */
  build(): void {
    const permanent = permanentOfSlip(this);
    if (!permanent) return;
    this.take({ ...permanent });
    inOwnFigures(this);
    this.say(this.t('iron.slip.built', { P: signedNumber(permanent.P, 1), Q: signedNumber(permanent.Q, 1), R: signedNumber(permanent.R, 1) }));
  }

  /** Changes the place she is at for the one she is taken to; the way back stays open. */
  sail(): void {
    const parts: readonly PlacePart[] = ['source', 'latitude', 'longitude', 'horizontal', 'vertical', 'dip'];
    const [from, to] = (['here', 'there'] as const).map((place) => parts.map((part) => this.text(placeFieldName(place, part)))) as [string[], string[]];
    parts.forEach((part, index) => {
      this.take({ [placeFieldName('here', part)]: to[index], [placeFieldName('there', part)]: from[index] });
    });
    this.say(this.t('iron.voyage.sailed', { place: placeTitle(this, 'here') }));
  }

  removeCorrectors(): void {
    this.take(Object.fromEntries(['foreAftForce', 'athwartForce', 'heelingForce', 'sphereDiameter', 'flindersStrength'].map((name) => [name, '0'])));
  }

  /** Puts a ship of the scenario on the bench; what the preset does not name goes back to its beginning. */
  takePreset(name: PresetName): void {
    const kept = ['date', 'view', 'parts'];
    const all = stateNames.filter((each) => !kept.includes(each));
    this.take(Object.fromEntries(all.map((each) => [each, presets[name][each]])));
    this.say(this.t('iron.preset.taken', { name: this.t(`iron.preset.${name}`) }));
  }
}
