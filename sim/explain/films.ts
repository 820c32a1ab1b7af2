/** Working of the two films of one piece of the condenser tube, with the run's own choice of relations. */
import { STANDARD_GRAVITY } from '../constants.ts';
import {
  tableLatentHeat,
  tableLiquidConductivity,
  tableLiquidDensity,
  tableLiquidExpansivity,
  tableLiquidHeatCapacity,
  tableLiquidViscosity,
  tableVapourDensity,
  tableVapourViscosity,
} from '../fluids/water-table.ts';
import { cavalliniTransition, dimensionlessVapourVelocity } from '../transfer/film-condensation.ts';
import { filmReynoldsWavyVertical } from '../transfer/film-condensation-on-surfaces.ts';
import { rayleighNumber } from '../transfer/natural-convection.ts';
import { slopingFilm, uprightFilm } from '../still/tube-inside.ts';
import type { Moment } from './moment.ts';
import { entryStep, symbol, writtenStep, type Given, type WorkingStep } from './sheet.ts';

/** One piece of the tube and what it works between. */
export interface Piece {
  readonly segment: number;
  /** Dew temperature inside and cooling water outside, K. */
  readonly T_s: number;
  readonly T_c: number;
  /** Vapour flux at the inlet of the tubes, kg/m²s, and share of it left where the piece begins. */
  readonly G: number;
  readonly x: number;
  /** Length that condenses, of an upright tube's film, m. */
  readonly filmLength: number;
  /** Resistances of wall and fouling, m K/W. */
  readonly R_w: number;
  readonly R_f: number;
}

export interface Walls {
  readonly inner: number;
  readonly outer: number;
  readonly h_i: number;
  readonly h_o: number;
}

const isUpright = ({ scenario }: Moment): boolean =>
  scenario.condenser.kind !== 'coil-in-tub' && scenario.condenser.orientation === 'upright';

/** Factors of the scenario on the film inside. */
export const insideFactor = ({ scenario }: Moment): number =>
  scenario.factors.condensingFilm * (scenario.charge.mass_kg > 0 ? scenario.condenser.oilFilmFactor : 1);

const PASSES = 80;

/** Wall temperatures at which both films and the wall pass the same heat, from the run's own film functions. */
export function settledWalls(moment: Moment, piece: Piece): Walls {
  const { scenario, still } = moment;
  const { insideDiameter_m: D_i, outsideDiameter_m: D_o } = scenario.condenser;
  let outer = 0.7 * piece.T_s + 0.3 * piece.T_c;
  let inner = outer;
  let h_i = 0;
  let h_o = 0;
  for (let pass = 0; pass < PASSES; pass++) {
    h_o = scenario.factors.coolantFilm * still.coolant.filmCoefficient(piece.segment, outer);
    h_i =
      insideFactor(moment) *
      (isUpright(moment)
        ? uprightFilm(piece.filmLength, piece.T_s, inner)
        : slopingFilm(D_i, piece.T_s, inner, piece.G, Math.max(0.02, piece.x)));
    const R_i = 1 / (h_i * Math.PI * D_i);
    const R_o = 1 / (h_o * Math.PI * D_o);
    const flux = (piece.T_s - piece.T_c) / (R_i + piece.R_w + piece.R_f + R_o);
    inner = piece.T_s - flux * R_i;
    outer = piece.T_c + flux * R_o;
  }
  return { inner, outer, h_i, h_o };
}

const FILM = 'water at the film temperature, IAPWS';
const GRAVITY: Given = [STANDARD_GRAVITY, 'standard acceleration of free fall'];

