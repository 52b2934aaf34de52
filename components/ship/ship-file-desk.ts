import type { LubberElement } from '../shared/lubber-element.js';
import { MOST_CHARACTERS, readShipFile } from './ship-file.js';
import type { ShipFile } from './ship-file.js';

/** The ship as text: written, typed or opened from a file, and taken over. */
export class ShipFileDesk {
  text = '';
  problem = '';

  readonly #host: LubberElement;
  readonly #take: (file: ShipFile) => void;

  constructor(host: LubberElement, take: (file: ShipFile) => void) {
    this.#host = host;
    this.#take = take;
  }

  /** Shows a text; what was wrong with another says nothing of it. */
  show(text: string, problem = ''): void {
    this.text = text;
    this.problem = problem;
    this.#host.requestUpdate();
  }

  /** Takes the text over, all of it or, with the reason, nothing. */
  read(): void {
    const host = this.#host;
    const reading = readShipFile(this.text);
    this.show(this.text, reading.ok ? '' : host.t(`ship.file.${reading.reason}`, { where: reading.where }));
    if (!reading.ok) return;
    this.#take(reading.file);
    host.say(host.t('ship.file.taken'));
  }

  async open(file: File): Promise<void> {
    const host = this.#host;
    if (file.size > MOST_CHARACTERS) return this.show(this.text, host.t('ship.file.too-long'));
    try {
      this.text = await file.text();
    } catch {
      // A file may be gone by the time it is read.
      return this.show(this.text, host.t('ship.file.unreadable'));
    }
    this.read();
  }
}
