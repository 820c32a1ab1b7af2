/** Ready scenarios from the Tern Hollow community garden and its still shed, an invented place. */
import { readScenario } from '../scenario/read-scenario.ts';
import { chargeFromBotanical, heatFromSource } from '../scenario/presets.ts';
import type { Scenario, ScenarioInput } from '../scenario/scenario.ts';
import { openingExample, shed, type Example } from './opening-example.ts';

export type { Example } from './opening-example.ts';

/** Charge of a botanical with the weights and shares the garden uses. */
const charge = (
  id: string,
  state: 'fresh' | 'dry',
  mass_kg: number,
  more: Partial<Scenario['charge']> = {},
): ScenarioInput['charge'] => ({ ...chargeFromBotanical(id, state), mass_kg, ...more });

const KELVIN = 273.15;

export const examples: readonly Example[] = [
  openingExample,
  {
    id: 'hard-boiled-lavender',
    title: 'The same, boiled hard',
    says: 'A full flame and the tap shut: the tub warms until it no longer condenses.',
    scenario: {
      ...openingExample.scenario,
      name: 'Lavender, boiled hard',
      note: 'What happened on the big ring with the hose forgotten.',
      heat: {
        ...heatFromSource('gas-ring'),
        kind: 'gas-ring',
        ratedPower_W: 9000,
        supplyVolts_V: null,
        supplyAmps_A: null,
        setting: [{ at_s: 0, value: 1 }],
      },
      condenser: { length_m: 3, coilDiameter_m: 0.25, coilPitch_m: 0.05 },
      cooling: { flow_kg_s: [{ at_s: 0, value: 0 }], tubDiameter_m: 0.42, tubHeight_m: 0.45 },
      run: { duration_s: 7200 },
    },
  },
  {
    id: 'rosemary-jacket',
    title: 'Rosemary in a large pot',
    says: 'Fresh rosemary over water in a large pot on gas, a straight tube in a jacket with tap water.',
    scenario: {
      name: 'Rosemary in a large pot',
      note: 'Prunings of the long hedge, wilted overnight.',
      site: shed,
      heat: {
        ...heatFromSource('gas-ring'),
        kind: 'gas-ring',
        ratedPower_W: 8000,
        setting: [
          { at_s: 0, value: 1 },
          { at_s: 3000, value: 0.7 },
        ],
      },
      pot: {
        layout: 'water-and-steam',
        diameter_m: 0.4,
        height_m: 0.4,
        gridHeight_m: 0.14,
        water_kg: 15,
        insulationThickness_m: 0.02,
      },
      charge: charge('rosemary', 'fresh', 6),
      neck: { bore_m: 0.03, length_m: 0.9, risingLength_m: 0.25 },
      condenser: {
        kind: 'jacketed-tube',
        insideDiameter_m: 0.016,
        outsideDiameter_m: 0.018,
        length_m: 2.8,
        jacketDiameter_m: 0.024,
        flow: 'counterflow',
        slope_rad: 0.12,
      },
      cooling: { jacketSupply: 'tap', flow_kg_s: [{ at_s: 0, value: 0.07 }] },
      separator: { bore_m: 0.12, height_m: 0.3, inletDepth_m: 0.08 },
      run: { duration_s: 9000 },
    },
  },
  {
    id: 'clove-buds',
    title: 'Clove buds, oil that sinks',
    says: 'Crushed clove buds in the water of a small copper pot; the oil is heavier than water.',
    scenario: {
      name: 'Clove buds',
      note: 'A winter workshop: cohobated, because the oil comes slowly.',
      site: shed,
      heat: {
        ...heatFromSource('electric-plate'),
        ratedPower_W: 1500,
        setting: [
          { at_s: 0, value: 1 },
          { at_s: 0, after: 'first-drop', value: 0.7 },
        ],
      },
      pot: {
        layout: 'water',
        diameter_m: 0.28,
        height_m: 0.3,
        material: 'copper',
        wallThickness_m: 0.0012,
        emissivity: 0.6,
        water_kg: 9,
        insulationThickness_m: 0.015,
      },
      charge: charge('clove-bud', 'dry', 0.8),
      neck: { bore_m: 0.028, length_m: 0.7, risingLength_m: 0.2 },
      condenser: {
        insideDiameter_m: 0.01,
        outsideDiameter_m: 0.012,
        length_m: 4,
        coilDiameter_m: 0.22,
        coilPitch_m: 0.05,
      },
      cooling: { flow_kg_s: [{ at_s: 0, value: 0.012 }], tubDiameter_m: 0.38, tubHeight_m: 0.45 },
      separator: { bore_m: 0.07, height_m: 0.2, returnShare: 0.9 },
      run: { duration_s: 21_600 },
    },
  },
  {
    id: 'lemon-balm-cohobation',
    title: 'Lemon balm, water returned',
    says: 'Fresh lemon balm with little oil, most of it in the water: the distillate runs back to the pot.',
    scenario: {
      name: 'Lemon balm, cohobated',
      note: 'From the shady border, cut before flowering. A small pump keeps the water of the tub moving.',
      site: shed,
      heat: {
        ...heatFromSource('induction'),
        ratedPower_W: 2000,
        setting: [
          { at_s: 0, value: 1 },
          { at_s: 2700, value: 0.65 },
        ],
      },
      pot: {
        layout: 'water-and-steam',
        diameter_m: 0.36,
        height_m: 0.36,
        gridHeight_m: 0.1,
        water_kg: 9,
        insulationThickness_m: 0.015,
      },
      charge: charge('lemon-balm', 'fresh', 4),
      condenser: {
        insideDiameter_m: 0.013,
        outsideDiameter_m: 0.015,
        length_m: 4,
        coilDiameter_m: 0.28,
        coilPitch_m: 0.055,
      },
      cooling: { flow_kg_s: [{ at_s: 0, value: 0.012 }], stir_m_s: 0.1, tubDiameter_m: 0.45, tubHeight_m: 0.45 },
      separator: { bore_m: 0.07, height_m: 0.2, returnShare: 0.85 },
      run: { duration_s: 10_800 },
    },
  },
  {
    id: 'class-glass',
    title: 'Class set-up in glass',
    says: 'Orange peel in a small flask on a hotplate, a short glass condenser, a pumped bucket with ice.',
    scenario: {
      name: 'Orange peel in glass',
      note: 'One table of the autumn class.',
      site: shed,
      heat: {
        ...heatFromSource('electric-plate'),
        ratedPower_W: 600,
        lag_s: 90,
        setting: [
          { at_s: 0, value: 1 },
          { at_s: 0, after: 'first-boil', value: 0.6 },
        ],
      },
      pot: {
        layout: 'water',
        diameter_m: 0.16,
        height_m: 0.17,
        material: 'borosilicate-glass',
        wallThickness_m: 0.002,
        emissivity: 0.9,
        water_kg: 1,
        minimumDepth_m: 0.01,
      },
      charge: charge('orange-peel', 'fresh', 0.35),
      neck: {
        bore_m: 0.012,
        length_m: 0.3,
        risingLength_m: 0.1,
        wallThickness_m: 0.0015,
        material: 'borosilicate-glass',
        emissivity: 0.9,
      },
      condenser: {
        kind: 'jacketed-tube',
        insideDiameter_m: 0.01,
        outsideDiameter_m: 0.013,
        material: 'borosilicate-glass',
        length_m: 0.5,
        jacketDiameter_m: 0.028,
        slope_rad: 0.35,
        fouling_m2K_W: 0,
      },
      cooling: {
        jacketSupply: 'barrel',
        flow_kg_s: [{ at_s: 0, value: 0.02 }],
        tubDiameter_m: 0.26,
        tubHeight_m: 0.22,
        startTemperature_K: KELVIN + 14,
        ice: [{ at_s: 1200, mass_kg: 1 }],
      },
      separator: { bore_m: 0.03, height_m: 0.12, inletDepth_m: 0.03 },
      run: { duration_s: 4500 },
    },
  },
  {
    id: 'peppermint-boiler',
    title: 'Peppermint, steam from a boiler',
    says: 'Fresh peppermint in a tall vessel fed by a separate boiler, a bundle of seven tubes in a jacket.',
    scenario: {
      name: 'Peppermint, steam from a boiler',
      note: 'The second cut of the mint bed, wilted over a day.',
      site: shed,
      heat: {
        ...heatFromSource('steam-generator'),
        ratedPower_W: 6000,
        setting: [
          { at_s: 0, value: 1 },
          { at_s: 1200, after: 'first-drop', value: 0.6 },
        ],
      },
      pot: { layout: 'steam', diameter_m: 0.36, height_m: 0.55, water_kg: 12, insulationThickness_m: 0.025 },
      boiler: { diameter_m: 0.3, height_m: 0.35, insulationThickness_m: 0.03 },
      charge: charge('peppermint', 'fresh', 6),
      neck: { bore_m: 0.035, length_m: 0.8, risingLength_m: 0.2 },
      condenser: {
        kind: 'bundle',
        tubes: 7,
        insideDiameter_m: 0.01,
        outsideDiameter_m: 0.012,
        length_m: 1.2,
        jacketDiameter_m: 0.054,
        flow: 'counterflow',
        orientation: 'upright',
      },
      cooling: { jacketSupply: 'tap', flow_kg_s: [{ at_s: 0, value: 0.08 }] },
      separator: { bore_m: 0.16, height_m: 0.3, inletDepth_m: 0.08 },
      run: { duration_s: 6600 },
    },
  },
  {
    id: 'eucalyptus-wood-fire',
    title: 'Eucalyptus over a wood fire',
    says: 'Fresh leaves over water on a wood fire, a long coil in a barrel of rainwater that nothing refills.',
    scenario: {
      name: 'Eucalyptus over a wood fire',
      note: 'The barrel stood in the shade overnight; no hose reaches the clearing.',
      site: { ...shed, airTemperature_K: 295.15 },
      heat: {
        ...heatFromSource('wood-fire'),
        ratedPower_W: 24_000,
        setting: [
          { at_s: 0, value: 1 },
          { at_s: 0, after: 'first-drop', value: 0.6 },
        ],
      },
      pot: { layout: 'water-and-steam', diameter_m: 0.4, height_m: 0.5, gridHeight_m: 0.15, water_kg: 16 },
      charge: charge('eucalyptus-globulus', 'fresh', 5),
      neck: { bore_m: 0.03, length_m: 1, risingLength_m: 0.3 },
      condenser: {
        insideDiameter_m: 0.016,
        outsideDiameter_m: 0.018,
        length_m: 7,
        coilDiameter_m: 0.42,
        coilPitch_m: 0.09,
      },
      cooling: {
        flow_kg_s: [{ at_s: 0, value: 0 }],
        startTemperature_K: KELVIN + 14,
        tubDiameter_m: 0.58,
        tubHeight_m: 0.8,
      },
      separator: { bore_m: 0.1, height_m: 0.25 },
      run: { duration_s: 9000 },
    },
  },
  {
    id: 'thyme-thin-tube',
    title: 'Thyme through a thin tube',
    says: 'What must not be done: a hard boil through a very thin tube, which holds the steam back.',
    scenario: {
      name: 'Thyme through a thin tube',
      note: 'The tube was left over from a fridge. Seen in the model only.',
      site: shed,
      heat: { ...heatFromSource('induction'), ratedPower_W: 3500, setting: [{ at_s: 0, value: 1 }] },
      pot: { layout: 'water-and-steam', diameter_m: 0.32, height_m: 0.34, gridHeight_m: 0.12, water_kg: 8 },
      charge: charge('thyme-thymol', 'fresh', 2),
      condenser: {
        insideDiameter_m: 0.004,
        outsideDiameter_m: 0.006,
        length_m: 3,
        coilDiameter_m: 0.2,
        coilPitch_m: 0.03,
      },
      cooling: { flow_kg_s: [{ at_s: 0, value: 0.02 }], tubDiameter_m: 0.4, tubHeight_m: 0.4 },
      separator: { bore_m: 0.08, height_m: 0.22 },
      run: { duration_s: 4800 },
    },
  },
  {
    id: 'caraway-immersion',
    title: 'Caraway on a garden socket',
    says: 'Crushed caraway over an immersion element that takes more than its circuit carries.',
    scenario: {
      name: 'Caraway on a garden socket',
      note: 'The long lead to the shed has a ten-ampere breaker.',
      site: shed,
      heat: {
        ...heatFromSource('immersion-element'),
        ratedPower_W: 3000,
        supplyVolts_V: 230,
        supplyAmps_A: 10,
        setting: [
          { at_s: 0, value: 1 },
          { at_s: 3000, value: 0.5 },
        ],
      },
      pot: {
        layout: 'water-and-steam',
        diameter_m: 0.34,
        height_m: 0.4,
        gridHeight_m: 0.2,
        water_kg: 14,
        minimumDepth_m: 0.05,
        insulationThickness_m: 0.02,
      },
      charge: charge('caraway', 'dry', 1.5),
      condenser: {
        insideDiameter_m: 0.01,
        outsideDiameter_m: 0.012,
        length_m: 3.5,
        coilDiameter_m: 0.25,
        coilPitch_m: 0.05,
      },
      cooling: { flow_kg_s: [{ at_s: 0, value: 0.01 }], tubDiameter_m: 0.4, tubHeight_m: 0.45 },
      separator: { bore_m: 0.08, height_m: 0.25 },
      run: { duration_s: 9000 },
    },
  },
  {
    id: 'juniper-dry-pot',
    title: 'Juniper, too little water',
    says: 'What must not happen: crushed berries in the water of a pot that runs dry on a gas burner.',
    scenario: {
      name: 'Juniper, too little water',
      note: 'Nobody looked for an hour. The hose hangs over the rim of the tub. Seen in the model only.',
      site: shed,
      heat: {
        ...heatFromSource('outdoor-gas-burner'),
        ratedPower_W: 6000,
        setting: [
          { at_s: 0, value: 1 },
          { at_s: 1200, value: 0.7 },
        ],
      },
      pot: { layout: 'water', diameter_m: 0.32, height_m: 0.32, water_kg: 3.4 },
      charge: charge('juniper-berry', 'dry', 1.2),
      condenser: {
        insideDiameter_m: 0.013,
        outsideDiameter_m: 0.015,
        length_m: 5,
        coilDiameter_m: 0.3,
        coilPitch_m: 0.06,
      },
      cooling: { flow_kg_s: [{ at_s: 0, value: 0.03 }], inlet: 'top', tubDiameter_m: 0.45, tubHeight_m: 0.5 },
      separator: { bore_m: 0.1, height_m: 0.25 },
      run: { duration_s: 7200 },
    },
  },
];

/** The scenario of an example, complete. */
export function exampleScenario(id: string): Scenario {
  const found = examples.find((entry) => entry.id === id);
  if (!found)
    throw new RangeError(`example: “${id}” is not known; known are ${examples.map((entry) => entry.id).join(', ')}`);
  const read = readScenario(found.scenario);
  if (!read.ok) throw new Error(`example ${id}: ${JSON.stringify(read.problems)}`);
  return read.scenario;
}
