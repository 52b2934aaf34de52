import type { BodyName } from '../../core/sky/body.js';
import type { HorizonMoment } from '../../core/sky/horizon-altitude.js';
import { horizonEvent } from '../../core/sky/horizon-event.js';
import { formatInstant } from '../../core/time/instant.js';

interface NextEventQuestion {
  readonly body: BodyName;
  readonly bodyInWords: string;
  readonly latitude: number | undefined;
  readonly longitude: number | undefined;
  readonly heightOfEye: number;
  readonly moment: HorizonMoment;
  readonly event: 'rising' | 'setting';
  readonly after: Date;
}

/** Skips the event the fields already show, so that pressing again goes on to the next day. */
const PAST_THIS_ONE = 120_000;

/** The next rising or setting after the time entered, and what to say of it. */
export function nextEvent(
  t: (key: string, values?: Record<string, string | number>) => string,
  question: NextEventQuestion,
): { instant: Date | null; said: string } {
  const { body, latitude, longitude, heightOfEye, moment, event } = question;
  if (latitude === undefined || longitude === undefined) return { instant: null, said: t('amplitude.next.needs') };
  const words = { body: question.bodyInWords.charAt(0).toUpperCase() + question.bodyInWords.slice(1) };
  try {
    const after = new Date(question.after.getTime() + PAST_THIS_ONE);
    const found = horizonEvent({ body, latitude, longitude, after, event, moment, heightOfEye });
    if (!found.occurs) return { instant: null, said: t(`amplitude.next.${found.reason}`, words) };
    const instant = formatInstant(found.instant).replace('T', ' ').replace('Z', '');
    return { instant: found.instant, said: t(`amplitude.next.found.${event}`, { ...words, instant }) };
  } catch {
    return { instant: null, said: t('amplitude.next.years') };
  }
}
