import { describe, expect, test } from 'vitest';
import { trueSizes, waterDepth } from '../../../src/drawing/geometry/true-sizes.ts';
import { heightsOf } from '../../../src/drawing/geometry/heights.ts';
import { tubeDrawn } from '../../../src/drawing/geometry/along.ts';
import { exampleScenario, examples } from '../../../sim/index.ts';
import { scenarioOf } from './scenario-of.ts';

describe('sizes of the parts', () => {
  test('5 m of tube on 100 mm, rising 60 mm a turn, make 15.6 turns, as high as turns times pitch', () => {
    const { condenser } = trueSizes(
      scenarioOf({ condenser: { length_m: 5, coilDiameter_m: 0.1, coilPitch_m: 0.06 }, cooling: { tubHeight_m: 1.2 } }),
    );
    expect(condenser.kind === 'coil' && condenser.turns).toBeCloseTo(15.633, 3);
    expect(condenser.kind === 'coil' && condenser.height_m).toBeCloseTo(15.633 * 0.06, 4);
  });

  test('8 L in a pot 320 mm across stand 99.5 mm deep, volume over area', () => {
    expect(waterDepth(8, 0.32)).toBeCloseTo(0.008 / ((Math.PI / 4) * 0.32 ** 2), 12);
    expect(trueSizes(scenarioOf()).pot.depth_m).toBeCloseTo(0.0995, 4);
  });

  test('2 kg at 150 kg/m³ fill 166 mm of that pot above its grid', () => {
    const { bed } = trueSizes(scenarioOf({ charge: { mass_kg: 2, bulkDensity_kg_m3: 150 } }));
    expect(bed.bottom_m).toBe(0.12);
    expect(bed.height_m).toBeCloseTo(0.1658, 4);
  });

  test('the water of the steam layout stands in the boiler, none in the pot', () => {
    const sizes = trueSizes(scenarioOf({ pot: { layout: 'steam', water_kg: 8 }, boiler: { diameter_m: 0.3 } }));
    expect(sizes.pot.depth_m).toBe(0);
    expect(sizes.boiler?.depth_m).toBeCloseTo(0.1132, 4);
  });

  test('the jug holds the whole water of the pot', () => {
    const { jug } = trueSizes(scenarioOf({ pot: { water_kg: 8 } }));
    expect((Math.PI / 4) * jug.diameter_m ** 2 * jug.height_m).toBeCloseTo(0.008, 9);
  });
});

describe('heights above the floor', () => {
  test.each(examples.map(({ id }) => id))('%s: everything runs downhill from the neck to the jug', (id) => {
    const sizes = trueSizes(exampleScenario(id));
    const heights = heightsOf(sizes, tubeDrawn(sizes, 'along'), false);
    expect(heights.apex).toBeGreaterThan(heights.inlet);
    expect(heights.inlet).toBeGreaterThan(heights.tip);
    expect(heights.tip).toBeGreaterThan(heights.funnelTop);
    expect(heights.crest).toBeGreaterThan(sizes.jug.height_m);
    expect(heights.potStand).toBeGreaterThanOrEqual(0);
  });

  test.each(examples.map(({ id }) => id))('%s: the neck has its true length, rising and falling', (id) => {
    const scenario = exampleScenario(id);
    const sizes = trueSizes(scenario);
    const heights = heightsOf(sizes, tubeDrawn(sizes, 'along'), false);
    const rising = Math.hypot(heights.riseAcross, heights.apex - heights.lid);
    const falling = Math.hypot(heights.fallAcross, heights.apex - heights.inlet);
    expect(rising).toBeCloseTo(scenario.neck.risingLength_m, 6);
    expect(rising + falling).toBeCloseTo(scenario.neck.length_m, 6);
  });

  test('a pot too low for its condenser is put on a stand, and a tub too low for its pot likewise', () => {
    const tallTub = trueSizes(scenarioOf({ cooling: { tubHeight_m: 1.2 } }));
    expect(heightsOf(tallTub, 0, false).potStand).toBeGreaterThan(0.5);
    const tallPot = trueSizes(
      scenarioOf({ pot: { height_m: 2, gridHeight_m: 0.12 }, neck: { length_m: 0.5, risingLength_m: 0.2 } }),
    );
    expect(heightsOf(tallPot, 0, false).condenser).toBeGreaterThan(1);
  });
});
