/** What is noted of a run beside its readings, and what follows from it: yield, cost, and how seasons compare. */
import * as z from 'zod/mini';
import { readRows, type LoggedRows } from './logbook.ts';

export interface RunFacts {
  /** `2026-06-20`; empty where nobody said. */
  readonly date: string;
  readonly place: string;
  readonly plant: string;
  /** Where the plant grew. */
  readonly field: string;
  /** Share of water in the plant. */
  readonly moisture: number | null;
  readonly plant_kg: number | null;
  readonly hydrosol_kg: number | null;
  readonly energy_J: number | null;
  readonly water_kg: number | null;
}

export const NO_FACTS: RunFacts = {
  date: '',
  place: '',
  plant: '',
  field: '',
  moisture: null,
  plant_kg: null,
  hydrosol_kg: null,
  energy_J: null,
  water_kg: null,
};

const words = z.catch(z.string(), '');
const amount = z.catch(z.nullable(z.number().check(z.minimum(0))), null);

export const factsSchema = z.catch(
  z.object({
    date: words,
    place: words,
    plant: words,
    field: words,
    moisture: amount,
    plant_kg: amount,
    hydrosol_kg: amount,
    energy_J: amount,
    water_kg: amount,
  }),
  NO_FACTS,
);

/** What of a run its yield follows from. */
export interface YieldingRun extends LoggedRows {
  readonly scenario: unknown;
  readonly facts: RunFacts;
}

export interface RunYield {
  readonly oil_mL: number | null;
  readonly yield_mL_kg: number | null;
  /** Of energy and cooling water; `null` where neither an amount nor a price is known. */
  readonly cost: number | null;
  readonly cost_mL: number | null;
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;

/** A price of the still that the run was made with. */
function priceOf(scenario: unknown, part: string, name: string): number {
  const within = isRecord(scenario) ? scenario[part] : null;
  const price = isRecord(within) ? within[name] : null;
  return typeof price === 'number' ? price : 0;
}

const WATER_DENSITY = 998;
/** Oil that was weighed counts by the density of an ordinary oil, kg/mL. */
const KILOGRAMS_A_MILLILITRE = 0.0009;

export function yieldOf(log: YieldingRun): RunYield {
  const { points } = readRows(log);
  const oils = points.flatMap(({ oil_mL, oil_kg }) =>
    oil_mL !== undefined ? [oil_mL] : oil_kg !== undefined ? [oil_kg / KILOGRAMS_A_MILLILITRE] : [],
  );
  const oil_mL = oils.length === 0 ? null : Math.max(...oils);
  const { plant_kg, energy_J, water_kg } = log.facts;
  const energyPrice = priceOf(log.scenario, 'heat', 'energyPrice_J');
  const waterPrice = priceOf(log.scenario, 'cooling', 'waterPrice_m3');
  const energy = energy_J !== null && energyPrice > 0 ? energy_J * energyPrice : null;
  const water = water_kg !== null && waterPrice > 0 ? (water_kg / WATER_DENSITY) * waterPrice : null;
  const cost = energy === null && water === null ? null : (energy ?? 0) + (water ?? 0);
  return {
    oil_mL,
    yield_mL_kg: oil_mL !== null && plant_kg !== null && plant_kg > 0 ? oil_mL / plant_kg : null,
    cost,
    cost_mL: cost !== null && oil_mL !== null && oil_mL > 0 ? cost / oil_mL : null,
  };
}

export interface Season {
  readonly year: string;
  readonly runs: number;
  readonly least_mL_kg: number;
  readonly mean_mL_kg: number;
  readonly most_mL_kg: number;
}

export interface PlantSeasons {
  readonly plant: string;
  readonly seasons: readonly Season[];
}

/** Oil a kilogram by plant and year, of the runs of which it is known. */
export function seasonsOf(logs: readonly YieldingRun[]): readonly PlantSeasons[] {
  const known = logs.flatMap((log) => {
    const { yield_mL_kg } = yieldOf(log);
    const year = log.facts.date.slice(0, 4);
    return yield_mL_kg === null || year === '' || log.facts.plant === ''
      ? []
      : [{ plant: log.facts.plant, year, value: yield_mL_kg }];
  });
  const plants = [...new Set(known.map(({ plant }) => plant))].sort();
  return plants.map((plant) => {
    const own = known.filter((each) => each.plant === plant);
    const years = [...new Set(own.map(({ year }) => year))].sort();
    return {
      plant,
      seasons: years.map((year): Season => {
        const values = own.filter((each) => each.year === year).map(({ value }) => value);
        return {
          year,
          runs: values.length,
          least_mL_kg: Math.min(...values),
          mean_mL_kg: values.reduce((sum, value) => sum + value, 0) / values.length,
          most_mL_kg: Math.max(...values),
        };
      }),
    };
  });
}
