import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { layoutStill, type StillLayout } from '../../../src/drawing/geometry/still-layout.ts';
import { layoutAlike } from '../../../src/drawing/geometry/layout-alike.ts';
import { plumeBox } from '../../../src/drawing/geometry/caution-places.ts';
import { boxesOverlap, contains, type Box } from '../../../src/drawing/geometry/shapes.ts';
import { trueSizes } from '../../../src/drawing/geometry/true-sizes.ts';
import { anyScenario } from './random-scenarios.ts';

const widths = [272, 358, 390, 768, 800, 1024, 1440, 2560];
const anyWidth = fc.constantFrom(...widths);
/** Left out, the sheet grows with the drawing. */
const anyHeight = fc.constantFrom(undefined, 280, 330, 400, 900);
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
  return [...layout.obstacles, ...[...layout.labels, ...layout.cautions].map(({ box }) => box)]
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
  });
  layout.cautions.forEach((caution, index) => {
    for (const other of layout.cautions.slice(index + 1))
      if (boxesOverlap(caution.box, other.box)) found.push(`cautions ${caution.id} and ${other.id}`);
    for (const label of layout.labels)
      if (boxesOverlap(caution.box, label.box)) found.push(`caution ${caution.id} and ${label.id}`);
    for (const box of [...layout.obstacles, plumeBox(layout.shapes)])
      if (boxesOverlap(caution.box, box)) found.push(`caution ${caution.id} and ${JSON.stringify(box)}`);
  });
  return found;
};

describe('the drawing of any valid still', { timeout: 240_000 }, () => {
  const runs = 400;

  test('holds no number that is not finite', () => {
    fc.assert(
      fc.property(anyScenario, anyWidth, anyHeight, anyTextScale, (scenario, width, height, textScale) => {
        expect(firstBadNumber(layoutStill(scenario, { width, height, textScale }))).toBeNull();
      }),
      { numRuns: runs },
    );
  });

  test('stays within its sheet', () => {
    fc.assert(
      fc.property(anyScenario, anyWidth, anyHeight, (scenario, width, height) => {
        expect(outside(layoutStill(scenario, { width, height, textScale: 1 }))).toEqual([]);
      }),
      { numRuns: runs },
    );
  });

  test('sets no label over another label, a caution or a shape', () => {
    fc.assert(
      fc.property(anyScenario, anyWidth, anyHeight, anyTextScale, (scenario, width, height, textScale) => {
        expect(collisions(layoutStill(scenario, { width, height, textScale }))).toEqual([]);
      }),
      { numRuns: runs },
    );
  });

  test('keeps to the height it is given', () => {
    fc.assert(
      fc.property(anyScenario, anyWidth, fc.constantFrom(280, 400), (scenario, width, height) => {
        expect(layoutStill(scenario, { width, height, textScale: 1 }).height).toBe(height);
      }),
      { numRuns: 50 },
    );
  });

  test('has a place for every caution', () => {
    fc.assert(
      fc.property(anyScenario, anyWidth, anyHeight, (scenario, width, height) => {
        const { cautions } = layoutStill(scenario, { width, height, textScale: 1 });
        const expected = ['flame', 'lid', 'outlet', ...(trueSizes(scenario).tub ? ['tub'] : [])];
        expect(cautions.map(({ id }) => id).sort()).toEqual(expected);
      }),
      { numRuns: 100 },
    );
  });

  test('names every part once where it is not drawn upright', () => {
    fc.assert(
      fc.property(anyScenario, fc.constantFrom(...widths.filter((width) => width >= 560)), (scenario, width) => {
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

describe('stills drawn beside each other', () => {
  test('have one scale, one floor and sheets of one height, whatever they are', () => {
    fc.assert(
      fc.property(
        fc.array(anyScenario, { minLength: 2, maxLength: 4 }),
        fc.constantFrom(300, 390, 585, 800),
        (all, width) => {
          const placed = layoutAlike(all, { width, textScale: 1 });
          const [first] = placed.map(({ layout, above, below }) => ({
            scale: layout.pxPerMetre,
            floor: above + layout.ground.y,
            height: above + layout.height + below,
          }));
          if (!first) throw new Error('nothing is drawn');
          for (const { layout, above, below } of placed) {
            expect(layout.pxPerMetre).toBeCloseTo(first.scale, 9);
            expect(above + layout.ground.y).toBeCloseTo(first.floor, 9);
            expect(above + layout.height + below).toBeCloseTo(first.height, 9);
            expect(Math.min(above, below)).toBeGreaterThanOrEqual(0);
          }
        },
      ),
      { numRuns: 60 },
    );
  });
});
