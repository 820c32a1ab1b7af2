/** Working of what happens in the pot: time to the boil, steam, heat lost to the air. */
import { STANDARD_GRAVITY } from '../constants.ts';
import { airConductivity, airDensity, airExpansivity, airHeatCapacity, airViscosity } from '../fluids/air.ts';
import {
  tableLatentHeat,
  tableLiquidEnthalpy,
  tableLiquidHeatCapacity,
  tableSaturationPressure,
  tableSaturationSlope,
  tableSaturationTemperature,
} from '../fluids/water-table.ts';
import { buildBody } from '../still/still-body.ts';
import { ENTHALPY_ZERO } from '../still/stream.ts';
import { surfaceLoss } from '../still/surface-loss.ts';
import type { RunResult } from '../run/result.ts';
import { rayleighNumber } from '../transfer/natural-convection.ts';
import { smoothingShare, type Moment, type Peak, type Survey } from './moment.ts';
import { entryStep, symbol, writtenStep, type WorkingSheet, type WorkingStep } from './sheet.ts';

const BALANCE = 'balance of heat';
const STEAM_TABLES = 'IAPWS R7-97(2012), read from the run’s tables';
const RUN = 'the run at this moment';

/** How a smoothed peak follows from the number of the moment; the summary gives smoothed peaks. */
export function smoothingStep(
  name: string,
  tex: string,
  unit: string,
  { instant, smoothedBefore, smoothed }: Peak,
  share: number,
): WorkingStep {
  return writtenStep({
    title: `Smoothed over half a minute, because ${name} flickers from step to step`,
    tex: `\\overline{${tex}} = \\overline{${tex}}' + s\\,(${tex}_{now} - \\overline{${tex}}')`,
    symbols: [
      symbol(
        `\\overline{${tex}}'`,
        'smoothed value of the step before',
        smoothedBefore,
        unit,
        'the run, one step before',
      ),
      symbol(`${tex}_{now}`, 'value of this step', instant, unit, 'step above'),
      symbol('s', 'share of the way in a step, 1 − exp(−Δt/30 s)', share, '1', 'time step of the run'),
    ],
    result: { tex: `\\overline{${tex}}`, value: smoothed, unit },
    source: 'definition of the summary’s peaks',
  });
}

