/** Working of the two films of one piece of the condenser tube, from what the run kept of them. */
import { isBundle } from '../geometry/condenser-kind.ts';
import type { Scenario } from '../scenario/scenario.ts';
import type { OutsideFilm } from '../still/coolant.ts';
import { Jacket } from '../still/jacket.ts';
import { VERTICAL_SUBCOOLING, type InsideFilm } from '../still/tube-inside.ts';
import type { Moment } from './moment.ts';
import { entryStep, STEP, writtenStep, type Given, type WorkingStep } from './sheet.ts';

const FILM = 'water at the film temperature, IAPWS';
const DEW = 'at the dew temperature, IAPWS';

/** The film that condenses inside: the relation that decided in the run. */
export function insideFilmSteps({ scenario, still }: Moment, film: InsideFilm): WorkingStep[] {
  const { condenser, charge, factors } = scenario;
  const given: Readonly<Record<string, Given>> = {
    G: [film.G, 'vapour at the inlet over the bore'],
    x: [film.x, 'share of it left where the piece begins'],
    D_i: [film.D_i, 'scenario: tube bore'],
    L: [film.L, 'length that condenses'],
    dT: [film.dT, 'dew temperature less inner wall, when the run last worked it out'],
    h_fg: [film.h_fg, `water ${DEW}`],
    rho_v: [film.rho_v, `steam ${DEW}`],
    mu_v: [film.mu_v, `steam ${DEW}`],
    rho_l: [film.rho_l, FILM],
    k_l: [film.k_l, FILM],
    mu_l: [film.mu_l, FILM],
    cp_l: [film.cp_l, FILM],
    c: [VERTICAL_SUBCOOLING, 'Rohsenow’s subcooling factor'],
  };
  return [
    ...(still.condenser.upright ? [] : [entryStep('dimensionless-vapour-velocity', given)]),
    entryStep(film.relation, given),
    writtenStep(
      'Film inside, with the factors of the scenario',
      'h_i = f_o\\,f_i\\,h',
      [still.condenser.filmFactor * film.coefficient, 'W/(m² K)', 'judgement and fit'],
      ['f_o', charge.mass_kg > 0 ? condenser.oilFilmFactor : 1, '1', 'oil film factor', 'scenario: oil film factor'],
      ['f_i', factors.condensingFilm, '1', 'condensing film factor', 'scenario: condensing film factor'],
      ['h', film.coefficient, 'W/(m² K)', 'film coefficient', STEP],
    ),
  ];
}

/** A coil in a tub: natural convection, with the cross-flow of stirred water. */
function cylinderSteps(film: OutsideFilm, stirred: boolean): WorkingStep[] {
  const Pr: Given = [film.Pr, FILM];
  const steps = [
    entryStep('rayleigh-number', {
      beta: [film.beta, FILM],
      dT: [Math.abs(film.T_w - film.T_c), 'outer wall less water, when the run last worked it out'],
      L: [film.D, 'scenario: tube outside'],
      nu: [film.nu, FILM],
      alpha: [film.alpha, FILM],
    }),
    entryStep('nusselt-horizontal-cylinder', { Ra: [film.Ra, STEP], Pr }),
  ];
  if (stirred)
    steps.push(
      entryStep('nusselt-cross-flow-cylinder', { Re: [film.Re, 'stirring, tube outside and viscosity'], Pr }),
      entryStep('combine-forced-and-natural', { Nu_f: [film.forced, STEP], Nu_n: [film.natural, STEP] }),
    );
  return steps;
}

/** A jacket: the gap round the tube, or an annulus that stands for the shell of a bundle. */
function annulusStep(film: OutsideFilm, { innerWidth }: Jacket, condenser: Scenario['condenser']): WorkingStep {
  const shape = isBundle(condenser)
    ? 'annulus of the same hydraulic diameter as the bundle’s shell (estimate)'
    : 'scenario: tube outside and jacket bore';
  return entryStep('nusselt-annulus', {
    Re: [film.Re, 'flow, free section and viscosity'],
    Pr: [film.Pr, 'cooling water at this place, IAPWS'],
    D_i: [innerWidth, shape],
    D_o: [innerWidth + film.D, shape],
    L: [condenser.length_m, 'scenario: tube length'],
  });
}

/** The film of cooling water outside. */
export function outsideFilmSteps({ scenario, still }: Moment, film: OutsideFilm): WorkingStep[] {
  const { condenser, cooling, factors } = scenario;
  const jacket = still.coolant instanceof Jacket ? still.coolant : null;
  const close = film.share < 1;
  return [
    ...(jacket ? [annulusStep(film, jacket, condenser)] : cylinderSteps(film, cooling.stir_m_s > 0)),
    writtenStep(
      close ? 'Film outside, less because close turns warm each other’s water' : 'Film outside',
      `h_o = f_c\\,${close ? 's\\,' : ''}\\frac{Nu\\,k}{D}`,
      [still.condenser.coolantFactor * film.coefficient, 'W/(m² K)', 'definition of the Nusselt number'],
      ['f_c', factors.coolantFilm, '1', 'coolant film factor', 'scenario: coolant film factor'],
      close && ['s', film.share, '1', 'share left to turns this close; 0.7 when they touch', 'judgement'],
      ['Nu', film.Nu, '1', 'Nusselt number', STEP],
      ['k', film.k, 'W/(m K)', 'conductivity of the water', FILM],
      ['D', film.D, 'm', jacket ? 'hydraulic diameter of the gap' : 'outside of the tube', 'scenario: tube, jacket'],
    ),
  ];
}
