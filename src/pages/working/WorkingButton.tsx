/** Opens the working of a headline number. The sheet, its typesetting and its worker are fetched when first opened. */
import { lazy, Show } from 'solid-js';
import type { Scenario, WorkingId, WorkingSheet, UnitSystem } from '../../../sim/index.ts';
import { LateDialog } from './LateDialog.tsx';

const WorkingDialog = lazy(async () => ({ default: (await import('./WorkingDialog.tsx')).WorkingDialog }));

export interface WorkingButtonProps {
  /** The number whose working is shown first. */
  readonly topic: WorkingId;
  /** The working of a number that the page has at hand: shown before any other. */
  readonly sheet?: (() => WorkingSheet | null) | undefined;
  /** The scenario that was run, not one that is ahead of its run. */
  readonly scenario: Scenario;
  readonly units: UnitSystem;
  /** Instead of `Show the working`. */
  readonly words?: string;
  /** What it is the working of, for a reader who hears the button alone. */
  readonly of?: string;
}

export function WorkingButton(props: WorkingButtonProps) {
  return (
    <LateDialog
      words={
        <>
          {props.words ?? 'Show the working'}
          <Show when={props.of}>{(of) => <span class="visually-hidden"> of {of()}</span>}</Show>
        </>
      }
    >
      {(open, close) => (
        <WorkingDialog
          open={open()}
          topic={props.topic}
          sheet={props.sheet}
          scenario={props.scenario}
          units={props.units}
          onClose={close}
        />
      )}
    </LateDialog>
  );
}
