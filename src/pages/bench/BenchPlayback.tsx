/** The playback bar, wired to the bench. */
import { PlaybackBar } from '../../charts/playback/Playback.tsx';
import { useBench } from '../../state/bench.ts';

export function BenchPlayback() {
  const bench = useBench();
  return (
    <PlaybackBar
      time_s={bench.time_s()}
      end_s={bench.end_s()}
      axisEnd_s={bench.axisEnd_s()}
      playing={bench.playing()}
      speed={bench.speed()}
      events={bench.result().events}
      reader={bench.reader()}
      mostOil_s={bench.result().summary.t90_s}
      nextEvent={bench.nextEvent()}
      previousEvent={bench.previousEvent()}
      onTime={(time_s) => bench.setTime(time_s)}
      onPlay={() => bench.play()}
      onPause={() => bench.pause()}
      onSpeed={(speed) => bench.setSpeed(speed)}
    />
  );
}
