/** What the analyses ask of the model, each a pure function of plain data, so that any worker can carry out any of them. */
import {
  answerLesson,
  answerOwnLesson,
  type Example,
  examples,
  bandsOfFit,
  calibrateTogether,
  curveOver,
  ensembleDesign,
  findCorrelation,
  fittedScenario,
  gentleAgainstHard,
  hardestBoil,
  homeTest,
  leastTub,
  leastWater,
  nextRun,
  pairedDesign,
  runCourses,
  runLength,
  runMember,
  runOn,
  runPaired,
  simulate,
  sizeOwnTube,
  sizeTubeFrom,
  stopAdvice,
  tubes,
  workingSheets,
  type Calibration,
  type Course,
  type CoursesAsked,
  type Curve,
  type Design,
  type Draw,
  type FitName,
  type GentleAndHard,
  type HardestBoil,
  type HomeTestGiven,
  type LeastTub,
  type LeastWater,
  type LessonAnswer,
  type LessonId,
  type LoggedPoint,
  type LoggedStill,
  type NextRun,
  type MemberResult,
  type NonFinite,
  type OwnAnswer,
  type OwnBands,
  type OwnQuestion,
  type OwnTubeSize,
  type PairedDesign,
  type PairedRun,
  type RunLength,
  type RunResult,
  type Scenario,
  type StopAdvice,
  type StopRule,
  type TestResult,
  type SizedTube,
  type TubeSeen,
  type Turned,
  type WorkingSheet,
} from '../../sim/index.ts';
import { outletsAt, type MapAxis, type MapDetail, type MapNode, type OutletReading } from './condenser-map.ts';

/** How long to run, and when a rule says stop, of a run carried on until the oil has all but stopped. */
export interface LengthAnswer {
  readonly length: RunLength;
  readonly advice: StopAdvice;
  readonly end_s: number;
  /** Set when the run broke off, so that the rest means nothing. */
  readonly failure: NonFinite | null;
}

/** A fit, and the still with its factors. */
export interface FitAnswer {
  readonly calibration: Calibration;
  readonly fitted: { readonly scenario: Scenario; readonly bands: OwnBands } | null;
}

/** The last run that was carried on, kept because a change of the stop rule asks for it again. */
let carriedOn: { readonly of: string; readonly result: RunResult } | null = null;

function carriedOnRun(scenario: Scenario): RunResult {
  const of = JSON.stringify(scenario);
  if (carriedOn?.of !== of) carriedOn = { of, result: runOn(scenario) };
  return carriedOn.result;
}

function tubeNamed(id: string) {
  const tube = tubes.find((row) => row.id === id);
  if (!tube) throw new RangeError(`no tube is called ${id}`);
  return tube;
}

export const analysisTasks = {
  examples: (): readonly Example[] => examples,
  gentleAgainstHard: (scenario: Scenario): GentleAndHard => gentleAgainstHard(scenario),
  length(scenario: Scenario, rule: StopRule): LengthAnswer {
    const result = carriedOnRun(scenario);
    const { summary, failure } = result;
    return { length: runLength(result), advice: stopAdvice(result, rule), end_s: summary.end_s, failure };
  },
  design: (scenario: Scenario, members: number, seed: number, own: OwnBands): Design =>
    ensembleDesign(scenario, members, seed, own),
  members: (design: Design, indices: readonly number[]): readonly MemberResult[] =>
    indices.map((index) => runMember(design, index)),
  courses: (asked: CoursesAsked): readonly (Course | null)[] => runCourses(asked),
  pairedDesign: (scenarios: readonly Scenario[], draws: number, seed: number, own: readonly OwnBands[]): PairedDesign =>
    pairedDesign(scenarios, draws, seed, own),
  pairedRuns: (design: PairedDesign, indices: readonly number[]): readonly PairedRun[] =>
    indices.map((index) => runPaired(design, index)),
  nextRun: (scenario: Scenario, points: readonly LoggedPoint[]): NextRun => nextRun(scenario, points),
  /** Fits the first log, together with the others. */
  calibrate(stills: readonly LoggedStill[], names: readonly FitName[]): FitAnswer {
    const calibration = calibrateTogether(stills, names);
    const scenario = (stills[0] as LoggedStill).scenario;
    return {
      calibration,
      fitted: calibration.ok
        ? { scenario: fittedScenario(scenario, calibration), bands: bandsOfFit(calibration) }
        : null,
    };
  },
  homeTest: (scenario: Scenario, asked: HomeTestGiven): TestResult => homeTest(scenario, asked),
  sizeOwnTube: (scenario: Scenario, margin: number): OwnTubeSize => sizeOwnTube(scenario, { margin }),
  /** One tube, looked for from where those like it were found. */
  sizeTube: (
    scenario: Scenario,
    id: string,
    options: { readonly margin: number; readonly start_m: number; readonly deciding: readonly Draw[] },
    seen: readonly TubeSeen[],
  ): SizedTube => sizeTubeFrom(scenario, tubeNamed(id), options, seen),
  hardestBoil: (scenario: Scenario): HardestBoil => hardestBoil(scenario),
  leastWater: (scenario: Scenario): LeastWater => leastWater(scenario),
  leastTub: (scenario: Scenario, draw: Draw): LeastTub | null => leastTub(scenario, draw),
  outlets: (
    scenario: Scenario,
    axis: MapAxis,
    nodes: readonly MapNode[],
    detail: MapDetail,
  ): readonly OutletReading[] => outletsAt(scenario, axis, nodes, detail),
  /** A relation of the reference over one of its arguments; a few take seconds. */
  curve(name: string, values: Readonly<Record<string, number>>, symbol: string): Curve {
    const entry = findCorrelation(name);
    if (!entry) throw new RangeError(`no relation is called ${name}`);
    return curveOver(entry, values, symbol);
  },
  lesson: (id: LessonId, turned: Turned): LessonAnswer => answerLesson(id, turned),
  ownLesson: (scenario: Scenario, question: OwnQuestion): OwnAnswer => answerOwnLesson(scenario, question),
  working: (scenario: Scenario, at_s: number | null): readonly WorkingSheet[] =>
    workingSheets(simulate(scenario), at_s),
} as const;
