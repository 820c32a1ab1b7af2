/** Working of the oil: its share in saturated vapour, the separator's cut and catch, and the height of its legs. */
import { STANDARD_GRAVITY, WATER_MOLAR_MASS } from '../constants.ts';
import { constituentById } from '../fluids/constituents.ts';
import { coBoilingTemperature } from '../fluids/immiscible.ts';
import { tableLiquidDensity, tableLiquidViscosity } from '../fluids/water-table.ts';
import type { RunResult } from '../run/result.ts';
import { Oil } from '../still/oil.ts';
import { hadamardFactor } from '../transfer/settling.ts';
import { heavyLegHeight } from '../transfer/decanter.ts';
import { standardPressure } from '../fluids/atmosphere.ts';
import type { Moment } from './moment.ts';
import { entryStep, symbol, writtenStep, type WorkingSheet, type WorkingStep } from './sheet.ts';

const RUN = 'the run at this moment';

/** Oil and water in vapour saturated with the charge's own oil, where they boil together. */
export function oilInSaturatedVapour({ scenario }: RunResult): WorkingSheet | null {
  const { composition } = scenario.charge;
  if (scenario.charge.mass_kg === 0) return null;
  const oil = new Oil(composition);
  const p = scenario.site.barometer_Pa ?? standardPressure(scenario.site.altitude_m);
  const moles = oil.ids.map(
    (id, i) => (composition.find(({ constituent }) => constituent === id)?.share ?? 0) / (oil.molarMass[i] as number),
  );
  const amount = moles.reduce((sum, value) => sum + value, 0);
  const x = moles.map((value) => value / amount);
  const T = coBoilingTemperature(p, x, oil.ids.map(constituentById));
  const shares = oil.ids.map(
    (_, i) => ((x[i] as number) * oil.pressureRatio(i, T) * (oil.molarMass[i] as number)) / WATER_MOLAR_MASS,
  );
  const ratio = shares.reduce((sum, value) => sum + value, 0);
  const parts = oil.ids.map((id, i) => ({ name: constituentById(id).name, i })).filter(({ i }) => (x[i] as number) > 0);
  const saturation = oil.saturation(Float64Array.from(shares), 1, T);
  return {
    id: 'oil-in-vapour',
    title: 'Oil to water in saturated vapour',
    says: 'Oil that goes with a kilogram of steam when the vapour has all the oil it can hold over fresh charge; the run brings less, by its approach to saturation.',
    time_s: null,
    steps: [
      writtenStep({
        title: 'Temperature at which water and oil boil together',
        tex: 'p_w(T)+\\sum_i x_i\\,p_i(T) = p_a',
        symbols: [
          symbol('p_a', 'air pressure', p, 'Pa', 'scenario: barometer, or ISO 2533 at the altitude'),
          ...parts.map(({ name, i }) =>
            symbol(
              `x_{${i + 1}}`,
              `${name} in the oil, by amount`,
              x[i] as number,
              'mol/mol',
              'scenario: oil composition, by molar mass',
            ),
          ),
        ],
        result: { tex: 'T', value: T, unit: 'K' },
        source:
          'Raoult’s law in the oil, oil and water apart; IAPWS R7-97(2012) and the constituents’ vapour pressures',
      }),
      writtenStep({
        title: 'Oil per water, constituent by constituent',
        tex: `r = \\sum_i x_i\\frac{p_i(T)}{p_w(T)}\\frac{M_i}{M_w} = ${parts.map(({ i }) => `r_{${i + 1}}`).join('+')}`,
        symbols: parts.map(({ name, i }) =>
          symbol(
            `r_{${i + 1}}`,
            `${name}: vapour pressure ${oil.pressureRatio(i, T).toPrecision(4)} of water’s, ${((oil.molarMass[i] as number) * 1000).toPrecision(5)} g/mol`,
            shares[i] as number,
            'kg/kg',
            'constituents’ data',
          ),
        ),
        result: { tex: 'r', value: ratio, unit: 'kg/kg' },
        source: 'ideal gas, Raoult’s law',
      }),
    ],
    result: { value: ratio, unit: 'kg/kg' },
    ofRun: { value: ratio / saturation, from: 'the oil’s own measure of saturation, which is one at this ratio' },
  };
}

