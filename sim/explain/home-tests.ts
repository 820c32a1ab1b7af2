/** Working of the tests at home: from what was read, step by step, to what the found values say of it. */
import { tableLiquidDensity, tableLiquidHeatCapacity } from '../fluids/water-table.ts';
import { isCoil } from '../geometry/condenser-kind.ts';
import { coilFall } from '../geometry/coil.ts';
import type { CoilTest } from '../answers/home-tests/coil-test.ts';
import type { HeatUpTest } from '../answers/home-tests/heat-up-test.ts';
import type { HomeTestGiven } from '../answers/home-tests/found.ts';
import type { TestFound } from '../answers/home-tests/home-test.ts';
import type { TubTest } from '../answers/home-tests/tub-test.ts';
import type { Scenario } from '../scenario/scenario.ts';
import { JET_EFFICIENCY } from '../transfer/tub-inlets.ts';
import {
  BALANCE,
  entryStep,
  sheetOf,
  STEP,
  TABLES,
  writtenStep,
  type WorkingSheet,
  type WorkingStep,
} from './sheet.ts';

const READ = 'read in the test';
const FIELD = 'the still';
const FOUND = 'found: least squares over all readings';
const FACTOR = 'factor f, found: least squares over all readings';

const foundValue = ({ values }: TestFound, k = 0): number => values[k]?.value ?? Number.NaN;

const flowStep = (caught_kg: number, caught_s: number): WorkingStep =>
  writtenStep(
    'Flow',
    '\\dot m = \\frac{m}{t}',
    [caught_kg / caught_s, 'kg/s'],
    ['m', caught_kg, 'kg', 'water caught', READ],
    ['t', caught_s, 's', 'time it took', READ],
  );

function tubSheet({ cooling }: Scenario, given: TubTest, found: TestFound): WorkingSheet {
  const flow = given.caught_kg / given.caught_s;
  const perforated = cooling.inlet === 'perforated';
  const d = perforated ? cooling.holeBore_m : cooling.hoseBore_m;
  const n = perforated ? cooling.holes : 1;
  const cold = tableLiquidDensity(given.inlet_K);
  const warm = tableLiquidDensity(given.start_K);
  const speed = flow / (cold * n * (Math.PI / 4) * d ** 2);
  const f = foundValue(found);
  const eta = JET_EFFICIENCY * f;
  const froude = entryStep('jet-froude-number', {
    u: [speed, STEP],
    d: [d, FIELD],
    rho: [warm, `${TABLES}, at the start`],
    drho: [cold - warm, `${TABLES}, tap less tub`],
  });
  return sheetOf(
    ['home-test-tub', 'How high the water mixes', null],
    'The model follows the tub layer by layer and finds the factor at which all readings fit best. These steps show what that factor means in the tub as it was at the start.',
    'the test',
    flowStep(given.caught_kg, given.caught_s),
    writtenStep(
      'Speed in the bore',
      'u = \\frac{4\\,\\dot m}{\\rho_c\\,n\\,\\pi\\,d^2}',
      [speed, 'm/s'],
      ['\\dot m', flow, 'kg/s', 'flow', STEP],
      ['\\rho_c', cold, 'kg/m³', 'density of the tap water', TABLES],
      ['n', n, '1', 'holes', FIELD],
      ['d', d, 'm', 'bore', FIELD],
    ),
    froude,
    writtenStep(
      'Share of the jet’s power that mixes',
      '\\eta = \\eta_0\\,f',
      [eta, '1'],
      ['\\eta_0', JET_EFFICIENCY, '1', 'usual share', 'height of fountains'],
      ['f', f, '1', 'mixing factor', FACTOR],
    ),
    entryStep('jet-mixed-height', {
      d: [d, FIELD],
      Fr: [froude.result.value, STEP],
      eta: [eta, STEP],
      x_0: [cooling.inlet === 'laid' ? 0.5 * cooling.tubDiameter_m : 0, 'how the hose lies'],
    }),
  );
}

