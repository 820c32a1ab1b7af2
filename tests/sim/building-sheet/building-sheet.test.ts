/** The sheet to build from: its drawings read back against the scenario, its lengths, its heights, its words. */
import { describe, expect, test } from 'vitest';
import {
  buildingSheetOf,
  englishReader,
  exampleScenario,
  NO_PRICES,
  quantities,
  sheetSvg,
  sizeOwnTube,
  type BuildingSheet,
  type Scenario,
} from '../../../sim/index.ts';
import { tableLiquidDensity } from '../../../sim/fluids/water-table.ts';
import { plain } from '../messages/plain.ts';

const metric = englishReader('metric');
const us = englishReader('us');
const lavender = exampleScenario('gentle-lavender');
const short: Scenario = { ...lavender, run: { ...lavender.run, duration_s: 3600 } };
const size = sizeOwnTube(short, { confirm: false });

function sheetOf(scenario: Scenario, reader = metric, springBack?: number): BuildingSheet {
  const found = scenario === short ? size : sizeOwnTube(scenario, { confirm: false });
  const options = springBack === undefined ? { prices: NO_PRICES } : { prices: NO_PRICES, springBack };
  const sheet = buildingSheetOf(scenario, found, options, reader);
  if (sheet === null) throw new Error('there is nothing to build');
  return sheet;
}

/** Lengths of the dimension lines of a drawing in metres of the still, and what is written at them. */
function readBack(svg: string): ReadonlyMap<string, { readonly length_m: number; readonly says: string }> {
  const found = new Map<string, { length_m: number; says: string }>();
  for (const [, scale, body] of svg.matchAll(/data-scale="([\d.]+)"[^>]*>(.*?)(?=<g data-figure|<\/svg>)/gsu))
    for (const [, name, inside] of (body ?? '').matchAll(/<g data-dimension="([\w-]+)">(.*?)<\/g>/gsu)) {
      const ends = /<line x1="([\d.-]+)" y1="([\d.-]+)" x2="([\d.-]+)" y2="([\d.-]+)"/u.exec(inside ?? '');
      const says = /<text[^>]*>([^<]*)<\/text>/u.exec(inside ?? '')?.[1] ?? '';
      const [x1, y1, x2, y2] = (ends ?? []).slice(1).map(Number) as [number, number, number, number];
      found.set(name ?? '', { length_m: (Math.hypot(x2 - x1, y2 - y1) * Number(scale)) / 1000, says });
    }
  return found;
}

describe('the drawings', () => {
  test('show every dimension of the scenario to scale, and say it', () => {
    const sheet = sheetOf(short);
    const { condenser, cooling, neck, separator } = sheet.scenario;
    const drawn = readBack(sheetSvg('still', sheet.figures, metric));
    const turns = condenser.length_m / Math.hypot(Math.PI * condenser.coilDiameter_m, condenser.coilPitch_m);
    const rise = turns * condenser.coilPitch_m;
    const expected: Readonly<Record<string, number>> = {
      'tub-diameter': cooling.tubDiameter_m,
      'water-height': cooling.tubHeight_m,
      'coil-diameter': condenser.coilDiameter_m,
      'coil-height': rise + condenser.outsideDiameter_m,
      'top-depth': condenser.coilTopDepth_m,
      'outlet-height': cooling.tubHeight_m - condenser.coilTopDepth_m - condenser.outsideDiameter_m / 2 - rise,
      'neck-rising': neck.risingLength_m,
      'neck-falling': neck.length_m - neck.risingLength_m,
      'lid-hole': neck.bore_m + 2 * neck.wallThickness_m,
      'separator-bore': separator.bore_m,
      'upper-outlet': separator.height_m,
    };
    for (const [name, value_m] of Object.entries(expected)) {
      const dimension = drawn.get(name);
      expect(dimension?.length_m, name).toBeCloseTo(value_m, 4);
      expect(plain(dimension?.says ?? ''), name).toContain(plain(quantities(metric).size(value_m)));
    }
    if (turns >= 1.5) expect(drawn.get('pitch')?.length_m).toBeCloseTo(condenser.coilPitch_m, 4);
  });

  test('speak the reader’s units, and keep their scale', () => {
    const [inMetric, inUS] = [metric, us].map((reader) =>
      readBack(sheetSvg('still', sheetOf(short, reader).figures, reader)),
    );
    expect(inUS?.get('tub-diameter')?.length_m).toBe(inMetric?.get('tub-diameter')?.length_m);
    expect(plain(inUS?.get('tub-diameter')?.says ?? '')).toBe('Tub 14.17 in');
    for (const { says } of inUS?.values() ?? []) expect(says).not.toMatch(/mm|\bm\b/);
  });

  test('leave an SVG that is well formed', () => {
    const svg = sheetSvg('A & B < C', sheetOf(short).figures, metric);
    expect(svg).toContain('A &amp; B &lt; C');
    expect([...svg.matchAll(/<g[ >]/gu)]).toHaveLength([...svg.matchAll(/<\/g>/gu)].length);
    expect(svg).not.toMatch(/NaN|Infinity/);
  });
});

