/** The sheets to print, fetched ahead so that they are there when the browser's own menu prints too. */
import { debounce } from '@solid-primitives/scheduled';
import { createEffect, createSignal, onMount, Show } from 'solid-js';
import { Dynamic } from 'solid-js/web';
import { useBench } from '../../state/bench.ts';

const loadParts = async () => {
  const [{ HandOut }, { createPrepared }, { botanicalTexts }] = await Promise.all([
    import('./hand-out/HandOut.tsx'),
    import('./hand-out/prepare.ts'),
    import('../../../sim/library-texts.ts'),
  ]);
  return { HandOut, prepared: createPrepared(), texts: botanicalTexts };
};

type Parts = Awaited<ReturnType<typeof loadParts>>;

/** After the settings, which more readers want. */
const AHEAD_AFTER_MS = 5000;
const QUIET_MS = 700;

export function BenchHandOut() {
  const bench = useBench();
  const [parts, setParts] = createSignal<Parts>();
  let loading: Promise<Parts> | null = null;
  const load = (): Promise<Parts> =>
    (loading ??= loadParts().then((loaded) => {
      setParts(loaded);
      return loaded;
    }));
  const still = () => bench.result().scenario;
  onMount(debounce(() => void load(), AHEAD_AFTER_MS));
  const linkSoon = debounce(() => void parts()?.prepared.findLink(still()), QUIET_MS);
  createEffect(() => {
    if (parts() && still() && !bench.running()) linkSoon();
  });
  bench.paper.readyBefore(async () => {
    const { prepared } = await load();
    await Promise.all([prepared.findLink(still()), prepared.findLikely(still())]);
  });

  return (
    <Show when={parts()}>
      {(loaded) => (
        <>
          <p class="hand-out-wait screen-only" role="status">
            {loaded().prepared.working() ? 'Working out the ranges for the print…' : ''}
          </p>
          <Show when={bench.paper.onPaper()}>
            <div class="hand-out-place">
              <Dynamic
                component={loaded().HandOut}
                result={bench.result()}
                units={bench.units()}
                reader={bench.reader()}
                link={loaded().prepared.link(still())}
                likely={loaded().prepared.likely(still())}
                texts={loaded().texts}
              />
            </div>
          </Show>
        </>
      )}
    </Show>
  );
}
