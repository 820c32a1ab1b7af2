/** Where to start from: an example, a blank still, or a file. */
import { For } from 'solid-js';
import { englishReader, safetyMessages } from '../../sim/index.ts';
import { Dialog } from '../ui/Dialog.tsx';

export interface StartingPoint {
  readonly id: string;
  readonly title: string;
  readonly says: string;
  readonly scenario: unknown;
}

export interface StartDialogProps {
  readonly open: boolean;
  readonly points: readonly StartingPoint[];
  readonly onChoose: (point: StartingPoint) => void;
  readonly onOpenFile: () => void;
  readonly onClose: () => void;
}

export const BLANK_STILL: StartingPoint = {
  id: 'blank',
  title: 'A blank still',
  says: 'Plain sizes to change one by one into your own.',
  scenario: { name: 'My still' },
};

export function StartDialog(props: StartDialogProps) {
  return (
    <Dialog open={props.open} title="Start from" onClose={() => props.onClose()}>
      <ul class="start">
        <li>
          <a class="start-choice" href="#begin" onClick={() => props.onClose()}>
            <span class="start-title">A few questions</span>
            <span class="start-says">What you have or want to buy. The answer is a still, and what to buy for it.</span>
          </a>
        </li>
        <For each={[...props.points, BLANK_STILL]}>
          {(point) => (
            <li>
              <button type="button" class="start-choice" onClick={() => props.onChoose(point)}>
                <span class="start-title">{point.title}</span>
                <span class="start-says">{point.says}</span>
              </button>
            </li>
          )}
        </For>
        <li>
          <button type="button" class="start-choice" onClick={() => props.onOpenFile()}>
            <span class="start-title">A file of yours</span>
            <span class="start-says">A scenario that was saved here before, as JSON.</span>
          </button>
        </li>
      </ul>
      <p>{safetyMessages(englishReader('metric')).licence}</p>
      <p class="quiet">What stands on the bench now stays among your stills if you changed it. Undo brings it back.</p>
    </Dialog>
  );
}
