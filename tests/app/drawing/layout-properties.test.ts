import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { layoutStill, type StillLayout } from '../../../src/drawing/geometry/still-layout.ts';
import { boxesOverlap, contains, type Box } from '../../../src/drawing/geometry/shapes.ts';
import { anyScenario } from './random-scenarios.ts';

const widths = [360, 390, 768, 1024, 1440, 2560];
const anyWidth = fc.constantFrom(...widths);
const anyTextScale = fc.constantFrom(1, 1.35);

function firstBadNumber(node: unknown, path = ''): string | null {
  if (typeof node === 'number') return Number.isFinite(node) ? null : path;
  if (typeof node === 'string') return /NaN|Infinity|undefined/u.test(node) ? `${path}: ${node}` : null;
  if (typeof node !== 'object' || node === null) return null;
  for (const [key, value] of Object.entries(node)) {
    const bad = firstBadNumber(value, `${path}.${key}`);
    if (bad) return bad;
  }
  return null;
}

const sheetOf = (layout: StillLayout): Box => ({
  x: -0.5,
  y: -0.5,
  width: layout.width + 1,
  height: layout.height + 1,
});

const outside = (layout: StillLayout): string[] => {
  const sheet = sheetOf(layout);
  return [...layout.obstacles, ...layout.labels.map(({ box }) => box)]
    .filter((box) => !contains(sheet, box))
    .map((box) => JSON.stringify(box));
};

const collisions = (layout: StillLayout): string[] => {
  const found: string[] = [];
  layout.labels.forEach((label, index) => {
    for (const other of layout.labels.slice(index + 1))
      if (boxesOverlap(label.box, other.box)) found.push(`${label.id} and ${other.id}`);
    for (const box of layout.obstacles)
      if (boxesOverlap(label.box, box)) found.push(`${label.id} and ${JSON.stringify(box)}`);
    for (const hazard of layout.hazards)
      if (boxesOverlap(label.box, hazard.box)) found.push(`${label.id} and caution ${hazard.id}`);
  });
  return found;
};

describe('the drawing of any valid still', () => {
  const runs = 400;

  test('holds no number that is not finite', () => {
    fc.assert(
      fc.property(anyScenario, anyWidth, anyTextScale, (scenario, width, textScale) => {
        expect(firstBadNumber(layoutStill(scenario, { width, textScale }))).toBeNull();
      }),
      { numRuns: runs },
    );
  });

  test('stays within its sheet', () => {
    fc.assert(
      fc.property(anyScenario, anyWidth, (scenario, width) => {
        expect(outside(layoutStill(scenario, { width, textScale: 1 }))).toEqual([]);
      }),
      { numRuns: runs },
    );
  });

  test('sets no label over another label, a caution or a shape', () => {
    fc.assert(
      fc.property(anyScenario, anyWidth, anyTextScale, (scenario, width, textScale) => {
        expect(collisions(layoutStill(scenario, { width, textScale }))).toEqual([]);
      }),
      { numRuns: runs },
    );
  });

  test('names every part once', () => {
    fc.assert(
      fc.property(anyScenario, anyWidth, (scenario, width) => {
        const ids = layoutStill(scenario, { width, textScale: 1 })
          .labels.map(({ id }) => id)
          .sort();
        const expected = [
          'charge',
          'condenser',
          'cooling',
          'heat',
          'neck',
          'pot',
          'receiver',
          'separator',
          ...(scenario.pot.layout === 'steam' ? ['boiler'] : []),
        ].sort();
        expect(ids).toEqual(expected);
      }),
      { numRuns: 100 },
    );
  });

  test('draws pot, tub and separator at one scale', () => {
    fc.assert(
      fc.property(anyScenario, anyWidth, (scenario, width) => {
        const { shapes, pxPerMetre } = layoutStill(scenario, { width, textScale: 1 });
        expect(shapes.pot.inner.width / pxPerMetre).toBeCloseTo(scenario.pot.diameter_m, 6);
        expect(shapes.pot.inner.height / pxPerMetre).toBeCloseTo(scenario.pot.height_m, 6);
        if (shapes.cooling.tub)
          expect(shapes.cooling.tub.water.width / pxPerMetre).toBeCloseTo(scenario.cooling.tubDiameter_m, 6);
      }),
      { numRuns: runs },
    );
  });
});
