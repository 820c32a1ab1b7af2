/** One row of event flags: words where there is room, a mark where there is none. */
import { createMemo, Index, Show } from 'solid-js';
import { timedWords, untimedWords, type Flag } from '../model/event-words.ts';
import { placeFlags, type FlagSide } from '../model/place-flags.ts';
import { textWidth } from './text-width.ts';

export interface FlagRowProps {
  readonly flags: readonly Flag[];
  readonly left: number;
  readonly width: number;
  /** Room right of the axis into which words may run. */
  readonly right: number;
  readonly pixelOf: (x: number) => number;
  readonly font: string;
  /** Whether the flags stand on the time axis, so that words end in a time and lead there. */
  readonly timed: boolean;
  readonly onPick?: ((x: number) => void) | undefined;
}

const STAFF_GAP = 5;
/** Room for the triangle before an alarm. */
const ALARM_MARK = 14;

interface PlacedFlag {
  readonly flag: Flag;
  readonly words: string;
  readonly x: number;
  readonly side: FlagSide;
}

export function FlagRow(props: FlagRowProps) {
  const place = (wordsOf: (flag: Flag) => string): readonly PlacedFlag[] => {
    const wanted = props.flags.map((flag) => ({
      x: props.pixelOf(flag.x),
      width:
        textWidth(wordsOf(flag), flag.severity === 'alarm' ? `600 ${props.font}` : props.font) +
        STAFF_GAP +
        (flag.severity === 'alarm' ? ALARM_MARK : 0),
      rank: flag.rank,
    }));
    const sides = placeFlags(wanted, props.width + props.right);
    return props.flags.map((flag, index) => ({
      flag,
      words: wordsOf(flag),
      x: wanted[index]?.x ?? 0,
      side: sides[index] ?? 'none',
    }));
  };
  const shown = (flags: readonly PlacedFlag[]) => flags.filter(({ side }) => side !== 'none').length;
  /** Where times would cost words their room, the words go without. */
  const placed = createMemo(() => {
    const bare = place(untimedWords);
    const full = props.timed ? place(timedWords) : bare;
    return shown(full) < shown(bare) ? bare : full;
  });

  return (
    <ul
      class="chart-flags"
      aria-label={props.timed ? 'Events' : 'Marks'}
      style={{ 'margin-left': `${props.left}px`, width: `${props.width}px` }}
    >
      <Index each={placed()}>
        {(at) => (
          <li class={`chart-flag is-${at().flag.severity} is-${at().side}`} style={{ left: `${at().x}px` }}>
            <Show when={at().side !== 'none'} fallback={<span class="visually-hidden">{at().words}</span>}>
              <Show
                when={props.onPick}
                fallback={
                  <span class="chart-flag-words" classList={{ 'alarm-mark': at().flag.severity === 'alarm' }}>
                    {at().words}
                  </span>
                }
              >
                {(pick) => (
                  <button
                    type="button"
                    class="chart-flag-words prints"
                    classList={{ 'alarm-mark': at().flag.severity === 'alarm' }}
                    title={at().flag.sentence}
                    onClick={() => pick()(at().flag.x)}
                  >
                    {at().words}
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
