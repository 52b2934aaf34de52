import type { ScoredAnswer } from '../shared/score-event.js';
import { LubberScoreEvent } from '../shared/score-event.js';
import { noConnection, StatusLine } from './connection.js';
import type { LmsConnection, LmsOptions } from './connection.js';
import { findApi } from './find-api.js';
import type { ScormApi } from './find-api.js';
import { newAnswers } from './given-number.js';
import { lessonScore } from './lesson.js';
import type { LessonTarget } from './lesson.js';
import { followPage } from './page-life.js';
import { ScormSession } from './scorm-session.js';
import type { ScormVersion } from './scorm-version.js';
import { scorm12 } from './scorm12.js';
import { scorm2004 } from './scorm2004.js';

/** The newer run-time goes first where a platform offers both. */
function runTime(view: Window): { version: ScormVersion; api: ScormApi } | null {
  for (const version of [scorm2004, scorm12]) {
    const api = findApi(version.api, view);
    if (api) return { version, api };
  }
  return null;
}

/**
 * Reports what drills ask to a SCORM platform, 2004 4th edition or 1.2, whichever run-time is
 * found; without one the lesson works on. Reports after every answer, saves when the page is
 * out of sight, finishes once when it is left.
 *
 * @param target a drill, or what drills are in; `lubber-score` is heard there.
 */
export function connectScorm(target: LessonTarget, options: LmsOptions = {}): LmsConnection {
  const view = options.window ?? window;
  const found = runTime(view);
  if (!found) return noConnection(options.onStatus);

  const session = new ScormSession(found.api, found.version, target);
  const line = new StatusLine(session.open(), options.onStatus);
  const { kind } = found.version;
  if (line.status === 'refused') return { kind, status: 'refused', ready: Promise.resolve(), returnAddress: null, finish: () => undefined };

  let known: readonly ScoredAnswer[] = lessonScore(target)?.answers ?? [];
  const save = (): void => {
    if (line.status !== 'review') line.status = session.save() ? 'open' : 'trouble';
  };
  const onScore = (event: Event): void => {
    if (line.status === 'review' || !(event instanceof LubberScoreEvent || 'detail' in event)) return;
    const score = lessonScore(target) ?? (event as LubberScoreEvent).detail;
    session.report(score, newAnswers(known, score.answers));
    known = score.answers;
    save();
  };
  const finish = (): void => {
    target.removeEventListener(LubberScoreEvent.type, onScore);
    stop();
    session.finish(line.status === 'review');
    line.status = 'finished';
  };
  target.addEventListener(LubberScoreEvent.type, onScore);
  const stop = followPage(view, { onHidden: save, onLeave: finish });
  return {
    kind,
    ready: Promise.resolve(),
    returnAddress: null,
    finish,
    get status() {
      return line.status;
    },
  };
}
