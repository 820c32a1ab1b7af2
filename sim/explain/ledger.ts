/** Working of what a run comes to: oil won, when, and at what price. */
import type { RunResult } from '../run/result.ts';
import { LEDGER, sheetOf, STEP, writtenStep, type WorkingSheet } from './sheet.ts';

/** Density by which kilograms of cooling water count as volume, as in the summary, kg/m³. */
const WATER_DENSITY = 998;

export function recovery({ summary, scenario: { charge, factors } }: RunResult): WorkingSheet | null {
  if (summary.recovery === null) return null;
  return sheetOf(
    ['recovery', 'Share of the oil that is won', summary.end_s],
    'Oil in the receiver over oil in the charge, at the end of the run.',
    'the run’s summary: recovery',
    writtenStep(
      'Oil in the charge',
      'm_0 = m\\,(1-w)\\,c\\,f',
      [summary.oilInCharge_kg, 'kg'],
      ['m', charge.mass_kg, 'kg', 'charge', 'scenario: charge'],
      ['w', charge.moisture, '1', 'its water', 'scenario: moisture'],
      ['c', charge.oilContent, 'kg/kg', 'oil content of the dry plant', 'scenario: oil content'],
      ['f', factors.oilContent, '1', 'oil content factor', 'scenario: oil content factor'],
    ),
    writtenStep(
      'Recovery: what the separator caught of it, step by step',
      'R = \\frac{m_o}{m_0}',
      [summary.recovery, '1', LEDGER],
      ['m_0', summary.oilInCharge_kg, 'kg', 'oil in the charge', STEP],
      ['m_o', summary.oilCollected_kg, 'kg', 'oil collected', `${LEDGER}: every constituent closes to rounding`],
    ),
  );
}

export function timeToNinety({ summary, record }: RunResult): WorkingSheet | null {
  if (summary.t90_s === null) return null;
  const { time_s, oilCollected_kg } = record.columns;
  const wanted = 0.9 * summary.oilCollected_kg;
  const row = Math.max(
    1,
    oilCollected_kg.findIndex((mass) => mass >= wanted),
  );
  const at = (column: Float64Array, index: number): number => column[index] as number;
  return sheetOf(
    ['time-to-90', 'Time to 90 % of the oil', summary.t90_s],
    'When 90 % of the oil that this run collects is in the receiver.',
    'the run’s summary: time to 90 %',
    writtenStep(
      '90 % of the oil',
      'm_{90} = 0.9\\,m_{end}',
      [wanted, 'kg'],
      ['m_{end}', summary.oilCollected_kg, 'kg', 'oil collected in the end', LEDGER],
    ),
    writtenStep(
      'Straight line between the two rows of the record about it',
      't_{90} = t_0+\\frac{m_{90}-m_0}{m_1-m_0}(t_1-t_0)',
      [summary.t90_s, 's'],
      ['t_0', at(time_s, row - 1), 's', 'row before', 'record: time'],
      ['t_1', at(time_s, row), 's', 'row after', 'record: time'],
      ['m_0', at(oilCollected_kg, row - 1), 'kg', 'oil by the row before', 'record: oil collected'],
      ['m_1', at(oilCollected_kg, row), 'kg', 'oil by the row after', 'record: oil collected'],
      ['m_{90}', wanted, 'kg', '90 % of the oil', STEP],
    ),
  );
}

export function energyAndWaterCost({ summary, scenario: { heat, cooling } }: RunResult): WorkingSheet {
  const { energyFuel_J: energy, coolantUsed_kg: water, energyCost, waterCost } = summary;
  return sheetOf(
    ['cost', 'Price of energy and water', summary.end_s],
    'In your currency, for the whole run; distillate and pot water are not counted.',
    'the run’s summary: energy and water',
    writtenStep(
      'Energy',
      'K_e = p_e\\,E',
      [energyCost, '1'],
      ['p_e', heat.energyPrice_J, '1/J', 'energy price', 'scenario: energy price'],
      ['E', energy, 'J', 'energy that the source took', `${LEDGER}: setting times rated power, step by step`],
    ),
    writtenStep(
      'Cooling water',
      'K_w = p_w\\,\\frac{m_w}{\\rho}',
      [waterCost, '1'],
      ['p_w', cooling.waterPrice_m3, '1/m³', 'water price', 'scenario: water price'],
      ['m_w', water, 'kg', 'tap water used', LEDGER],
      ['\\rho', WATER_DENSITY, 'kg/m³', 'density of tap water', 'cool water'],
    ),
    writtenStep(
      'Together',
      'K = K_e+K_w',
      [energyCost + waterCost, '1'],
      ['K_e', energyCost, '1', 'energy', 'first step'],
      ['K_w', waterCost, '1', 'water', STEP],
    ),
  );
}
