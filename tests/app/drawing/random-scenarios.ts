/** Scenarios of any size and kind, for properties that must hold for all of them. */
import * as fc from 'fast-check';
import { readScenario, type Scenario } from '../../../sim/index.ts';

/** Log-uniform, so that small sizes come up as often as large ones. */
const between = (low: number, high: number) =>
  fc.integer({ min: 0, max: 1000 }).map((step) => Math.min(high, Math.max(low, low * (high / low) ** (step / 1000))));

const share = fc.integer({ min: 0, max: 1000 }).map((step) => step / 1000);

const parts = fc.record({
  kind: fc.constantFrom(
    'electric-plate',
    'immersion-element',
    'induction',
    'gas-ring',
    'gas-burner',
    'wood-fire',
    'steam-generator',
  ),
  layout: fc.constantFrom('water', 'water-and-steam', 'steam'),
  potDiameter: between(0.05, 1.5),
  potHeight: between(0.05, 2.5),
  insulation: fc.oneof(fc.constant(0), between(0.001, 0.2)),
  gridShare: share,
  waterShare: share,
  chargeShare: share,
  boilerDiameter: between(0.05, 1.5),
  boilerHeight: between(0.05, 2.5),
  drain: fc.constantFrom('waste', 'boiler'),
  neckBore: between(0.004, 0.3),
  neckLength: between(0.05, 6),
  rising: share,
  neckInsulation: fc.oneof(fc.constant(0), between(0.001, 0.1)),
  condenser: fc.constantFrom('coil-in-tub', 'jacketed-tube', 'bundle'),
  outside: between(0.003, 0.1),
  length: between(0.05, 100),
  tubes: fc.integer({ min: 1, max: 200 }),
  coilDiameter: between(0.03, 2),
  coilPitch: between(0.004, 0.5),
  topDepth: fc.oneof(fc.constant(0), between(0.001, 2)),
  orientation: fc.constantFrom('sloping', 'upright'),
  slope: between(0.01, 0.5),
  jacket: between(1.05, 3),
  flow: fc.constantFrom('counterflow', 'parallel'),
  supply: fc.constantFrom('tap', 'barrel'),
  coolant: fc.constantFrom(0, 0.02),
  tubDiameter: between(0.05, 3),
  tubHeight: between(0.05, 3),
  fill: between(0.1, 1),
  bore: between(0.01, 1),
  separatorHeight: between(0.03, 2),
  inletShare: share,
  returns: fc.constantFrom(0, 0.4),
});

type Parts = typeof parts extends fc.Arbitrary<infer P> ? P : never;

function asScenario(p: Parts): Scenario | null {
  const potArea = (Math.PI / 4) * p.potDiameter ** 2;
  const boilerArea = (Math.PI / 4) * p.boilerDiameter ** 2;
  const gridHeight = Math.min(2, (0.1 + 0.7 * p.gridShare) * p.potHeight);
  const room =
    p.layout === 'steam'
      ? 0.85 * boilerArea * p.boilerHeight
      : p.layout === 'water'
        ? 0.7 * potArea * p.potHeight
        : 0.98 * potArea * gridHeight;
  const bedRoom = potArea * (p.potHeight - (p.layout === 'water-and-steam' ? gridHeight : 0));
  const mass = (p.layout === 'water' ? 0.15 * potArea * p.potHeight * 1000 : 0.95 * bedRoom * 150) * p.chargeShare;
  const outside = Math.min(p.outside, 0.1);
  const pitch = Math.max(p.coilPitch, outside * 1.01);
  const spread = p.condenser === 'bundle' ? Math.sqrt(p.tubes * 1.2) : 1;
  const read = readScenario({
    heat: { kind: p.kind },
    pot: {
      layout: p.layout,
      diameter_m: p.potDiameter,
      height_m: p.potHeight,
      insulationThickness_m: p.insulation,
      gridHeight_m: gridHeight,
      water_kg: Math.max(0.05, room * 1000 * (0.05 + 0.95 * p.waterShare)),
    },
    charge: { botanical: 'own', mass_kg: Math.min(1000, mass), bulkDensity_kg_m3: 150 },
    boiler: { diameter_m: p.boilerDiameter, height_m: p.boilerHeight, drain: p.drain },
    neck: {
      bore_m: p.neckBore,
      length_m: p.neckLength,
      risingLength_m: p.neckLength * p.rising,
      insulationThickness_m: p.neckInsulation,
    },
    condenser: {
      kind: p.condenser,
      insideDiameter_m: 0.8 * outside,
      outsideDiameter_m: outside,
      length_m: p.length,
      tubes: p.tubes,
      coilDiameter_m: Math.max(p.coilDiameter, 2.01 * outside),
      coilPitch_m: pitch,
      coilTopDepth_m: p.topDepth,
      orientation: p.orientation,
      slope_rad: p.slope,
      jacketDiameter_m: outside * spread * p.jacket,
      flow: p.flow,
    },
    cooling: {
      jacketSupply: p.supply,
      flow_kg_s: [{ at_s: 0, value: p.coolant, shape: 'step' }],
      tubDiameter_m: p.tubDiameter,
      tubHeight_m: p.tubHeight,
      tubFill: p.fill,
    },
    separator: {
      bore_m: p.bore,
      height_m: p.separatorHeight,
      inletDepth_m: Math.min(1, 0.95 * p.inletShare * p.separatorHeight),
      returnShare: p.returns,
    },
  });
  return read.ok ? read.scenario : null;
}

export const anyScenario: fc.Arbitrary<Scenario> = parts
  .map(asScenario)
  .filter((scenario): scenario is Scenario => scenario !== null);
