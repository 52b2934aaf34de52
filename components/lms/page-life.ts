export interface PageLife {
  /** The page is out of sight and may never be seen again: save. */
  readonly onHidden: () => void;
  /** The page is left, or its frame removed. */
  readonly onLeave: () => void;
}

/**
 * Follows a page to its end; returns how to stop. `unload` and `beforeunload` are not used:
 * browsers skip them, platforms forbid them, and they keep a page from being restored.
 */
export function followPage(view: Window, { onHidden, onLeave }: PageLife): () => void {
  const { document } = view;
  const hidden = (): void => {
    if (document.visibilityState === 'hidden') onHidden();
  };
  document.addEventListener('visibilitychange', hidden);
  view.addEventListener('pagehide', onLeave);
  return () => {
    document.removeEventListener('visibilitychange', hidden);
    view.removeEventListener('pagehide', onLeave);
  };
}
