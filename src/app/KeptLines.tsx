/** What the page has to say about what is kept, fetched when there is something. */
import { For } from 'solid-js';
import { clashWords } from '../state/clash-words.ts';
import type { KeptStore } from '../state/kept-store.ts';
import { Notice } from './Notice.tsx';

export interface KeptLinesProps {
  readonly store: KeptStore;
}

export function KeptLines(props: KeptLinesProps) {
  const clashes = () => [...new Set(props.store.clashes().flatMap((clash) => clashWords(clash) ?? []))];
  return (
    <For each={clashes()}>{(words) => <Notice message={words} onDismiss={() => props.store.forgetClashes()} />}</For>
  );
}
