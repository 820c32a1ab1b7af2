/** The still on the bench as a link to pass on. */
import { createEffect, createSignal, on } from 'solid-js';
import type { Scenario } from '../../sim/index.ts';
import { Dialog } from '../ui/Dialog.tsx';
import { shareHash } from '../state/share-link.ts';

export interface ShareDialogProps {
  readonly open: boolean;
  readonly scenario: Scenario;
  readonly onClose: () => void;
}

export function ShareDialog(props: ShareDialogProps) {
  const [link, setLink] = createSignal('');
  const [said, setSaid] = createSignal('');
  let field!: HTMLInputElement;

  createEffect(
    on(
      () => props.open && props.scenario,
      (scenario) => {
        if (!scenario) return;
        setSaid('');
        void shareHash(scenario).then((hash) => {
          setLink(new URL(hash, location.href).href);
          field.focus();
          field.select();
        });
      },
    ),
  );

  const copy = async () => {
    try {
      await navigator.clipboard.writeText(link());
      setSaid('Copied.');
    } catch {
      field.focus();
      field.select();
      setSaid('This browser won’t copy by itself: the link is selected, so copy it by hand.');
    }
  };

  return (
    <Dialog open={props.open} title="Share this still" onClose={() => props.onClose()}>
      <p>Whoever opens this link has the still on their own bench.</p>
      <div class="share">
        <input
          ref={field}
          class="share-link"
          type="text"
          readOnly
          aria-label="Link to this still"
          value={link()}
          onFocus={(event) => event.currentTarget.select()}
        />
        <button type="button" onClick={() => void copy()}>
          Copy
        </button>
      </div>
      <p role="status" class="share-said">
        {said()}
      </p>
      <p class="quiet">
        The whole still is in the link itself, its name and note included. Nothing is kept anywhere else.
      </p>
    </Dialog>
  );
}