describe('the lengths', () => {
  test('of the cutting list add up to what the lead says', () => {
    const sheet = sheetOf(short);
    const { cutting, toBuy_m, cooled_m } = sheet.measures;
    expect(cutting.reduce((sum, { length_m }) => sum + length_m, 0)).toBeCloseTo(toBuy_m, 12);
    expect(cooled_m).toBe(size.lengthWithMargin_m);
    expect(toBuy_m).toBeCloseTo(size.toBuy_m as number, 12);
    const written = plain(quantities(metric).tubeLength(toBuy_m));
    expect(plain(sheet.lead)).toContain(`${written} with ends and cutting`);
    expect(plain(sheet.sections[0]?.rows.at(-1)?.value ?? '')).toBe(written);
  });

  test('wind the tube round a former that allows for its opening', () => {
    const inside = short.condenser.coilDiameter_m - short.condenser.outsideDiameter_m;
    expect(sheetOf(short, metric, 0).measures.coil?.former_m).toBeCloseTo(inside, 12);
    expect(sheetOf(short, metric, 0.1).measures.coil?.former_m).toBeCloseTo(0.9 * inside, 12);
  });
});

describe('the separator', () => {
  test('holds oil and water apart: both columns weigh the same above the place where they meet', () => {
    const { crest_m, upper_m, interface_m, oilDensity_kg_m3, sinks } = sheetOf(short).measures.separator;
    expect(sinks).toBe(false);
    const water = tableLiquidDensity(303.15);
    expect((crest_m - interface_m) * water).toBeCloseTo((upper_m - interface_m) * oilDensity_kg_m3, 9);
    expect(crest_m).toBeLessThan(upper_m);
    // Spout 220 mm, interface 121 mm: the crest of a lavender oil lies some 12 mm lower.
    expect(upper_m - crest_m).toBeCloseTo(0.012, 3);
  });

  test('turns its legs round for an oil that sinks', () => {
    const clove: Scenario = {
      ...short,
      charge: { ...short.charge, composition: [{ constituent: 'eugenol', share: 1 }] },
    };
    const { crest_m, upper_m, interface_m, oilDensity_kg_m3, sinks } = sheetOf(clove).measures.separator;
    expect(sinks).toBe(true);
    expect((crest_m - interface_m) * oilDensity_kg_m3).toBeCloseTo(
      (upper_m - interface_m) * tableLiquidDensity(303.15),
      9,
    );
    expect(plain(sheetOf(clove).sections[1]?.lines.join(' ') ?? '')).toContain('the oil leg crests');
  });

  test('needs more width for smaller drops and for more water', () => {
    const least = (change: Partial<Scenario['separator']>) =>
      sheetOf({ ...short, separator: { ...short.separator, ...change } }).measures.separator.leastBore_m as number;
    // The area goes with the square of the drops' size, and with the flow.
    expect(least({ dropMedian_m: short.separator.dropMedian_m / 2 }) / least({})).toBeCloseTo(2, 6);
    expect(least({ turbulenceFactor: 1.69 }) / least({ turbulenceFactor: 1 })).toBeCloseTo(1.3, 6);
  });
});

describe('the words', () => {
  test('warn where somebody can be hurt, and say what is not known', () => {
    const sheet = sheetOf(short);
    const all = plain(sheet.sections.flatMap(({ lines }) => lines).join(' '));
    expect(all).toMatch(/Never clamp the lid/);
    expect(all).toMatch(/Never block the outlet/);
    expect(all).toMatch(/may need a licence/);
    expect(all).toMatch(/cleaning run/);
    expect(sheet.sections.at(-1)?.rows.length).toBeGreaterThan(10);
    const inUS = sheetOf(short, us).sections.flatMap(({ lines, rows }) => [
      ...lines,
      ...rows.map(({ value }) => value),
    ]);
    // Tubes bear the names of their trade, whoever reads them.
    expect(plain(inUS.join(' ')).replaceAll('12 × 1 mm copper', '')).not.toMatch(/°C|\d mm\b|\d m\b|millimet/);
  });

  test('are for a straight tube in a jacket alike', () => {
    const glass = exampleScenario('class-glass');
    const sheet = sheetOf(glass);
    const drawn = readBack(sheetSvg('glass', sheet.figures, metric));
    expect(drawn.get('cooled-length')?.length_m).toBeCloseTo(sheet.measures.cooled_m, 4);
    expect(drawn.get('jacket-bore')?.length_m).toBeCloseTo(glass.condenser.jacketDiameter_m, 4);
    expect(drawn.has('tub-diameter')).toBe(false);
  });

  test('are none where nothing can be built', () => {
    const cold: Scenario = { ...short, heat: { ...short.heat, setting: [{ at_s: 0, value: 0.05, shape: 'step' }] } };
    expect(buildingSheetOf(cold, sizeOwnTube(cold, { confirm: false }), { prices: NO_PRICES }, metric)).toBe(null);
  });
});
