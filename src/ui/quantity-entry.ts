/**
 * What a number field remembers while it is typed in: the raw text, until Enter or leaving the field; what was
 * wrong with it; and what was made of it. A refused text stays where it is.
 */
import { createSignal, type Accessor } from 'solid-js';
import {
  displayUnit,
  englishReader,
  fieldText,
  readEntry,
  type AskedQuantity,
  type UnitSystem,
} from '../../sim/index.ts';
import { nudged } from './nudge.ts';

export interface QuantityEntryProps {
  readonly value: number | null;
  readonly asked: AskedQuantity;
  readonly system: UnitSystem;
  /** A number that is typed counts even where it is the one that stands there. */
  readonly takesSame?: boolean | undefined;
  /**
   * Takes a number in SI, or `null` when left open; a sentence in return says why it was not taken. `nudge` marks
   * one of several quick steps, which are undone together.
   */
  readonly onCommit: (value: number | null, nudge: boolean) => string | null | undefined | void;
}

export interface QuantityEntry {
  readonly text: Accessor<string>;
  readonly error: Accessor<string | null>;
  readonly note: Accessor<string | null>;
  type(text: string): void;
  /** Reads the text and hands the number on. */
  finish(): Promise<void>;
  /** Forgets what was typed; whether there was anything to forget. */
  revert(): boolean;
  nudge(direction: 1 | -1, large: boolean): void;
}

export function createQuantityEntry(props: QuantityEntryProps): QuantityEntry {
  const [draft, setDraft] = createSignal<string | null>(null);
  const [error, setError] = createSignal<string | null>(null);
  const [note, setNote] = createSignal<string | null>(null);
  const stored = () => fieldText(props.value, props.asked, props.system);
  let latest = 0;

  const hand = (value: number | null, isNudge: boolean): boolean => {
    const refusal = value === props.value && !props.takesSame ? null : (props.onCommit(value, isNudge) ?? null);
    setError(refusal);
    return refusal === null;
  };

  return {
    text: () => draft() ?? stored(),
    error,
    note,
    type: (text) => {
      latest += 1;
      setDraft(text);
      setNote(null);
    },
    finish: async () => {
      const typed = draft();
      if (typed === null) return;
      if (typed.trim() === stored()) {
        setDraft(null);
        setError(null);
        if (props.takesSame) hand(props.value, false);
        return;
      }
      const mine = (latest += 1);
      const read = await readEntry(typed, props.asked, englishReader(props.system));
      if (mine !== latest) return;
      if (!read.ok) {
        setError(read.message);
        return;
      }
      setNote(read.note);
      if (hand(read.value, false)) setDraft(null);
    },
    revert: () => {
      const had = draft() !== null || error() !== null;
      latest += 1;
      setDraft(null);
      setError(null);
      setNote(null);
      return had;
    },
    nudge: (direction, large) => {
      if (props.value === null || draft() !== null) return;
      const unit = displayUnit(props.asked.unit, props.system, props.asked.path);
      const min = props.asked.min ?? -Infinity;
      const max = props.asked.max ?? Infinity;
      const span = Number.isFinite(max - min) ? unit.fromSI(max) - unit.fromSI(min) : 100;
      const next = nudged(unit.fromSI(props.value), direction, {
        least: props.asked.kind === 'integer' ? 1 : 0,
        span,
        large,
      });
      setNote(null);
      hand(Math.min(max, Math.max(min, Number(unit.toSI(next).toPrecision(12)))), true);
    },
  };
}
