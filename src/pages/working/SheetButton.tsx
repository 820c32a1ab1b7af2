/** Opens the working of a number that the page itself has at hand. */
import { createSignal, lazy, Show, Suspense } from 'solid-js';
import type { UnitSystem, WorkingSheet } from '../../../sim/index.ts';

const SheetDialog = lazy(async () => ({ default: (await import('./SheetDialog.tsx')).SheetDialog }));

export interface SheetButtonProps {
  /** Made when it is opened. */
  readonly sheet: () => WorkingSheet;
  readonly units: UnitSystem;
  /** What it is the working of, for a reader who hears the button alone. */
  readonly of: string;
}

export function SheetButton(props: SheetButtonProps) {
  const [wanted, setWanted] = createSignal(false);
  const [open, setOpen] = createSignal(false);
  return (
    <>
      <button
        type="button"
        class="word"
        onClick={() => {
          setWanted(true);
          setOpen(true);
        }}
      >
        how<span class="visually-hidden"> {props.of} is worked out</span>
      </button>
      <Show when={wanted()}>
        <Suspense>
          <SheetDialog open={open()} sheet={props.sheet} units={props.units} onClose={() => setOpen(false)} />
        </Suspense>
      </Show>
    </>
  );
}
