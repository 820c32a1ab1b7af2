/** Working of the heat lost to the air by pot, bed, lid and neck. */
import { ENTHALPY_ZERO } from '../still/stream.ts';
import { surfaceLoss } from '../still/surface-loss.ts';
import type { Moment } from './moment.ts';
import { entryStep, RUN, sheetOf, STEP, writtenStep, type WorkingSheet } from './sheet.ts';

/** Least height of the pot over the air, and over the zero of enthalpies, that has a loss worth a derivation, K. */
const LEAST_DIFFERENCE = 1;

/** Chain of the loss from the pot's side at a point of the run's table, then all surfaces together. */
export function heatLoss({ still, scenario, dt, time_s }: Moment): WorkingSheet | null {
  const { pot, bed, head, neck, airPressure } = still;
  const { site, factors } = scenario;
  const boiler = scenario.pot.layout === 'steam';
  const { temperature: T } = pot.terms;
  const T_a = site.airTemperature_K;
  if (!(pot.loss > 0) || T - Math.max(T_a, ENTHALPY_ZERO) < LEAST_DIFFERENCE) return null;
  const [side, lid] = pot.lossTable.surfaces;
  if (side === undefined) return null;
  const { T_k, step, low, high } = pot.lossTable.around(T);
  const { outside, resistance, outerFactor, loss } = surfaceLoss(side, T_k, T_a, airPressure);
  const lidLoss = lid === undefined ? 0 : surfaceLoss(lid, T_k, T_a, airPressure).loss;
  const flux = loss / side.area;
  const { T_s, k, length } = outside;
  const air = 'dry air at the mean of surface and air';
  const wall = boiler ? 'scenario: boiler' : 'scenario: pot';
  return sheetOf(
    ['heat-loss', 'Heat loss at the boil', time_s],
    'Heat lost to the air by pot, bed, lid and neck.',
    'the run’s record: heat lost to the air',
    resistance > 0 &&
      writtenStep(
        'Outside of the insulation, where what comes through leaves',
        'T_s = T_k-q\\,\\frac{r\\ln((r+s)/r)}{k}',
        [T_s, 'K', 'Fourier, cylinder'],
        ['T_k', T_k, 'K', 'inside, at the point of the run’s table below the pot’s temperature', RUN],
        ['q', flux, 'W/m²', 'heat flux on the bare side, found so that both ways agree', 'solved by bisection'],
        ['r', side.radius as number, 'm', 'radius of the vessel', `${wall}, diameter`],
        ['s', side.insulation, 'm', 'insulation', `${wall}, insulation`],
        ['k', side.insulationConductivity, 'W/(m K)', 'its conductivity', 'scenario: insulation conductivity'],
      ),
    entryStep('rayleigh-number', {
      beta: [outside.beta, air],
      dT: [Math.abs(T_s - T_a), 'outside less air'],
      L: [length, `${wall}, height`],
      nu: [outside.nu, air],
      alpha: [outside.alpha, air],
    }),
    entryStep('nusselt-vertical-plate', { Ra: [outside.Ra, STEP], Pr: [outside.nu / outside.alpha, air] }),
    entryStep('radiant-flux', {
      emissivity: [side.emissivity, 'scenario: surface emissivity'],
      T_s: [T_s, 'outside of the pot'],
      T_a: [T_a, 'scenario: air temperature'],
    }),
    writtenStep(
      'Heat flux from the side of the pot, convection and radiation',
      'q = \\left(\\frac{Nu\\,k_a}{L}\\,(T_s-T_a)+q_r\\right)\\,F',
      [flux, 'W/m²', 'sum of both ways'],
      ['Nu', outside.Nu, '1', 'Nusselt number', STEP],
      ['k_a', k, 'W/(m K)', 'conductivity of the air', air],
      ['L', length, 'm', 'height', `${wall}, height`],
      ['T_s', T_s, 'K', 'outside', resistance > 0 ? 'first step' : 'inside: there is no insulation'],
      ['T_a', T_a, 'K', 'air', 'scenario: air temperature'],
      ['q_r', outside.radiant, 'W/m²', 'radiation', STEP],
      ['F', outerFactor, '1', 'outside over bare surface', `${wall}, diameter and insulation`],
    ),
    writtenStep(
      `Loss of the ${boiler ? 'boiler' : 'pot'} at that point of the table`,
      `Q_k = f\\,${boiler ? '(q\\,A+Q_{top})' : 'q\\,A'}`,
      [low, 'W', 'sum of the surfaces'],
      ['f', factors.heatLoss, '1', 'heat loss factor', 'scenario: heat loss factor'],
      ['q', flux, 'W/m²', 'flux from the side', STEP],
      ['A', side.area, 'm²', 'side that water or its steam keeps hot', `${wall}, diameter, filling and grid height`],
      boiler && ['Q_{top}', lidLoss, 'W', 'loss of the boiler’s lid', 'by the same chain, hot side up'],
    ),
    writtenStep(
      'At the temperature of the pot, in a straight line between two points of the table',
      'Q_p = Q_k+\\frac{T-T_k}{T_{k+1}-T_k}\\,(Q_{k+1}-Q_k)',
      [pot.loss / dt, 'W', 'linear interpolation'],
      ['Q_k', low, 'W', 'loss at the point below', STEP],
      ['Q_{k+1}', high, 'W', 'loss at the point above', 'by the same chain'],
      ['T', T, 'K', 'pot', RUN],
      ['T_k', T_k, 'K', 'point below', 'table of the run'],
      ['T_{k+1}', T_k + step, 'K', 'point above', 'table of the run'],
    ),
    writtenStep(
      'Pot, bed, lid and neck together',
      'Q_l = Q_p+Q_{bed}+Q_{lid}+Q_{neck}',
      [still.lossInStep() / dt, 'W', 'sum of the surfaces, each by the same chain'],
      ['Q_p', pot.loss / dt, 'W', boiler ? 'loss of the boiler' : 'loss of the pot’s side', STEP],
      ['Q_{bed}', (bed?.loss ?? 0) / dt, 'W', 'loss round the bed', RUN],
      ['Q_{lid}', head.loss / dt, 'W', 'loss of lid and upper side', RUN],
      ['Q_{neck}', neck.loss / dt, 'W', 'loss of the neck', RUN],
    ),
  );
}
