/** An invented run book to look round: three seasons of the Tern Hollow community garden. Nobody distilled any of it. */
import { exampleScenario, USUAL_FIT } from '../../../sim/index.ts';
import { EMPTY_ROW } from '../../state/logbook.ts';
import type { Logbook, LoggedRun } from '../../state/logbook-schema.ts';

interface Invented {
  readonly date: string;
  readonly of: 'gentle-lavender' | 'rosemary-jacket';
  readonly plant: string;
  readonly field: string;
  readonly plant_kg: number;
  readonly moisture: number;
  /** Minutes from heat on, and mL of oil. */
  readonly oil: readonly (readonly [number, number])[];
  readonly hydrosol_kg: number;
  readonly energy_kWh: number;
  readonly water_kg: number;
  readonly notes: string;
}

const RUNS: readonly Invented[] = [
  {
    date: '2024-06-29',
    of: 'gentle-lavender',
    plant: 'Lavender',
    field: 'South bed',
    plant_kg: 2,
    moisture: 0.62,
    oil: [
      [35, 3.1],
      [50, 10.2],
      [70, 16.8],
      [95, 20.4],
      [120, 21.9],
    ],
    hydrosol_kg: 3.1,
    energy_kWh: 2.4,
    water_kg: 62,
    notes: 'Cut after rain. Lid leaked a little until re-seated.',
  },
  {
    date: '2024-07-06',
    of: 'gentle-lavender',
    plant: 'Lavender',
    field: 'South bed',
    plant_kg: 2.1,
    moisture: 0.55,
    oil: [
      [34, 4.0],
      [50, 13.1],
      [70, 20.5],
      [95, 24.6],
      [120, 26.0],
    ],
    hydrosol_kg: 3.2,
    energy_kWh: 2.4,
    water_kg: 60,
    notes: 'Two dry days before cutting.',
  },
  {
    date: '2025-06-24',
    of: 'gentle-lavender',
    plant: 'Lavender',
    field: 'South bed',
    plant_kg: 2,
    moisture: 0.5,
    oil: [
      [33, 4.9],
      [50, 16.0],
      [70, 24.9],
      [95, 29.8],
      [120, 31.6],
    ],
    hydrosol_kg: 3.0,
    energy_kWh: 2.3,
    water_kg: 58,
    notes: 'Half of the flowers open.',
  },
  {
    date: '2025-07-01',
    of: 'gentle-lavender',
    plant: 'Lavender',
    field: 'Wall bed',
    plant_kg: 1.8,
    moisture: 0.52,
    oil: [
      [33, 3.9],
      [50, 12.8],
      [70, 19.6],
      [95, 23.3],
      [120, 24.8],
    ],
    hydrosol_kg: 2.9,
    energy_kWh: 2.3,
    water_kg: 57,
    notes: '',
  },
  {
    date: '2026-06-27',
    of: 'gentle-lavender',
    plant: 'Lavender',
    field: 'South bed',
    plant_kg: 2,
    moisture: 0.48,
    oil: [
      [33, 5.4],
      [50, 17.6],
      [70, 27.3],
      [95, 32.5],
      [120, 34.4],
    ],
    hydrosol_kg: 3.0,
    energy_kWh: 2.3,
    water_kg: 58,
    notes: 'Dry June. Heat to half at the first drop.',
  },
  {
    date: '2025-09-13',
    of: 'rosemary-jacket',
    plant: 'Rosemary',
    field: 'Bank',
    plant_kg: 5,
    moisture: 0.6,
    oil: [
      [45, 4.2],
      [70, 16.8],
      [100, 26.1],
      [140, 31.7],
    ],
    hydrosol_kg: 6.1,
    energy_kWh: 5.2,
    water_kg: 190,
    notes: 'Woody ends left on.',
  },
  {
    date: '2026-09-19',
    of: 'rosemary-jacket',
    plant: 'Rosemary',
    field: 'Bank',
    plant_kg: 5,
    moisture: 0.58,
    oil: [
      [45, 5.0],
      [70, 20.2],
      [100, 31.0],
      [140, 37.4],
    ],
    hydrosol_kg: 6.0,
    energy_kWh: 5.1,
    water_kg: 185,
    notes: 'Tips only.',
  },
];

const JOULES_A_KWH = 3.6e6;

export const ternHollowBook = (): Logbook => ({
  logs: RUNS.map(
    (
      { date, of, plant, field, plant_kg, moisture, oil, hydrosol_kg, energy_kWh, water_kg, notes },
      index,
    ): LoggedRun => ({
      id: `invented-${index}`,
      name: `${plant}, ${date}`,
      notes,
      scenario: exampleScenario(of),
      units: { oil: 'mL', temperature: '°C', distillate: 'L' },
      rows: oil.map(([minute, volume]) => ({ ...EMPTY_ROW, time: String(minute), oil: String(volume) })),
      draft: '',
      factors: USUAL_FIT,
      zero: 'heat-on',
      zeroAt: '',
      facts: {
        date,
        place: 'Tern Hollow still shed (invented)',
        plant,
        field,
        moisture,
        plant_kg,
        hydrosol_kg,
        energy_J: energy_kWh * JOULES_A_KWH,
        water_kg,
      },
      photos: [],
    }),
  ),
  stills: [],
  unread: [],
});
