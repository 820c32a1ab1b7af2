/**
 * The sheets, laid out while the page prints. They are fetched beforehand and stand at once: the browser's own menu
 * prints what is there when it has said that it will.
 */
import { createSignal, Show } from 'solid-js';
import { Dynamic } from 'solid-js/web';
import { useBench } from '../../../state/bench.ts';
import type { SheetsProps } from './Sheets.tsx';

export const loadSheets = () => import('./Sheets.tsx');

export function SheetsOnPaper(props: SheetsProps) {
  const bench = useBench();
  const [fetched, setFetched] = createSignal<Awaited<ReturnType<typeof loadSheets>> | null>(null);
  void loadSheets().then(setFetched);
  return (
    <Show when={bench.paper.onPaper() && fetched()}>
      {(sheets) => (
        <div class="lesson-sheets">
          <Dynamic component={sheets().Sheets} {...props} />
        </div>
      )}
    </Show>
  );
}
