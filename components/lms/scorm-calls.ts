import type { ScormApi } from './find-api.js';
import type { Pair, ScormVersion } from './scorm-version.js';

/** The run-time's calls, made so that nothing it answers, and nothing it throws, reaches the lesson. */
export class ScormCalls {
  readonly #api: ScormApi;
  readonly #names: ScormVersion['calls'];

  constructor(api: ScormApi, { calls }: ScormVersion) {
    this.#api = api;
    this.#names = calls;
  }

  #call(name: keyof ScormVersion['calls'], ...values: string[]): unknown {
    try {
      return this.#api[this.#names[name]]?.(...values);
    } catch {
      return null;
    }
  }

  /** "true" by the standard; some answer a boolean. */
  #did(name: keyof ScormVersion['calls'], ...values: string[]): boolean {
    return String(this.#call(name, ...values)) === 'true';
  }

  /** A value; null where there is none to have. */
  get(element: string): string | null {
    const value = this.#call('get', element);
    if (value === null || value === undefined) return null;
    const error = String(this.#call('lastError') ?? '0');
    return error === '0' || error === '' ? String(value) : null;
  }

  set([element, value]: Pair): boolean {
    return this.#did('set', element, value);
  }

  initialize(): boolean {
    return this.#did('initialize', '');
  }

  commit(): boolean {
    return this.#did('commit', '');
  }

  finish(): boolean {
    return this.#did('finish', '');
  }
}
