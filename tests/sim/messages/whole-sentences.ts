/** What every message must be: whole sentences, each number with a unit of the reader's own system. */
import { expect } from 'vitest';
import { THIN_SPACE, type UnitSystem } from '../../../sim/index.ts';
import { KINDS, type Kind } from '../../../sim/units/scales.ts';

const labelsOf = (system: UnitSystem): readonly string[] =>
  [...new Set([...Object.values<Kind>(KINDS).flatMap((kind) => kind[system].map(({ label }) => label)), 'h'])].filter(
    (label) => label !== '',
  );

const LABELS: Readonly<Record<UnitSystem, readonly string[]>> = { metric: labelsOf('metric'), us: labelsOf('us') };

/** What is counted, not measured: the word says of what. */
const COUNTED = /^ turns\b/u;

const NUMBER = /\d+(?:\.\d+)?(?:–\d+(?:\.\d+)?)?/gu;

/** Numbers that no unit of the reader's system follows. */
export function strayNumbers(text: string, system: UnitSystem): readonly string[] {
  return [...text.matchAll(NUMBER)].flatMap((match) => {
    const rest = text.slice(match.index + match[0].length);
    const known = LABELS[system].some(
      (label) => rest.startsWith(THIN_SPACE + label) && !/^[\w/°²³]/u.test(rest.slice(label.length + 1)),
    );
    return known || COUNTED.test(rest) ? [] : [`${match[0]}${rest.slice(0, 8)}`];
  });
}

export function expectWholeSentences(text: string, system: UnitSystem): void {
  expect(text).toMatch(/^[A-Z\d].*\.$/u);
  expect(text).not.toMatch(/NaN|undefined|null|Infinity|\[object|–\u202f| {2}|[!;]/u);
  expect(strayNumbers(text, system), text).toEqual([]);
}
