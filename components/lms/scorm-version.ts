import type { ScoredAnswer } from '../shared/score-event.js';
import type { LmsKind } from './connection.js';

/** An element of the run-time's data model and its value. */
export type Pair = readonly [element: string, value: string];

/** What is reported of a lesson. */
export interface Standing {
  /** 0 to 1. */
  readonly scaled: number;
  readonly passed: boolean;
  readonly complete: boolean;
}

/** Where two editions of SCORM differ. */
export interface ScormVersion {
  readonly kind: LmsKind;
  /** The run-time's object. */
  readonly api: string;
  readonly calls: Readonly<Record<'initialize' | 'get' | 'set' | 'commit' | 'finish' | 'lastError', string>>;
  /** Characters that `cmi.suspend_data` holds. */
  readonly room: number;
  /** Read when a session opens. */
  readonly statuses: readonly string[];
  readonly rawScore: string;
  readonly mode: string;
  /** The pass mark of the platform, as `passMarkScale` times 0 to 1. */
  readonly passMark: string;
  readonly passMarkScale: number;
  /** What says that the lesson is begun and not done. */
  readonly begun: readonly Pair[];
  standing(standing: Standing): readonly Pair[];
  exit(complete: boolean): Pair;
  sessionTime(seconds: number): Pair;
  /** In the order the run-time wants. */
  interaction(index: number, answer: ScoredAnswer, at: Date): readonly Pair[];
}
