/** Working of the cooling water: how far it has warmed, and how fast it warms. */
import { tableLiquidEnthalpy, tableTemperatureFromLiquidEnthalpy } from '../fluids/water-table.ts';
import { ICE_MELTING } from '../still/tub.ts';
import { coolantState, type CoolantState, type Moment } from './moment.ts';
import { symbol, writtenStep, type WorkingSheet, type WorkingSymbol } from './sheet.ts';

const LEDGER = 'ledger of the run';
const STEAM_TABLES = 'IAPWS R7-97(2012), read from the run’s tables';

const isTapJacket = ({ scenario }: Moment): boolean =>
  scenario.condenser.kind !== 'coil-in-tub' && scenario.cooling.jacketSupply === 'tap';
const vessel = ({ scenario }: Moment): string =>
  scenario.condenser.kind === 'coil-in-tub' ? 'tub' : 'barrel and jacket';

/** What went into and out of the cooling water between two states, J, by name. */
function exchanged(from: CoolantState, to: CoolantState, duty: number): { heat: number; symbols: WorkingSymbol[] } {
  const inflow = to.enthalpyIn - from.enthalpyIn;
  const over = to.overflowEnthalpy - from.overflowEnthalpy;
  const lost = to.lossEnergy - from.lossEnergy;
  const vapour = to.evaporatedEnthalpy - from.evaporatedEnthalpy;
  const ice = (to.melted - from.melted) * ICE_MELTING;
  return {
    heat: duty + inflow - over - lost - vapour - ice,
    symbols: [
      symbol('Q', 'heat from the condenser', duty, 'J', LEDGER),
      symbol('H_{in}', 'enthalpy of water let in', inflow, 'J', LEDGER),
      symbol('H_{over}', 'enthalpy of water that ran over', over, 'J', LEDGER),
      symbol('Q_l', 'lost through wall and surface', lost, 'J', LEDGER),
      symbol('H_{vap}', 'carried off by vapour', vapour, 'J', LEDGER),
      symbol('Q_{ice}', 'taken by melting ice, 333.6 kJ/kg', ice, 'J', LEDGER),
    ],
  };
}

const EXCHANGE = 'Q+H_{in}-H_{over}-Q_l-H_{vap}-Q_{ice}';

/** Of a jacket on the tap: outlet from the heat balance of the step. */
function jacketRise({ still, before, dt, time_s }: Moment): WorkingSheet | null {
  const { coolant, condenser } = still;
  const now = coolantState(still);
  const through = coolant.flow;
  if (!(through > 0)) return null;
  const h_in = tableLiquidEnthalpy(coolant.inletTemperature);
  const duty = condenser.duty / dt;
  const stored = (now.enthalpy - before.coolant.enthalpy) / dt;
  const h_out = h_in + (duty - stored) / through;
  const out = tableTemperatureFromLiquidEnthalpy(h_out);
  return {
    id: 'cooling-rise',
    title: 'Rise of the cooling water',
    says: 'How much warmer the water leaves the jacket than it comes from the tap.',
    time_s,
    steps: [
      writtenStep({
        title: 'Enthalpy of the water that leaves',
        tex: 'h_{out} = h_l(T_{in})+\\frac{\\dot Q-\\dot E}{\\dot m}',
        symbols: [
          symbol(
            'h_l(T_{in})',
            'enthalpy of tap water',
            h_in,
            'J/kg',
            `${STEAM_TABLES}, at the tap temperature of the scenario`,
          ),
          symbol('\\dot Q', 'heat from the condenser', duty, 'W', 'the run at this moment'),
          symbol('\\dot E', 'heat that warms the jacket’s water', stored, 'W', 'the run at this moment'),
          symbol('\\dot m', 'cooling water', through, 'kg/s', 'scenario: water flow'),
        ],
        result: { tex: 'h_{out}', value: h_out, unit: 'J/kg' },
        source: 'balance of heat',
      }),
      writtenStep({
        title: 'Rise',
        tex: '\\Delta T = T(h_{out})-T_{in}',
        symbols: [
          symbol('T(h_{out})', 'temperature of that water', out, 'K', STEAM_TABLES),
          symbol('T_{in}', 'tap temperature', coolant.inletTemperature, 'K', 'scenario: tap temperature'),
        ],
        result: { tex: '\\Delta T', value: out - coolant.inletTemperature, unit: 'K' },
        source: 'definition',
      }),
    ],
    result: { value: out - coolant.inletTemperature, unit: 'K' },
    ofRun: { value: coolant.outletTemperature - coolant.inletTemperature, from: 'record: cooling water out less in' },
  };
}

