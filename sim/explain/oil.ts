/** Working of the oil: its share in saturated vapour, the separator's cut and catch, and the height of its legs. */
import { standardPressure } from '../fluids/atmosphere.ts';
import { constituentById, vapourPressure } from '../fluids/constituents.ts';
import { coBoilingTemperature, moleFractions, oilPerSteam, saturationOilPerSteam } from '../fluids/immiscible.ts';
import { saturationPressure } from '../fluids/water.ts';
import { tableLiquidDensity } from '../fluids/water-table.ts';
import type { RunResult } from '../run/result.ts';
import type { Moment } from './moment.ts';
import { entryStep, RUN, sheetOf, STEP, writtenStep, type Row, type WorkingSheet } from './sheet.ts';

/** Oil and water in vapour saturated with the charge's own oil, where they boil together. */
export function oilInSaturatedVapour({ scenario: { charge, site } }: RunResult): WorkingSheet | null {
  if (charge.mass_kg === 0) return null;
  const rows = charge.composition.map(({ constituent }) => constituentById(constituent));
  const x = moleFractions(
    charge.composition.map(({ share }) => share),
    rows,
  );
  const air = site.barometer_Pa ?? standardPressure(site.altitude_m);
  const T = coBoilingTemperature(air, x, rows);
  const water = saturationPressure(T);
  const parts = rows.map((row, i) => {
    const fraction = x[i] as number;
    const pressure = fraction * vapourPressure(row, T);
    const M = row.molarMass.value;
    return { name: row.name, fraction, pressure, M, share: oilPerSteam(pressure, water, M) };
  });
  const sum = (symbol: string): string => parts.map((_, i) => `${symbol}_{${i + 1}}`).join('+');
  return sheetOf(
    ['oil-in-vapour', 'Oil to water in saturated vapour', null],
    'Oil that goes with a kilogram of steam when the vapour carries all the oil it can, over a fresh charge. In the run it carries less.',
    'the oil of the charge, before any has left it',
    writtenStep(
      'Temperature at which water and oil boil together: their pressures add up to the air’s',
      `p_a = p_w+${sum('p')}`,
      [T, 'K', 'Raoult’s law in the oil, oil and water apart; solved for T', 'T'],
      ['p_a', air, 'Pa', 'air pressure', 'scenario: barometer, or ISO 2533 at the altitude'],
      ['p_w', water, 'Pa', 'vapour pressure of water', 'IAPWS R7-97(2012)'],
      ...parts.map(({ name, fraction, pressure }, i): Row => {
        const from = `share by amount ${fraction.toPrecision(4)}, times its vapour pressure`;
        return [`p_{${i + 1}}`, pressure, 'Pa', name, from];
      }),
    ),
    writtenStep(
      'Oil per water, constituent by constituent',
      `r = ${sum('r')},\\quad r_i = \\frac{p_i}{p_w}\\frac{M_i}{M_w}`,
      [saturationOilPerSteam(T, x, rows), 'kg/kg', 'ideal gas, Raoult’s law'],
      ...parts.map(({ name, M, share }, i): Row => {
        return [`r_{${i + 1}}`, share, 'kg/kg', `${name}, ${(M * 1000).toPrecision(5)} g/mol`, 'pressures above'];
      }),
    ),
  );
}

