/**
 * The run-times by the names they export; their own declarations do not resolve in modules, so
 * what the tests use of them is declared here.
 */
import * as of12 from 'scorm-again/scorm12';
import * as of2004 from 'scorm-again/scorm2004';

interface RunTime {
  isTerminated(): boolean;
  on(call: string, listener: (element: string, value: string) => void): void;
  loadFromJSON(data: Record<string, unknown>, path: string): void;
}

interface Interactions {
  readonly childArray: readonly object[];
}

export interface Scorm12API extends RunTime {
  readonly cmi: {
    readonly core: { readonly lesson_status: string; readonly score: { readonly raw: string; readonly min: string; readonly max: string } };
    readonly student_data: { mastery_score: string };
    readonly suspend_data: string;
    readonly interactions: Interactions;
  };
}

export interface Scorm2004API extends RunTime {
  SetValue(element: string, value: string): string;
  GetLastError(): string;
  readonly cmi: {
    scaled_passing_score: string;
    readonly completion_status: string;
    readonly success_status: string;
    readonly score: { readonly scaled: string; readonly raw: string; readonly min: string; readonly max: string };
    readonly suspend_data: string;
    readonly interactions: Interactions;
  };
}

type Made<T> = new (settings: Record<string, unknown>) => T;

export const Scorm12API = (of12 as unknown as { Scorm12API: Made<Scorm12API> }).Scorm12API;
export const Scorm2004API = (of2004 as unknown as { Scorm2004API: Made<Scorm2004API> }).Scorm2004API;
