/** A lesson that a teacher wrote, as it is taught. */
import { createMemo } from 'solid-js';
import {
  askedOf,
  CURVE_AXES,
  curveOfRun,
  findMeasure,
  lessonCommonMessages,
  optionWords,
  OWN_QUESTION,
  ownLessonMessages,
  quantities,
  stillOf,
  type OwnLesson,
  type Reader,
  type RunResult,
} from '../../../../sim/index.ts';
import { PlainPlot } from '../../../charts/plain/PlainPlot.tsx';
import { workerPool } from '../../../workers/start-pool.ts';
import type { TaughtAnswer, TaughtLesson } from '../taught.ts';

const ROOM_ABOVE = 1.1;

/** What is drawn beside the explanation: what was asked for over time, else the oil. */
function drawnOf({ question }: OwnLesson, run: RunResult) {
  const column = question.kind === 'curve' ? question.column : 'oilCollected_kg';
  const until_s = question.kind === 'curve' ? question.until_s : run.summary.end_s;
  const truth = curveOfRun(run, column, until_s);
  const { at_s, values } = truth.kind === 'curve' ? truth : { at_s: [], values: [] };
  const [min, max] =
    question.kind === 'curve'
      ? [question.min, question.max]
      : [0, ROOM_ABOVE * Math.max(1e-6, ...values.filter(Number.isFinite))];
  return { column, at_s, values, axes: { until_s, min, max, quantity: CURVE_AXES[column].quantity } };
}

function RunCurve(props: { readonly lesson: OwnLesson; readonly run: RunResult; readonly reader: Reader }) {
  const drawn = createMemo(() => drawnOf(props.lesson, props.run));
  const title = () => ownLessonMessages(props.reader).columns[drawn().column];
  return (
    <PlainPlot
      axes={drawn().axes}
      title={title().charAt(0).toUpperCase() + title().slice(1)}
      units={props.reader.units}
      curves={[{ name: title(), at_s: drawn().at_s, values: drawn().values, class: 'is-run' }]}
      says={`The run: ${title()}.`}
    />
  );
}

/** @param key tells one such lesson from another, so that each has answers of its own */
export function ownTaught(lesson: OwnLesson, key: string, reader: Reader, openOnBench: () => void): TaughtLesson {
  const common = lessonCommonMessages(reader);
  const words = ownLessonMessages(reader);
  const q = quantities(reader);
  const { question } = lesson;
  const scenario = stillOf(lesson);
  const runOf = (answer: TaughtAnswer): RunResult => {
    const [run] = answer.runs;
    if (!run) throw new RangeError('this lesson has no run');
    return run;
  };
  return {
    key,
    title: lesson.title,
    setUp: [lesson.setUp],
    cautions: [common.hazards.steam, ...(lesson.safety === '' ? [] : [lesson.safety])],
    questions: [askedOf(question)],
    asked: { [OWN_QUESTION]: { ask: question.ask, options: optionWords(question) } },
    choose: null,
    believed: '',
    leavesOut: '',
    further: '',
    reveal: () => workerPool().ask('ownLesson', [scenario, question], { priority: 'high', remember: true }),
    told: (answer) => {
      const { summary } = runOf(answer);
      const asked = answer.id === 'own' ? answer.asked : null;
      const truth = answer.truths[OWN_QUESTION];
      return {
        big: [
          ...(asked && truth?.kind === 'number' && question.kind === 'number'
            ? [
                {
                  value: common.quantity(findMeasure(asked.measure).quantity, truth.value),
                  says: words.measures[asked.measure],
                },
              ]
            : []),
          ...(asked?.measure === 'oil'
            ? []
            : [{ value: q.oil(summary.oilCollected_kg, summary.oilDensity_kg_m3), says: words.measures.oil }]),
        ],
        happened: [],
        why: [lesson.explanation],
      };
    },
    picture: (answer) => <RunCurve lesson={lesson} run={runOf(answer)} reader={reader} />,
    working: () => (
      <p class="lesson-tools">
        <button type="button" onClick={() => openOnBench()}>
          Put this still on the bench
        </button>
      </p>
    ),
    lastStep: null,
  };
}
