/**
 * The public list of core, layer by layer: everything here is kept stable; nothing else is. What a
 * function takes and what it gives can be named; what that is made of is reached by its property.
 */

// Text: what was typed, and why it was not understood.
export { parseLength } from './text/parse-length.js';
export { parseNumber } from './text/parse-number.js';
export type { Reading, Refusal } from './text/reading.js';

// Angle: wrapped, read and written.
export { circularMean } from './angle/circular-mean.js';
export { bearingOfPoint, compassPoints } from './angle/compass-points.js';
export type { CompassPoint } from './angle/compass-points.js';
export { formatAngle, formatBearing, formatError, formatLatitude, formatLongitude, formatNumber, roundTo } from './angle/format-angle.js';
export { parseBearing } from './angle/parse-bearing.js';
export { parseDeclination, parseError, parseLatitude, parseLongitude } from './angle/parse-position.js';
export { formatAmplitude, formatQuadrantal } from './angle/quadrantal.js';
export { angleFromTo, wrap180, wrap360 } from './angle/wrap.js';

// Time: days and instants, UTC.
export { decimalYear, instantOfDecimalYear } from './time/decimal-year.js';
export { formatDate, formatInstant, formatTimeOfDay, instantOf, parseInstant } from './time/instant.js';
export { parseDate } from './time/parse-date.js';
export type { CivilDate } from './time/parse-date.js';
export { parseTimeOfDay } from './time/parse-time-of-day.js';
export { terrestrialMinusUtc } from './time/terrestrial-time.js';

// Working: its lines and their formulas, doubts, cautions.
export type { Caution } from './working/caution.js';
export { combineDoubt } from './working/doubt.js';
export type { Doubt, DoubtItem } from './working/doubt.js';
export { evaluate } from './working/evaluate.js';
export type { Expression, FunctionName } from './working/expression.js';
export { quantity } from './working/quantity.js';
export type { Quantity, Unit } from './working/quantity.js';
export type { Step } from './working/step.js';

// Answer: marked as an assessor does.
export { markAnswer, readAnswer } from './answer/mark.js';
export type { Mark } from './answer/mark.js';
export type { AnswerForm, Question } from './answer/question.js';
export { assessorsTolerances } from './answer/tolerances.js';
export type { Tolerances } from './answer/tolerances.js';

// Sky: where the bodies of the almanac stand, when they rise, how high they look.
export { altitudeAzimuth } from './sky/altitude-azimuth.js';
export type { AltitudeAzimuth } from './sky/altitude-azimuth.js';
export { amplitude } from './sky/amplitude.js';
export type { Amplitude, AmplitudeArguments } from './sky/amplitude.js';
export { azimuthByAltitude } from './sky/azimuth-by-altitude.js';
export type { AltitudeTriangle, BearingsAtAltitude } from './sky/azimuth-by-altitude.js';
export { bodyNamed, bodyNames, kindOf } from './sky/body.js';
export type { BodyKind, BodyName } from './sky/body.js';
export { daylight } from './sky/daylight.js';
export type { Daylight } from './sky/daylight.js';
export { dip } from './sky/dip.js';
export { geographicalPosition, ghaAries } from './sky/geographical-position.js';
export { horizonAltitude } from './sky/horizon-altitude.js';
export type { HorizonAltitude, HorizonConditions, HorizonMoment } from './sky/horizon-altitude.js';
export { horizonEvent } from './sky/horizon-event.js';
export type { HorizonEvent, HorizonEventArguments, NoEventReason } from './sky/horizon-event.js';
export { horizonRates } from './sky/horizon-rates.js';
export type { BodyMotion, HorizonRates } from './sky/horizon-rates.js';
export { magnitude } from './sky/magnitude.js';
export { HORIZON_REFRACTION, refraction } from './sky/refraction.js';
export type { Air } from './sky/refraction.js';
export type { GeographicalPosition } from './sky/sky-at.js';
export { almanacNumber, starNames } from './sky/star-catalogue.js';
export type { StarName } from './sky/star-catalogue.js';
export type { Triangle } from './sky/triangle.js';
export { trueAltitude } from './sky/true-altitude.js';
export type { ObservedAltitude, TrueAltitude } from './sky/true-altitude.js';

