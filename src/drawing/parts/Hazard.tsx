/** A caution at the hazard: a triangle and a few words; in the alarm colour when the danger is there now. */
import { createMemo, Index, Show } from 'solid-js';
import { CAUTION_LETTERS } from '../caution-room.ts';
import type { Caution } from '../cautions.ts';
import { HAZARD_LINE_HEIGHT } from '../geometry/label-wishes.ts';
import type { HazardId, Place } from '../geometry/labels.ts';
import { breakLines } from '../line-breaks.ts';

export function Hazard(props: {
  readonly place: Place<HazardId>;
  readonly caution: Caution | null;
  readonly textScale: number;
}) {
  const lines = createMemo(() => (props.caution ? breakLines(props.caution.words, CAUTION_LETTERS) : []));
  const x = () => {
    const { box, align } = props.place;
    return align === 'start' ? box.x + 16 : align === 'end' ? box.x + box.width : box.x + box.width / 2;
  };
  const anchorX = () => (props.place.leader ? props.place.leader.to.x : props.place.box.x);
  const anchorY = () => (props.place.leader ? props.place.leader.to.y : props.place.box.y);
  return (
    <Show when={props.caution}>
      {(caution) => (
        <g
          class="drawing-hazard"
          classList={{ 'is-care': caution().level === 'care', 'is-alarm': caution().level === 'alarm' }}
          text-anchor={props.place.align}
        >
          <Show when={props.place.covers}>
            <rect
              class="drawing-hazard-slip"
              x={props.place.box.x - 4}
              y={props.place.box.y - 2}
              width={props.place.box.width + 8}
              height={(6 + lines().length * HAZARD_LINE_HEIGHT) * props.textScale}
            />
          </Show>
          <Show when={props.place.leader}>
            {(leader) => (
              <path
                class="drawing-hazard-leader"
                d={`M${leader().from.x} ${leader().from.y}L${leader().to.x} ${leader().to.y}`}
              />
            )}
          </Show>
          <path class="drawing-hazard-mark" d={`M${anchorX()} ${anchorY() - 7}l6.5 11h-13Z`} />
          <Index each={lines()}>
            {(line, index) => (
              <text
                class="drawing-line"
                x={x()}
                y={props.place.box.y + (13 + index * HAZARD_LINE_HEIGHT) * props.textScale}
              >
                {line()}
              </text>
            )}
          </Index>
        </g>
      )}
    </Show>
  );
}
