import { describe, expect, test } from 'vitest';
import { condenserAt, exampleScenario, simulate, type RunResult } from '../../../sim/index.ts';
import { condenserPicture, condenserTable } from '../../../src/charts/pictures/condenser-picture.ts';
import type { Mark, PictureFrame } from '../../../src/charts/pictures/picture.ts';

const lavender = simulate(exampleScenario('gentle-lavender'));
const short = (() => {
  const scenario = exampleScenario('gentle-lavender');
  return simulate({ ...scenario, condenser: { ...scenario.condenser, length_m: 0.25 } });
})();
const frame: PictureFrame = { width: 420, textScale: 1, units: 'metric', isCalm: true };
const thin = (words: string) => words.replaceAll('\u202f', ' ');
const at = (result: RunResult, time_s: number, over: Partial<PictureFrame> = {}) =>
  condenserPicture(result, time_s, { ...frame, ...over });
const textsOf = (marks: readonly Mark[]) => marks.flatMap((mark) => (mark.tag === 'text' ? [thin(mark.words)] : []));
const dotsOf = (marks: readonly Mark[]) =>
  marks.flatMap((mark) =>
    mark.tag === 'path' && mark.round ? [...mark.d.matchAll(/M(\S+)/gu)].map(([, x]) => ({ cx: Number(x) })) : [],
  );
const momentAt = ({ scenario, record }: RunResult, time_s: number) =>
  condenserAt(scenario.condenser.length_m, record, time_s);

describe('the condenser at a moment', () => {
  test('holds half of its heat before the place that is told, and half behind', () => {
    const { heat_W_m, halfOfHeat_m } = momentAt(lavender, 4000);
    const cell = lavender.scenario.condenser.length_m / heat_W_m.length;
    const all = heat_W_m.reduce((sum, each) => sum + each * cell, 0);
    let before = 0;
    heat_W_m.forEach((each, index) => {
      before += each * Math.min(cell, Math.max(0, (halfOfHeat_m ?? 0) - index * cell));
    });
    expect(before / all).toBeCloseTo(0.5, 6);
    expect(all).toBeCloseTo(momentAt(lavender, 4000).duty_W, -2);
  });

  test('knows when vapour comes out at the end', () => {
    expect(momentAt(lavender, 4000).escapes).toBe(false);
    expect(momentAt(short, 4000).escapes).toBe(true);
    expect(momentAt(lavender, 0)).toMatchObject({ escapes: false, vapour_kg_s: 0, halfOfHeat_m: null });
  });
});

describe('the condenser close up', () => {
  test('marks to scale where all has condensed', () => {
    const { marks } = at(lavender, 4000);
    const line = marks.find((mark) => mark.tag === 'path' && mark.dash !== undefined);
    const x = Number(/^M(\S+)/u.exec(line?.tag === 'path' ? line.d : '')?.[1]);
    const { condensing_m } = momentAt(lavender, 4000);
    expect(x / 420).toBeCloseTo(condensing_m / lavender.scenario.condenser.length_m, 6);
  });

  test('draws vapour where there is some left, and none behind', () => {
    const { condensing_m } = momentAt(lavender, 4000);
    const end = (420 * condensing_m) / lavender.scenario.condenser.length_m;
    const cell = 420 / momentAt(lavender, 4000).vapourShare.length;
    const dots = dotsOf(at(lavender, 4000).marks);
    expect(dots.length).toBeGreaterThan(5);
    expect(Math.max(...dots.map(({ cx }) => cx))).toBeLessThanOrEqual(end + cell);
    expect(Math.max(...dotsOf(at(short, 4000).marks).map(({ cx }) => cx))).toBeGreaterThan(end + 100);
  });

  test('tells a tube that is too short, and a time without vapour', () => {
    expect(textsOf(at(short, 4000).marks)).toEqual(
      expect.arrayContaining(['Vapour leaves the end', 'Not all condenses in 0.25 m']),
    );
    expect(textsOf(at(lavender, 0).marks)).toContain('No vapour comes now.');
    expect(thin(at(lavender, 4000).says)).toMatch(
      /Vapour comes in at \d+ °C\. All has condensed after [\d.]+ m of 1.50 m\. Liquid leaves at \d+ °C\. .+ into the water, half of it in the first [\d.]+ c?m\./u,
    );
    expect(textsOf(at(lavender, 4000, { units: 'us' }).marks).join(' ')).not.toMatch(/\d (?:°C|m)\b/u);
  });

  test('moves with the time mark, and stands still for those who ask for calm', () => {
    const firsts = (isCalm: boolean) => [4000, 4003].map((time) => dotsOf(at(lavender, time, { isCalm }).marks)[0]?.cx);
    const [calm, moving] = [firsts(true), firsts(false)];
    expect(calm[0]).toBeCloseTo(calm[1] ?? 0, 3);
    expect(moving[0]).not.toBeCloseTo(moving[1] ?? 0, 1);
  });

  test('keeps within the height it is given, and has a table of its segments', () => {
    const { marks, height } = at(lavender, 4000, { height: 150 });
    expect(height).toBe(150);
    expect(Math.max(...marks.flatMap((mark) => (mark.tag === 'text' ? [mark.y] : [])))).toBeLessThanOrEqual(150);
    const table = condenserTable(lavender, 4000, 'us');
    expect(table.rows).toBe(momentAt(lavender, 4000).vapourShare.length);
    expect(table.columns.map(({ unit }) => unit)).toEqual(['ft', '%', '°F', '°F', expect.stringMatching(/ft/u)]);
  });
});
