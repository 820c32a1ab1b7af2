/** A row of the library as a picker shows it. */
import type { Provenance } from '../../../../sim/index.ts';

export interface Origin {
  /** What the line is about. */
  readonly what: string;
  readonly provenance: Provenance;
}

export interface PickerRow {
  readonly id: string;
  readonly name: string;
  /** Second name, set apart. */
  readonly aside: string;
  /** Heading or filter it stands under. */
  readonly group: string;
  /** In the order of the picker's columns. */
  readonly facts: readonly string[];
  /** What must not be missed before it is picked; may be empty. */
  readonly warning?: string;
  /** A line of words under the facts; may be empty. */
  readonly line: string;
  readonly origins: readonly Origin[];
  /** What picking it writes, by path. */
  readonly values: Readonly<Record<string, unknown>>;
}

/** A part of a scenario as values by path. */
export const underPart = (part: string, values: Readonly<Record<string, unknown>>): Record<string, unknown> =>
  Object.fromEntries(Object.entries(values).map(([key, value]) => [`${part}.${key}`, value]));

const plain = (text: string): string =>
  text
    .toLowerCase()
    .normalize('NFKD')
    .replace(/[\u0300-\u036f]/gu, '');

/** Rows in which every typed word occurs in a name, group or line. */
export function matching(rows: readonly PickerRow[], typed: string, group: string): readonly PickerRow[] {
  const words = plain(typed)
    .split(/\s+/u)
    .filter((word) => word !== '');
  return rows.filter((row) => {
    if (group !== '' && row.group !== group) return false;
    const text = plain([row.name, row.aside, row.group, row.line, ...row.facts].join(' '));
    return words.every((word) => text.includes(word));
  });
}

/** Numbers from typed digits and from a library may differ in the last bits. */
const SAME = 1e-9;

const isSameValue = (a: unknown, b: unknown): boolean => {
  if (typeof a === 'number' && typeof b === 'number')
    return Math.abs(a - b) <= SAME * Math.max(Math.abs(a), Math.abs(b));
  return a === b || JSON.stringify(a) === JSON.stringify(b);
};

/** Whether a scenario holds what a row writes, judged by the paths it is known by or by all of them. */
export const isInUse = (
  values: PickerRow['values'],
  knownBy: readonly string[] | null,
  valueAt: (path: string) => unknown,
): boolean => (knownBy ?? Object.keys(values)).every((path) => isSameValue(valueAt(path), values[path]));
