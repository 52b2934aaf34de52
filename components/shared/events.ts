/** Fired for what the user did only; bubbles and crosses shadow roots; details are plain data. */
abstract class LubberEvent<Detail> extends Event {
  readonly detail: Detail;

  constructor(type: string, detail: Detail) {
    super(type, { bubbles: true, composed: true });
    this.detail = detail;
  }
}

/** What a widget found: its inputs, the result with its doubt, and the cautions. */
export interface ResultDetail {
  readonly widget: string;
  readonly inputs: Readonly<Record<string, unknown>>;
  readonly result: unknown;
}

export class LubberResultEvent extends LubberEvent<ResultDetail> {
  static readonly type = 'lubber-result';

  constructor(detail: ResultDetail) {
    super(LubberResultEvent.type, detail);
  }
}

/** An entry offered to a record book. */
export interface RecordRequestDetail {
  readonly widget: string;
  readonly entry: Readonly<Record<string, unknown>>;
}

export class LubberRecordRequestEvent extends Event {
  static readonly type = 'lubber-record-request';

  readonly #detail: RecordRequestDetail;

  /** Whether anybody has taken the entry, which nobody can without reading it. */
  taken = false;

  constructor(detail: RecordRequestDetail) {
    super(LubberRecordRequestEvent.type, { bubbles: true, composed: true });
    this.#detail = detail;
  }

  get detail(): RecordRequestDetail {
    this.taken = true;
    return this.#detail;
  }
}

declare global {
  interface HTMLElementEventMap {
    'lubber-result': LubberResultEvent;
    'lubber-record-request': LubberRecordRequestEvent;
  }
}