/** Cut size at a step in which the run works it out. */
function cutSteps({ still, scenario, before, dt }: Moment): { steps: WorkingStep[]; value: number } {
  const { condenser, oil, separator } = still;
  const { turbulenceFactor, interfaceMobility } = scenario.separator;
  const T = before.separatorTemperature;
  const rho = tableLiquidDensity(T);
  const mu = tableLiquidViscosity(T);
  const oilDensity = oil.mixtureDensity(condenser.condensate.oil, T);
  const flow = condenser.condensate.water / dt;
  const water = 'water at the separator’s temperature, IAPWS';
  const overflow = entryStep('overflow-rate', {
    Q: [(flow / rho) * turbulenceFactor, 'first step'],
    A: [separator.area, 'scenario: separator bore'],
  });
  const viscosity = oil.viscosity(
    oil.ids.map((id) => scenario.charge.composition.find(({ constituent }) => constituent === id)?.share ?? 0),
    298.15,
  );
  const mobile = 1 + interfaceMobility * (hadamardFactor(mu, viscosity) - 1);
  const cut = entryStep('cut-diameter', {
    v: [overflow.result.value / mobile, interfaceMobility > 0 ? 'step above' : 'overflow rate'],
    drho: [rho - oilDensity, 'water less the oil that arrives'],
    mu: [mu, water],
    g: [STANDARD_GRAVITY, 'standard acceleration of free fall'],
  });
  const steps: WorkingStep[] = [
    writtenStep({
      title: 'Flow that the drops have to outrun, with the allowance for turbulence',
      tex: 'Q = F\\,\\frac{\\dot m}{\\rho}',
      symbols: [
        symbol('F', 'turbulence factor', turbulenceFactor, '1', 'scenario: turbulence factor, API 421 range'),
        symbol('\\dot m', 'water arriving', flow, 'kg/s', RUN),
        symbol('\\rho', 'its density', rho, 'kg/m³', water),
      ],
      result: { tex: 'Q', value: (flow / rho) * turbulenceFactor, unit: 'm³/s' },
      source: 'API Publication 421 (1990)',
    }),
    overflow,
  ];
  if (interfaceMobility > 0)
    steps.push(
      entryStep('hadamard-factor', { mu_w: [mu, water], mu_o: [viscosity, 'oil of the charge at 25 °C'] }),
      writtenStep({
        title: 'Velocity that a rigid drop needs, when drops with a moving skin are faster',
        tex: 'v = \\frac{v_c}{1+\\mu\\,(f-1)}',
        symbols: [
          symbol('v_c', 'overflow rate', overflow.result.value, 'm/s', 'step above'),
          symbol('\\mu', 'drop surface mobility', interfaceMobility, '1', 'scenario: drop surface mobility'),
          symbol('f', 'factor of a wholly moving skin', hadamardFactor(mu, viscosity), '1', 'step above'),
        ],
        result: { tex: 'v', value: overflow.result.value / mobile, unit: 'm/s' },
        source: 'between Stokes and Hadamard',
      }),
    );
  return { steps: [...steps, cut], value: cut.result.value };
}

export function separatorCut(moment: Moment): WorkingSheet {
  const { steps, value } = cutSteps(moment);
  return {
    id: 'separator-cut',
    title: 'Smallest drop that is caught whole',
    says: 'Cut size of the separator, with the flow and temperature of this moment.',
    time_s: moment.time_s,
    steps,
    result: { value, unit: 'm' },
    ofRun: { value: moment.still.separator.cutSize, from: 'record: cut size' },
  };
}

export function capturedShare(moment: Moment): WorkingSheet {
  const { still, scenario, time_s } = moment;
  const { separator, factors } = scenario;
  const { value: cut } = cutSteps(moment);
  const step = entryStep('captured-share', {
    cut: [cut, 'sheet on the cut size'],
    median: [
      separator.dropMedian_m * factors.dropSize,
      'scenario: drop size and its factor (an assumption; nobody has measured it)',
    ],
    spread: [separator.dropSpread, 'scenario: drop spread'],
  });
  return {
    id: 'captured-share',
    title: 'Share of the drops that is caught',
    says: 'Of the oil that is in drops at this moment; what is dissolved is lost besides.',
    time_s,
    steps: [step],
    result: { value: step.result.value, unit: '1' },
    ofRun: { value: still.separator.captureShare, from: 'record: share that the separator catches' },
  };
}

/** How far the heavy liquid's leg must stand below the light one's overflow for the layer there is. */
export function legDifference({ still, scenario, time_s }: Moment): WorkingSheet | null {
  const { separator, oil } = still;
  const mass = separator.collected.reduce((sum, value) => sum + value, 0);
  if (!(mass > 0)) return null;
  const T = separator.temperature;
  const water = tableLiquidDensity(T);
  const density = oil.mixtureDensity(separator.collected, T);
  const height = scenario.separator.height_m;
  const thickness = Math.min(height, mass / density / separator.area);
  const sinks = density > water;
  const light = sinks ? Math.max(0, height - thickness) : thickness;
  const [rho_light, rho_heavy] = sinks ? [water, density] : [density, water];
  const offset = entryStep('leg-offset', {
    layer: [light, sinks ? 'height of the separator less the oil layer: the water stands above' : 'step above'],
    drho: [rho_heavy - rho_light, 'densities above'],
    rho_heavy: [rho_heavy, sinks ? 'the oil, step above' : 'water at the separator’s temperature, IAPWS'],
  });
  return {
    id: 'leg-difference',
    title: 'Difference of the legs',
    says: `How far the ${sinks ? 'oil’s' : 'water’s'} outlet stands below the ${sinks ? 'water’s' : 'oil’s'} to hold the interface under the oil that is there now.`,
    time_s,
    steps: [
      writtenStep({
        title: 'Thickness of the oil layer',
        tex: 'z_o = \\min\\left(\\frac{m_o}{\\rho_o\\,A},\\,H\\right)',
        symbols: [
          symbol('m_o', 'oil collected', mass, 'kg', RUN),
          symbol(
            '\\rho_o',
            'its density at the separator’s temperature',
            density,
            'kg/m³',
            'constituents, volumes added',
          ),
          symbol('A', 'plan area', separator.area, 'm²', 'scenario: separator bore'),
          symbol('H', 'height of the separator', height, 'm', 'scenario: separator height'),
        ],
        result: { tex: 'z_o', value: thickness, unit: 'm' },
        source: 'definition',
      }),
      offset,
    ],
    result: { value: offset.result.value, unit: 'm' },
    ofRun: {
      value:
        height -
        heavyLegHeight(
          height,
          height - (sinks ? Math.max(0, height - separator.layer()) : separator.layer()),
          rho_light,
          rho_heavy,
        ),
      from: 'overflow height less height of the heavy leg, with the layer of the record',
    },
  };
}
