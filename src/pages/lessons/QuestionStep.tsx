/** A question of a lesson, with the groups that answer it. */
import { Match, Show, Switch } from 'solid-js';
import type { Question, QuestionWords, Reader } from '../../../sim/index.ts';
import { ChoiceQuestion } from './ChoiceQuestion.tsx';
import { anyoneCommitted, classRoom } from './commitments.ts';
import { CurveQuestion } from './CurveQuestion.tsx';
import { Terms } from './Explained.tsx';
import { GroupBar } from './GroupBar.tsx';
import { NumberQuestion } from './NumberQuestion.tsx';

export interface QuestionStepProps {
  readonly lesson: string;
  readonly question: Question;
  readonly words: QuestionWords;
  readonly reader: Reader;
}

export function QuestionStep(props: QuestionStepProps) {
  const isNobody = () => !anyoneCommitted(props.lesson, props.question);
  return (
    <div class="lesson-question">
      <GroupBar committed={(group) => classRoom.commitment(props.lesson, props.question.id, group) !== null} />
      <Switch>
        <Match when={props.question.kind === 'choice' && props.question}>
          {(question) => <ChoiceQuestion lesson={props.lesson} question={question()} words={props.words} />}
        </Match>
        <Match when={props.question.kind === 'number' && props.question}>
          {(question) => (
            <NumberQuestion lesson={props.lesson} question={question()} words={props.words} reader={props.reader} />
          )}
        </Match>
        <Match when={props.question.kind === 'curve' && props.question}>
          {(question) => (
            <CurveQuestion lesson={props.lesson} question={question()} words={props.words} reader={props.reader} />
          )}
        </Match>
      </Switch>
      <Terms texts={[props.words.ask, ...Object.values(props.words.options ?? {})]} reader={props.reader} />
      <p class="lesson-quiet" role="status">
        <Show when={isNobody()}>Nobody has answered yet. A guess first makes the answer stick.</Show>
      </p>
    </div>
  );
}
