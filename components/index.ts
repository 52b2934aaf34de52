/** The classes of all widgets and their types; registers nothing. */
export { LubberAmplitude } from './amplitude/amplitude.js';
export { LubberAzimuth } from './azimuth/azimuth.js';
export { LubberConversion } from './conversion/conversion.js';
export { LubberDeviationCard } from './deviation-card/deviation-card.js';
export type { CardResult, Particulars } from './deviation-card/card-content.js';
export { LubberDeviationCurve } from './deviation-curve/deviation-curve.js';
export type { CurvePoint } from './deviation-curve/given-points.js';
export type { CurveResult } from './deviation-curve/curve-result.js';
export type { NamedCard } from './deviation-curve/given-cards.js';
export { LubberDrill } from './drill/drill.js';
export type { DrillState } from './drill/drill-state.js';
export { LubberFieldMap } from './field-map/field-map.js';
export type { FieldMapResult } from './field-map/field-map.js';
export { LubberIron } from './iron/iron.js';
export type { BenchResult } from './iron/bench-result.js';
export type { BenchState } from './iron/bench-state.js';
export { LubberRecord } from './record/record.js';
export { LubberShip } from './ship/ship.js';
export { LubberSwing } from './swing/swing.js';
export type { GridRow } from './swing/grid-row.js';
export { LubberTransit } from './transit/transit.js';
export { LubberVariation } from './variation/variation.js';

// What widgets tell, and what they are told in.
export { addTranslation } from './shared/catalogue.js';
export type { Catalogue } from './shared/catalogue.js';
export { LubberRecordRequestEvent, LubberResultEvent } from './shared/events.js';
export type { RecordRequestDetail, ResultDetail } from './shared/events.js';
export { register } from './shared/register.js';
export { LubberScoreEvent } from './shared/score-event.js';
export type { ScoreDetail, ScoredAnswer } from './shared/score-event.js';

// Of core, as results and properties hold it.
export type { Conversion } from '../core/sight/conversion.js';
export type { Correctors } from '../core/deviation/corrector-states.js';
