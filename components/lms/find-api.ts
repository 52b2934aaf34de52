/** A platform's run-time: functions that take and answer strings, or should. */
export type ScormApi = Readonly<Record<string, (...values: string[]) => unknown>>;

/** Deeper nesting than any platform has; keeps a window that lies about its parent from holding us. */
const DEEPEST = 50;

const isApi = (value: unknown): value is ScormApi => (typeof value === 'object' || typeof value === 'function') && value !== null;

/** A window and those around it, from the inside out, as far as the browser lets us look. */
function windowsAround(start: Window): Window[] {
  const found: Window[] = [];
  let view = start;
  while (found.length < DEEPEST) {
    try {
      // A window of another origin refuses this, and what lies beyond is no longer ours to ask.
      void view.document;
    } catch {
      break;
    }
    found.push(view);
    if (view.parent === view) break;
    view = view.parent;
  }
  return found;
}

function apiIn(windows: readonly Window[], name: string): ScormApi | null {
  for (const view of windows) {
    try {
      const api = (view as unknown as Record<string, unknown>)[name];
      if (isApi(api)) return api;
    } catch {
      return null;
    }
  }
  return null;
}

function openerOf(view: Window): Window | null {
  try {
    return (view.opener as Window | null) ?? null;
  } catch {
    return null;
  }
}

/**
 * The run-time's object of that name: in the window, its parents, or those of the window that
 * opened one of them (SCORM 2004 4th ed. RTE 3.3.1: parents first, then the opener's).
 */
export function findApi(name: string, view: Window): ScormApi | null {
  const own = windowsAround(view);
  const found = apiIn(own, name);
  if (found) return found;
  for (const each of own) {
    const opener = openerOf(each);
    const api = opener && apiIn(windowsAround(opener), name);
    if (api) return api;
  }
  return null;
}
