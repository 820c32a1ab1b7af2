/** Working of what happens in the pot: time to the boil, and steam. */
import { tableLatentHeat, tableLiquidEnthalpy } from '../fluids/water-table.ts';
import type { RunResult } from '../run/result.ts';
import { smoothingShare, type Smoothed } from '../run/summary.ts';
import { MOST_BOILED_OFF } from '../still/pot.ts';
import { ENTHALPY_ZERO } from '../still/stream.ts';
import type { Moment } from './moment.ts';
import { BALANCE, BEFORE, LEDGER, RUN, sheetOf, STEP, TABLES, TIME_STEP, writtenStep } from './sheet.ts';
import type { Row, WorkingSheet, WorkingStep } from './sheet.ts';

const ZERO_ROW: Row = ['T_z', ENTHALPY_ZERO, 'K', 'zero of the enthalpies', 'triple point of water'];

/** The share of the way that a smoothed number goes in a step. */
export const shareRow = (dt: number): Row => {
  return ['s', smoothingShare(dt), '1', 'share of the way in a step, 1 − exp(−Δt/30 s)', TIME_STEP];
};

/** How a peak follows from the number of its moment: the summary smooths before it takes peaks. */
export const smoothingStep = (
  name: string,
  tex: string,
  unit: string,
  latest: number,
  { before, now }: Smoothed,
  dt: number,
): WorkingStep =>
  writtenStep(
    `Smoothed over half a minute, because ${name} flickers from step to step`,
    `\\overline{${tex}} = \\overline{${tex}}' + s\\,(${tex}_{now} - \\overline{${tex}}')`,
    [now, unit, 'definition of the summary’s peaks'],
    [`\\overline{${tex}}'`, before, unit, 'smoothed value of the step before', BEFORE],
    [`${tex}_{now}`, latest, unit, 'value of this step', STEP],
    shareRow(dt),
  );

/** From the state just before the first steam. */
export function timeToBoil({ still, time_s, atStart }: Moment, { summary, scenario }: RunResult): WorkingSheet | null {
  const { pot, potEnergy } = still;
  if (summary.firstBoil_s === null) return null;
  const { temperature: T_1, water } = pot;
  const { potTemperature: T_0 } = atStart;
  const [h_0, h_1] = [tableLiquidEnthalpy(T_0), tableLiquidEnthalpy(T_1)];
  const capacity = pot.capacity();
  const needed = water * (h_1 - h_0) + capacity * (T_1 - T_0);
  // Ester that turns to alcohol takes water with its heat, and a little of the oil's mass.
  const contentAtStart = water * h_0 + capacity * (T_0 - ENTHALPY_ZERO);
  const chemistry = pot.consumedEnthalpy - (atStart.potEnthalpy - contentAtStart);
  const power = potEnergy / time_s;
  const loss = (pot.lossEnergy + chemistry) / time_s;
  const { ratedPower_W, shareToPot, lag_s } = scenario.heat;
  const source = `setting, rated power ${ratedPower_W} W, share ${shareToPot}, lag ${lag_s} s`;
  return sheetOf(
    ['time-to-boil', 'Time to the boil', summary.firstBoil_s],
    'When the pot makes its first steam, counted from when the heat went on.',
    'the run’s summary: first boil',
    writtenStep(
      'Heat that the pot and its content take',
      'Q = m\\,(h_l(T_1)-h_l(T_0)) + C\\,(T_1-T_0)',
      [needed, 'J', BALANCE],
      ['m', water, 'kg', 'water in the pot', 'scenario: water in the pot, moisture of a charge that lies in it'],
      ['h_l(T_1)', h_1, 'J/kg', 'enthalpy of water just before the boil', TABLES],
      ['h_l(T_0)', h_0, 'J/kg', 'enthalpy of the water filled in', TABLES],
      ['C', capacity, 'J/K', 'heat capacity of wall, base, plant in the water and its oil', 'scenario: pot, charge'],
      ['T_1', T_1, 'K', 'temperature just before the boil', RUN],
      ['T_0', T_0, 'K', 'filling temperature', 'scenario: filling temperature'],
    ),
    writtenStep(
      'Power that enters the pot, as a mean until then',
      '\\bar P = \\frac{E}{t_1}',
      [power, 'W', LEDGER],
      ['t_1', time_s, 's', 'time up to the step before the boil', 'the run'],
      ['E', potEnergy, 'J', 'energy that entered the pot', `${LEDGER}: ${source}`],
    ),
    writtenStep(
      'Time',
      't_b = \\frac{Q}{\\bar P-\\bar Q_l}+\\Delta t',
      [summary.firstBoil_s, 's', BALANCE],
      ['Q', needed, 'J', 'heat needed', 'first step'],
      ['\\bar P', power, 'W', 'mean power into the pot', STEP],
      ['\\bar Q_l', loss, 'W', 'mean loss to the air, and to chemistry in the pot', LEDGER],
      ['\\Delta t', summary.firstBoil_s - time_s, 's', 'the step in which it boils', TIME_STEP],
    ),
  );
}