export function timeToBoil({ warmUp, times }: Survey, { summary, scenario }: RunResult): WorkingSheet | null {
  if (warmUp === null || summary.firstBoil_s === null || warmUp.boilStep < 2) return null;
  const { water, startTemperature: T0, temperature: T1, capacity, energyToPot, lost, boilStep } = warmUp;
  const time = times[boilStep - 2] as number;
  const dt = (times[boilStep - 1] as number) - time;
  const heat = water * (tableLiquidEnthalpy(T1) - tableLiquidEnthalpy(T0)) + capacity * (T1 - T0);
  const power = energyToPot / time;
  const loss = lost / time;
  const result = heat / (power - loss) + dt;
  return {
    id: 'time-to-boil',
    title: 'Time to the boil',
    says: 'When the pot makes its first steam, counted from when the heat went on.',
    time_s: summary.firstBoil_s,
    steps: [
      writtenStep({
        title: 'Heat that the pot and its content take',
        tex: 'Q = m\\,(h_l(T_1)-h_l(T_0)) + C\\,(T_1-T_0)',
        symbols: [
          symbol(
            'm',
            'water in the pot',
            water,
            'kg',
            'scenario: water in the pot, and moisture of a charge that lies in it',
          ),
          symbol('h_l(T_1)', 'enthalpy of water just before the boil', tableLiquidEnthalpy(T1), 'J/kg', STEAM_TABLES),
          symbol('h_l(T_0)', 'enthalpy of the water filled in', tableLiquidEnthalpy(T0), 'J/kg', STEAM_TABLES),
          symbol(
            'C',
            'heat capacity of wall, base, plant in the water and its oil',
            capacity,
            'J/K',
            'scenario: size, wall and material of the pot; charge',
          ),
          symbol('T_1', 'temperature just before the boil', T1, 'K', RUN),
          symbol('T_0', 'filling temperature', T0, 'K', 'scenario: filling temperature'),
        ],
        result: { tex: 'Q', value: heat, unit: 'J' },
        source: BALANCE,
      }),
      writtenStep({
        title: 'Power that enters the pot, as a mean until then',
        tex: '\\bar P = \\frac{1}{t_1}\\int_0^{t_1}\\dot Q_{pot}\\,dt',
        symbols: [
          symbol('t_1', 'time up to the step before the boil', time, 's', 'the run'),
          symbol(
            '\\int_0^{t_1}\\dot Q_{pot}\\,dt',
            'energy that entered the pot',
            energyToPot,
            'J',
            `ledger of the run: setting, rated power ${scenario.heat.ratedPower_W} W, share ${scenario.heat.shareToPot}, lag ${scenario.heat.lag_s} s`,
          ),
        ],
        result: { tex: '\\bar P', value: power, unit: 'W' },
        source: 'ledger of the run',
      }),
      writtenStep({
        title: 'Time',
        tex: 't_b = \\frac{Q}{\\bar P-\\bar Q_l}+\\Delta t',
        symbols: [
          symbol('Q', 'heat needed', heat, 'J', 'first step'),
          symbol('\\bar P', 'mean power into the pot', power, 'W', 'second step'),
          symbol(
            '\\bar Q_l',
            'mean loss to the air',
            loss,
            'W',
            'ledger of the run; its chain is in the sheet on heat loss',
          ),
          symbol('\\Delta t', 'the step in which it boils', dt, 's', 'time step of the run'),
        ],
        result: { tex: 't_b', value: result, unit: 's' },
        source: BALANCE,
      }),
    ],
    result: { value: result, unit: 's' },
    ofRun: { value: summary.firstBoil_s, from: 'summary: first boil' },
  };
}

