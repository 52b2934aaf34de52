import { RecordBook } from './record-book.js';

/** How long the name of a book must stand before another book is opened, milliseconds. */
const NAME_PATIENCE = 800;

/** The book a widget has open: of the name it has, once that is typed to its end. */
export class OpenBook {
  book: RecordBook | null = null;

  readonly #onChange: () => void;
  /** The name another book is to be opened by; null where the open one has the name. */
  #awaited: string | null = null;
  #patience: ReturnType<typeof setTimeout> | undefined;

  constructor(onChange: () => void) {
    this.#onChange = onChange;
  }

  /** Opens the book of a name: at once where none is open, else when the name stands; no book is opened for every letter of it. */
  called(name: string): void {
    if (!this.book) this.#open(name);
    // Told the same again, as at every tick of a ship's time, it goes on waiting.
    if (name === (this.#awaited ?? this.book?.name)) return;
    clearTimeout(this.#patience);
    this.#awaited = name === this.book?.name ? null : name;
    if (this.#awaited !== null) this.#patience = setTimeout(() => this.settle(), NAME_PATIENCE);
  }

  /** The book of the name as it stands now, for what is entered or asked for at this moment. */
  settle(): RecordBook | null {
    if (this.#awaited !== null) {
      this.#open(this.#awaited);
      this.#onChange();
    }
    return this.book;
  }

  #open(name: string): void {
    this.close();
    this.book = new RecordBook(name, this.#onChange);
  }

  close(): void {
    clearTimeout(this.#patience);
    this.#awaited = null;
    this.book?.close();
    this.book = null;
  }
}
