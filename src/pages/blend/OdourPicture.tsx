/** When the notes of a blend can be smelled at the film: bands over the time axis of the fading, and no strengths. */
import { createMemo, For, Index } from 'solid-js';
import { NOTE_CLASSES, odourSpans, type Fading, type NoteClass, type OdourSpan } from '../../../sim/index.ts';
import { Source } from '../parts/Source.tsx';
import { createThrottled } from '../../ui/throttled.ts';
import { LATEST_ms, timeScale, timeWords, type Frame } from './fade-picture.ts';

const NOTES: Readonly<Record<NoteClass, string>> = { top: 'top', middle: 'mid', base: 'base' };
const SPOKEN: Readonly<Record<NoteClass, string>> = { top: 'Top', middle: 'Middle', base: 'Base' };
const ROW_px = 22;
const BAR_px = 14;
export const ODOUR_px = NOTE_CLASSES.length * ROW_px;

export interface OdourPictureProps {
  readonly fading: Fading;
  readonly frame: Frame;
  readonly width: number;
}

const spanWords = (spans: readonly OdourSpan[], band: OdourSpan['band']): string | null => {
  const last = spans.filter((span) => span.band === band).at(-1);
  return last ? `until ${timeWords(last.to_s)}` : null;
};

/** `Top notes: surely until 1 h, perhaps until 3 h`. */
const told = (note: NoteClass, spans: readonly OdourSpan[]): string => {
  const surely = spanWords(spans, 'surely');
  const perhaps = spanWords(spans, 'perhaps');
  const words = [surely ? `surely ${surely}` : null, perhaps ? `perhaps ${perhaps}` : null].filter(
    (each) => each !== null,
  );
  return `${SPOKEN[note]} notes: ${words.length === 0 ? 'not smelled' : words.join(', ')}.`;
};

export function OdourPicture(props: OdourPictureProps) {
  const spans = createMemo(() => odourSpans(props.fading.film, props.fading.fade));
  const bars = createMemo(() =>
    NOTE_CLASSES.flatMap((note, row) => spans()[note].map((span) => ({ ...span, y: row * ROW_px }))),
  );
  const read = createThrottled(() => spans(), LATEST_ms);
  const words = createMemo(() => NOTE_CLASSES.map((note) => told(note, read()[note])).join(' '));
  const times = createMemo(() => props.fading.fade.times_s);
  const x = createMemo(() => timeScale(times(), props.frame));
  return (
    <div class="odour-picture">
      <h4>When it can be smelled at the film</h4>
      <svg width={props.width} height={ODOUR_px} role="img" aria-label={words()}>
        <For each={NOTE_CLASSES}>
          {(note, row) => (
            <text
              class="fade-tick"
              x={props.frame.left - 6}
              y={row() * ROW_px + BAR_px / 2}
              text-anchor="end"
              dominant-baseline="middle"
            >
              {NOTES[note]}
            </text>
          )}
        </For>
        <Index each={bars()}>
          {(bar) => (
            <rect
              class="odour-bar"
              data-band={bar().band}
              x={x()(bar().from_s)}
              y={bar().y}
              width={Math.max(0, x()(bar().to_s) - x()(bar().from_s))}
              height={BAR_px}
            />
          )}
        </Index>
      </svg>
      <p class="odour-key">
        <span class="odour-swatch" data-band="surely" /> above every threshold that we know{' '}
        <span class="odour-swatch" data-band="perhaps" /> above the lowest only: some people, some methods
      </p>
      <p class="answer-quiet">
        {words()} Thresholds differ up to a thousandfold between methods, and most here are estimates. A room thins the
        air by hundreds and more.{' '}
        <Source
          of={{
            kind: 'secondary',
            source: 'Cometto-Muñiz, Cain et al. 1998; Elsharif, Banerjee, Buettner 2015; Nagata; the rest estimates',
            note: 'widest ends that methods give',
          }}
        />
      </p>
    </div>
  );
}
