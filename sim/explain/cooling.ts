/** Working of the cooling water: how far it has warmed, and how fast it warms. */
import { waterSource } from '../geometry/condenser-kind.ts';
import { tableLiquidEnthalpy } from '../fluids/water-table.ts';
import { ICE_MELTING } from '../still/tub.ts';
import { coolantAccount, type CoolantAccount, type Moment } from './moment.ts';
import { BALANCE, BEFORE, LEDGER, RUN, sheetOf, STEP, TABLES, TIME_STEP, writtenStep } from './sheet.ts';
import type { WorkingSheet, WorkingStep } from './sheet.ts';

const isTapJacket = ({ scenario }: Moment): boolean => waterSource(scenario) === 'tap';
const vessel = ({ scenario }: Moment): string => (waterSource(scenario) === 'tub' ? 'the tub' : 'barrel and jacket');

/** Heat in the cooling water and its mixed temperature, from an account of it before. */
const mixedSteps = (from: CoolantAccount, now: CoolantAccount, duty: number, since: string): WorkingStep[] => [
  writtenStep(
    'Heat in the water: what was there, what came and what left',
    'E = E_0+Q+H_{in}-H_{over}-Q_l-H_{vap}-Q_{ice}',
    [now.enthalpy, 'J', `${LEDGER}, closed to rounding`],
    ['E_0', from.enthalpy, 'J', `heat in the water ${since}, counted from freezing`, LEDGER],
    ['Q', duty, 'J', 'heat from the condenser since then', LEDGER],
    ['H_{in}', now.enthalpyIn - from.enthalpyIn, 'J', 'enthalpy of water let in', LEDGER],
    ['H_{over}', now.overflowEnthalpy - from.overflowEnthalpy, 'J', 'enthalpy of water that ran over', LEDGER],
    ['Q_l', now.lossEnergy - from.lossEnergy, 'J', 'lost through wall and surface', LEDGER],
    ['H_{vap}', now.evaporatedEnthalpy - from.evaporatedEnthalpy, 'J', 'carried off by vapour', LEDGER],
    ['Q_{ice}', (now.melted - from.melted) * ICE_MELTING, 'J', 'taken by melting ice', LEDGER],
  ),
  writtenStep(
    'Mixed temperature',
    'T = T_l\\left(\\frac{E}{M}\\right)',
    [now.mixedTemperature, 'K', TABLES],
    ['E', now.enthalpy, 'J', 'heat in the water', STEP],
    ['M', now.water, 'kg', 'water now', RUN],
  ),
];

/** Of a jacket on the tap: outlet from the heat balance of the step. */
function jacketRise({ still, coolantBefore, dt, time_s }: Moment): WorkingSheet | null {
  const { coolant, condenser } = still;
  const { flow, inletTemperature: T_in, outletTemperature: T_out } = coolant;
  if (!(flow > 0)) return null;
  const h_out = tableLiquidEnthalpy(T_out);
  return sheetOf(
    ['cooling-rise', 'Rise of the cooling water', time_s],
    'How much warmer the water leaves the jacket than it comes from the tap.',
    'the run’s record: cooling water out less in',
    writtenStep(
      'Enthalpy of the water that leaves',
      'h_{out} = h_l(T_{in})+\\frac{1}{\\dot m}\\left(\\dot Q-\\frac{E-E_0}{\\Delta t}\\right)',
      [h_out, 'J/kg', BALANCE],
      ['h_l(T_{in})', tableLiquidEnthalpy(T_in), 'J/kg', 'enthalpy of tap water', TABLES],
      ['\\dot Q', condenser.duty / dt, 'W', 'heat from the condenser', RUN],
      ['E', coolant.liquidEnthalpy(), 'J', 'heat in the jacket’s water', RUN],
      ['E_0', coolantBefore.enthalpy, 'J', 'heat in it one step before', BEFORE],
      ['\\Delta t', dt, 's', 'time step', TIME_STEP],
      ['\\dot m', flow, 'kg/s', 'cooling water', 'scenario: water flow'],
    ),
    writtenStep(
      'Rise',
      '\\Delta T = T_l(h_{out})-T_{in}',
      [T_out - T_in, 'K', TABLES],
      ['h_{out}', h_out, 'J/kg', 'enthalpy of that water', STEP],
      ['T_{in}', T_in, 'K', 'tap temperature', 'scenario: tap temperature'],
    ),
  );
}

/** Of a tub or barrel: mixed temperature from everything that went in and out since the start. */
export function coolingRise(moment: Moment): WorkingSheet | null {
  if (isTapJacket(moment)) return jacketRise(moment);
  const { still, atStart, time_s } = moment;
  const { coolant: start } = atStart;
  const now = coolantAccount(still.coolant);
  if (!(now.water > 0)) return null;
  return sheetOf(
    ['cooling-rise', 'Rise of the cooling water', time_s],
    `How much warmer the water of ${vessel(moment)} is than at the start, mixed.`,
    'the mixed temperature of the run’s cooling water, now and at the start',
    ...mixedSteps(start, now, still.dutyEnergy, 'at the start'),
    writtenStep(
      'Rise',
      '\\Delta T = T-T_0',
      [now.mixedTemperature - start.mixedTemperature, 'K'],
      ['T', now.mixedTemperature, 'K', 'mixed temperature', STEP],
      ['T_0', start.mixedTemperature, 'K', 'at the start', 'scenario: tub at start'],
    ),
  );
}

/** How fast the mixed water warms in this step; `null` for a jacket on the tap, whose water passes once. */
export function tubWarming(moment: Moment): WorkingSheet | null {
  if (isTapJacket(moment)) return null;
  const { still, coolantBefore: before, dt, time_s } = moment;
  const now = coolantAccount(still.coolant);
  if (!(now.water > 0)) return null;
  return sheetOf(
    ['tub-warming', 'Warming of the tub', time_s],
    `How fast the water of ${vessel(moment)} warms at this moment, mixed.`,
    'the mixed temperature of the run’s cooling water, before and after the step',
    ...mixedSteps(before, now, still.condenser.duty, 'one step before'),
    writtenStep(
      'Warming',
      '\\frac{dT}{dt} = \\frac{T-T_0}{\\Delta t}',
      [(now.mixedTemperature - before.mixedTemperature) / dt, 'K/s'],
      ['T', now.mixedTemperature, 'K', 'mixed temperature after the step', STEP],
      ['T_0', before.mixedTemperature, 'K', 'and before', BEFORE],
      ['\\Delta t', dt, 's', 'time step', TIME_STEP],
    ),
  );
}
