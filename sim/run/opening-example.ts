/** The example with which the page opens, apart from the others, which are fetched when somebody asks for them. */
import { chargeFromBotanical } from '../scenario/presets.ts';
import type { ScenarioInput } from '../scenario/scenario.ts';

export interface Example {
  readonly id: string;
  readonly title: string;
  readonly says: string;
  readonly scenario: ScenarioInput;
}

export const shed: ScenarioInput['site'] = { altitude_m: 120, airTemperature_K: 291.15, relativeHumidity: 0.6 };

const lavender: ScenarioInput = {
  name: 'Gentle lavender',
  note: 'Two kilograms of dried lavender from the south bed, on the plate at half heat. At full heat it is more than this coil and tub can take.',
  site: shed,
  heat: {
    // The library's electric plate; its rows need not come with the first view.
    kind: 'electric-plate',
    shareToPot: 0.75,
    lag_s: 180,
    ratedPower_W: 3500,
    supplyVolts_V: 230,
    supplyAmps_A: 16,
    setting: [
      { at_s: 0, value: 0.9 },
      { at_s: 0, after: 'first-drop', value: 0.5 },
    ],
  },
  pot: {
    layout: 'water-and-steam',
    diameter_m: 0.32,
    height_m: 0.32,
    gridHeight_m: 0.12,
    water_kg: 8,
    emissivity: 0.2,
  },
  charge: { ...chargeFromBotanical('lavender-true', 'dry'), mass_kg: 2, bulkDensity_kg_m3: 150 },
  condenser: { length_m: 1.5, coilDiameter_m: 0.25, coilPitch_m: 0.05 },
  cooling: { flow_kg_s: [{ at_s: 0, value: 0.0055 }], tubDiameter_m: 0.36, tubHeight_m: 0.36 },
  separator: { bore_m: 0.08, height_m: 0.22 },
  run: { duration_s: 7800 },
};

export const openingExample: Example = {
  id: 'gentle-lavender',
  title: 'Gentle lavender',
  says: 'A medium pot on an electric plate, dried lavender on a grid, a copper coil in a tub.',
  scenario: lavender,
};