/** Of a tub or barrel: mean temperature from everything that went in and out since the start. */
export function coolingRise(moment: Moment): WorkingSheet | null {
  if (isTapJacket(moment)) return jacketRise(moment);
  const { still, coolantAtStart: start, time_s } = moment;
  const now = coolantState(still);
  const { heat, symbols } = exchanged(start, now, still.dutyEnergy);
  if (!(now.water > 0)) return null;
  const mean = tableTemperatureFromLiquidEnthalpy((start.enthalpy + heat) / now.water);
  const first = tableTemperatureFromLiquidEnthalpy(start.enthalpy / start.water);
  return {
    id: 'cooling-rise',
    title: 'Rise of the cooling water',
    says: `How much warmer the water of ${vessel(moment)} is than at the start, mixed.`,
    time_s,
    steps: [
      writtenStep({
        title: 'Heat it has taken since the start',
        tex: `\\Delta E = ${EXCHANGE}`,
        symbols,
        result: { tex: '\\Delta E', value: heat, unit: 'J' },
        source: 'ledger of the run, closed to rounding',
      }),
      writtenStep({
        title: 'Mixed temperature',
        tex: '\\bar T = T\\left(\\frac{E_0+\\Delta E}{M}\\right)',
        symbols: [
          symbol(
            'E_0',
            'heat in the water at the start, above 0 °C',
            start.enthalpy,
            'J',
            'scenario: size, filling and temperature',
          ),
          symbol('\\Delta E', 'heat taken since', heat, 'J', 'step above'),
          symbol('M', 'water now', now.water, 'kg', 'the run at this moment'),
        ],
        result: { tex: '\\bar T', value: mean, unit: 'K' },
        source: STEAM_TABLES,
      }),
      writtenStep({
        title: 'Rise',
        tex: '\\Delta T = \\bar T-T_0',
        symbols: [
          symbol('\\bar T', 'mixed temperature', mean, 'K', 'step above'),
          symbol('T_0', 'at the start', first, 'K', 'scenario: tub at start'),
        ],
        result: { tex: '\\Delta T', value: mean - first, unit: 'K' },
        source: 'definition',
      }),
    ],
    result: { value: mean - first, unit: 'K' },
    ofRun: {
      value: tableTemperatureFromLiquidEnthalpy(now.enthalpy / now.water) - first,
      from: 'the run: heat and mass of its water',
    },
  };
}

/** How fast the mixed water warms in this step; `null` for a jacket on the tap, whose water passes once. */
export function tubWarming(moment: Moment): WorkingSheet | null {
  if (isTapJacket(moment)) return null;
  const { still, before, dt, time_s } = moment;
  const now = coolantState(still);
  const { heat, symbols } = exchanged(before.coolant, now, still.condenser.duty);
  if (!(now.water > 0)) return null;
  const h = before.coolant.enthalpy / before.coolant.water;
  const gained = now.water - before.coolant.water;
  const risen = (heat - h * gained) / now.water;
  const temperature = tableTemperatureFromLiquidEnthalpy(h);
  const rate = (tableTemperatureFromLiquidEnthalpy(h + risen) - temperature) / dt;
  const ofRun = (tableTemperatureFromLiquidEnthalpy(now.enthalpy / now.water) - temperature) / dt;
  return {
    id: 'tub-warming',
    title: 'Warming of the tub',
    says: `How fast the water of ${vessel(moment)} warms at this moment, mixed.`,
    time_s,
    steps: [
      writtenStep({
        title: 'Heat it takes in this step',
        tex: `\\Delta E = ${EXCHANGE}`,
        symbols,
        result: { tex: '\\Delta E', value: heat, unit: 'J' },
        source: 'ledger of the run, closed to rounding',
      }),
      writtenStep({
        title: 'Per kilogram, less what water that came or went carried',
        tex: '\\Delta h = \\frac{\\Delta E-\\bar h\\,\\Delta M}{M}',
        symbols: [
          symbol('\\Delta E', 'heat of the step', heat, 'J', 'step above'),
          symbol('\\bar h', 'enthalpy of a kilogram before', h, 'J/kg', 'the run, one step before'),
          symbol('\\Delta M', 'water gained', gained, 'kg', 'the run'),
          symbol('M', 'water now', now.water, 'kg', 'the run'),
        ],
        result: { tex: '\\Delta h', value: risen, unit: 'J/kg' },
        source: 'balance of heat and water',
      }),
      writtenStep({
        title: 'Warming',
        tex: '\\frac{dT}{dt} = \\frac{T(\\bar h+\\Delta h)-T(\\bar h)}{\\Delta t}',
        symbols: [
          symbol(
            'T(\\bar h+\\Delta h)',
            'mixed temperature after',
            tableTemperatureFromLiquidEnthalpy(h + risen),
            'K',
            STEAM_TABLES,
          ),
          symbol('T(\\bar h)', 'and before', temperature, 'K', STEAM_TABLES),
          symbol('\\Delta t', 'time step', dt, 's', 'scenario: time step'),
        ],
        result: { tex: '\\frac{dT}{dt}', value: rate, unit: 'K/s' },
        source: 'definition',
      }),
    ],
    result: { value: rate, unit: 'K/s' },
    ofRun: { value: ofRun, from: 'the run: heat and mass of its water, before and after' },
  };
}
