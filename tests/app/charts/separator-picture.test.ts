import { describe, expect, test } from 'vitest';
import { exampleScenario, separatorAt, simulate, type RunResult } from '../../../sim/index.ts';
import { markup, type Mark, type PictureFrame } from '../../../src/charts/pictures/picture.ts';
import { separatorPicture, separatorTable, typicalDrops } from '../../../src/charts/pictures/separator-picture.ts';
import { lightPalette } from './palettes.ts';

const lavender = simulate(exampleScenario('gentle-lavender'));
const clove = simulate(exampleScenario('clove-buds'));
const frame: PictureFrame = { width: 420, textScale: 1, units: 'metric', isCalm: true };
const thin = (words: string) => words.replaceAll('\u202f', ' ');
const textsOf = (marks: readonly Mark[]) => marks.flatMap((mark) => (mark.tag === 'text' ? [thin(mark.words)] : []));
const at = (result: RunResult, time_s: number, over: Partial<PictureFrame> = {}) =>
  separatorPicture(result, time_s, { ...frame, ...over });

/** Layer, as drawn: the wash of oil. */
function layerOf(marks: readonly Mark[]): { readonly top: number; readonly foot: number } {
  const wash = marks.find((mark) => mark.tag === 'path' && mark.fill === 'oil-tint');
  const [, top, foot] = /^M\S+ (\S+)H\S+V(\S+)H/u.exec(wash?.tag === 'path' ? wash.d : '') ?? [];
  return { top: Number(top), foot: Number(foot) };
}

describe('the separator close up', () => {
  test('draws the layer to scale, growing with the oil', () => {
    const [early, late] = [2500, 7500].map((time_s) => {
      const { top, foot } = layerOf(at(lavender, time_s, { height: 1000, width: 2400 }).marks);
      return (foot - top) / separatorAt(lavender.scenario, lavender.record, time_s).layer_m;
    });
    expect(early).toBeCloseTo(late as number, 6);
    expect(early).toBeGreaterThan(0);
  });

  test('lays oil that sinks at the bottom', () => {
    const [floats, sinks] = [at(lavender, 6000), at(clove, 12_000)].map(
      ({ marks, height }) => layerOf(marks).top / height,
    );
    expect(floats).toBeLessThan(0.3);
    expect(sinks).toBeGreaterThan(0.7);
    expect(at(clove, 12_000).says).toContain('at the bottom');
  });

  test('shows drops in the lens by size, and fills those that are caught', () => {
    const moment = separatorAt(lavender.scenario, lavender.record, 4000);
    const drops = typicalDrops(moment, 22);
    expect(drops).toHaveLength(22);
    expect([...drops].sort((a, b) => a - b)).toEqual(drops);
    const circles = at(lavender, 4000).marks.flatMap((mark) =>
      mark.tag === 'circle' && mark.stroke === 'oil' ? [mark] : [],
    );
    expect(circles).toHaveLength(22);
    const caught = drops.filter((d) => d >= moment.capture.cutSize_m).length;
    expect(circles.filter(({ fill }) => fill === 'oil-tint')).toHaveLength(caught);
  });

  test('says in words what it shows, and that nothing comes before the first drop', () => {
    expect(thin(at(lavender, 4000).says)).toMatch(
      /Oil layer \d+\.?\d* mm thick, \d+ mL\. The water sinks [\d.]+ mm\/min\. Drops over \d+ µm: all caught\. In all, \d+ % of the oil caught\. Hydrosol leaves at .+, haze: \d+ ppm\./u,
    );
    expect(textsOf(at(lavender, 0).marks)).toContain('No drops come now.');
  });

  test('drops move with the time mark, and stand still for those who ask for calm', () => {
    const placesAt = (time_s: number, isCalm: boolean) =>
      at(lavender, time_s, { isCalm }).marks.flatMap((mark) =>
        mark.tag === 'circle' && mark.stroke === 'oil' ? [mark.cy] : [],
      );
    const [calm, moving] = [true, false].map((isCalm) => {
      const [before, after] = [placesAt(4000, isCalm), placesAt(4010, isCalm)];
      return Math.max(...before.map((y, index) => Math.abs(y - (after[index] as number))));
    });
    expect(calm).toBeLessThan(0.5);
    expect(moving).toBeGreaterThan(1);
  });

  test.each([280, 320, 403, 560, 900])('keeps every mark finite and within %i px', (width) => {
    for (const result of [lavender, clove])
      for (const height of [undefined, 200, 330])
        for (const time_s of [0, 3000, result.summary.end_s]) {
          const { marks, height: tall } = at(result, time_s, { width, height });
          expect(tall).toBe(height ?? tall);
          for (const mark of marks) {
            expect(markup(mark, lightPalette)).not.toMatch(/NaN|Infinity|undefined/u);
            if (mark.tag === 'circle') {
              expect(mark.cx + mark.r).toBeLessThanOrEqual(width + 1);
              expect(mark.cy + mark.r).toBeLessThanOrEqual(tall + 1);
            }
            if (mark.tag === 'text') expect(mark.x + 6.3 * mark.words.length).toBeLessThanOrEqual(width + 8);
          }
        }
  });

  test('is a table of drop sizes too', () => {
    const table = separatorTable(lavender, 4000, 'us');
    expect(table.columns.map(({ title }) => title)).toEqual(['Drop', 'Speed', 'Of the oil', 'Caught']);
    expect(table.columns.every(({ values }) => values.length === table.rows)).toBe(true);
  });
});