// Field: the magnetic models of the Earth, and the rose of a chart.
export { chartedVariation } from './field/charted-variation.js';
export type { ChartRose } from './field/charted-variation.js';
export type { FieldPlace } from './field/check-place.js';
export type { FieldElements } from './field/field-elements.js';
export { isolines } from './field/isolines.js';
export type { GridElement, Isoline } from './field/isolines.js';
export { magneticEquatorLatitude } from './field/magnetic-equator.js';
export { magneticElements, magneticField } from './field/magnetic-field.js';
export type { MagneticField, MagneticFieldOptions } from './field/magnetic-field.js';
export { magneticFieldGrid } from './field/magnetic-field-grid.js';
export type { MagneticFieldGrid, MagneticFieldGridRequest } from './field/magnetic-field-grid.js';
export { magneticModels, magneticModelYears } from './field/magnetic-models.js';
export type { MagneticModel, MagneticModelName } from './field/magnetic-models.js';
export { magneticPoles } from './field/magnetic-poles.js';
export type { MagneticPoles } from './field/magnetic-poles.js';
export { modelAgainstRose } from './field/model-against-rose.js';
export type { ModelAgainstRose } from './field/model-against-rose.js';
export { outsideModels } from './field/outside-models.js';
export type { OutsideModels } from './field/outside-models.js';
export { parseChartRose } from './field/parse-chart-rose.js';
export type { ChartRoseReading } from './field/parse-chart-rose.js';
export { roseSteps } from './field/rose-steps.js';
export { variationReport } from './field/variation-report.js';
export type { VariationReport, VariationRequest } from './field/variation-report.js';
export { compassZone } from './field/zone.js';
export type { CompassZone } from './field/zone.js';
export { zoneOutlines } from './field/zone-outline.js';

// Deviation: coefficients, fits, cards, limits.
export { deviationAt } from './deviation/approximate-deviation.js';
export type { ApproximateCoefficients, CoefficientName } from './deviation/approximate-deviation.js';
export { ageCautions, ageInMonths } from './deviation/card-age.js';
export { checkCard } from './deviation/check-card.js';
export type { CardCheck } from './deviation/check-card.js';
export { confidenceBand } from './deviation/confidence-band.js';
export type { BandPoint } from './deviation/confidence-band.js';
export { approximateFromExact, exactFromApproximate } from './deviation/convert-coefficients.js';
export { correctorAdvice } from './deviation/corrector-advice.js';
export type { AdjustmentNeeds, CorrectorAdvice } from './deviation/corrector-advice.js';
export { correctorNames, readCorrectors } from './deviation/corrector-states.js';
export type { CorrectorName, Correctors, CorrectorState } from './deviation/corrector-states.js';
export type { DeviationCurve } from './deviation/curve-of-card.js';
export { deviationByCard } from './deviation/deviation-by-card.js';
export type { DeviationCard, DeviationRow } from './deviation/deviation-card.js';
export { deviationCurve } from './deviation/deviation-curve.js';
export { deviationLimits } from './deviation/deviation-limits.js';
export type { DeviationLimit } from './deviation/deviation-limits.js';
export { deviationTable } from './deviation/deviation-table.js';
export type { DeviationTable } from './deviation/deviation-table.js';
export { eightPointAnalysis } from './deviation/eight-point-analysis.js';
export type { EightDeviations } from './deviation/eight-point-analysis.js';
export { exactDeviation, exactDeviationByCompass, exactMagneticHeadings } from './deviation/exact-deviation.js';
export type { ExactCoefficients } from './deviation/exact-deviation.js';
export { fitDeviation } from './deviation/fit-deviation.js';
export type { DeviationFit, FitOptions } from './deviation/fit-deviation.js';
export { fittedCard } from './deviation/fitted-card.js';
export { widestGap } from './deviation/heading-gaps.js';
export type { HeadingGap } from './deviation/heading-gaps.js';
export type { HeadingFound } from './deviation/heading-inverse.js';
export { nearestRow } from './deviation/nearest-row.js';
export type { DeviationObservation } from './deviation/observations.js';
export { readDeviationCard } from './deviation/read-deviation-card.js';
export type { CardReading } from './deviation/read-deviation-card.js';
export { reversedNaming } from './deviation/reversed-naming.js';
export { studentLimit } from './deviation/student.js';

