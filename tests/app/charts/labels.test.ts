import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gutters, hasNames, layOut } from '../../../src/charts/model/layout.ts';
import { placeFlags } from '../../../src/charts/model/place-flags.ts';
import { spreadLabels } from '../../../src/charts/model/spread-labels.ts';

const size = 16;
const at = (...places: number[]) => places.map((place) => ({ at: place, size }));

const laidOut = (width: number, textScale: number) =>
  layOut({ width, gutters: gutters(width, textScale), textScale, parts: [1], partHeight: 100 });

describe('names at the ends of lines', () => {
  it('give way where large text on a phone would leave the lines no room', () => {
    for (const [width, textScale] of [
      [288, 1],
      [358, 1],
      [700, 2],
      [1200, 1],
    ] as const)
      expect(hasNames(laidOut(width, textScale))).toBe(true);
    for (const [width, textScale] of [
      [328, 2],
      [358, 1.5],
      [288, 1.5],
    ] as const) {
      expect(hasNames(laidOut(width, textScale))).toBe(false);
      expect(laidOut(width, textScale).plotWidth).toBeGreaterThan(0.6 * width);
    }
  });

  it('stay where they belong when they do not touch', () => {
    expect(spreadLabels(at(20, 60, 110), 0, 200)).toEqual([20, 60, 110]);
  });

  it('part evenly about their common middle when they do', () => {
    expect(spreadLabels(at(50, 52), 0, 200)).toEqual([43, 59]);
  });

  it('keep the order of the ends, whatever the order of the lines', () => {
    expect(spreadLabels(at(90, 88, 10), 0, 200)).toEqual([97, 81, 10]);
  });

  it('stay inside the chart', () => {
    expect(spreadLabels(at(-5, 3, 198), 0, 200)).toEqual([8, 24, 192]);
  });

  it('leave out the lowest rank when there is no room for all', () => {
    const ranked = [
      { at: 5, size, rank: 1 },
      { at: 10, size, rank: 3 },
      { at: 15, size, rank: 2 },
    ];
    expect(spreadLabels(ranked, 0, 32)).toEqual([null, 8, 24]);
  });

  it('never overlap, never leave the chart and never change order, for any ends', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.record({ at: fc.double({ min: -50, max: 350, noNaN: true }), size: fc.integer({ min: 4, max: 30 }) }),
          { maxLength: 12 },
        ),
        (labels) => {
          const placed = spreadLabels(labels, 0, 300);
          const boxes = labels
            .map((label, index) => ({ ...label, middle: placed[index] ?? null }))
            .filter((label): label is typeof label & { middle: number } => label.middle !== null)
            .sort((a, b) => a.middle - b.middle);
          const room = labels.reduce((sum, label) => sum + label.size, 0);
          if (room <= 300) expect(boxes).toHaveLength(labels.length);
          boxes.forEach((box, index) => {
            expect(box.middle - box.size / 2).toBeGreaterThanOrEqual(-1e-9);
            expect(box.middle + box.size / 2).toBeLessThanOrEqual(300 + 1e-9);
            const before = boxes[index - 1];
            if (!before) return;
            expect(box.middle - box.size / 2).toBeGreaterThanOrEqual(before.middle + before.size / 2 - 1e-9);
            expect(box.at).toBeGreaterThanOrEqual(before.at);
          });
        },
      ),
    );
  });
});

describe('words of event flags', () => {
  it('stand right of their staff when there is room', () => {
    expect(placeFlags([{ x: 100, width: 60, rank: 1 }], 400)).toEqual(['right']);
  });

  it('step to the left of the staff rather than take the room of the next flag', () => {
    const flags = [
      { x: 100, width: 60, rank: 1 },
      { x: 120, width: 60, rank: 1 },
    ];
    expect(placeFlags(flags, 400)).toEqual(['left', 'right']);
  });

  it('give way to an alarm', () => {
    const flags = [
      { x: 2, width: 60, rank: 1 },
      { x: 4, width: 60, rank: 3 },
    ];
    expect(placeFlags(flags, 400)).toEqual(['none', 'right']);
  });

  it('turn inwards at the end of the row', () => {
    expect(placeFlags([{ x: 380, width: 60, rank: 1 }], 400)).toEqual(['left']);
  });

  it('never overlap and never leave the row, for any flags', () => {
    const flag = fc.record({
      x: fc.integer({ min: 0, max: 500 }),
      width: fc.integer({ min: 10, max: 120 }),
      rank: fc.integer({ min: 1, max: 3 }),
    });
    fc.assert(
      fc.property(fc.array(flag, { maxLength: 14 }), (flags) => {
        const sides = placeFlags(flags, 500);
        expect(sides).toHaveLength(flags.length);
        const boxes = flags
          .flatMap(({ x, width }, index) =>
            sides[index] === 'right'
              ? [[x, x + width] as const]
              : sides[index] === 'left'
                ? [[x - width, x] as const]
                : [],
          )
          .sort(([a], [b]) => a - b);
        boxes.forEach(([from, to], index) => {
          expect(from).toBeGreaterThanOrEqual(0);
          expect(to).toBeLessThanOrEqual(500);
          const before = boxes[index - 1];
          if (before) expect(from).toBeGreaterThanOrEqual(before[1]);
        });
        if (flags.length > 0) expect(boxes.length).toBeGreaterThan(0);
      }),
    );
  });
});
