/** What the page has to say about what is kept and about a run that takes long, fetched when there is something. */
import { For, Show } from 'solid-js';
import { useBench } from '../state/bench.ts';
import { clashWords } from '../state/clash-words.ts';
import type { KeptStore } from '../state/kept-store.ts';
import { waitingBuild } from '../state/waiting-build.ts';
import { LongRunLine } from './LongRunLine.tsx';
import { Notice } from './Notice.tsx';

export interface KeptLinesProps {
  readonly store: KeptStore;
  readonly onSaveScenario: () => void;
}

const CANNOT_KEEP =
  'This browser could not keep your work: its storage is full or blocked. Save the scenario as a file to have it later.';
const NEWER = 'A newer version of Limbeck is ready. Your work stays as it is.';

export function KeptLines(props: KeptLinesProps) {
  const bench = useBench();
  const clashes = () => [...new Set(props.store.clashes().flatMap((clash) => clashWords(clash) ?? []))];
  return (
    <>
      <Notice
        message={props.store.refused() ? CANNOT_KEEP : null}
        action={{ words: 'Save the scenario', act: () => props.onSaveScenario() }}
      />
      <Notice message={waitingBuild() ? NEWER : null} action={{ words: 'Use it now', act: () => waitingBuild()?.() }} />
      <For each={clashes()}>{(words) => <Notice message={words} onDismiss={() => props.store.forgetClashes()} />}</For>
      <Show when={bench.longRun()}>{(longRun) => <LongRunLine longRun={longRun()} />}</Show>
    </>
  );
}
