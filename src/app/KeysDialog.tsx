/** The list of keys, and the switch that turns the single ones off. */
import { For } from 'solid-js';
import { Dialog } from '../ui/Dialog.tsx';
import { KEYS } from '../state/key-words.ts';

export interface KeysDialogProps {
  readonly open: boolean;
  readonly keysOn: boolean;
  readonly onKeysOn: (on: boolean) => void;
  readonly onClose: () => void;
}

export function KeysDialog(props: KeysDialogProps) {
  return (
    <Dialog open={props.open} title="Keys" onClose={() => props.onClose()}>
      <table class="keys">
        <tbody>
          <For each={KEYS}>
            {({ keys, does }) => (
              <tr>
                <th scope="row">
                  <kbd>{keys}</kbd>
                </th>
                <td>{does}</td>
              </tr>
            )}
          </For>
        </tbody>
      </table>
      <label class="keys-on">
        <input
          type="checkbox"
          checked={props.keysOn}
          onChange={(event) => props.onKeysOn(event.currentTarget.checked)}
        />{' '}
        Use these keys
      </label>
      <p class="quiet">They wait while you type in a field, and sliders keep their own arrows.</p>
    </Dialog>
  );
}
