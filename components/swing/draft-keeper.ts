import type { ReactiveController } from 'lit';
import type { LubberElement } from '../shared/lubber-element.js';
import { dropDraft, isOfDraft, loadDraft, saveDraft } from './swing-draft.js';
import type { SwingDraft } from './swing-draft.js';

/** Keeps a swing under way on this device, after each change of the user's. */
export class DraftKeeper implements ReactiveController {
  readonly #widget: LubberElement & { readonly draft?: string | undefined };
  #touched = false;

  /** Another page has changed the same draft: of the two the later change is the one that is kept. */
  elsewhere = false;

  /** Whether this browser kept the last change; null before the first, and once cleared. */
  kept: boolean | null = null;

  constructor(widget: LubberElement & { readonly draft?: string | undefined }) {
    this.#widget = widget;
    widget.addController(this);
  }

  /** Heard from other pages only. */
  readonly #heard = (event: StorageEvent): void => {
    if (this.elsewhere || !this.#widget.draft || !isOfDraft(event, this.#widget.draft)) return;
    this.elsewhere = true;
    this.#widget.requestUpdate();
  };

  hostConnected(): void {
    window.addEventListener('storage', this.#heard);
  }

  hostDisconnected(): void {
    window.removeEventListener('storage', this.#heard);
  }

  /** The user has changed something. */
  touch(): void {
    this.#touched = true;
  }

  restore(key: string): SwingDraft | null {
    const draft = loadDraft(key);
    if (draft) this.kept = true;
    return draft;
  }

  /** Keeps what has changed since the last time. */
  keep(key: string | undefined, draft: () => SwingDraft): void {
    // An attribute taken away leaves null.
    if (!key || !this.#touched) return;
    this.#touched = false;
    const kept = saveDraft(key, draft());
    if (kept !== this.kept) this.#widget.requestUpdate();
    this.kept = kept;
  }

  drop(key: string | undefined): void {
    if (key) dropDraft(key);
    this.#touched = false;
    this.kept = null;
  }
}