// Sight: errors from bodies and marks; directions from one north to another.
export type { AmplitudeObservation } from './sight/amplitude-observation.js';
export type { AmplitudeBearing, AmplitudeSight, HorizonSide, NoAmplitude } from './sight/amplitude-result.js';
export { amplitudeBearing, amplitudeSight } from './sight/amplitude-sight.js';
export { azimuthBearing } from './sight/azimuth-bearing.js';
export type { AzimuthBearing, AzimuthLook, NoAzimuth } from './sight/azimuth-bearing.js';
export { azimuthSight } from './sight/azimuth-sight.js';
export type { AzimuthObservation, AzimuthSight } from './sight/azimuth-sight.js';
export type { AzimuthSource } from './sight/azimuth-source.js';
export { bearingSeries } from './sight/bearing-series.js';
export type { BearingSeries, NoSeries, SeriesObservation, Shot } from './sight/bearing-series.js';
export { bodiesForBearing } from './sight/bodies-for-bearing.js';
export type { BodiesForBearing, RankedBody, RankReason } from './sight/bodies-for-bearing.js';
export { convertDirection } from './sight/chain.js';
export type { Chain, ChainInput, Direction } from './sight/chain.js';
export { compassError, gyroError } from './sight/compass-error.js';
export type { CompassError } from './sight/compass-error.js';
export type { CompassKind } from './sight/compass-kind.js';
export type { Conversion, ConversionInput } from './sight/conversion.js';
export { convert } from './sight/convert.js';
export { geodesicLine } from './sight/geodesic-line.js';
export type { DirectedLine, Position } from './sight/geodesic-line.js';
export { gyroSpeedError } from './sight/gyro-speed-error.js';
export { markByHand } from './sight/hand-answer.js';
export { courseMadeGood, courseToSteer, leewayAngle } from './sight/leeway.js';
export { lineBearing } from './sight/line-bearing.js';
export type { LineBearing } from './sight/line-bearing.js';
export { rhumbLine } from './sight/rhumb-line.js';
export { usualDoubts } from './sight/sight-doubts.js';
export type { SightDoubts } from './sight/sight-doubts.js';
export { threeCompasses } from './sight/three-compasses.js';
export type { OneLook, ThreeCompasses } from './sight/three-compasses.js';
export { usualTransitDoubts } from './sight/transit-doubts.js';
export type { TransitDoubts } from './sight/transit-doubts.js';
export { transitLine } from './sight/transit-line.js';
export type { FoundLine, TransitLine } from './sight/transit-line.js';
export type { Sighting, TransitObservation } from './sight/transit-observation.js';
export type { MarkError, NoTransit, TransitSight } from './sight/transit-result.js';
export { transitSight } from './sight/transit-sight.js';
export { variationSource } from './sight/variation-source.js';
export type { VariationSource } from './sight/variation-source.js';

