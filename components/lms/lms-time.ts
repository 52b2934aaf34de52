const two = (value: number): string => String(value).padStart(2, '0');

/** HHHH:MM:SS, as SCORM 1.2 has time spans (CMITimespan, four figures for the hours at most). */
export function clockSpan(seconds: number): string {
  const whole = Math.min(Math.max(0, Math.round(seconds)), 9999 * 3600);
  return `${String(Math.floor(whole / 3600)).padStart(4, '0')}:${two(Math.floor(whole / 60) % 60)}:${two(whole % 60)}`;
}

/** PT90S: a duration of ISO 8601, as SCORM 2004 and xAPI have them. */
export function isoDuration(seconds: number): string {
  return `PT${Math.max(0, Math.round(seconds))}S`;
}

/** HH:MM:SS of the day, UTC (SCORM 1.2 CMITime). */
export function clockTime(instant: Date): string {
  return instant.toISOString().slice(11, 19);
}

/**
 * 2026-11-25T10:00:00.00Z. SCORM 2004 takes a zone after a fraction of a second only, and one
 * platform in wide use takes no more than two figures of it (time(second,10,0)).
 */
export function hundredthInstant(instant: Date): string {
  return `${instant.toISOString().slice(0, 19)}.00Z`;
}
