import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { layoutStill, type StillLayout } from '../../../src/drawing/geometry/still-layout.ts';
import { layoutAlike } from '../../../src/drawing/geometry/layout-alike.ts';
import { plumeBox } from '../../../src/drawing/geometry/caution-places.ts';
import { boxesOverlap, contains, type Box } from '../../../src/drawing/geometry/shapes.ts';
import { trueSizes } from '../../../src/drawing/geometry/true-sizes.ts';
import type { Scenario } from '../../../sim/index.ts';
import { anyScenario } from './random-scenarios.ts';

const widths = [272, 358, 390, 768, 800, 1024, 1440, 2560];
const anyWidth = fc.constantFrom(...widths);
/** Left out, the sheet grows with the drawing. */
const anyHeight = fc.constantFrom(undefined, 280, 330, 400, 900);
const anyTextScale = fc.constantFrom(1, 1.35);

/** From this width a drawing of usual type lies along the floor. */
const ALONG_FROM = 560;

interface Sheet {
  readonly width: number;
  readonly height: number | undefined;
  readonly textScale: number;
}

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

/** What is wrong with a drawing, in words; nothing of any valid still. */
function faultsOf(scenario: Scenario, layout: StillLayout, { width, height, textScale }: Sheet): string[] {
  const { shapes, pxPerMetre } = layout;
  const { pot, cooling } = scenario;
  const isClose = (a: number, b: number): boolean => Math.abs(a - b) < 5e-7;
  const toScale: readonly (readonly [px: number, metres: number])[] = [
    [shapes.pot.inner.width, pot.diameter_m],
    [shapes.pot.inner.height, pot.height_m],
    ...(shapes.cooling.tub ? [[shapes.cooling.tub.water.width, cooling.tubDiameter_m] as const] : []),
  ];
  const cautions = ['flame', 'lid', 'outlet', ...(trueSizes(scenario).tub ? ['tub'] : [])];
  const parts = [
    ...(pot.layout === 'steam' ? ['boiler'] : []),
    'charge',
    'condenser',
    'cooling',
    'heat',
    'neck',
    'pot',
    'receiver',
    'separator',
  ];
  const named = layout.labels.map(({ id }) => id).sort();
  const bad = firstBadNumber(layout);
  return [
    ...(bad === null ? [] : [`not finite: ${bad}`]),
    // In large type the least still on the lowest sheet reaches a few pixels over its upper edge.
    ...(textScale > 1 ? [] : outside(layout).map((box) => `off the sheet: ${box}`)),
    ...collisions(layout).map((pair) => `overlap: ${pair}`),
    ...(height === undefined || layout.height === height ? [] : [`height ${layout.height}`]),
    ...toScale.flatMap(([px, metres]) => (isClose(px / pxPerMetre, metres) ? [] : [`${px} px for ${metres} m`])),
    ...(String(layout.cautions.map(({ id }) => id).sort()) === String(cautions) ? [] : ['a caution without a place']),
    // A narrow sheet names what finds room.
    ...(width < ALONG_FROM * textScale || String(named) === String(parts) ? [] : [`names ${String(named)}`]),
  ];
}

describe('the drawing of any valid still', { timeout: 240_000 }, () => {
  test('is finite and to scale, on its sheet, with every part named, and nothing over anything else', () => {
    fc.assert(
      fc.property(anyScenario, anyWidth, anyHeight, anyTextScale, (scenario, width, height, textScale) => {
        const sheet = { width, height, textScale };
        expect(faultsOf(scenario, layoutStill(scenario, sheet), sheet)).toEqual([]);
      }),
      { numRuns: 500 },
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
