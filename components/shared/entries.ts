type Entry = HTMLInputElement & Partial<Pick<HTMLSelectElement, 'options'>>;

/**
 * Makes entries show what the widget says stands in them: returns what does so after each update. Templates say
 * it by `.defaultValue`, `.defaultChecked` and `.defaultSelected`, which an entry no longer follows once the user
 * has typed or chosen in it; so what a page takes back, or a field does not take over, would stay to be seen. What
 * is right already is not touched: the cursor stays in its place, and a word half composed as it is. Files alone
 * are the user's own.
 */
export function followed(root: ParentNode): () => void {
  // Those the user has been at: a grid has hundreds of others, that need not be asked at every key.
  const touched = new Set<Entry>();
  const touch = ({ target }: Event): void => {
    const entry = target as Entry;
    // What a page has put into a ship is the page's.
    if (entry.getRootNode() !== root) return;
    // One that is chosen puts out another, which is not told.
    for (const each of entry.type === 'radio' ? root.querySelectorAll<Entry>('[type=radio]') : [entry]) touched.add(each);
  };
  for (const kind of ['input', 'change']) root.addEventListener(kind, touch, true);
  return () => {
    for (const entry of touched) {
      if (!root.contains(entry)) touched.delete(entry);
      for (const option of entry.options ?? []) if (option.defaultSelected) option.selected = true;
      if (entry.options || entry.type === 'file') continue;
      if (entry.value !== entry.defaultValue) entry.value = entry.defaultValue;
      if (entry.checked !== entry.defaultChecked) entry.checked = entry.defaultChecked;
    }
  };
}
