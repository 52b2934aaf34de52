/* Fills the invented ship's book once, each entry written when it was observed; then leaves it to the reader. */
(async () => {
  const { card, now, drafts } = globalThis.halcyonMonth;
  const book = document.querySelector('lubber-record');
  book.card = card;
  book.now = now;
  await book.whole;
  if (book.entries.length > 0) return;
  for (const draft of drafts) {
    book.now = draft.instant;
    await book.appendEntry(draft);
  }
  book.now = now;
})();
