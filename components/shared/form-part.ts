/** What a widget answers a form with. */
export interface FormAnswer {
  /** Plain data, the same as the event's detail. */
  readonly data: unknown;
  /** Whether `required` is satisfied with it. */
  readonly complete: boolean;
}

interface Change {
  readonly before: unknown;
  readonly typed: unknown;
}

/** Chromium has the whole of it since 77, Firefox since 98; where it is missing a widget is no part of a form. */
function internalsOf(host: HTMLElement): ElementInternals | null {
  const { formAssociated } = host.constructor as { formAssociated?: boolean };
  if (!formAssociated || typeof host.attachInternals !== 'function') return null;
  const internals = host.attachInternals();
  return typeof internals.setFormValue === 'function' ? internals : null;
}

/**
 * A widget's part in the form around it: its answer as JSON text, whether one is missing, and
 * the way back to what the page had given.
 */
export class FormPart {
  readonly internals: ElementInternals | null;

  /** Whether a fieldset around the widget is disabled. */
  disabled = false;

  readonly #host: HTMLElement & Record<string, unknown>;
  readonly #changes = new Map<string, Change>();

  constructor(host: HTMLElement) {
    this.#host = host as HTMLElement & Record<string, unknown>;
    this.internals = internalsOf(host);
  }

  /** The user has changed a property; what stood there before the first change is the page's. */
  note(name: string, before: unknown, typed: unknown): void {
    const last = this.#changes.get(name);
    this.#changes.set(name, { before: last && last.typed === before ? last.before : before, typed });
  }

  /** Whether a text stands there because the user has typed it. */
  isTyped(name: string, text: unknown): boolean {
    return typeof text === 'string' && this.#changes.get(name)?.typed === text;
  }

  /** Gives back what the page had given for all that the user has changed; what it has set since stays. */
  reset(): void {
    for (const [name, { before, typed }] of this.#changes) if (this.#host[name] === typed) this.#host[name] = before;
    this.#changes.clear();
  }

  /** Hands the form the answer; without one nothing is submitted. The browser keeps what was typed while another page is shown. */
  tell(answer: FormAnswer | null, required: boolean, message: string, anchor: HTMLElement | undefined): void {
    // A list is kept as text, as an attribute would give it; what was emptied as an empty one.
    const kept = (value: unknown): string => (typeof value === 'object' && value ? JSON.stringify(value) : String(value ?? ''));
    const typed = [...this.#changes.keys()].map((name) => [name, kept(this.#host[name])]);
    this.internals?.setFormValue(answer && JSON.stringify(answer.data), JSON.stringify([whose(this.#host), ...typed]));
    this.internals?.setValidity({ valueMissing: required && !answer?.complete }, message, anchor);
  }
}

/** Tells a widget from the others of a page. */
const whose = (host: HTMLElement & { readonly name?: string }): string => `${host.localName} ${host.id} ${host.name}`;

/**
 * What was typed into a widget, by property, as the browser has kept it; nothing where it kept something else.
 * Firefox counts the widgets of a form, and where they are defined one after the other takes one for another.
 */
export function typedTexts(host: HTMLElement, kept: unknown): readonly (readonly [name: string, text: string])[] {
  try {
    const [of, ...typed] = JSON.parse(String(kept)) as [string, ...[string, string][]];
    return of === whose(host) ? typed : [];
  } catch {
    return [];
  }
}
