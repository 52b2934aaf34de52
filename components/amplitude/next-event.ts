import type { BodyName } from '../../core/sky/body.js';
import type { HorizonMoment } from '../../core/sky/horizon-altitude.js';
import { horizonCrossing } from '../../core/sky/horizon-crossing.js';
import type { HorizonEventArguments } from '../../core/sky/horizon-crossing.js';
import type { Translate } from '../shared/catalogue.js';
import { instantText } from '../shared/instant-text.js';
import { atHead } from './sentence-head.js';

export interface NextEventQuestion {
  readonly body: BodyName;
  readonly bodyInWords: string;
  readonly latitude: number | undefined;
  readonly longitude: number | undefined;
  readonly heightOfEye: number;
  readonly moment: HorizonMoment;
  readonly event: 'rising' | 'setting';
  /** The time entered; null for that of the clock. */
  readonly after: Date | null;
}

/** Skips the event the fields already show, so that pressing again goes on to the next day. */
const PAST_THIS_ONE = 120_000;

/** How long it is until then: `23 min`, `3 h 12 min`. */
function waitText(milliseconds: number): string {
  const minutes = Math.round(milliseconds / 60_000);
  return minutes < 60 ? `${minutes} min` : `${Math.floor(minutes / 60)} h ${minutes % 60} min`;
}

const HALF_DAY = 43_200_000;

/** The rising or setting nearest to a time; null where there is none. */
export function nearestEvent(question: Omit<HorizonEventArguments, 'after'>, to: Date): Date | null {
  try {
    const found = horizonCrossing({ ...question, after: new Date(to.getTime() - HALF_DAY) });
    return found.occurs ? found.instant : null;
  } catch {
    // At the edge of the years known.
    return null;
  }
}

/** The next rising or setting after the time entered, and what to say of it. */
export function nextEvent(
  t: Translate,
  question: NextEventQuestion,
): { instant: Date | null; said: string } {
  const { body, latitude, longitude, heightOfEye, moment, event } = question;
  if (latitude === undefined || longitude === undefined) return { instant: null, said: t('amplitude.next.needs') };
  const words = { body: atHead(question.bodyInWords) };
  const from = (question.after ?? new Date()).getTime();
  try {
    const after = new Date(from + PAST_THIS_ONE);
    const found = horizonCrossing({ body, latitude, longitude, after, event, moment, heightOfEye });
    if (!found.occurs) return { instant: null, said: t(`amplitude.next.${found.reason}`, words) };
    const wait = t(question.after ? 'amplitude.next.later' : 'amplitude.next.in', { wait: waitText(found.instant.getTime() - from) });
    return { instant: found.instant, said: `${t(`amplitude.next.found.${event}`, { ...words, instant: instantText(found.instant) })} ${wait}` };
  } catch {
    return { instant: null, said: t('amplitude.next.years') };
  }
}
