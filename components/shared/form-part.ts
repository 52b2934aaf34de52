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

  readonly #host: HTMLElement;
  readonly #changes = new Map<string, Change>();
  #told: string | null | undefined;

  constructor(host: HTMLElement) {
    this.#host = host;
    this.internals = internalsOf(host);
  }

  /** The user has changed a property; the first value before that is the page's. */
  note(name: string, before: unknown, typed: unknown): void {
    const standing = this.#standing(name, before);
    this.#changes.set(name, { before: standing ? standing.before : before, typed });
  }

  /** The user's change of a property, unless the page has set it since to what is found there. */
  #standing(name: string, found: unknown): Change | undefined {
    const change = this.#changes.get(name);
    return change && Object.is(found, change.typed) ? change : undefined;
  }

  #read(name: string): unknown {
    return (this.#host as unknown as Record<string, unknown>)[name];
  }

  /** Gives back what the page had given for all that the user has changed. */
  reset(): void {
    for (const name of this.#changes.keys()) {
      const change = this.#standing(name, this.#read(name));
      if (change) Object.assign(this.#host, { [name]: change.before });
    }
    this.#changes.clear();
  }

  /** What the user has typed, for the browser to keep while another page is shown. */
  #typed(): string {
    return JSON.stringify(Object.fromEntries([...this.#changes.keys()].map((name) => [name, this.#read(name)]).filter(([, value]) => typeof value === 'string')));
  }

  /** The texts kept, by property; none where the browser kept something else. */
  static texts(state: unknown): Readonly<Record<string, string>> {
    try {
      const kept: unknown = JSON.parse(String(state));
      return Object.fromEntries(Object.entries(kept ?? {}).filter(([, value]) => typeof value === 'string')) as Record<string, string>;
    } catch {
      return {};
    }
  }

  /** Hands the form the answer; without one nothing is submitted. */
  tell(answer: FormAnswer | null, required: boolean, message: string, anchor: HTMLElement | null): void {
    const value = answer ? JSON.stringify(answer.data) : null;
    const typed = this.#typed();
    const told = `${value} ${typed}`;
    if (told !== this.#told) this.internals?.setFormValue(value, typed);
    this.#told = told;
    if (!required || answer?.complete) this.internals?.setValidity({});
    else if (anchor) this.internals?.setValidity({ valueMissing: true }, message, anchor);
    else this.internals?.setValidity({ valueMissing: true }, message);
  }
}
