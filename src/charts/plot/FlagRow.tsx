/** One row of event flags: words where there is room, a mark where there is none. */
import { createMemo, Index, Show } from 'solid-js';
import { formatDuration } from '../../units/index.ts';
import type { Flag } from '../model/event-words.ts';
import { placeFlags } from '../model/place-flags.ts';
import { textWidth } from './text-width.ts';

export interface FlagRowProps {
  readonly flags: readonly Flag[];
  readonly left: number;
  readonly width: number;
  readonly pixelOf: (x: number) => number;
  readonly font: string;
  /** Whether the flags stand on the time axis, so that words end in a time and lead there. */
  readonly timed: boolean;
  readonly onPick?: ((x: number) => void) | undefined;
}

const STAFF_GAP = 5;

export function FlagRow(props: FlagRowProps) {
  const wordsOf = (flag: Flag) => {
    const mark = flag.severity === 'alarm' ? '▲ ' : '';
    return props.timed ? `${mark}${flag.words} ${formatDuration(flag.x, { short: true })}` : mark + flag.words;
  };
  const placed = createMemo(() => {
    const wanted = props.flags.map((flag) => ({
      x: props.pixelOf(flag.x),
      width: textWidth(wordsOf(flag), props.font) + STAFF_GAP,
      rank: flag.rank,
    }));
    const sides = placeFlags(wanted, props.width);
    return props.flags.map((flag, index) => ({ flag, x: wanted[index]?.x ?? 0, side: sides[index] ?? 'none' }));
  });

  return (
    <ul class="chart-flags" aria-label={props.timed ? 'Events' : 'Marks'} style={{ 'margin-left': `${props.left}px`, width: `${props.width}px` }}>
      <Index each={placed()}>
        {(place) => (
          <li class={`chart-flag is-${place().flag.severity} is-${place().side}`} style={{ left: `${place().x}px` }}>
            <Show
              when={place().side !== 'none'}
              fallback={
                <>
                  <span class="chart-flag-mark" title={wordsOf(place().flag)} aria-hidden="true">
                    {place().flag.severity === 'alarm' ? '▲' : '●'}
                  </span>
                  <span class="heard">{wordsOf(place().flag)}</span>
                </>
              }
            >
              <Show when={props.onPick} fallback={<span class="chart-flag-words">{wordsOf(place().flag)}</span>}>
                {(pick) => (
                  <button type="button" class="chart-flag-words" title={place().flag.sentence} onClick={() => pick()(place().flag.x)}>
                    {wordsOf(place().flag)}
                  </button>
                )}
              </Show>
            </Show>
          </li>
        )}
      </Index>
    </ul>
  );
}
