import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { linearMap, tracePoints, withoutStraights } from '../../../src/charts/model/decimate.ts';

const identity = { slope: 1, offset: 0 };
const evenly = (count: number, width: number): Float64Array =>
  Float64Array.from({ length: count }, (_, index) => (index * width) / count);
/** Without the negative zero, which no line tells from zero. */
const finite = fc.double({ min: -1e6, max: 1e6, noNaN: true }).map((value) => value + 0);
const ys = (points: Float64Array): number[] => [...points].filter((_, at) => at % 2 === 1);

describe('a trace in pixels', () => {
  it('keeps every point while pixels are plenty', () => {
    expect([...tracePoints([0, 10, 20], [5, 7, 6], identity, { slope: -1, offset: 100 })]).toEqual([
      0, 95, 10, 93, 20, 94,
    ]);
  });

  it('keeps a spike of one row among ten thousand', () => {
    const values = new Float64Array(10_000).fill(1);
    values[4321] = 50;
    const points = tracePoints(evenly(10_000, 100), values, identity, identity);
    expect(Math.max(...ys(points))).toBe(50);
    expect(points.length / 2).toBeLessThanOrEqual(400);
  });

  it('breaks at a gap instead of bridging it', () => {
    const points = tracePoints([0, 1, 2, 3], [4, NaN, NaN, 6], identity, identity);
    expect([...points]).toEqual([0, 4, NaN, NaN, 3, 6]);
  });

  it('starts at the first value when a line begins with a gap', () => {
    expect([...tracePoints([0, 1, 2], [NaN, 3, 4], identity, identity)]).toEqual([1, 3, 2, 4]);
  });

  it('converts values to the unit shown before it maps them', () => {
    expect([...tracePoints([0], [300.15], identity, identity, (kelvin) => kelvin - 273.15)]).toEqual([
      0,
      expect.closeTo(27, 9),
    ]);
  });

  it('keeps lowest and highest value of every pixel column, and first and last point, for any data', () => {
    fc.assert(
      fc.property(
        fc.array(finite, { minLength: 1, maxLength: 400 }),
        fc.integer({ min: 1, max: 40 }),
        (data, width) => {
          const times = evenly(data.length, width);
          const points = tracePoints(times, data, identity, identity);
          const columns = new Map<number, number[]>();
          data.forEach((value, index) => {
            const column = Math.floor(times[index] as number);
            columns.set(column, [...(columns.get(column) ?? []), value]);
          });
          const kept = new Map<number, number[]>();
          for (let at = 0; at < points.length; at += 2) {
            const column = Math.floor(points[at] as number);
            kept.set(column, [...(kept.get(column) ?? []), points[at + 1] as number]);
          }
          for (const [column, values] of columns) {
            const here = kept.get(column) ?? [];
            expect(Math.min(...here)).toBe(Math.min(...values));
            expect(Math.max(...here)).toBe(Math.max(...values));
            expect(here.length).toBeLessThanOrEqual(4);
          }
          expect(points[1]).toBe(data[0]);
          expect(points[points.length - 1]).toBe(data.at(-1));
        },
      ),
    );
  });
});

describe('the map from a domain to pixels', () => {
  it('turns the value axis over and survives an empty domain', () => {
    const map = linearMap([0, 50], [200, 100]);
    expect(map.offset + map.slope * 25).toBe(150);
    expect(linearMap([3, 3], [0, 10])).toEqual({ slope: 0, offset: 0 });
  });
});

describe('leaving out points on a straight line', () => {
  it('reduces a straight line to its ends and keeps corners', () => {
    const points = Float64Array.of(0, 0, 1, 1, 2, 2, 3, 3, 4, 2, 5, 1);
    expect([...withoutStraights(points, 0.01)]).toEqual([0, 0, 3, 3, 5, 1]);
  });

  it('keeps gaps', () => {
    const points = Float64Array.of(0, 0, 1, 0, 2, 0, NaN, NaN, 4, 0, 5, 0, 6, 0);
    expect([...withoutStraights(points, 0.01)]).toEqual([0, 0, 2, 0, NaN, NaN, 4, 0, 6, 0]);
  });

  it('moves no point by more than the tolerance, for any line', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 20, noNaN: true }), { minLength: 2, maxLength: 200 }), (data) => {
        const tolerance = 0.5;
        const points = Float64Array.from(data.flatMap((value, index) => [index, value]));
        const kept = withoutStraights(points, tolerance);
        expect(kept[0]).toBe(0);
        expect(kept[kept.length - 2]).toBe(data.length - 1);
        for (let at = 2; at < kept.length; at += 2) {
          const [x0, y0, x1, y1] = [kept[at - 2], kept[at - 1], kept[at], kept[at + 1]] as [
            number,
            number,
            number,
            number,
          ];
          for (let x = x0; x <= x1; x += 1) {
            const line = y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
            expect(Math.abs((data[x] as number) - line)).toBeLessThanOrEqual(tolerance + 1e-9);
          }
        }
      }),
    );
  });
});
