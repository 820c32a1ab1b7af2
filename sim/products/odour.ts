/**
 * Which notes of a fading film can be smelled when: bands and no strengths, since thresholds differ up to a thousandfold
 * between methods. The air is that at the film itself, for a nose at the strip; a room thins it by hundreds and more.
 */
import { odourThresholds, type OdourThreshold } from '../library/odour-thresholds.ts';
import type { BlendFilm, Fade } from './blend.ts';
import { NOTE_CLASSES, type NoteClass } from './oil.ts';

/** Under the lowest threshold of each; over the lowest of one; over the highest of one. */
export const ODOUR_BANDS = ['none', 'perhaps', 'surely'] as const;
export type OdourBand = (typeof ODOUR_BANDS)[number];

export interface OdourSpan {
  readonly band: Exclude<OdourBand, 'none'>;
  readonly from_s: number;
  readonly to_s: number;
}

/** Of a constituent whose threshold nobody has told. */
const NEVER = [Infinity, Infinity] as const;

/** Spans in which each class of notes can be smelled at the film, in order of time. */
export function odourSpans(
  film: BlendFilm,
  { times_s, leaving_kg_m2_s: leaving }: Fade,
): Record<NoteClass, OdourSpan[]> {
  const count = film.ids.length;
  const thresholds = film.ids.map((id) => odourThresholds[id]?.range ?? NEVER);
  const bandAt = (note: NoteClass, k: number): OdourBand => {
    let best = 0;
    for (let i = 0; i < count; i++) {
      if (film.classes[i] !== note) continue;
      const held = (leaving[k * count + i] as number) / (film.coefficients[i] as number);
      const [low, high] = thresholds[i] as OdourThreshold['range'];
      best = Math.max(best, held >= high ? 2 : held >= low ? 1 : 0);
    }
    return ODOUR_BANDS[best] as OdourBand;
  };
  const spansOf = (note: NoteClass): OdourSpan[] => {
    const found: OdourSpan[] = [];
    times_s.forEach((time_s, k) => {
      const band = bandAt(note, k);
      if (band === 'none') return;
      const to_s = times_s[k + 1] ?? time_s;
      const last = found.at(-1);
      if (last?.band === band && last.to_s === time_s) found[found.length - 1] = { ...last, to_s };
      else found.push({ band, from_s: time_s, to_s });
    });
    return found;
  };
  return Object.fromEntries(NOTE_CLASSES.map((note) => [note, spansOf(note)])) as Record<NoteClass, OdourSpan[]>;
}
