/** What can be logged beside the still: its name, its unit for the reader, and what is too odd to take unasked. */
import { displayUnit, formatNumber, type DisplayUnit, type UnitSystem } from '../../../sim/index.ts';
import type { EntryKind, StillEntry } from '../../state/still-run.ts';

interface NumberKind {
  readonly words: string;
  /** As it is stored, and what it is for. */
  readonly unit: string;
  readonly hint: string;
  /** Outside these, stored unit, it is asked about. */
  readonly least: number;
  readonly most: number;
  /** It only ever rises in a run. */
  readonly rises?: true;
  /** Why the forecast does not use it. */
  readonly apart?: string;
}

export type NumberKindName = Extract<
  EntryKind,
  'oil' | 'distillate' | 'outlet' | 'tub' | 'lid' | 'drops' | 'pot-water' | 'heat' | 'tap'
>;

const LID = 'From the first steam on, a lid stands near the boil whatever the run gives. It is kept with the run.';
const DROPS =
  'How large your drops are nobody knows: weigh the distillate to count it. The drops are kept with the run.';
const ICE_K = 273.15;
const BOIL_K = 376.15;

export const NUMBER_KINDS: Readonly<Record<NumberKindName, NumberKind>> = {
  oil: { words: 'Oil so far', unit: 'mL', hint: 'oilVolume', least: 0, most: 2000, rises: true },
  distillate: { words: 'Distillate so far', unit: 'kg', hint: 'water', least: 0, most: 500, rises: true },
  outlet: { words: 'Outlet', unit: 'K', hint: 'temperature', least: ICE_K, most: BOIL_K },
  tub: { words: 'Tub', unit: 'K', hint: 'temperature', least: ICE_K, most: BOIL_K },
  lid: { words: 'Lid', unit: 'K', hint: 'temperature', least: ICE_K, most: BOIL_K, apart: LID },
  drops: { words: 'Drops a minute', unit: '1/min', hint: '', least: 0, most: 600, apart: DROPS },
  'pot-water': { words: 'Water left in the pot', unit: 'kg', hint: 'water', least: 0, most: 500 },
  heat: { words: 'Heat turned to', unit: '1', hint: 'share', least: 0, most: 1 },
  tap: { words: 'Tap turned to', unit: 'kg/s', hint: 'coolantFlow', least: 0, most: 1 },
};

export const isNumberKind = (kind: EntryKind): kind is NumberKindName => kind in NUMBER_KINDS;

export const OTHER_WORDS: Readonly<Record<Exclude<EntryKind, NumberKindName>, string>> = {
  'first-drop': 'First drop',
  'heat-off': 'Heat off',
  opened: 'Pot opened',
  note: 'Note',
  photo: 'Photo',
  done: 'Done',
  silenced: 'Alarm silenced',
};

export function kindUnitOf(kind: NumberKindName, units: UnitSystem): DisplayUnit {
  if (kind === 'drops') return { label: '', decimals: 0, fromSI: (value) => value, toSI: (shown) => shown };
  const { unit, hint } = NUMBER_KINDS[kind];
  return displayUnit(unit, units, hint);
}

/** Digits that somebody beside a pot reads. */
export function shownValue(kind: NumberKindName, value: number, units: UnitSystem): string {
  const unit = kindUnitOf(kind, units);
  const shown = unit.fromSI(value);
  const decimals =
    kind === 'outlet' || kind === 'tub' || kind === 'lid' || kind === 'heat' || kind === 'drops' ? 0 : unit.decimals;
  return formatNumber(shown, Math.max(decimals, Number.isInteger(shown) ? 0 : Math.min(2, unit.decimals)));
}

/** Why a value should be looked at once more before it is taken; `null` where it need not. */
export function odd(
  kind: NumberKindName,
  value: number,
  before: readonly StillEntry[],
  units: UnitSystem,
): string | null {
  const { least, most, rises, words } = NUMBER_KINDS[kind];
  const said = `${shownValue(kind, value, units)} ${kindUnitOf(kind, units).label}`.trim();
  if (value < least || value > most) return `${said} is outside what is possible for “${words}”.`;
  const last = before.findLast((each) => each.kind === kind && each.value !== null)?.value ?? null;
  if (last === null) return null;
  const was = `${shownValue(kind, last, units)} ${kindUnitOf(kind, units).label}`.trim();
  if (rises === true && value < last) return `That is less than the ${was} before. It counts from the start.`;
  if (rises === true && last > 0 && value > 10 * last) return `That is more than ten times the ${was} before.`;
  return null;
}
