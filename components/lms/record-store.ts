import { askPlatform } from './ask-platform.js';
import type { Cmi5Launch } from './cmi5-launch.js';

/** A statement as plain data. */
export type Statement = Readonly<Record<string, unknown>>;

/** How sending went: `again` may succeed later, `never` will not. */
export type Sent = 'taken' | 'again' | 'never';

/** Calls of the record store (xAPI 1.0.3, part three); none throws. */
export class RecordStore {
  readonly #launch: Cmi5Launch;
  readonly #headers: Readonly<Record<string, string>>;

  constructor(launch: Cmi5Launch, token: string) {
    this.#launch = launch;
    // cmi5 8.2.3: the token is Basic credentials as it stands. xAPI part three, 1.4.1: the version on every call.
    this.#headers = { Authorization: `Basic ${token}`, 'X-Experience-API-Version': '1.0.3' };
  }

  #address(resource: string, query: Readonly<Record<string, string>> = {}): string {
    const search = new URLSearchParams(query).toString();
    return `${this.#launch.endpoint}${resource}${search ? `?${search}` : ''}`;
  }

  #stateAddress(stateId: string): string {
    const { activityId, actor, registration } = this.#launch;
    return this.#address('activities/state', { activityId, agent: JSON.stringify(actor), registration, stateId });
  }

  async #read(address: string): Promise<unknown> {
    try {
      const response = await askPlatform(address, { headers: this.#headers, cache: 'no-store' });
      return response.ok ? ((await response.json()) as unknown) : null;
    } catch {
      return null;
    }
  }

  /** A document of this learner, lesson and registration; null where there is none to have. */
  readState(stateId: string): Promise<unknown> {
    return this.#read(this.#stateAddress(stateId));
  }

  /** The learner's wishes for language and sound; null where they have none. */
  readPreferences(): Promise<unknown> {
    return this.#read(this.#address('agents/profile', { agent: JSON.stringify(this.#launch.actor), profileId: 'cmi5LearnerPreferences' }));
  }

  writeState(stateId: string, document: unknown): Promise<Sent> {
    return this.#write(this.#stateAddress(stateId), 'PUT', document);
  }

  send(statements: readonly Statement[]): Promise<Sent> {
    return this.#write(this.#address('statements'), 'POST', statements);
  }

  /** `keepalive` lets a request outlive its page. */
  async #write(address: string, method: 'PUT' | 'POST', body: unknown): Promise<Sent> {
    try {
      const headers = { ...this.#headers, 'Content-Type': 'application/json' };
      const { ok, status } = await askPlatform(address, { method, headers, body: JSON.stringify(body), keepalive: true });
      if (ok) return 'taken';
      return status >= 500 || status === 429 || status === 408 ? 'again' : 'never';
    } catch {
      return 'again';
    }
  }
}
