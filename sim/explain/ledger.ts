/** Working of what a run comes to: oil won, when, and at what price. */
import { ZERO_CELSIUS } from '../constants.ts';
import type { RunResult } from '../run/result.ts';
import { symbol, writtenStep, type WorkingSheet } from './sheet.ts';

const LEDGER = 'ledger of the run';
/** Density by which kilograms of cooling water count as volume, as in the summary, kg/m³. */
const WATER_DENSITY = 998;

export function recovery({ summary, scenario }: RunResult): WorkingSheet | null {
  const { charge, factors } = scenario;
  if (summary.recovery === null) return null;
  const oil = charge.mass_kg * (1 - charge.moisture) * charge.oilContent * factors.oilContent;
  return {
    id: 'recovery',
    title: 'Share of the oil that is won',
    says: 'Oil in the receiver over oil in the charge, at the end of the run.',
    time_s: summary.end_s,
    steps: [
      writtenStep({
        title: 'Oil in the charge',
        tex: 'm_0 = m\\,(1-w)\\,c\\,f',
        symbols: [
          symbol('m', 'charge', charge.mass_kg, 'kg', 'scenario: charge'),
          symbol('w', 'its water', charge.moisture, '1', 'scenario: moisture'),
          symbol('c', 'oil content of the dry plant', charge.oilContent, 'kg/kg', 'scenario: oil content'),
          symbol('f', 'oil content factor', factors.oilContent, '1', 'scenario: oil content factor'),
        ],
        result: { tex: 'm_0', value: oil, unit: 'kg' },
        source: 'definition',
      }),
      writtenStep({
        title: 'Recovery: what the separator caught of it, step by step',
        tex: 'R = \\frac{1}{m_0}\\int_0^{t_{end}}\\dot m_o\\,dt',
        symbols: [
          symbol('m_0', 'oil in the charge', oil, 'kg', 'step above'),
          symbol(
            '\\int_0^{t_{end}}\\dot m_o\\,dt',
            'oil collected',
            summary.oilCollected_kg,
            'kg',
            `${LEDGER}: every constituent closes to rounding`,
          ),
        ],
        result: { tex: 'R', value: summary.oilCollected_kg / oil, unit: '1' },
        source: LEDGER,
      }),
    ],
    result: { value: summary.oilCollected_kg / oil, unit: '1' },
    ofRun: { value: summary.recovery, from: 'summary: recovery' },
  };
}

export function timeToNinety({ summary, record }: RunResult): WorkingSheet | null {
  if (summary.t90_s === null) return null;
  const { time_s, oilCollected_kg } = record.columns;
  const wanted = 0.9 * summary.oilCollected_kg;
  const row = Math.max(
    1,
    oilCollected_kg.findIndex((mass) => mass >= wanted),
  );
  const [t0, t1] = [time_s[row - 1] as number, time_s[row] as number];
  const [m0, m1] = [oilCollected_kg[row - 1] as number, oilCollected_kg[row] as number];
  const time = t0 + ((wanted - m0) / (m1 - m0)) * (t1 - t0);
  return {
    id: 'time-to-90',
    title: 'Time to 90 % of the oil',
    says: 'When nine tenths of what this run collects are in the receiver.',
    time_s: summary.t90_s,
    steps: [
      writtenStep({
        title: 'Nine tenths of the oil',
        tex: 'm_{90} = 0.9\\,m_{end}',
        symbols: [symbol('m_{end}', 'oil collected in the end', summary.oilCollected_kg, 'kg', LEDGER)],
        result: { tex: 'm_{90}', value: wanted, unit: 'kg' },
        source: 'definition',
      }),
      writtenStep({
        title: 'Straight line between the two rows of the record about it',
        tex: 't_{90} = t_0+\\frac{m_{90}-m_0}{m_1-m_0}(t_1-t_0)',
        symbols: [
          symbol('t_0', 'row before', t0, 's', 'record: time'),
          symbol('t_1', 'row after', t1, 's', 'record: time'),
          symbol('m_0', 'oil by the row before', m0, 'kg', 'record: oil collected'),
          symbol('m_1', 'oil by the row after', m1, 'kg', 'record: oil collected'),
          symbol('m_{90}', 'nine tenths', wanted, 'kg', 'step above'),
        ],
        result: { tex: 't_{90}', value: time, unit: 's' },
        source: 'definition',
      }),
    ],
    result: { value: time, unit: 's' },
    ofRun: { value: summary.t90_s, from: 'summary: time to 90 %' },
  };
}

export function energyAndWaterCost({ summary, record, scenario }: RunResult): WorkingSheet {
  const { heat, cooling } = scenario;
  const last = record.rows - 1;
  const energy = record.columns.fuelEnergy_J[last] as number;
  const water = record.columns.coolantUsed_kg[last] as number;
  const energyCost = energy * heat.energyPrice_J;
  const waterCost = (water / WATER_DENSITY) * cooling.waterPrice_m3;
  return {
    id: 'cost',
    title: 'Price of energy and water',
    says: `In your currency, for the whole run; distillate and pot water are not counted. Warmest cooling water ${(summary.coolantPeakOut_C + ZERO_CELSIUS).toFixed(1)} K.`,
    time_s: summary.end_s,
    steps: [
      writtenStep({
        title: 'Energy',
        tex: 'K_e = p_e\\int_0^{t_{end}}P\\,dt',
        symbols: [
          symbol('p_e', 'energy price', heat.energyPrice_J, '1/J', 'scenario: energy price'),
          symbol(
            '\\int_0^{t_{end}}P\\,dt',
            'energy that the source took',
            energy,
            'J',
            `${LEDGER}: setting times rated power, step by step`,
          ),
        ],
        result: { tex: 'K_e', value: energyCost, unit: '1' },
        source: 'definition',
      }),
      writtenStep({
        title: 'Cooling water',
        tex: 'K_w = p_w\\,\\frac{m_w}{\\rho}',
        symbols: [
          symbol('p_w', 'water price', cooling.waterPrice_m3, '1/m³', 'scenario: water price'),
          symbol('m_w', 'tap water used', water, 'kg', LEDGER),
          symbol('\\rho', 'density of tap water', WATER_DENSITY, 'kg/m³', 'water at about 20 °C'),
        ],
        result: { tex: 'K_w', value: waterCost, unit: '1' },
        source: 'definition',
      }),
      writtenStep({
        title: 'Together',
        tex: 'K = K_e+K_w',
        symbols: [
          symbol('K_e', 'energy', energyCost, '1', 'step above'),
          symbol('K_w', 'water', waterCost, '1', 'step above'),
        ],
        result: { tex: 'K', value: energyCost + waterCost, unit: '1' },
        source: 'definition',
      }),
    ],
    result: { value: energyCost + waterCost, unit: '1' },
    ofRun: { value: summary.energyCost + summary.waterCost, from: 'summary: energy and water' },
  };
}