/** Steam of one step, as the pot works it out. */
export function steamRate({ still, peaks, dt, time_s }: Moment): WorkingSheet | null {
  const { pot, airPressure } = still;
  const { terms } = pot;
  if (!(pot.out.water > 0)) return null;
  const { boiling, water, capacity } = terms;
  const rate = pot.out.water / dt;
  const kept = terms.perPascal * (pot.gauge - terms.gaugeBefore);
  const dry = pot.out.water === MOST_BOILED_OFF * water;
  return sheetOf(
    ['steam-rate', 'Steam at the boil', time_s],
    peaks ? 'Steam made in the pot when it makes most.' : 'Steam made in the pot at this moment.',
    peaks ? 'the run’s summary: peak of the steam rate' : 'the run’s record: steam rate',
    writtenStep(
      'Boiling temperature, at the pressure in the pot and with the oil vapour’s part in it',
      'T_b = T_{sat}\\left(\\frac{p_a+p_g}{1+y}\\right)',
      [boiling, 'K', TABLES],
      ['p_a', airPressure, 'Pa', 'air pressure', 'scenario: barometer, or ISO 2533 at the altitude'],
      ['p_g', terms.gaugeBefore, 'Pa', 'pressure in the pot above the air, one step before', 'bed, neck and condenser'],
      ['y', terms.molarRatio, 'mol/mol', 'oil per water in the vapour, by amount', RUN],
    ),
    writtenStep(
      'Heat in the pot above that of boiling liquid, with what comes in and is lost in this step',
      '\\Delta E = E+Q_{pot}-Q_l-m\\,h_l(T_b)-C\\,(T_b-T_z)',
      [terms.surplus, 'J', BALANCE],
      ['E', terms.enthalpy, 'J', 'heat in the pot', BEFORE],
      ['Q_{pot}', terms.heat, 'J', 'heat into the pot in this step', 'setting, rated power, share, lag of the source'],
      ['Q_l', pot.loss, 'J', 'heat lost by the wall of the pot in this step', 'sheet on heat loss'],
      ['m', water, 'kg', 'water in the pot', BEFORE],
      ['h_l(T_b)', tableLiquidEnthalpy(boiling), 'J/kg', 'enthalpy of boiling water', TABLES],
      ['C', capacity, 'J/K', 'heat capacity of wall, base, plant in the water and oil', 'scenario: pot and charge'],
      ['T_b', boiling, 'K', 'boiling temperature', STEP],
      ZERO_ROW,
    ),
    writtenStep(
      'Heat that a rising pressure keeps in the pot; below zero when the pressure falls',
      '\\Delta E_p = c_p\\,(p-p_g)',
      [kept, 'J', BALANCE],
      ['c_p', terms.perPascal, 'J/Pa', 'heat capacity of pot and content over the slope of the boiling line', TABLES],
      ['p', pot.gauge, 'Pa', 'pressure in the pot above the air, after this step', RUN],
      ['p_g', terms.gaugeBefore, 'Pa', 'pressure in the pot above the air, one step before', BEFORE],
    ),
    writtenStep(
      dry ? 'Steam: nearly all the water that is left' : 'Steam',
      dry ? '\\dot m = \\frac{f\\,m}{\\Delta t}' : '\\dot m = \\frac{\\Delta E-\\Delta E_p}{(h_{fg}+q_o)\\,\\Delta t}',
      [rate, 'kg/s', BALANCE],
      dry && ['f', MOST_BOILED_OFF, '1', 'most that boils off in one step, of what is left', 'limit of the model'],
      dry && ['m', water, 'kg', 'water in the pot', BEFORE],
      !dry && ['\\Delta E', terms.surplus, 'J', 'heat above the boil', 'second step'],
      !dry && ['\\Delta E_p', kept, 'J', 'heat kept by the pressure', STEP],
      !dry && ['h_{fg}', tableLatentHeat(boiling), 'J/kg', 'latent heat of water at the boil', TABLES],
      !dry && ['q_o', terms.oilLatent, 'J/kg', 'latent heat of oil that leaves with a kilogram of steam', BEFORE],
      ['\\Delta t', dt, 's', 'time step', TIME_STEP],
    ),
    peaks && smoothingStep('the steam', '\\dot m', 'kg/s', rate, peaks.steam, dt),
  );
}
