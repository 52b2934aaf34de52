/** The classes of all widgets and their types; registers nothing. */
export { LubberConversion } from './conversion/conversion.js';
export type { Conversion } from './conversion/convert.js';
export { LubberAmplitude } from './amplitude/amplitude.js';
export { LubberDrill } from './drill/drill.js';
export type { DrillState } from './drill/drill-state.js';
export { LubberFieldMap } from './field-map/field-map.js';
export type { FieldMapResult } from './field-map/field-map.js';
export { LubberIron } from './iron/iron.js';
export type { BenchResult } from './iron/bench-result.js';
export type { BenchState } from './iron/bench-state.js';
export { LubberVariation } from './variation/variation.js';
export { LubberRecordRequestEvent, LubberResultEvent } from './shared/events.js';
export type { RecordRequestDetail, ResultDetail } from './shared/events.js';
export { addTranslation } from './shared/catalogue.js';
export type { Catalogue } from './shared/catalogue.js';
export { register } from './shared/register.js';
export { LubberScoreEvent } from './shared/score-event.js';
export type { ScoreDetail, ScoredAnswer } from './shared/score-event.js';
