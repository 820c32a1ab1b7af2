/**
 * A caution: a sign at the hazard and its words in their place; in the alarm colour when the danger is there now. Few
 * words are a button that opens the whole sentence.
 */
import { createMemo, Index, Show } from 'solid-js';
import type { Caution } from '../cautions.ts';
import { SIGN_WIDTH, CAUTION_LINE_HEIGHT, type CautionPlace } from '../geometry/caution-places.ts';
import { bottom, right, type Point } from '../geometry/shapes.ts';
import { breakEvenly } from '../line-breaks.ts';

interface HazardProps {
  readonly place: CautionPlace;
  readonly caution: Caution | null;
  readonly textScale: number;
  readonly onRead: () => void;
}

/** From the top of a line of type to the middle of its letters, and to the line they stand on. */
const MIDDLE = 9;
const BASELINE = 14;

const sign = ({ x, y }: Point): string => `M${x} ${y - 7}l6.5 11h-13Z`;

export function Hazard(props: HazardProps) {
  const isBrief = () => props.place.form.isBrief;
  const lines = createMemo(() => {
    if (!props.caution) return [];
    return isBrief() ? [props.caution.brief] : breakEvenly(props.caution.words, props.place.form.letters);
  });
  const lineHeight = () => CAUTION_LINE_HEIGHT * props.textScale;
  const top = () => {
    const { box, stands } = props.place;
    const tall = lines().length * lineHeight();
    return stands === 'top' ? box.y : stands === 'bottom' ? bottom(box) - tall : box.y + (box.height - tall) / 2;
  };
  /** Words without a leader stand behind a sign of their own. */
  const ownSign = (): Point | null =>
    props.place.leader ? null : { x: props.place.box.x + 7, y: top() + MIDDLE * props.textScale + 1 };
  const x = () =>
    props.place.align === 'end' ? right(props.place.box) : props.place.box.x + (ownSign() ? SIGN_WIDTH : 0);
  const readByKey = (event: KeyboardEvent) => {
    if (!isBrief() || (event.key !== 'Enter' && event.key !== ' ')) return;
    event.preventDefault();
    props.onRead();
  };
  return (
    <Show when={props.caution}>
      {(caution) => (
        <g
          class="drawing-hazard"
          data-hazard={props.place.id}
          classList={{
            'is-care': caution().level === 'care',
            'is-alarm': caution().level === 'alarm',
            'is-brief': isBrief(),
          }}
          text-anchor={props.place.align}
          role={isBrief() ? 'button' : undefined}
          tabindex={isBrief() ? 0 : undefined}
          aria-label={isBrief() ? `${caution().brief}: read the whole caution` : undefined}
          onClick={() => isBrief() && props.onRead()}
          onKeyDown={readByKey}
        >
          <Show when={isBrief()}>
            <rect
              class="drawing-target"
              x={props.place.box.x}
              y={props.place.box.y}
              width={props.place.box.width}
              height={props.place.box.height}
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
          <path class="drawing-hazard-mark" d={sign(props.place.at) + (ownSign() ? sign(ownSign() as Point) : '')} />
          <Index each={lines()}>
            {(line, index) => (
              <text class="drawing-line" x={x()} y={top() + index * lineHeight() + BASELINE * props.textScale}>
                {line()}
              </text>
            )}
          </Index>
        </g>
      )}
    </Show>
  );
}
