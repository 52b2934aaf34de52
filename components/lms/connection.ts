/** How a lesson stands with the learning platform. */
export type LmsStatus =
  /** There is none: the lesson works, nothing is reported. */
  | 'none'
  /** It is being asked. */
  | 'opening'
  /** Results are reported. */
  | 'open'
  /** Opened to look at only: the platform wants no results. */
  | 'review'
  /** It would not open a session. */
  | 'refused'
  /** The last report was not taken; the next one carries everything again. */
  | 'trouble'
  /** Reported to the end; the platform must open the lesson anew. */
  | 'finished';

export type LmsKind = 'scorm-1.2' | 'scorm-2004' | 'cmi5';

export interface LmsOptions {
  /** The window of the lesson; the page's own where it is left out. */
  readonly window?: Window;
  /** Told at once how it stands, and at every change. */
  readonly onStatus?: (status: LmsStatus) => void;
}

/** A lesson tied to a platform. Nothing it does throws: the lesson goes on whatever the platform answers. */
export interface LmsConnection {
  readonly kind: LmsKind | null;
  readonly status: LmsStatus;
  /** Settled when the platform has answered or failed to; never rejected. */
  readonly ready: Promise<void>;
  /** Where the platform wants the learner sent afterwards; null where it does not say. */
  readonly returnAddress: string | null;
  /** Ends the session, once; leaving the page does it too. */
  finish(): void;
}

/** Keeps a status and tells when it changes. */
export class StatusLine {
  #status: LmsStatus;
  readonly #tell: (status: LmsStatus) => void;

  constructor(status: LmsStatus, tell: ((status: LmsStatus) => void) | undefined) {
    this.#status = status;
    this.#tell = tell ?? (() => undefined);
    this.#tell(status);
  }

  get status(): LmsStatus {
    return this.#status;
  }

  set status(status: LmsStatus) {
    if (status === this.#status) return;
    this.#status = status;
    this.#tell(status);
  }
}

/** A connection to nothing. */
export function noConnection(onStatus: LmsOptions['onStatus']): LmsConnection {
  const { status } = new StatusLine('none', onStatus);
  return { kind: null, status, ready: Promise.resolve(), returnAddress: null, finish: () => undefined };
}