/** Cut size, from what the separator last worked it out with, at most five seconds before. */
export function separatorCut({ still, scenario, time_s }: Moment): WorkingSheet | null {
  const { separator } = still;
  const { terms } = separator;
  if (!Number.isFinite(separator.densityDifference)) return null;
  const { turbulenceFactor, interfaceMobility } = scenario.separator;
  const water = 'water at the separator’s temperature, IAPWS';
  const velocity = terms.overflow / terms.mobile;
  const moving = interfaceMobility > 0;
  return sheetOf(
    ['separator-cut', 'Smallest drop that is caught whole', time_s],
    'Cut size of the separator, with the flow and temperature of this moment.',
    'the run’s record: cut size',
    writtenStep(
      'Flow that the drops have to outrun, with the allowance for turbulence',
      'Q = F\\,\\frac{\\dot m}{\\rho}',
      [terms.flow, 'm³/s', 'API Publication 421 (1990)'],
      ['F', turbulenceFactor, '1', 'turbulence factor', 'scenario: turbulence factor, API 421 range'],
      ['\\dot m', terms.waterRate, 'kg/s', 'water arriving', RUN],
      ['\\rho', terms.rho, 'kg/m³', 'its density', water],
    ),
    entryStep('overflow-rate', { Q: [terms.flow, STEP], A: [separator.area, 'scenario: separator bore'] }),
    moving &&
      entryStep('hadamard-factor', {
        mu_w: [terms.mu, water],
        mu_o: [separator.oilViscosity, 'oil of the charge at 25 °C'],
      }),
    moving &&
      writtenStep(
        'Velocity that a rigid drop needs, when drops with a moving skin are faster',
        'v = \\frac{v_c}{1+\\mu\\,(f-1)}',
        [velocity, 'm/s', 'between Stokes and Hadamard'],
        ['v_c', terms.overflow, 'm/s', 'overflow rate', STEP],
        ['\\mu', interfaceMobility, '1', 'drop surface mobility', 'scenario: drop surface mobility'],
        ['f', terms.hadamard, '1', 'factor of a wholly moving skin', STEP],
      ),
    writtenStep(
      'How much lighter the oil is; below zero when it sinks',
      '\\Delta\\rho = \\rho-\\rho_o',
      [separator.densityDifference, 'kg/m³'],
      ['\\rho', terms.rho, 'kg/m³', 'density of the water', water],
      ['\\rho_o', terms.oilDensity, 'kg/m³', 'density of the oil that arrives', 'constituents, volumes added'],
    ),
    entryStep('cut-diameter', {
      v: [velocity, STEP],
      drho: [separator.densityDifference, STEP],
      mu: [terms.mu, water],
    }),
  );
}

export function capturedShare({ still, scenario, time_s }: Moment): WorkingSheet | null {
  const { separator } = still;
  if (!Number.isFinite(separator.densityDifference)) return null;
  return sheetOf(
    ['captured-share', 'Share of the drops that is caught', time_s],
    'Of the oil that is in drops at this moment; what is dissolved is lost besides.',
    'the run’s record: share that the separator catches',
    entryStep('captured-share', {
      cut: [separator.cutSize, 'sheet on the cut size'],
      median: [separator.median, 'scenario: drop size and its factor (an assumption; nobody has measured it)'],
      spread: [scenario.separator.dropSpread, 'scenario: drop spread'],
    }),
  );
}

/** How far the heavy liquid's leg must stand below the light one's overflow for the layer there is. */
export function legDifference({ still, scenario, time_s }: Moment): WorkingSheet | null {
  const { separator, oil } = still;
  const layer = separator.layer();
  if (!(layer > 0)) return null;
  const mass = separator.collected.reduce((sum, value) => sum + value, 0);
  const T = separator.temperature;
  const water = tableLiquidDensity(T);
  const density = oil.mixtureDensity(separator.collected, T);
  const height = scenario.separator.height_m;
  const sinks = density > water;
  const [heavy, light] = sinks ? ['oil', 'water'] : ['water', 'oil'];
  return sheetOf(
    ['leg-difference', 'Difference of the legs', time_s],
    `How far the ${heavy}’s outlet stands below the ${light}’s to hold the interface under the oil that is there now.`,
    'the oil layer in the run’s record',
    writtenStep(
      'Thickness of the oil layer',
      'z_o = \\min\\left(\\frac{m_o}{\\rho_o\\,A},\\,H\\right)',
      [layer, 'm'],
      ['m_o', mass, 'kg', 'oil collected', RUN],
      ['\\rho_o', density, 'kg/m³', 'its density at the separator’s temperature', 'constituents, volumes added'],
      ['A', separator.area, 'm²', 'plan area', 'scenario: separator bore'],
      ['H', height, 'm', 'height of the separator', 'scenario: separator height'],
    ),
    entryStep('leg-offset', {
      layer: sinks ? [height - layer, 'height of the separator less the oil layer: the water above'] : [layer, STEP],
      drho: [Math.abs(water - density), 'water and oil at the separator’s temperature'],
      rho_heavy: [Math.max(water, density), `${heavy} at the separator’s temperature`],
    }),
  );
}
