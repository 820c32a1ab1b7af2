/** The whole sentences of cautions that the drawing has room for in a few words only. */
import { For } from 'solid-js';
import { Dialog } from '../ui/Dialog.tsx';

export function CautionDialog(props: {
  readonly cautions: readonly string[];
  readonly open: boolean;
  readonly onClose: () => void;
}) {
  return (
    <Dialog open={props.open} title="Take care" onClose={() => props.onClose()}>
      <ul class="drawing-cautions">
        <For each={props.cautions}>{(words) => <li>{words}</li>}</For>
      </ul>
    </Dialog>
  );
}
