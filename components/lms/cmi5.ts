import { LubberScoreEvent } from '../shared/score-event.js';
import { readLaunch, readLaunchData } from './cmi5-launch.js';
import type { Cmi5Launch, LaunchData } from './cmi5-launch.js';
import { Cmi5Session } from './cmi5-session.js';
import { sessionToken } from './cmi5-token.js';
import { noConnection, StatusLine } from './connection.js';
import type { LmsConnection, LmsOptions } from './connection.js';
import { drawFor, lessonScore, lessonStates } from './lesson.js';
import type { LessonTarget } from './lesson.js';
import { followPage } from './page-life.js';
import { RecordStore } from './record-store.js';
import { readNote, writeNote } from './session-note.js';

/** What a platform must answer before a lesson may begin (cmi5 8.2, 10.2, 11). */
async function prepare(launch: Cmi5Launch): Promise<{ store: RecordStore; data: LaunchData } | null> {
  const token = await sessionToken(launch.fetch);
  if (token === null) return null;
  const store = new RecordStore(launch, token);
  const data = readLaunchData(await store.readState('LMS.LaunchData'));
  // Asked for because the standard wants it; a lesson without sound has no use for the answer.
  if (data) await store.readPreferences();
  return data && { store, data };
}

/**
 * Reports what drills ask to the platform that launched the page by cmi5: from `initialized`
 * to `terminated`, each answer when it is given, completion and success at the end of the
 * exercises. Without launch data in the address the lesson works on.
 *
 * @param target a drill, or what drills are in; `lubber-score` is heard there.
 */
export function connectCmi5(target: LessonTarget, options: LmsOptions = {}): LmsConnection {
  const view = options.window ?? window;
  const launch = readLaunch(view.location.search);
  if (!launch) return noConnection(options.onStatus);

  // A page reloaded after its end: the platform takes nothing more under this launch.
  const isOver = readNote(launch.fetch).ended === true;
  const line = new StatusLine(isOver ? 'finished' : 'opening', options.onStatus);
  drawFor(target, `${launch.registration} ${launch.activityId}`);
  const before = lessonStates(target);
  let session: Cmi5Session | null = null;
  let returnAddress: string | null = null;

  const report = (): void => {
    const score = lessonScore(target);
    if (score) session?.report(score);
  };
  const finish = (): void => {
    target.removeEventListener(LubberScoreEvent.type, report);
    stop();
    if (session?.finish()) writeNote(launch.fetch, { ended: true });
    session = null;
    if (line.status !== 'refused') line.status = 'finished';
  };
  const open = async (): Promise<void> => {
    const prepared = await prepare(launch);
    if (line.status === 'finished') return;
    if (!prepared) {
      line.status = 'refused';
      return;
    }
    returnAddress = prepared.data.returnURL;
    const usual = prepared.data.launchMode === 'Normal' ? 'open' : 'review';
    session = new Cmi5Session(prepared.store, launch, prepared.data, target, before, (sent) => {
      if (line.status !== 'finished') line.status = sent === 'taken' ? usual : 'trouble';
    });
    await session.open();
  };

  const stop = followPage(view, { onHidden: () => session?.save(), onLeave: finish });
  target.addEventListener(LubberScoreEvent.type, report);
  return {
    kind: 'cmi5',
    ready: isOver ? Promise.resolve() : open(),
    finish,
    get returnAddress() {
      return returnAddress;
    },
    get status() {
      return line.status;
    },
  };
}
