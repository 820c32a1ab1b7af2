/** The public face of the simulation: everything the interface may use. */
export { phaseOrder, SCHEDULE_EVENTS, type Knot, type Schedule, type ScheduleEvent } from './scenario/knot.ts';
export { scenarioFields, fieldAt, rangeAt, type FieldInfo } from './scenario/fields.ts';
export { ICE_LOT_KG, LATEST_CHANGE_S, LIVE_RANGES, MOST_ICE_LOTS, MOST_KNOTS, type Range } from './scenario/limits.ts';
export {
  scenarioJsonSchema,
  SCENARIO_VERSION,
  type Scenario,
  type ScenarioInput,
  type ScenarioPart,
} from './scenario/scenario.ts';
export { isObject } from './scenario/json.ts';
export { isBundle, isCoil, isTapFed, waterSource, type CondenserKind } from './geometry/condenser-kind.ts';
export { readScenario, type ReadScenario } from './scenario/read-scenario.ts';
export { type Problem } from './scenario/problem.ts';
export {
  chargeFromBotanical,
  chargeFromPlant,
  condenserFromTube,
  heatFromSource,
  potFromVessel,
  separatorFromVessel,
  tubFrom,
} from './scenario/presets.ts';
export { lookAlikes, type LookAlike } from './library/look-alikes.ts';
export { isOwnPlant, LONGEST_PLANT_NAME, ownPlantId, ownPlantName } from './scenario/own-name.ts';
export { botanicalOfOwn, ownPlantLike, wordsOfOwn, type PlantWords } from './scenario/own-botanical.ts';
export {
  MOST_OWN_PLANTS,
  OWN_LIMITS,
  OWN_PLANTS_VERSION,
  ownPlantProblems,
  ownPlantsJsonSchema,
  PLANT_KINDS,
  readOwnPlants,
  type OwnPlant,
  type OwnPlantProblem,
  type OwnPlantState,
} from './scenario/own-plants.ts';
export {
  COLUMN_NAMES,
  COLUMN_UNITS,
  GRID_NAMES,
  GRID_UNITS,
  columnAt,
  positionAt,
  recordBuffers,
  rowAt,
  type ColumnName,
  type Grid,
  type GridName,
  type RunRecord,
} from './run/record.ts';
export type {
  Balance,
  Closure,
  EndReason,
  EventKind,
  EventValues,
  NonFinite,
  RunEvent,
  RunResult,
  Severity,
  StateVariable,
  Summary,
} from './run/result.ts';
export * from './library/index.ts';
export { captureByDropSize, type DropCapture } from './run/drop-capture.ts';
export { condenserAt, type CondenserMoment } from './run/condenser-moment.ts';
export { separatorAt, type SeparatorMoment } from './run/separator-moment.ts';
export { exampleScenario, examples, type Example } from './run/examples.ts';
export { openingExample } from './run/opening-example.ts';
export { LONG_RUN_S, roughly, runSeconds } from './scenario/cost.ts';
export { Run, simulate } from './run/simulate.ts';
export {
  clockSchedule,
  eventTimes,
  NO_EVENTS,
  phasesBegun,
  scheduleValue,
  type ClockKnot,
  type ClockSchedule,
  type EventTimes,
  type Phase,
  type PlacedKnot,
} from './run/schedule-value.ts';
export { constituents, type Constituent } from './fluids/constituents.ts';
export {
  ensembleDesign,
  ensembleTimes,
  memberScenario,
  runMember,
  HEADLINE_NAMES,
  HEADLINE_UNITS,
  MOST_MEMBERS,
  MOST_SEED,
  USUAL_MEMBERS,
  USUAL_SEED,
  type Design,
  type DesignRow,
  type Headline,
  type HeadlineName,
  type MemberResult,
} from './answers/ensemble/ensemble.ts';
export {
  summariseEnsemble,
  type CurveBand,
  type EnsembleSummary,
  type Influence,
  type NumberBand,
} from './answers/ensemble/summary.ts';
export {
  uncertainties,
  withDrawn,
  type OwnBands,
  type Uncertain,
  type UncertainId,
} from './answers/ensemble/factors.ts';
export {
  runLength,
  runOn,
  spentAt,
  OIL_SHARES,
  type RunLength,
  type ShareReached,
  type Spent,
} from './answers/run-length/run-length.ts';
export { stopAdvice, type StopAdvice } from './answers/run-length/stop-advice.ts';
export { stopRule, STOP_RULES, STOP_RULE_KINDS, type StopRule } from './run/stop-rules.ts';
export { compareRuns, MOST_COMPARED, type Comparison } from './answers/comparison/compare.ts';
export type { Conclusion } from './answers/comparison/conclusion.ts';
export {
  MOST_DRAWS,
  pairedCount,
  pairedDesign,
  runPaired,
  USUAL_DRAWS,
  type PairedDesign,
  type PairedRun,
} from './answers/comparison/paired-draws.ts';
export { recommend, type Duel, type Recommendation } from './answers/comparison/recommendation.ts';
export type { CompareRow, CompareRowId, CompareRun } from './answers/comparison/table.ts';
export { gentleAgainstHard, type GentleAndHard } from './answers/comparison/gentle-against-hard.ts';
export {
  bandsOfFit,
  calibrate,
  calibrateTogether,
  fittedScenario,
  FIT_NAMES,
  MOST_FACTORS,
  USUAL_FIT,
  type AlikePair,
  type Calibration,
  type CalibrationProblem,
  type Fit,
  type FitName,
  type FitNote,
  type FittedFactor,
  type Residual,
} from './answers/calibration/calibrate.ts';
export {
  COLUMN_CHOICES,
  lineReader,
  readPoints,
  understood,
  type ColumnMeaning,
  type LogReading,
  type PointsProblem,
  type ReadPoints,
} from './answers/calibration/points.ts';
export { type DecimalSign, type LogTable } from './answers/calibration/log-table.ts';
export {
  DEFAULT_UNCERTAINTY,
  READING_KINDS,
  type LoggedPoint,
  type Reading,
  type ReadingKind,
  type StatedUncertainty,
  type Uncertainty,
} from './answers/calibration/readings.ts';
export {
  forecastRun,
  FORECAST_MEMBERS,
  FORECAST_SEED,
  RunForecaster,
  type Forecast,
  type ForecastOptions,
  type JudgedReading,
  type Likely,
  type LikelyTime,
  type RunSoFar,
} from './answers/forecast/forecast.ts';
export { runCourses, type Course, type CourseColumn, type CoursesAsked } from './answers/forecast/course.ts';
export type { Seen, SeenKind } from './answers/forecast/forecast-readings.ts';
export { followed, type Turn } from './answers/forecast/followed.ts';
export {
  NOTHING_SEEN,
  runSheet,
  type SheetKind,
  type SheetState,
  type SheetStep,
} from './answers/run-sheet/run-sheet.ts';
export { symbolTex } from './explain/tex.ts';
export * from './products/index.ts';
export { dropsSheet, halfTimeSheet, hydrosolSheet, peroxideSheet, standingSheet } from './explain/after-the-still.ts';
export {
  amountSheet,
  carrierSheet,
  chargeSheet,
  costRangeSheet,
  daysSheet,
  hazeSheet,
  lastBottleSheet,
  plantSheet,
  yieldSheet,
} from './explain/plans.ts';
export {
  batchesSheet,
  bottlesSheet,
  coefficientSheet,
  costSheet,
  dryingSheet,
  gardenSheet,
  keepingSheet,
  moistureSheet,
  recipeCostSheet,
} from './explain/keeping-and-costs.ts';
export { dilutionMessages } from './messages/dilution.ts';
export { ownPlantMessages } from './messages/own-plants.ts';
export { workingSheets, WORKING_IDS, type WorkingId } from './explain/explain.ts';
export type { WorkingSheet, WorkingStep, WorkingSymbol, WorkingValidity } from './explain/sheet.ts';
export { closestWords } from './reference/closest-words.ts';
export { correlations, findCorrelation, topics } from './reference/entries.ts';
export { evaluateAt, limitsOf, type LimitCheck } from './reference/look-up.ts';
export { searchReference, MOST_FOUND, type ReferenceItem, type SearchAnswer } from './reference/search.ts';
export { columnMessages } from './messages/columns.ts';
export { lookUpMessages } from './messages/look-up.ts';
export { usualValues } from './reference/usual-values.ts';
export { curveOver, type Curve } from './reference/curve.ts';
export type { Argument, Correlation, Role, Topic } from './correlation.ts';
export { sizeCondenser, type CondenserSize, type SizeVerdict } from './answers/condenser-size/shortest-length.ts';
export { NINE_IN_TEN, SIZING_DRAWS, type Draw } from './answers/condenser-size/in-doubt.ts';
export type { Packs } from './answers/condenser-size/packs.ts';
export { coilThatFits, type OtherCoil } from './answers/condenser-size/coil-that-fits.ts';
export {
  DEFAULT_METAL_PRICES,
  NO_PRICES,
  tubeCost,
  type OwnPrice,
  type PriceList,
  type TubeCost,
} from './answers/shopping/prices.ts';
export {
  LONGEST_PIECE_m,
  MOST_PRICE,
  priceListCsv,
  readPriceList,
  type PriceProblem,
  type ReadPriceList,
} from './messages/price-list-file.ts';
export type { CondenserFailure } from './answers/condenser-size/trial.ts';
export type { TubeSeen } from './answers/condenser-size/like-seen.ts';
export {
  coolantFails,
  DEFAULT_MARGIN,
  atFullHeat,
  ownAsRow,
  sizeOwnTube,
  sizeTube,
  sizeTubeFrom,
  sizeTubes,
  withTube,
  type Bend,
  type OwnTubeSize,
  type SizedTube,
  type TubeSize,
  type TubeVerdict,
} from './answers/condenser-size/tubes.ts';
export { burnerFor, busyPower, ownRate, type BurnerSize } from './answers/other-parts/burner.ts';
export { leastTub, type LeastTub } from './answers/other-parts/least-tub.ts';
export { decidingDraw, sizeOtherParts, type OtherParts } from './answers/building-sheet/other-parts.ts';
export { burnerSheet } from './explain/burner.ts';
export { otherPartsMessages, toldOtherParts } from './messages/other-parts.ts';
export { sizedLengthSheet } from './explain/sized-length.ts';
export {
  hardestBoil,
  leastWater,
  withHeat,
  type HardestBoil,
  type LeastWater,
} from './answers/condenser-size/heat-and-water.ts';
export { coilBendRadius, coilFit, coilRise, coilTurns, longestCoil, type CoilFit } from './geometry/coil.ts';
export { cylinderHeight } from './geometry/cylinder.ts';
export { bundleWidth, narrowestJacket, tubeCount } from './geometry/jacket.ts';
export {
  bedBottom,
  bedHeight,
  bedRoom,
  boilingVessel,
  heatedBaseDiameter,
  packedHeight,
  waterRoom,
} from './geometry/pot.ts';
export { tubDiameterFor, tubVolume } from './geometry/tub.ts';
export { blockedOutletGauge, blockedOutletHeat, blockedOutletTime } from './still/blocked-outlet.ts';
export * from './units/index.ts';
export { EVENT_KINDS, runEvent } from './run/event-kinds.ts';
export { limitSources, type LimitSource } from './run/limit-sources.ts';
export { LIMITS, type LimitName } from './run/limits.ts';
export { eventFlag, eventMessage, failedVariable, mostOilMark, type EventMessage } from './messages/events.ts';
export type { EnoughLength } from './answers/verdict/conclusion.ts';
export {
  judgeTrial,
  suggestionsFor,
  type Controls,
  type Suggestion,
  type Tried,
} from './answers/verdict/suggestion.ts';
export { verdictOf, type Verdict } from './answers/verdict/verdict.ts';
export {
  soFarMessage,
  suggestionMessage,
  verdictMessages,
  type SaidFact,
  type SaidSoFar,
  type SaidSuggestion,
  type SaidVerdict,
} from './messages/verdict.ts';
export { handOutMessages, handOutOf, type HandOut } from './messages/hand-out.ts';
export type { NamedValue } from './messages/english/hand-out.ts';
export { scheduleMessages } from './messages/schedule.ts';
export { controlSafetyMessages } from './messages/control-safety.ts';
export { hazardMessages, safetyMessages } from './messages/safety.ts';
export { problemMessage } from './messages/problems.ts';
export { readEntry } from './messages/read-entry.ts';
export { englishReader, type Language, type Reader } from './messages/language.ts';
export { bisect } from './maths/bisect.ts';
export { cellAt, lerp, positionOf, valueAt, type Position } from './maths/interpolate.ts';
export { recordCsv, shownRecordCsv, toCsv } from './messages/csv.ts';
export { libraryText } from './messages/library-text.ts';
export { quantities, type Quantities } from './messages/quantities.ts';
export { partLineMessage, partMessage, partNameMessage, spokenPartMessage } from './messages/parts.ts';
export { cautionMessage } from './messages/cautions.ts';
export type { CautionFact, PartDetail, PartFacts, PartLine, PartNameKind } from './messages/part-facts.ts';
export { wholeMessage, type Message } from './messages/section.ts';
export { encodingOf } from './messages/text-encoding.ts';
export { failureMessages } from './messages/failure.ts';
export { sizingMessages, toldSizing, toldTubeSize } from './messages/sizing.ts';
export { buildingSheetMessages } from './messages/building-sheet.ts';
export { buildingSheetOf, type BuildingSheet, type SheetSection } from './messages/building-sheet-of.ts';
export { figureSvg, sheetSvg, type DrawnFigure } from './messages/sheet-drawing.ts';
export { sheetMeasures, USUAL_SPRING_BACK, type SheetMeasures } from './answers/building-sheet/measures.ts';
export { firstPlanMessages, toldPlan, type ToldPlan } from './messages/first-plan.ts';
export {
  PLAN_QUESTIONS,
  planStill,
  type PlanAnswers,
  type Planned,
  type PlanQuestion,
  type PlanValues,
} from './answers/first-plan/plan-still.ts';
export { priceListMessages } from './messages/price-list.ts';
export { runLengthMessages, toldRunLength, toldUncertain, type CarriedOnRun } from './messages/run-length.ts';
export { comparisonMessages, toldComparison } from './messages/comparison.ts';
export { recommendationMessages, toldRecommendation } from './messages/recommendation.ts';
export { fitMessages, toldFit } from './messages/fit.ts';
export type { LoggedStill } from './answers/calibration/factor-model.ts';
export { nextRun, type NextRun, type NextRunFact } from './answers/next-run/next-run.ts';
export { nextRunMessages } from './messages/next-run.ts';
export { flowToTry, type CoilReading, type CoilTest } from './answers/home-tests/coil-test.ts';
export { bandsOfTest, hindranceOf, homeTest, settingsOf, type HomeTestGiven } from './answers/home-tests/found.ts';
export type { HeatUpTest } from './answers/home-tests/heat-up-test.ts';
export {
  HOME_TESTS,
  type HomeTest,
  type TestedValue,
  type TestFound,
  type TestResult,
} from './answers/home-tests/home-test.ts';
export type { TubTest } from './answers/home-tests/tub-test.ts';
export { homeTestSheet } from './explain/home-tests.ts';
export { homeTestMessages, type TestWords } from './messages/home-tests.ts';
export { runSheetMessages, type SaidStep } from './messages/run-sheet.ts';
export { forecastMessages, toldForecast, type ForecastLine } from './messages/forecast.ts';
export { answerLesson, CLASS_PLANS, findLesson, LESSON_IDS, type LessonAnswer } from './answers/lessons/lessons.ts';
export type { LessonFacts, LessonId } from './answers/lessons/facts.ts';
export { curveAt, curveDistance, type DrawnCurve } from './answers/lessons/distance.ts';
export { findPair, PAIR_IDS, PAIR_OF_LESSON, type Pair, type PairId } from './answers/lessons/side-by-side.ts';
export type {
  Control,
  CurveQuantity,
  Lesson,
  LessonQuantity,
  LessonWorking,
  Question,
  Truth,
  Turned,
} from './answers/lessons/lesson.ts';
export { lessonCommonMessages, lessonMessages, toldLesson, type ToldLesson } from './messages/lessons.ts';
export {
  answerOwnLesson,
  askedOf,
  CURVE_AXES,
  findMeasure,
  LONGEST_CURVE_S,
  MEASURE_IDS,
  optionWords,
  OWN_QUESTION,
  SHORTEST_CURVE_S,
  type MeasureId,
  type OwnAnswer,
  type OwnLesson,
  type OwnQuestion,
  type OwnQuestionKind,
} from './answers/lessons/own-lesson.ts';
export {
  FEWEST_OPTIONS,
  MOST_OPTIONS,
  OWN_LESSON_KIND,
  OWN_LESSON_VERSION,
  readOwnLesson,
  stillOf,
  TEXT_LENGTHS,
  writtenOwnLesson,
  type OwnLessonProblem,
  type ReadOwnLesson,
} from './answers/lessons/own-lesson-file.ts';
export { CURVE_COLUMNS, curveOfRun, type CurveColumn } from './answers/lessons/lesson.ts';
export { ownLessonMessages, ownLessonProblem } from './messages/own-lesson.ts';
export { sideBySideMessages } from './messages/side-by-side.ts';
export { glossaryMessages, type GlossaryEntry } from './messages/glossary.ts';
export type { BigNumber, ControlWords, LessonWords, QuestionWords } from './messages/lesson-words.ts';
