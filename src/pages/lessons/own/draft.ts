/** A lesson while it is written, kept on this device until it is whole. */
import { createSignal, untrack } from 'solid-js';
import * as z from 'zod/mini';
import {
  CURVE_AXES,
  CURVE_COLUMNS,
  findMeasure,
  isObject,
  MEASURE_IDS,
  MOST_OPTIONS,
  openingExample,
  OWN_LESSON_KIND,
  OWN_LESSON_VERSION,
  type CurveColumn,
  type MeasureId,
  type OwnLesson,
  type OwnQuestionKind,
} from '../../../../sim/index.ts';
import { keptStore } from '../../../state/browser-store.ts';
import type { Shape } from '../../../state/kept-shape.ts';

/** The still of a lesson: the one on the bench, the one that came with the lesson, or an example by its name. */
export const FROM_BENCH = 'bench';
export const OF_LESSON = 'lesson';

export interface Draft {
  readonly title: string;
  readonly still: string;
  /** What came with the lesson, as JSON. */
  readonly scenario: unknown;
  readonly setUp: string;
  readonly kind: OwnQuestionKind;
  readonly ask: string;
  readonly options: readonly string[];
  readonly right: number;
  readonly measure: MeasureId;
  readonly numberMin: number;
  readonly numberMax: number;
  readonly column: CurveColumn;
  readonly curveMin: number;
  readonly curveMax: number;
  readonly until_s: number;
  readonly explanation: string;
  readonly safety: string;
}

const [TWO_HOURS_S, FOUR_HOURS_S] = [7200, 14_400];
const NO_OPTIONS = Array.from({ length: MOST_OPTIONS }, () => '');

/** Ends of a line or an axis that suit most home stills; the reader changes them. */
export function usualEnds(quantity: string): { readonly min: number; readonly max: number } {
  switch (quantity) {
    case 'duration':
      return { min: 0, max: FOUR_HOURS_S };
    case 'temperature':
      return { min: 273.15, max: 383.15 };
    case 'oilVolume':
      return { min: 0, max: 60e-6 };
    case 'steamFlow':
      return { min: 0, max: 2e-3 };
    case 'water':
      return { min: 0, max: 10 };
    default:
      return { min: 0, max: 5 };
  }
}

const ofNumber = (measure: MeasureId) => {
  const { min, max } = usualEnds(findMeasure(measure).quantity);
  return { measure, numberMin: min, numberMax: max };
};
const ofCurve = (column: CurveColumn) => {
  const { min, max } = usualEnds(CURVE_AXES[column].quantity);
  return { column, curveMin: min, curveMax: max };
};
export { ofNumber as withMeasure, ofCurve as withColumn };

export const EMPTY_DRAFT: Draft = {
  title: '',
  still: openingExample.id,
  scenario: null,
  setUp: '',
  kind: 'choice',
  ask: '',
  options: NO_OPTIONS,
  right: 0,
  ...ofNumber('first-drop'),
  ...ofCurve('potTemperature_K'),
  until_s: TWO_HOURS_S,
  explanation: '',
  safety: '',
};

/** A draft of a whole lesson, to change it. */
export function draftOf({ title, still, setUp, question, explanation, safety }: OwnLesson): Draft {
  const common = {
    ...EMPTY_DRAFT,
    title,
    setUp,
    explanation,
    safety,
    kind: question.kind,
    ask: question.ask,
    ...('example' in still ? { still: still.example } : { still: OF_LESSON, scenario: still.scenario }),
  };
  if (question.kind === 'choice')
    return { ...common, options: NO_OPTIONS.map((_, place) => question.options[place] ?? ''), right: question.right };
  if (question.kind === 'number')
    return { ...common, measure: question.measure, numberMin: question.min, numberMax: question.max };
  return {
    ...common,
    column: question.column,
    curveMin: question.min,
    curveMax: question.max,
    until_s: question.until_s,
  };
}

/** What a file of the draft would hold, whole or not. */
export function fileOf(draft: Draft, onBench: unknown): unknown {
  const { kind, ask } = draft;
  // Answers that are left empty at the end are none.
  const last = draft.options.findLastIndex((option) => option.trim() !== '');
  return {
    kind: OWN_LESSON_KIND,
    version: OWN_LESSON_VERSION,
    title: draft.title,
    still:
      draft.still === FROM_BENCH
        ? { scenario: onBench }
        : draft.still === OF_LESSON
          ? { scenario: draft.scenario }
          : { example: draft.still },
    setUp: draft.setUp,
    question:
      kind === 'choice'
        ? { kind, ask, options: draft.options.slice(0, last + 1), right: draft.right }
        : kind === 'number'
          ? { kind, ask, measure: draft.measure, min: draft.numberMin, max: draft.numberMax }
          : { kind, ask, column: draft.column, min: draft.curveMin, max: draft.curveMax, until_s: draft.until_s },
    explanation: draft.explanation,
    safety: draft.safety,
  };
}

const text = z.catch(z.string(), '');
const draftSchema = z.object({
  title: text,
  still: z.catch(z.string(), EMPTY_DRAFT.still),
  scenario: z._default(z.unknown(), null),
  setUp: text,
  kind: z.catch(z.enum(['choice', 'number', 'curve']), EMPTY_DRAFT.kind),
  ask: text,
  options: z.catch(z.array(z.string()).check(z.length(MOST_OPTIONS)), [...NO_OPTIONS]),
  right: z.catch(z.number(), EMPTY_DRAFT.right),
  measure: z.catch(z.enum(MEASURE_IDS as [MeasureId, ...MeasureId[]]), EMPTY_DRAFT.measure),
  numberMin: z.catch(z.number(), EMPTY_DRAFT.numberMin),
  numberMax: z.catch(z.number(), EMPTY_DRAFT.numberMax),
  column: z.catch(z.enum(CURVE_COLUMNS), EMPTY_DRAFT.column),
  curveMin: z.catch(z.number(), EMPTY_DRAFT.curveMin),
  curveMax: z.catch(z.number(), EMPTY_DRAFT.curveMax),
  until_s: z.catch(z.number(), EMPTY_DRAFT.until_s),
  explanation: text,
  safety: text,
});

export const draftShape: Shape<Draft> = {
  version: 1,
  read: (value) => (isObject(value) ? draftSchema.parse(value) : null),
};

const KEY = 'lesson/draft';
const [draft, setDraft] = createSignal<Draft | null>(null);
export { draft };

/** Opens what was kept, once. */
export async function openDraft(): Promise<void> {
  if (untrack(draft) !== null) return;
  try {
    const kept = await keptStore().read(KEY, draftShape);
    setDraft((now) => now ?? (kept.kind === 'read' ? kept.value : EMPTY_DRAFT));
  } catch {
    // A browser that keeps nothing still lets a lesson be written.
    setDraft((now) => now ?? EMPTY_DRAFT);
  }
}

export function keepDraft(next: Draft): void {
  setDraft(next);
  keptStore().keep(KEY, draftShape, next);
}

export const changeDraft = (changed: Partial<Draft>): void => {
  const before = untrack(draft);
  if (before) keepDraft({ ...before, ...changed });
};
