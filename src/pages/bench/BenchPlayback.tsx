/** The time line, wired to the bench; it floats over the page while its place is scrolled away upwards. */
import { createIntersectionObserver } from '@solid-primitives/intersection-observer';
import { createSignal } from 'solid-js';
import { PlaybackBar } from '../../charts/playback/Playback.tsx';
import { useBench } from '../../state/bench.ts';

export function BenchPlayback() {
  const bench = useBench();
  const [afloat, setAfloat] = createSignal(false);
  let place!: HTMLDivElement;
  createIntersectionObserver(
    () => [place],
    (entries) => {
      const last = entries.at(-1);
      if (last) setAfloat(!last.isIntersecting && last.boundingClientRect.bottom <= 0);
    },
  );
  return (
    <div class="playback-place" ref={place}>
      <div class="playback-float" classList={{ 'is-afloat': afloat() }}>
        <PlaybackBar
          time_s={bench.time_s()}
          end_s={bench.end_s()}
          axisEnd_s={bench.axisEnd_s()}
          playing={bench.playing()}
          speed={bench.speed()}
          runs={[
            {
              letter: '',
              name: bench.result().scenario.name,
              events: bench.result().events,
              mostOil_s: bench.result().summary.t90_s,
              end_s: bench.end_s(),
            },
          ]}
          reader={bench.reader()}
          onTime={(time_s) => bench.setTime(time_s)}
          onPlay={() => bench.play()}
          onPause={() => bench.pause()}
          onSpeed={(speed) => bench.setSpeed(speed)}
        />
      </div>
    </div>
  );
}