/** The film that condenses inside: the relation that the run takes here. */
export function insideFilmSteps(moment: Moment, piece: Piece, walls: Walls): WorkingStep[] {
  const { condenser, factors } = moment.scenario;
  const dT = Math.max(1e-3, piece.T_s - walls.inner);
  const T = piece.T_s - dT / 2;
  const rho_l = tableLiquidDensity(T);
  const rho_v = tableVapourDensity(piece.T_s);
  const mu_l = tableLiquidViscosity(T);
  const mu_v = tableVapourViscosity(piece.T_s);
  const x = Math.max(0.02, piece.x);
  const liquid = {
    rho_l: [rho_l, FILM],
    k_l: [tableLiquidConductivity(T), FILM],
    mu_l: [mu_l, FILM],
    cp_l: [tableLiquidHeatCapacity(T), FILM],
  } as const satisfies Record<string, Given>;
  const drive = {
    dT: [dT, 'dew temperature less inner wall, where both films agree'],
    h_fg: [tableLatentHeat(piece.T_s), 'water at the dew temperature, IAPWS'],
  } as const satisfies Record<string, Given>;
  const vapour: Given = [rho_v, 'steam at the dew temperature, IAPWS'];
  const bore: Given = [condenser.insideDiameter_m, 'scenario: tube bore'];
  const steps: WorkingStep[] = [];
  if (isUpright(moment)) {
    const L: Given = [piece.filmLength, 'length that condenses, in this step of the run'];
    const Re = filmReynoldsWavyVertical(
      piece.filmLength,
      dT,
      drive.h_fg[0],
      rho_l,
      liquid.k_l[0],
      mu_l,
      liquid.cp_l[0],
      STANDARD_GRAVITY,
    );
    steps.push(
      Re > 30
        ? entryStep('film-coefficient-wavy-vertical', { L, ...drive, ...liquid, g: GRAVITY })
        : entryStep('film-coefficient-nusselt-vertical', {
            L,
            ...drive,
            ...liquid,
            rho_v: vapour,
            c: [0.68, 'Rohsenow’s subcooling factor'],
            g: GRAVITY,
          }),
    );
  } else {
    const speed = dimensionlessVapourVelocity(piece.G, x, condenser.insideDiameter_m, rho_l, rho_v, STANDARD_GRAVITY);
    steps.push(
      entryStep('dimensionless-vapour-velocity', {
        G: [piece.G, 'vapour at the inlet over the bore'],
        x: [x, 'share of it left here'],
        D_i: bore,
        rho_l: liquid.rho_l,
        rho_v: vapour,
        g: GRAVITY,
      }),
    );
    const stratified = entryStep('film-coefficient-chato', {
      D_i: bore,
      ...drive,
      rho_v: vapour,
      ...liquid,
      g: GRAVITY,
    });
    const fast = speed >= 1.5 && speed >= cavalliniTransition(x, rho_l, rho_v, mu_l, mu_v);
    const sheared = fast
      ? entryStep('film-coefficient-cavallini', {
          G: [piece.G, 'vapour at the inlet over the bore'],
          x: [x, 'share of it left here'],
          D_i: bore,
          ...drive,
          rho_v: vapour,
          mu_v: [mu_v, 'steam at the dew temperature, IAPWS'],
          ...liquid,
          g: GRAVITY,
        })
      : null;
    steps.push(sheared !== null && sheared.result.value > stratified.result.value ? sheared : stratified);
  }
  const bare = steps[steps.length - 1] as WorkingStep;
  steps.push(
    writtenStep({
      title: 'Film inside, with the factors of the scenario',
      tex: 'h_i = f_o\\,f_i\\,h',
      symbols: [
        symbol(
          'f_o',
          'oil film factor',
          moment.scenario.charge.mass_kg > 0 ? condenser.oilFilmFactor : 1,
          '1',
          'scenario: oil film factor, judgement',
        ),
        symbol('f_i', 'condensing film factor', factors.condensingFilm, '1', 'scenario: condensing film factor'),
        symbol('h', 'film coefficient', bare.result.value, 'W/(m² K)', 'step above'),
      ],
      result: { tex: 'h_i', value: insideFactor(moment) * bare.result.value, unit: 'W/(m² K)' },
      source: 'judgement and fit',
    }),
  );
  return steps;
}

