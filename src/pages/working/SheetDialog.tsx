/** One sheet of working. */
import { createMemo, For, Show } from 'solid-js';
import type { UnitSystem, WorkingSheet } from '../../../sim/index.ts';
import { Dialog } from '../../ui/Dialog.tsx';
import { WorkingStepView } from './WorkingStepView.tsx';
import '../analysis.css';
import './working.css';

export interface SheetDialogProps {
  readonly open: boolean;
  readonly sheet: () => WorkingSheet;
  readonly units: UnitSystem;
  readonly onClose: () => void;
}

export function SheetDialog(props: SheetDialogProps) {
  const sheet = createMemo(() => (props.open ? props.sheet() : null));
  return (
    <Dialog open={props.open} title="The working" onClose={() => props.onClose()}>
      <div class="working-scroll" tabindex="0" role="region" aria-label="Working">
        <Show when={sheet()}>
          {(found) => (
            <>
              <p class="working-result">{found().title}</p>
              <p class="answer-quiet">{found().says} The equations work in SI units.</p>
              <For each={found().steps}>
                {(step, index) => <WorkingStepView step={step} number={index() + 1} units={props.units} />}
              </For>
              <p class="working-origin">The number comes from {found().result.from}.</p>
            </>
          )}
        </Show>
      </div>
    </Dialog>
  );
}
