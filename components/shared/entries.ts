type Entry = HTMLInputElement | HTMLTextAreaElement | HTMLSelectElement;

/**
 * Makes entries show what the widget says stands in them. Templates say it by `.defaultValue`, `.defaultChecked`
 * and `.defaultSelected`, which an entry no longer follows once the user has typed or chosen in it; so what a page
 * takes back, or a field does not take over, would stay to be seen. What is right already is not touched: the
 * cursor stays in its place, and a word half composed as it is. Files alone are the user's own.
 */
export class Entries {
  readonly #root: ParentNode;
  /** Those the user has been at: a grid has hundreds of others, that need not be asked at every key. */
  readonly #touched = new Set<Entry>();

  constructor(root: ParentNode) {
    this.#root = root;
    for (const kind of ['input', 'change']) root.addEventListener(kind, ({ target }) => this.#touch(target as Entry), true);
  }

  #touch(entry: Entry): void {
    this.#touched.add(entry);
    // One that is chosen puts out another, which is not told.
    if (entry.type === 'radio') for (const each of this.#root.querySelectorAll<HTMLInputElement>('[type=radio]')) this.#touched.add(each);
  }

  show(): void {
    for (const entry of this.#touched) {
      if (!entry.isConnected) this.#touched.delete(entry);
      else if (entry.localName === 'select') for (const option of (entry as HTMLSelectElement).options) if (option.defaultSelected) option.selected = true;
      if (entry.type === 'file' || !('defaultValue' in entry)) continue;
      if (entry.value !== entry.defaultValue) entry.value = entry.defaultValue;
      if ('checked' in entry && entry.checked !== entry.defaultChecked) entry.checked = entry.defaultChecked;
    }
  }
}