/** Steam of one step from the state before it, as the pot works it out. */
export function steamRate(moment: Moment, peak: Peak | null): WorkingSheet | null {
  const share = smoothingShare(moment.dt);
  const { still, before, dt, time_s } = moment;
  const { pot, source, oil, airPressure, release } = still;
  if (!(pot.out.water > 0)) return null;
  const ratio = (airPressure + pot.gauge) / tableSaturationPressure(pot.boilingTemperature) - 1;
  const boiling = tableSaturationTemperature((airPressure + before.potGauge) / (1 + ratio));
  const consumed = pot.consumedEnthalpy - before.consumedEnthalpy;
  const water = before.potWater - (pot.waterConsumed - before.waterConsumed);
  const hydrolysed = release.hydrolysed - release.alcoholFormed - before.oilHydrolysed;
  const oilMass = before.potOil - (still.bed ? 0 : hydrolysed);
  const capacity = pot.geometry.wallCapacity + pot.geometry.plantCapacity + oilMass * oil.heatCapacity;
  const heat = (source.toPot - pot.loss) / dt;
  const lacking =
    (water * tableLiquidEnthalpy(boiling) + capacity * (boiling - ENTHALPY_ZERO) - (before.potEnthalpy - consumed)) /
    dt;
  const slope = tableSaturationSlope(boiling);
  const heldCapacity = water * tableLiquidHeatCapacity(boiling) + capacity;
  const pressure = (heldCapacity * (pot.gauge - before.potGauge)) / (slope * dt);
  const latent = tableLatentHeat(boiling) + before.oilLatent;
  const rate = Math.min(Math.max(0, (heat - lacking - pressure) / latent), (0.999 * water) / dt);
  const steps = [
    writtenStep({
      title: 'Boiling temperature, at the pressure in the pot and with the oil vapour’s part in it',
      tex: 'T_b = T_{sat}\\left(\\frac{p_a+p_g}{1+y}\\right)',
      symbols: [
        symbol('p_a', 'air pressure', airPressure, 'Pa', 'scenario: barometer, or ISO 2533 at the altitude'),
        symbol(
          'p_g',
          'pressure in the pot above the air, one step before',
          before.potGauge,
          'Pa',
          'pressure drops of bed, neck and condenser',
        ),
        symbol('y', 'oil per water in the vapour, by amount', ratio, 'mol/mol', RUN),
      ],
      result: { tex: 'T_b', value: boiling, unit: 'K' },
      source: STEAM_TABLES,
    }),
    writtenStep({
      title: 'Heat that comes in and stays in',
      tex: '\\dot Q = \\dot Q_{pot}-\\dot Q_l',
      symbols: [
        symbol(
          '\\dot Q_{pot}',
          'power into the pot',
          source.toPot / dt,
          'W',
          'heat source: setting, rated power, share, lag',
        ),
        symbol('\\dot Q_l', 'heat lost by the wall of the pot', pot.loss / dt, 'W', 'sheet on heat loss'),
      ],
      result: { tex: '\\dot Q', value: heat, unit: 'W' },
      source: BALANCE,
    }),
    writtenStep({
      title:
        'Heat that brings the content to the boil: water that ran back cooler; below zero when it was above the boil',
      tex: '\\dot Q_c = \\frac{m\\,h_l(T_b)+C\\,(T_b-T_z)-E}{\\Delta t}',
      symbols: [
        symbol('m', 'water in the pot', water, 'kg', 'the run, one step before'),
        symbol('h_l(T_b)', 'enthalpy of boiling water', tableLiquidEnthalpy(boiling), 'J/kg', STEAM_TABLES),
        symbol(
          'C',
          'heat capacity of wall, base, plant in the water and oil',
          capacity,
          'J/K',
          'scenario: pot and charge',
        ),
        symbol('T_b', 'boiling temperature', boiling, 'K', 'first step'),
        symbol('T_z', 'zero of the enthalpies', ENTHALPY_ZERO, 'K', 'triple point of water'),
        symbol('E', 'heat in the pot', before.potEnthalpy - consumed, 'J', 'the run, one step before'),
        symbol('\\Delta t', 'time step', dt, 's', 'scenario: time step'),
      ],
      result: { tex: '\\dot Q_c', value: lacking, unit: 'W' },
      source: BALANCE,
    }),
    writtenStep({
      title: 'Heat that a rising pressure keeps in the pot; below zero when the pressure falls',
      tex: '\\dot Q_p = \\frac{(m\\,c_p+C)\\,\\Delta p}{(dp/dT)\\,\\Delta t}',
      symbols: [
        symbol(
          '(m\\,c_p+C)',
          'heat capacity of pot and content',
          heldCapacity,
          'J/K',
          'as above, with IAPWS heat capacity',
        ),
        symbol('\\Delta p', 'rise of pressure in this step', pot.gauge - before.potGauge, 'Pa', RUN),
        symbol('(dp/dT)', 'slope of the boiling line', slope, 'Pa/K', STEAM_TABLES),
        symbol('\\Delta t', 'time step', dt, 's', 'scenario: time step'),
      ],
      result: { tex: '\\dot Q_p', value: pressure, unit: 'W' },
      source: BALANCE,
    }),
    writtenStep({
      title: 'Steam',
      tex: '\\dot m = \\frac{\\dot Q-\\dot Q_c-\\dot Q_p}{h_{fg}+q_o}',
      symbols: [
        symbol('\\dot Q', 'heat that stays in', heat, 'W', 'second step'),
        symbol('\\dot Q_c', 'heat to the boil', lacking, 'W', 'third step'),
        symbol('\\dot Q_p', 'heat kept by the pressure', pressure, 'W', 'fourth step'),
        symbol('h_{fg}', 'latent heat of water at the boil', tableLatentHeat(boiling), 'J/kg', STEAM_TABLES),
        symbol(
          'q_o',
          'latent heat of the oil that leaves the pot with a kilogram of steam',
          before.oilLatent,
          'J/kg',
          'the run, one step before',
        ),
      ],
      result: { tex: '\\dot m', value: rate, unit: 'kg/s' },
      source: BALANCE,
    }),
  ];
  if (peak !== null)
    steps.push(
      smoothingStep(
        'the steam',
        '\\dot m',
        'kg/s',
        { ...peak, instant: rate, smoothed: peak.smoothedBefore + share * (rate - peak.smoothedBefore) },
        share,
      ),
    );
  const shown = peak === null ? rate : peak.smoothedBefore + share * (rate - peak.smoothedBefore);
  return {
    id: 'steam-rate',
    title: 'Steam at the boil',
    says: peak === null ? 'Steam made in the pot at this moment.' : 'Steam made in the pot when it makes most.',
    time_s,
    steps,
    result: { value: shown, unit: 'kg/s' },
    ofRun: {
      value: peak === null ? pot.out.water / dt : peak.smoothed,
      from: peak === null ? 'record: steam rate' : 'summary: peak of the steam rate',
    },
  };
}

