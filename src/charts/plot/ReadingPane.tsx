/** The pane over a plot that takes pointer and keys: moves the reading line, and drags the time mark. */
import { createSignal } from 'solid-js';
import { xAtPixel, type PreparedChart } from '../model/prepare.ts';

export interface ReadingPaneProps {
  readonly prepared: PreparedChart;
  /** Where the reading line stands, or where it would start. */
  readonly reading: number;
  readonly steps: { readonly small: number; readonly large: number };
  /** The place in words: `47 min`. */
  readonly placeWords: string;
  readonly describedBy: string;
  readonly onReading: (x: number | null) => void;
  /** Reads out the values at a place, once the reader pauses. */
  readonly onSpeak: (x: number) => void;
  /** Moves the time mark; without it the chart has none. */
  readonly onScrub?: ((x: number) => void) | undefined;
}

export function ReadingPane(props: ReadingPaneProps) {
  const [dragging, setDragging] = createSignal(false);
  const layout = () => props.prepared.layout;
  const top = () => layout().lanes[0]?.top ?? 0;
  const domain = () => props.prepared.xDomain;

  const xOfPointer = (event: PointerEvent & { currentTarget: HTMLElement }): number =>
    xAtPixel(props.prepared, event.clientX - event.currentTarget.getBoundingClientRect().left);

  const goTo = (x: number): void => {
    const [low, high] = domain();
    const index = Math.max(low, Math.min(high, x));
    props.onReading(index);
    props.onSpeak(index);
  };

  const onKeyDown = (event: KeyboardEvent): void => {
    const [low, high] = domain();
    const step = event.shiftKey ? props.steps.large : props.steps.small;
    const moves: Readonly<Record<string, () => void>> = {
      ArrowLeft: () => goTo(props.reading - step),
      ArrowRight: () => goTo(props.reading + step),
      ArrowDown: () => goTo(props.reading - step),
      ArrowUp: () => goTo(props.reading + step),
      PageDown: () => goTo(props.reading - props.steps.large),
      PageUp: () => goTo(props.reading + props.steps.large),
      Home: () => goTo(low),
      End: () => goTo(high),
      Enter: () => props.onScrub?.(props.reading),
      Escape: () => props.onReading(null),
    };
    const move = moves[event.key];
    if (!move || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    move();
  };

  const startDrag = (event: PointerEvent & { currentTarget: HTMLElement }): void => {
    if (event.button !== 0 || !props.onScrub) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    setDragging(true);
    props.onReading(null);
    props.onScrub(xOfPointer(event));
  };

  const move = (event: PointerEvent & { currentTarget: HTMLElement }): void => {
    if (dragging()) props.onScrub?.(xOfPointer(event));
    else if (event.pointerType !== 'touch') props.onReading(xOfPointer(event));
  };

  return (
    <div
      class="chart-pane"
      classList={{ 'is-dragging': dragging(), 'can-drag': props.onScrub !== undefined }}
      role="slider"
      tabindex="0"
      aria-label={`${props.prepared.chart.title}: reading line`}
      aria-describedby={props.describedBy}
      aria-valuemin={domain()[0]}
      aria-valuemax={domain()[1]}
      aria-valuenow={props.reading}
      aria-valuetext={props.placeWords}
      style={{
        left: `${layout().left}px`,
        top: `${top()}px`,
        width: `${layout().plotWidth}px`,
        height: `${layout().axisTop - top()}px`,
      }}
      onKeyDown={onKeyDown}
      onBlur={() => props.onReading(null)}
      onPointerDown={startDrag}
      onPointerMove={move}
      onPointerUp={() => setDragging(false)}
      onPointerCancel={() => setDragging(false)}
      onPointerLeave={() => {
        if (!dragging()) props.onReading(null);
      }}
    />
  );
}
