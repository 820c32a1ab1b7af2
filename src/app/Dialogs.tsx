/** What may lie over the page, fetched when first asked for. */
import { ShelfDialog, type ShelfDialogProps } from './ShelfDialog.tsx';
import { KeysDialog, type KeysDialogProps } from './KeysDialog.tsx';
import { ShareDialog, type ShareDialogProps } from './ShareDialog.tsx';
import { StartDialog, type StartDialogProps } from './StartDialog.tsx';
import './dialogs.css';

export type DialogName = 'keys' | 'start' | 'share' | 'shelf';

export interface DialogsProps
  extends
    Omit<KeysDialogProps, 'open'>,
    Omit<ShareDialogProps, 'open' | 'onClose'>,
    Omit<ShelfDialogProps, 'open' | 'onClose'>,
    Omit<StartDialogProps, 'open' | 'onClose'> {
  readonly open: DialogName | 'none';
}

export function Dialogs(props: DialogsProps) {
  return (
    <>
      <KeysDialog
        open={props.open === 'keys'}
        keysOn={props.keysOn}
        onKeysOn={(on) => props.onKeysOn(on)}
        onClose={() => props.onClose()}
      />
      <ShareDialog open={props.open === 'share'} scenario={props.scenario} onClose={() => props.onClose()} />
      <ShelfDialog
        open={props.open === 'shelf'}
        shelf={props.shelf}
        onBench={props.onBench}
        onClose={() => props.onClose()}
      />
      <StartDialog
        open={props.open === 'start'}
        points={props.points}
        onChoose={(point) => props.onChoose(point)}
        onOpenFile={() => props.onOpenFile()}
        onClose={() => props.onClose()}
      />
    </>
  );
}
