/** Opens the working of a number that the page itself has at hand. */
import { lazy } from 'solid-js';
import type { UnitSystem, WorkingSheet } from '../../../sim/index.ts';
import { LateDialog } from './LateDialog.tsx';

const SheetDialog = lazy(async () => ({ default: (await import('./SheetDialog.tsx')).SheetDialog }));

export interface SheetButtonProps {
  /** Made when it is opened. */
  readonly sheet: () => WorkingSheet;
  readonly units: UnitSystem;
  /** What it is the working of, for a reader who hears the button alone. */
  readonly of: string;
}

export function SheetButton(props: SheetButtonProps) {
  return (
    <LateDialog
      words={
        <>
          how<span class="visually-hidden"> {props.of} is worked out</span>
        </>
      }
    >
      {(open, close) => <SheetDialog open={open()} sheet={props.sheet} units={props.units} onClose={close} />}
    </LateDialog>
  );
}