function coilSheet(still: Scenario, given: CoilTest, found: TestFound): WorkingSheet {
  const { condenser, factors } = still;
  const [first] = given.readings;
  if (!first) throw new RangeError('a test without readings has no working');
  const { caught_kg, caught_s, inlet_K, outlet_K, bath_K } = first;
  const flow = caught_kg / caught_s;
  const mean = 0.5 * (inlet_K + outlet_K);
  const cp = tableLiquidHeatCapacity(mean);
  const heat = flow * cp * (inlet_K - outlet_K);
  const [a, b] = [inlet_K - bath_K, Math.max(0.1, outlet_K - bath_K)];
  const apart = (a - b) / Math.log(a / b);
  const coil = isCoil(condenser);
  const slope = coil ? Math.asin(coilFall(condenser.coilDiameter_m, condenser.coilPitch_m)) : condenser.slope_rad;
  const water = {
    m: [flow, STEP] as const,
    D_i: [condenser.insideDiameter_m, FIELD] as const,
    slope: [slope, FIELD] as const,
    T: [mean, 'mean of inlet and outlet'] as const,
  };
  const inside = entryStep(
    coil ? 'rivulet-conductance-water-coil' : 'rivulet-conductance-water',
    coil ? { ...water, D_coil: [condenser.coilDiameter_m, FIELD], s: [foundValue(found), FOUND] } : water,
    'From the stream to the tube, by the model, far from the inlet',
  );
  const factor = coil ? factors.rivulet : foundValue(found);
  return sheetOf(
    ['home-test-coil', 'What a metre of tube takes', null],
    'The model runs the water down the tube piece by piece and finds the value at which all outlets fit best. These steps show the first reading by itself: the whole way from stream to bath takes less than the way to the tube alone.',
    'the test',
    flowStep(caught_kg, caught_s),
    inside,
    writtenStep(
      'With the factor of the condensate',
      "UA'_f = f\\,UA'",
      [factor * inside.result.value, 'W/(m K)'],
      ['f', factor, '1', 'factor of the condensate', coil ? FIELD : FOUND],
      ["UA'", inside.result.value, 'W/(m K)', 'from stream to tube', STEP],
    ),
    writtenStep(
      'Heat given off',
      '\\dot Q = \\dot m\\,c_p\\,(T_{in} - T_{out})',
      [heat, 'W', BALANCE],
      ['\\dot m', flow, 'kg/s', 'flow', STEP],
      ['c_p', cp, 'J/(kg K)', 'heat capacity of water', TABLES],
      ['T_{in}', inlet_K, 'K', 'water that goes in', READ],
      ['T_{out}', outlet_K, 'K', 'water that comes out', READ],
    ),
    writtenStep(
      'Mean difference to the water round the tube',
      '\\Delta T = \\frac{a - b}{\\ln(a/b)}',
      [apart, 'K'],
      ['a', a, 'K', 'inlet less water round the tube', READ],
      ['b', b, 'K', 'outlet less water round the tube', READ],
    ),
    writtenStep(
      'What a metre takes, as read',
      "U' = \\frac{\\dot Q}{L\\,\\Delta T}",
      [heat / (given.length_m * apart), 'W/(m K)', BALANCE],
      ['\\dot Q', heat, 'W', 'heat given off', STEP],
      ['L', given.length_m, 'm', 'tube under water', READ],
      ['\\Delta T', apart, 'K', 'mean difference', STEP],
    ),
  );
}

function heatUpSheet({ heat }: Scenario, given: HeatUpTest, found: TestFound): WorkingSheet {
  const share = foundValue(found);
  const arriving = share * given.setting * heat.ratedPower_W;
  const cp = tableLiquidHeatCapacity(given.start_K);
  const capacity = given.water_kg * cp;
  const rise = (60 * arriving) / capacity;
  return sheetOf(
    ['home-test-heat-up', 'How fast cold water warms', null],
    'The model heats pot, lid and water with their losses and finds the two values at which all readings fit best. These steps show the first minutes, when nothing is lost; the metal of the pot, left out here, makes it a little slower.',
    'the test',
    writtenStep(
      'Heat that arrives',
      '\\dot Q = \\eta\\,x\\,P',
      [arriving, 'W'],
      ['\\eta', share, '1', 'share that reaches the pot', FOUND],
      ['x', given.setting, '1', 'setting', READ],
      ['P', heat.ratedPower_W, 'W', 'rated power', FIELD],
    ),
    writtenStep(
      'Heat for a degree',
      'C = m\\,c_p',
      [capacity, 'J/K'],
      ['m', given.water_kg, 'kg', 'water', READ],
      ['c_p', cp, 'J/(kg K)', 'heat capacity of water', TABLES],
    ),
    writtenStep(
      'Rise in a minute',
      '\\Delta T = \\frac{t\\,\\dot Q}{C}',
      [rise, 'K', BALANCE],
      ['t', 60, 's', 'a minute', 'definition'],
      ['\\dot Q', arriving, 'W', 'heat that arrives', STEP],
      ['C', capacity, 'J/K', 'heat for a degree', STEP],
    ),
  );
}

/** The working of a test that found something. */
export function homeTestSheet(still: Scenario, asked: HomeTestGiven, found: TestFound): WorkingSheet {
  switch (asked.test) {
    case 'tub':
      return tubSheet(still, asked.given, found);
    case 'coil':
      return coilSheet(still, asked.given, found);
    case 'heat-up':
      return heatUpSheet(still, asked.given, found);
  }
}
