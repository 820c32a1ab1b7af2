/** A knot of a schedule: to drag, or to move with the arrow keys. */
import { createSignal } from 'solid-js';

export interface KnotMove {
  readonly time: -1 | 0 | 1;
  readonly value: -1 | 0 | 1;
  readonly large: boolean;
}

export interface KnotHandleProps {
  readonly name: string;
  /** Its value in the unit shown, for a screen reader's sense of range. */
  readonly now: number;
  readonly min: number;
  readonly max: number;
  /** `60 % from 32 min` */
  readonly words: string;
  readonly describedBy: string;
  readonly x: number;
  readonly y: number;
  readonly ramp: boolean;
  readonly ref: (element: HTMLElement) => void;
  /** To a place in the plot, in pixels. */
  readonly onDrag: (x: number, y: number) => void;
  readonly onDragging: (dragging: boolean) => void;
  readonly onMove: (move: KnotMove) => void;
  readonly onRemove: () => void;
  readonly onToggle: () => void;
  readonly onAdd: () => void;
}

const MOVES: Readonly<Record<string, Pick<KnotMove, 'time' | 'value'>>> = {
  ArrowLeft: { time: -1, value: 0 },
  ArrowRight: { time: 1, value: 0 },
  ArrowUp: { time: 0, value: 1 },
  ArrowDown: { time: 0, value: -1 },
};

export function KnotHandle(props: KnotHandleProps) {
  const [grip, setGrip] = createSignal<{ readonly dx: number; readonly dy: number } | null>(null);

  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const move = MOVES[event.key];
    if (move) props.onMove({ ...move, large: event.shiftKey });
    else if (event.key === 'Delete' || event.key === 'Backspace') props.onRemove();
    else if (event.key === 'Insert' || event.key === 'Enter') props.onAdd();
    else if (event.key === 's' || event.key === 'S') props.onToggle();
    else return;
    event.preventDefault();
    event.stopPropagation();
  };

  const release = (): void => {
    if (grip() === null) return;
    setGrip(null);
    props.onDragging(false);
  };

  return (
    <div
      ref={(element) => props.ref(element)}
      class="schedule-knot"
      classList={{ 'is-ramp': props.ramp, 'is-held': grip() !== null }}
      role="slider"
      tabindex="0"
      aria-label={props.name}
      aria-describedby={props.describedBy}
      aria-valuemin={props.min}
      aria-valuemax={props.max}
      aria-valuenow={props.now}
      aria-valuetext={props.words}
      title={props.words}
      style={{ transform: `translate(${props.x}px, ${props.y}px)` }}
      onKeyDown={onKeyDown}
      onDblClick={(event) => event.stopPropagation()}
      onPointerDown={(event) => {
        if (event.button !== 0) return;
        event.currentTarget.setPointerCapture(event.pointerId);
        setGrip({ dx: event.clientX - props.x, dy: event.clientY - props.y });
        props.onDragging(true);
      }}
      onPointerMove={(event) => {
        const held = grip();
        if (held) props.onDrag(event.clientX - held.dx, event.clientY - held.dy);
      }}
      onPointerUp={release}
      onPointerCancel={release}
    />
  );
}
