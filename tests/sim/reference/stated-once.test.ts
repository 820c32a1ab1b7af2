import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Correlation } from '../../../sim/correlation.ts';
import { correlations } from '../../../sim/reference/entries.ts';
import { usualValues } from '../../../sim/reference/usual-values.ts';
import { declarationsIn, reachedFrom, root, type Declaration } from './declarations.ts';

const all = declarationsIn('sim');
const WITH_ENTRIES =
  /^sim\/(?:fluids|transfer)\/[^/]*\.ts$|^sim\/geometry\/coil(?:-entries)?\.ts$|^sim\/maths\/error-function\.ts$|^sim\/still\/blocked-outlet\.ts$/u;
const isListOfEntries = ({ name }: Declaration): boolean => /Correlations$|Alternatives$|AtConditions$/u.test(name);

/** What a function may export without an entry, and why. */
const WITHOUT_ENTRY: readonly (readonly [pattern: RegExp, why: string])[] = [
  [/^sim\/fluids\/water-table\.ts#table/u, 'reads a table of a formulation that has its entry'],
  [/Unchecked$|Quick$/u, 'a formulation that has its entry, without the range check'],
  [/#region[12]State$/u, 'all properties of a state at once; each has its entry'],
  [
    /^sim\/fluids\/water\.ts#(?:saturation(?:Pressure|Temperature|Slope)|surfaceTension)$/u,
    'an entry of a wider range, narrowed',
  ],
  [/^sim\/fluids\/vapour-curve\.ts#/u, 'a part of the vapour pressure, which has its entries'],
  [/^sim\/fluids\/(?:constituents|freezing|immiscible)\.ts#/u, 'takes a constituent or an oil, not scalars'],
  [/^sim\/fluids\/(?:range|if97-entries)\.ts#/u, 'checks ranges, writes entries'],
  [
    /^sim\/geometry\/coil\.ts#(?:coilFit|longestCoil)$/u,
    'fits a coil into its tub, by the relations that have entries',
  ],
  [
    /^sim\/transfer\/rivulet\.ts#rivulet(?:Depth|Area|HydraulicDiameter|EntryConstant|NusseltStretch|NusseltCoil)$/u,
    'a step on the way to the conductance of a rivulet of water, which has its entries',
  ],
  [/^sim\/transfer\/haze\.ts#/u, 'takes the sizes of drops and a vessel, not scalars'],
  [/^sim\/transfer\/tub-(?:inlets|layers)\.ts#/u, 'moves the contents of layers'],
  [/#boundary23Pressure$/u, 'a limit of region 2'],
];

/** Every exported function of those files. */
const computing: (Declaration & { readonly called: (...scalars: number[]) => number })[] = [];
for (const declaration of all) {
  if (!declaration.exported || !WITH_ENTRIES.test(declaration.file)) continue;
  const module = (await import(join(root, declaration.file))) as Readonly<Record<string, unknown>>;
  const exported = module[declaration.name];
  if (typeof exported === 'function')
    computing.push({ ...declaration, called: exported as (...scalars: number[]) => number });
}

/** Entries that a comment names: `entry \`name\`` or `entries \`stem-…\``. */
const entriesNamedBy = ({ comment }: Declaration): readonly Correlation[] =>
  [...comment.matchAll(/\bentr(?:y|ies) `([a-z0-9-]+)(…?)`/gu)].flatMap(([, name = '', family]) => {
    const found = correlations.filter((entry) => (family === '…' ? entry.name.startsWith(name) : entry.name === name));
    expect(found.length, name).toBeGreaterThan(0);
    return found;
  });

describe('a relation', () => {
  it('is found in the source at all', () => {
    expect(computing.length).toBeGreaterThan(200);
  });

  it.each(computing.map((declaration) => [declaration.key, declaration] as const))(
    'is stated once, in an entry that its function names: %s',
    (key, declaration) => {
      const named = entriesNamedBy(declaration);
      if (named.length === 0) {
        expect(
          WITHOUT_ENTRY.some(([pattern]) => pattern.test(key)),
          `${key} names no entry`,
        ).toBe(true);
        return;
      }
      if (named.length === 1) expect(named[0]?.compute).toBe(declaration.called);
      expect(declaration.comment).not.toMatch(/@param|@returns|\bSource:|\bRange:/u);
      expect(declaration.comment.split('\n').length).toBeLessThanOrEqual(3);
    },
  );

  it('is named by one function alone', () => {
    const names = computing.flatMap((declaration) => entriesNamedBy(declaration).map(({ name }) => name));
    expect(names.filter((name, place) => names.indexOf(name) !== place)).toEqual([]);
    expect(correlations.map(({ name }) => name).filter((name) => !names.includes(name))).toEqual([]);
  });

  it('fills every field of its entry', () => {
    for (const { name, says, arguments: args, result, tex, source, outside, compute } of correlations) {
      expect(says, name).toMatch(/^[A-Z].*\.$/su);
      for (const words of [result.symbol, result.unit, ...Object.keys(args)]) expect(words.trim(), name).not.toBe('');
      for (const words of [tex, source, outside]) expect(words.trim().length, name).toBeGreaterThan(3);
      for (const { unit, says: words } of Object.values(args)) {
        expect(unit.trim(), name).not.toBe('');
        expect(words.trim().length, name).toBeGreaterThan(2);
      }
      expect(compute.length, `${name} takes no argument that it does not name`).toBeLessThanOrEqual(
        Object.keys(args).length,
      );
    }
  });
});

describe('what a relation says of itself outside its ranges', () => {
  const beyond = ([low, high]: readonly [number, number]): readonly number[] =>
    [low - Math.max(1e-3, 0.2 * Math.abs(low)), high + Math.max(1e-3, 0.2 * Math.abs(high))].filter(Number.isFinite);

  it.each(
    correlations.filter(({ outside }) => outside === 'gives no value').map((entry) => [entry.name, entry] as const),
  )('%s gives no value', (_, entry) => {
    const usual = usualValues(entry);
    for (const [symbol, { range }] of Object.entries(entry.arguments))
      for (const value of range ? beyond(range) : [])
        expect(() => entry.evaluate({ ...usual, [symbol]: value }), `${symbol} = ${value}`).toThrow(RangeError);
  });

  it.each(
    correlations
      .filter(({ outside }) => outside.includes('zero where the wall is not colder'))
      .map((entry) => [entry.name, entry] as const),
  )('%s is zero where the wall is warmer than the steam', (_, entry) => {
    const wall = 'dT' in entry.arguments ? { dT: -10 } : { T_sat: 350, T_wall: 360 };
    expect(entry.evaluate({ ...usualValues(entry), ...wall })).toBe(0);
  });
});

describe('the role of a relation', () => {
  const runs = all.filter(
    (declaration) =>
      /^sim\/(?:library|scenario|still|run|answers)\//u.test(declaration.file) &&
      !/^sim\/answers\/(?:lessons|building-sheet|first-plan)\//u.test(declaration.file) &&
      !isListOfEntries(declaration),
  );
  const reached = reachedFrom(runs, all);

  it.each(
    computing.flatMap((declaration) =>
      entriesNamedBy(declaration)
        .slice(0, 1)
        .map((entry) => [entry.name, declaration, entry] as const),
    ),
  )('says whether runs call it: %s', (_, { key }, { role = 'engine' }) => {
    expect(role === 'engine').toBe(reached.has(key));
  });

  it('would notice a relation that runs stopped calling', () => {
    const without = reachedFrom(
      runs.filter(({ file }) => file !== 'sim/still/separator.ts' && file !== 'sim/run/drop-capture.ts'),
      all.filter(({ file }) => file !== 'sim/still/separator.ts' && file !== 'sim/run/drop-capture.ts'),
    );
    expect(without.has('sim/transfer/drop-sizes.ts#capturedShare')).toBe(false);
    expect(reached.has('sim/transfer/drop-sizes.ts#capturedShare')).toBe(true);
  });
});