/** Chain of the loss from the pot's side, then all surfaces together. */
export function heatLoss({ still, before, scenario, dt, time_s }: Moment): WorkingSheet | null {
  const { pot, bed, head, neck, airPressure } = still;
  const { site, factors } = scenario;
  const steam = scenario.pot.layout === 'steam';
  const vessel = steam ? scenario.boiler : scenario.pot;
  const T = before.potTemperature;
  const T_a = site.airTemperature_K;
  if (!(pot.loss > 0) || T - T_a < 1) return null;
  const radius = vessel.diameter_m / 2;
  const { insulationThickness_m: thickness } = vessel;
  const k_ins = scenario.pot.insulationConductivity_W_mK;
  const { potSurfaces, potLoss } = buildBody(scenario, airPressure, still.oil);
  const [side, ...lid] = potSurfaces;
  const flux = surfaceLoss(side, T, T_a, airPressure) / side.area;
  const outerFactor = (radius + thickness) / radius;
  const resistance = (radius * Math.log(outerFactor)) / k_ins;
  const T_s = T - flux * resistance;
  const film = 0.5 * (T_s + T_a);
  const rho = airDensity(film, airPressure);
  const nu = airViscosity(film) / rho;
  const alpha = airConductivity(film) / (rho * airHeatCapacity(film));
  const Ra = rayleighNumber(airExpansivity(film), T_s - T_a, vessel.height_m, nu, alpha, STANDARD_GRAVITY);
  const air = 'dry air at the mean of surface and air';
  const nusselt = entryStep('nusselt-vertical-plate', { Ra: [Ra, 'step above'], Pr: [nu / alpha, air] });
  const convection = (nusselt.result.value * airConductivity(film)) / vessel.height_m;
  const radiation = entryStep('radiant-flux', {
    emissivity: [scenario.pot.emissivity, 'scenario: surface emissivity'],
    T_s: [T_s, 'outside of the pot'],
    T_a: [T_a, 'scenario: air temperature'],
  });
  const outside = convection * (T_s - T_a) + radiation.result.value;
  const ofBoilerLid = lid.reduce(
    (sum, surface) => sum + factors.heatLoss * surfaceLoss(surface, T, T_a, airPressure),
    0,
  );
  const ofSide = potLoss.at(T) - ofBoilerLid;
  const others = { bed: (bed?.loss ?? 0) / dt, head: head.loss / dt, neck: neck.loss / dt };
  const whole = ofSide + ofBoilerLid + others.bed + others.head + others.neck;
  const steps: WorkingStep[] = [];
  if (thickness > 0)
    steps.push(
      writtenStep({
        title: 'Outside of the insulation, where what comes through leaves',
        tex: 'T_s = T-q\\,\\frac{r\\ln((r+s)/r)}{k}',
        symbols: [
          symbol('T', 'inside', T, 'K', RUN),
          symbol('q', 'heat flux on the bare side, found so that both ways agree', flux, 'W/m²', 'solved by bisection'),
          symbol('r', 'radius of the vessel', radius, 'm', 'scenario: diameter'),
          symbol('s', 'insulation', thickness, 'm', 'scenario: insulation'),
          symbol('k', 'its conductivity', k_ins, 'W/(m K)', 'scenario: insulation conductivity'),
        ],
        result: { tex: 'T_s', value: T_s, unit: 'K' },
        source: 'Fourier, cylinder',
      }),
    );
  steps.push(
    entryStep('rayleigh-number', {
      beta: [airExpansivity(film), air],
      dT: [T_s - T_a, 'outside less air'],
      L: [vessel.height_m, 'scenario: height'],
      nu: [nu, air],
      alpha: [alpha, air],
      g: [STANDARD_GRAVITY, 'standard acceleration of free fall'],
    }),
    nusselt,
    radiation,
    writtenStep({
      title: 'Heat flux from the side of the pot, convection and radiation',
      tex: 'q = \\left(\\frac{Nu\\,k_a}{L}\\,(T_s-T_a)+q_r\\right)\\frac{r+s}{r}',
      symbols: [
        symbol('Nu', 'Nusselt number', nusselt.result.value, '1', 'step above'),
        symbol('k_a', 'conductivity of the air', airConductivity(film), 'W/(m K)', air),
        symbol('L', 'height', vessel.height_m, 'm', 'scenario: height'),
        symbol('T_s', 'outside', T_s, 'K', thickness > 0 ? 'first step' : 'inside, for want of insulation'),
        symbol('T_a', 'air', T_a, 'K', 'scenario: air temperature'),
        symbol('q_r', 'radiation', radiation.result.value, 'W/m²', 'step above'),
        symbol('\\frac{r+s}{r}', 'outside over bare surface', outerFactor, '1', 'scenario: diameter and insulation'),
      ],
      result: { tex: 'q', value: outside * outerFactor, unit: 'W/m²' },
      source: 'sum of both ways',
    }),
    writtenStep({
      title: 'Side, bed, lid and neck together',
      tex: `\\dot Q_l = f\\,q\\,\\pi D z+${steam ? '\\dot Q_{boiler}+' : ''}\\dot Q_{bed}+\\dot Q_{lid}+\\dot Q_{neck}`,
      symbols: [
        symbol('f', 'heat loss factor', factors.heatLoss, '1', 'scenario: heat loss factor'),
        symbol(
          'q',
          'flux from the side',
          factors.heatLoss > 0 ? ofSide / (side.area * factors.heatLoss) : flux,
          'W/m²',
          'step above, as the run reads it between the points of its table',
        ),
        symbol('D', 'diameter', vessel.diameter_m, 'm', 'scenario: diameter'),
        symbol(
          'z',
          'height of the wall that water or its steam keeps hot',
          pot.geometry.warmHeight,
          'm',
          steam ? 'scenario: boiler height' : 'scenario: water filled in and grid height',
        ),
        ...(steam
          ? [symbol('\\dot Q_{boiler}', 'loss of the boiler’s lid', ofBoilerLid, 'W', 'by the same chain, hot side up')]
          : []),
        symbol('\\dot Q_{bed}', 'loss round the bed', others.bed, 'W', RUN),
        symbol('\\dot Q_{lid}', 'loss of lid and upper side', others.head, 'W', RUN),
        symbol('\\dot Q_{neck}', 'loss of the neck', others.neck, 'W', RUN),
      ],
      result: { tex: '\\dot Q_l', value: whole, unit: 'W' },
      source: 'sum of the surfaces, each by the same chain',
    }),
  );
  return {
    id: 'heat-loss',
    title: 'Heat loss at the boil',
    says: 'Heat lost to the air by pot, bed, lid and neck.',
    time_s,
    steps,
    result: { value: whole, unit: 'W' },
    ofRun: { value: (pot.loss + (bed?.loss ?? 0) + head.loss + neck.loss) / dt, from: 'record: heat lost to the air' },
  };
}
