/** The oil that is bottled: what the run collected, or a plant's own oil in a typed amount. */
import type { OilShare, RunResult } from '../../../sim/index.ts';
import { allPlants } from '../../state/own-plants-store.ts';
import type { Bottling } from '../../state/bottling-store.ts';

export interface BottledOil {
  readonly botanical: string;
  readonly oil_m3: number;
  readonly composition: readonly OilShare[];
  readonly hydrosol_kg: number | null;
  /** Name of the run. */
  readonly run: string | null;
}

const MILLILITRE_m3 = 1e-6;

/** `null` where the run brought no oil. */
export function bottledOil(of: Bottling, result: RunResult): BottledOil | null {
  if (of.source === 'run') {
    const { summary, scenario } = result;
    const all = Object.entries(summary.oilByConstituent_kg).filter(([, mass]) => mass > 0);
    const whole = all.reduce((sum, [, mass]) => sum + mass, 0);
    if (!(whole > 0 && summary.oilCollected_mL > 0)) return null;
    return {
      botanical: scenario.charge.botanical,
      oil_m3: summary.oilCollected_mL * MILLILITRE_m3,
      composition: all.map(([constituent, mass]) => ({ constituent, share: mass / whole })),
      hydrosol_kg: summary.hydrosol_kg,
      run: scenario.name,
    };
  }
  const plant = allPlants().find(({ id }) => id === of.botanical) ?? allPlants()[0];
  if (!plant) return null;
  return {
    botanical: plant.id,
    oil_m3: of.oil_m3,
    composition: plant.composition.value.map(({ constituent, massFraction }) => ({ constituent, share: massFraction })),
    hydrosol_kg: null,
    run: null,
  };
}

const MONTH = new Intl.DateTimeFormat('en-GB', { month: 'long', year: 'numeric' });

/** Month and year so long after a day that the browser’s field gave; `null` without a day. */
export function monthAfter(date: string, life_s: number): string | null {
  const from = Date.parse(date);
  return Number.isNaN(from) ? null : MONTH.format(new Date(from + 1000 * life_s));
}

const DAY_s = 86400;
const YEAR_days = 365.25;

/** `20 months`, `9 days`: a span of keeping. */
export function spanWords(span_s: number): string {
  const days = span_s / DAY_s;
  const rounded = (value: number): string => String(Number(value.toPrecision(2)));
  if (days < 1.5) return `${rounded(span_s / 3600)} hours`;
  if (days < 60) return `${rounded(days)} days`;
  if (days < 3 * YEAR_days) return `${rounded(days / (YEAR_days / 12))} months`;
  return `${rounded(days / YEAR_days)} years`;
}
