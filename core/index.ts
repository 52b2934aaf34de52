/** The public list of core: everything here is kept stable; nothing else is. */
export { wrap180, wrap360, angleFromTo } from './angle/wrap.js';
export { circularMean } from './angle/circular-mean.js';
export { parseLatitude, parseLongitude, parseDeclination, parseError } from './angle/parse-position.js';
export { parseBearing } from './angle/parse-bearing.js';
export { formatAngle, formatBearing, formatError, formatLatitude, formatLongitude } from './angle/format-angle.js';
export { formatAmplitude, formatQuadrantal } from './angle/quadrantal.js';
export type { Reading, Refusal } from './text/reading.js';
export { parseDate } from './time/parse-date.js';
export { parseTimeOfDay } from './time/parse-time-of-day.js';
export { formatInstant, parseInstant } from './time/instant.js';
