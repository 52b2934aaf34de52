/** A file name that every system takes: `halcyon-tern-standard-124.json`. */
export function fileName(book: string, count: number, ending: string): string {
  const plain = book.toLowerCase().replace(/[^\p{L}\d]+/gu, '-').replace(/^-+|-+$/g, '').slice(0, 60) || 'record';
  return `${plain}-${count}.${ending}`;
}

/** Hands a text to the browser to save. Whether the user then keeps it nobody tells the page. */
export function saveFile(name: string, text: string, type: string): void {
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // At once would be too soon for some browsers.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
