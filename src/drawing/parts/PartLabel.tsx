/** Words beside a part: its name, one line of live numbers, a hairline to what they name. */
import { Show } from 'solid-js';
import { NAME_HEIGHT } from '../geometry/label-wishes.ts';
import type { LabelId, Place } from '../geometry/labels.ts';

export interface PartWords {
  readonly name: string;
  readonly line: string;
  /** What a screen reader hears and a voice may call it by: the words that are seen, and more. */
  readonly label: string;
  /** The line tells of a danger that is there now. */
  readonly alarm: boolean;
}

interface PartLabelProps {
  readonly id: LabelId;
  readonly place: Place<LabelId>;
  readonly words: PartWords;
  readonly textScale: number;
  readonly selected: boolean;
}

export function PartLabel(props: PartLabelProps) {
  const textX = () => {
    const { box, align } = props.place;
    return align === 'start' ? box.x : align === 'end' ? box.x + box.width : box.x + box.width / 2;
  };
  const nameY = () => props.place.box.y + 14 * props.textScale;
  return (
    <>
      <Show when={props.place.leader}>
        {(leader) => (
          <>
            <path
              class="drawing-leader"
              d={`M${leader().from.x} ${leader().from.y}L${leader().to.x} ${leader().to.y}`}
            />
            <circle class="drawing-leader-end" cx={leader().to.x} cy={leader().to.y} r="1.8" />
          </>
        )}
      </Show>
      <g
        class={`drawing-label drawing-label-${props.id}`}
        classList={{ 'is-alarm': props.words.alarm }}
        text-anchor={props.place.align}
      >
        <rect
          class="drawing-target"
          x={props.place.box.x}
          y={props.place.box.y}
          width={props.place.box.width}
          height={props.place.box.height}
        />
        <g class="drawing-underline" text-decoration={props.selected ? 'underline' : 'none'}>
          <text class="drawing-name" x={textX()} y={nameY()}>
            {props.words.name}
          </text>
        </g>{' '}
        <text class="drawing-line" x={textX()} y={nameY() + NAME_HEIGHT * props.textScale}>
          {props.words.line}
        </text>
      </g>
    </>
  );
}