/** The film of cooling water outside. */
export function outsideFilmSteps(moment: Moment, piece: Piece, walls: Walls): WorkingStep[] {
  const { condenser, cooling, factors } = moment.scenario;
  const coil = condenser.kind === 'coil-in-tub';
  const given = (
    result: number,
    tex: string,
    title: string,
    more: readonly [string, string, number, string][],
  ): WorkingStep =>
    writtenStep({
      title,
      tex,
      symbols: [
        symbol('f_c', 'coolant film factor', factors.coolantFilm, '1', 'scenario: coolant film factor'),
        ...more.map(([t, says, value, from]) =>
          symbol(t, says, value, t === 'k' ? 'W/(m K)' : t.startsWith('D') ? 'm' : '1', from),
        ),
      ],
      result: { tex: 'h_o', value: result, unit: 'W/(m² K)' },
      source: 'definition of the Nusselt number',
    });
  if (!coil) return jacketFilmSteps(moment, piece, walls, given);
  const bulk = moment.still.coolant.segmentTemperature[piece.segment] as number;
  const T = 0.5 * (walls.outer + bulk);
  const k = tableLiquidConductivity(T);
  const nu = tableLiquidViscosity(T) / tableLiquidDensity(T);
  const alpha = k / (tableLiquidDensity(T) * tableLiquidHeatCapacity(T));
  const D = condenser.outsideDiameter_m;
  const beta = Math.abs(tableLiquidExpansivity(T));
  const dT = Math.abs(walls.outer - bulk);
  const Ra = rayleighNumber(beta, dT, D, nu, alpha, STANDARD_GRAVITY);
  const rayleigh = entryStep('rayleigh-number', {
    beta: [beta, FILM],
    dT: [dT, 'outer wall less water, where both films agree'],
    L: [D, 'scenario: tube outside'],
    nu: [nu, FILM],
    alpha: [alpha, FILM],
    g: GRAVITY,
  });
  const natural = entryStep('nusselt-horizontal-cylinder', { Ra: [Ra, 'step above'], Pr: [nu / alpha, FILM] });
  const steps = [rayleigh, natural];
  let nusselt = natural.result.value;
  if (cooling.stir_m_s > 0) {
    const forced = entryStep('nusselt-cross-flow-cylinder', {
      Re: [(cooling.stir_m_s * D) / nu, 'stirring times tube outside over viscosity'],
      Pr: [nu / alpha, FILM],
    });
    const both = entryStep('combine-forced-and-natural', {
      Nu_f: [forced.result.value, 'step above'],
      Nu_n: [natural.result.value, 'natural convection above'],
    });
    steps.push(forced, both);
    nusselt = both.result.value;
  }
  const plume = (walls.h_o * D) / (factors.coolantFilm * nusselt * k);
  steps.push(
    given(
      walls.h_o,
      'h_o = f_c\\,s\\,\\frac{Nu\\,k}{D_o}',
      'Film outside, less what close turns take from each other',
      [
        ['s', 'share that turns so close keep, 0.7 when they touch', plume, 'judgement, from pitch and tube'],
        ['Nu', 'Nusselt number', nusselt, 'step above'],
        ['k', 'conductivity of the water', k, FILM],
        ['D_o', 'outside of the tube', D, 'scenario: tube outside'],
      ],
    ),
  );
  return steps;
}

function jacketFilmSteps(
  { scenario, still }: Moment,
  piece: Piece,
  walls: Walls,
  given: (result: number, tex: string, title: string, more: readonly [string, string, number, string][]) => WorkingStep,
): WorkingStep[] {
  const { condenser, factors } = scenario;
  const tubes = condenser.kind === 'bundle' ? condenser.tubes : 1;
  const D_s = condenser.jacketDiameter_m;
  const D_o = condenser.outsideDiameter_m;
  const area = (Math.PI / 4) * (D_s * D_s - tubes * D_o * D_o);
  const hydraulic = (4 * area) / (Math.PI * (D_s + tubes * D_o));
  const inner = tubes === 1 ? D_o : Math.min(0.95 * D_s, Math.sqrt(tubes) * D_o);
  const T = Math.min(400, still.coolant.segmentTemperature[piece.segment] as number);
  const mu = tableLiquidViscosity(T);
  const k = tableLiquidConductivity(T);
  const water = 'cooling water at this place, IAPWS';
  const shape =
    tubes === 1
      ? 'scenario: tube outside and jacket bore'
      : 'annulus of the same hydraulic diameter as the bundle’s shell (estimate)';
  const nusselt = entryStep('nusselt-annulus', {
    Re: [(Math.max(0, still.coolant.flow) * hydraulic) / (area * mu), 'flow, free section and viscosity'],
    Pr: [(mu * tableLiquidHeatCapacity(T)) / k, water],
    D_i: [inner, shape],
    D_o: [inner + hydraulic, shape],
    L: [condenser.length_m, 'scenario: tube length'],
  });
  return [
    nusselt,
    given(
      (factors.coolantFilm * (nusselt.result.value * k)) / hydraulic,
      'h_o = f_c\\,\\frac{Nu\\,k}{D_h}',
      'Film outside',
      [
        ['Nu', 'Nusselt number', nusselt.result.value, 'step above'],
        ['k', 'conductivity of the water', k, water],
        ['D_h', 'hydraulic diameter', hydraulic, shape],
      ],
    ),
  ].filter(() => walls.h_o > 0);
}
