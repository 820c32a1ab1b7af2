import { describe, expect, it } from 'vitest';
import {
  circuits,
  findCircuit,
  findHeatSource,
  findMaterial,
  findSeparator,
  findTub,
  findTube,
  findVessel,
  heatSources,
  materials,
  separators,
  tubes,
  tubs,
  vessels,
} from '../../../sim/library/index.ts';

const collections = { tubes, vessels, heatSources, materials, circuits, separators, tubs };

describe('collections', () => {
  it.each(Object.entries(collections))('gives every row of %s an id of its own', (_name, rows) => {
    const ids = rows.map(({ id }) => id);
    expect(ids.length).toBeGreaterThan(0);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(id).toMatch(/^[a-z0-9]+([-.][a-z0-9]+)*$/);
  });

  it.each([
    ['tube', findTube, 'astm-b88-l-3-8'],
    ['vessel', findVessel, 'catering-pot-36'],
    ['heat source', findHeatSource, 'gas-ring'],
    ['material', findMaterial, 'copper'],
    ['circuit', findCircuit, 'uk-13a'],
    ['separator', findSeparator, 'glass-1000'],
    ['tub', findTub, 'bucket'],
  ] as const)('finds a %s by id and names the known ids when there is none', (what, find, known) => {
    expect(find(known).id).toBe(known);
    expect(() => find('nothing-like-it')).toThrow(RangeError);
    expect(() => find('nothing-like-it')).toThrow(
      new RegExp(`^${what} “nothing-like-it” is not in the library; known: .*${known}`),
    );
  });

  it('makes everything of a material it knows', () => {
    for (const { material } of [...tubes, ...vessels, ...separators, ...tubs])
      expect(findMaterial(material).id).toBe(material);
  });
});

describe('tubes', () => {
  it('have a bore that outside diameter and wall give, save where folded', () => {
    for (const tube of tubes) {
      if (tube.areaFactor > 1) expect(tube.insideDiameter_m, tube.id).toBeLessThan(tube.outsideDiameter_m);
      else expect(tube.insideDiameter_m, tube.id).toBeCloseTo(tube.outsideDiameter_m - 2 * tube.wall_m, 12);
    }
  });

  it('bend by hand only wider than with a tool', () => {
    for (const {
      id,
      minimumBendRadius_m: { withTool, byHand },
    } of tubes)
      if (withTool !== null && byHand !== null) expect(byHand, id).toBeGreaterThan(withTool);
  });

  it('do not coil when hard or of glass', () => {
    for (const tube of tubes) if (tube.temper !== 'annealed') expect(tube.coilable, tube.id).toBe(false);
  });
});

describe('vessels and tubs', () => {
  it('hold what the model’s cylinder holds', () => {
    for (const { id, insideDiameter_m, height_m, volume_m3 } of [...vessels, ...tubs])
      expect(((Math.PI / 4) * insideDiameter_m ** 2 * height_m) / volume_m3, id).toBeCloseTo(1, 9);
  });

  it('give catering pots their usual litres', () => {
    const litres = ['20', '24', '28', '32', '36', '40', '45', '50'].map((size) =>
      Number((findVessel(`catering-pot-${size}`).volume_m3 * 1000).toFixed(1)),
    );
    expect(litres).toEqual([6.3, 10.9, 17.2, 25.7, 36.6, 50.3, 71.6, 98.2]);
  });

  it('weigh at least a bare shell of their wall', () => {
    for (const { id, insideDiameter_m, height_m, wall_m, emptyMass_kg, material } of vessels) {
      const shell =
        (Math.PI * insideDiameter_m * height_m + (Math.PI / 4) * insideDiameter_m ** 2) *
        wall_m *
        findMaterial(material).density_kg_m3.value;
      expect(emptyMass_kg, id).toBeGreaterThan(0.7 * shell);
    }
  });
});

describe('heat sources', () => {
  it('put no more into the pot than they take', () => {
    for (const { id, efficiency, ratedPower_W, lag_s } of heatSources)
      for (const { typical, low, high } of [efficiency.value, ratedPower_W.value, lag_s.value]) {
        expect(low, id).toBeLessThanOrEqual(typical);
        expect(typical, id).toBeLessThanOrEqual(high);
      }
    for (const { id, efficiency } of heatSources) expect(efficiency.value.high, id).toBeLessThanOrEqual(1);
  });

  it('follow their setting in seconds with gas and in minutes with a plate', () => {
    expect(findHeatSource('gas-ring').lag_s.value.typical).toBeLessThan(15);
    expect(findHeatSource('electric-plate').lag_s.value.typical).toBeGreaterThanOrEqual(120);
  });

  it('know a heating value for every fuel and none for electricity', () => {
    for (const { id, carrier, lowerHeatingValue_J_kg } of heatSources)
      expect(lowerHeatingValue_J_kg === null, id).toBe(carrier === 'electricity');
  });

  it('burn propane at 12.87 kWh/kg, as its enthalpy of combustion gives', () => {
    expect((findHeatSource('outdoor-gas-burner').lowerHeatingValue_J_kg?.value as number) / 3.6e6).toBeCloseTo(
      12.87,
      2,
    );
  });
});

describe('circuits', () => {
  it('carry volts times amps, and in North America four fifths of it for hours', () => {
    for (const { voltage_V, current_A, maximumPower_W, continuousPower_W } of circuits) {
      expect(maximumPower_W).toBe(voltage_V * current_A);
      expect(continuousPower_W).toBeLessThanOrEqual(maximumPower_W);
    }
    expect(findCircuit('uk-13a').maximumPower_W).toBe(2990);
    expect(findCircuit('us-15a').continuousPower_W).toBeCloseTo(1440, 9);
  });
});

describe('separators', () => {
  it('let floating oil out above the water’s crest and sinking oil at the bottom', () => {
    for (const { id, suits, oilOutletHeight_m, waterOutletHeight_m, inletHeight_m, height_m } of separators) {
      if (suits === 'sinking') expect(oilOutletHeight_m, id).toBeLessThan(inletHeight_m);
      else expect(oilOutletHeight_m, id).toBeGreaterThan(waterOutletHeight_m);
      expect(Math.max(oilOutletHeight_m, waterOutletHeight_m), id).toBeLessThan(height_m);
    }
  });
});
