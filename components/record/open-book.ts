import { RecordBook } from './record-book.js';

/** How long the name of a book must stand before another book is opened, milliseconds. */
const NAME_PATIENCE = 800;

/** The book a widget has open: of the name it has, once that is typed to its end. */
export class OpenBook {
  book: RecordBook | null = null;

  readonly #onChange: () => void;
  #patience: ReturnType<typeof setTimeout> | undefined;

  constructor(onChange: () => void) {
    this.#onChange = onChange;
  }

  /** Opens the book of a name: at once where none is open, else when the name stands; no book is opened for every letter of it. */
  called(name: string): void {
    clearTimeout(this.#patience);
    if (!this.book) this.#open(name);
    else if (this.book.name !== name) {
      this.#patience = setTimeout(() => {
        this.#open(name);
        this.#onChange();
      }, NAME_PATIENCE);
    }
  }

  #open(name: string): void {
    this.book?.close();
    this.book = new RecordBook(name, this.#onChange);
  }

  close(): void {
    clearTimeout(this.#patience);
    this.book?.close();
    this.book = null;
  }
}