// Iron: what the ship is made of and what it does to her compass.
export { addCorrectors } from './iron/add-correctors.js';
export { hardIronPolarity, permanentFromSlip } from './iron/building-slip.js';
export type { BuildingSlip, SlipStrength } from './iron/building-slip.js';
export { magnetForce } from './iron/correctors.js';
export type { Corrector } from './iron/correctors.js';
export { largestParts, partsOnHeading } from './iron/deviation-parts.js';
export type { DeviationParts } from './iron/deviation-parts.js';
export type { EarthField } from './iron/earth-field.js';
export { exactCoefficients } from './iron/exact-coefficients.js';
export type { IronCoefficients } from './iron/exact-coefficients.js';
export { heelingCoefficient, heelingError, heelingErrorByCompass } from './iron/heeling-error.js';
export type { HeelingError } from './iron/heeling-error.js';
export { inducedPolarity } from './iron/induced-polarity.js';
export type { PolarityOfShip } from './iron/induced-polarity.js';
export { ironDeviationByCompass } from './iron/iron-by-compass.js';
export type { IronByCompass } from './iron/iron-by-compass.js';
export { ironCurve } from './iron/iron-curve.js';
export type { IronCurvePoint } from './iron/iron-curve.js';
export { ironDeviation } from './iron/iron-deviation.js';
export type { IronDeviation } from './iron/iron-deviation.js';
export { ironFromExact } from './iron/iron-from-exact.js';
export type { KnownCoefficients } from './iron/iron-from-exact.js';
export type { IronObservation } from './iron/iron-observation.js';
export { ironParameterNames, noIron } from './iron/iron-parameters.js';
export type { IronParameterName, IronParameters } from './iron/iron-parameters.js';
export { needle } from './iron/needle.js';
export type { Needle } from './iron/needle.js';
export { predictAt, predictionError } from './iron/predict-at.js';
export type { PredictedCoefficients } from './iron/predict-at.js';
export { separateIron } from './iron/separate-iron.js';
export type { SeparatedIron } from './iron/separate-iron.js';

// Swing: rows of readings to coefficients and card.
export { adjustedSwing, swungCompasses, swungStage } from './swing/adjusted-swing.js';
export type { AdjustedSwing, CorrectorsByCompass, SwungCompass, SwungStage } from './swing/adjusted-swing.js';
export { steeringSwing } from './swing/steering-swing.js';
export type { SteeringSwing } from './swing/steering-swing.js';
export { swing } from './swing/swing.js';
export type { Swing, SwungRow } from './swing/swing.js';
export { headingReckonings, swingMethods } from './swing/swing-row.js';
export type { HeadingReckoning, SwingMethod, SwingRow } from './swing/swing-row.js';
export { usualSigmas } from './swing/swing-settings.js';
export type { SwingCircle, SwingSettings } from './swing/swing-settings.js';

// Record: the book of compass errors.
export { nextEntry } from './record/chain.js';
export type { EntryDraft, EntryFields, EntryKind, MagneticCompass, RecordEntry } from './record/entry.js';
export { judgeRecord } from './record/judge-record.js';
export type { RecordJudgement, RecordQuestion } from './record/judge-record.js';
export { mergeBooks } from './record/merge-books.js';
export type { BookMerge } from './record/merge-books.js';
export type { ObservedDeviation } from './record/observed-deviations.js';
export { prepareEntry } from './record/prepare-entry.js';
export type { DraftReading } from './record/read-draft.js';
export { recordFromCsv, recordToCsv } from './record/record-csv.js';
export type { RecordFile } from './record/record-file.js';
export { recordFromJson, recordToJson } from './record/record-json.js';
export { swingFromRecord } from './record/swing-from-record.js';
export { verifyChain } from './record/verify-chain.js';
export type { ChainCheck } from './record/verify-chain.js';

// Drill: exercises with a seed.
export { exerciseKinds, levels } from './drill/exercise.js';
export type { Exercise, ExerciseKind, Level } from './drill/exercise.js';
export { exerciseSet, mixedParts } from './drill/exercise-set.js';
export type { SetOrder, SetPart } from './drill/exercise-set.js';
export { exerciseFrom } from './drill/generate.js';
export type { ExerciseOrder } from './drill/generate.js';
export { exerciseScore, setScore } from './drill/score.js';
export type { AnswerTexts } from './drill/score.js';
