/** Working of the condenser: the length that condenses, the distillate's temperature, the pressure lost in the tube. */
import {
  tableLiquidDensity,
  tableLiquidViscosity,
  tableVapourDensity,
  tableVapourViscosity,
} from '../fluids/water-table.ts';
import { findMaterial } from '../library/materials.ts';
import type { InsideFilm } from '../still/tube-inside.ts';
import type { CondensateFilm } from '../still/condensate-cooling.ts';
import type { OutsideFilm } from '../still/coolant.ts';
import { HIGHEST_GAUGE } from '../still/pot.ts';
import { ENTHALPY_ZERO } from '../still/stream.ts';
import { shareRow } from './boiling.ts';
import { insideFilmSteps, outsideFilmSteps } from './films.ts';
import type { Moment } from './moment.ts';
import { BALANCE, BEFORE, entryStep, RUN, sheetOf, STEP, writtenStep } from './sheet.ts';
import type { Given, WorkingSheet, WorkingStep } from './sheet.ts';

/** Films, wall and fouling of the piece of tube after those that condense along their whole length. */
function conductanceSteps(moment: Moment, piece: number): WorkingStep[] {
  const { scenario, still } = moment;
  const { condenser } = still;
  const { insideDiameter_m: D_i, outsideDiameter_m: D_o, material, fouling_m2K_W } = scenario.condenser;
  const inside = condenser.insideFilms[piece] as InsideFilm;
  const outside = condenser.outsideFilms[piece] as OutsideFilm;
  return [
    ...insideFilmSteps(moment, inside),
    entryStep('cylinder-resistance', {
      D_i: [D_i, 'scenario: tube bore'],
      D_o: [D_o, 'scenario: tube outside'],
      k: [findMaterial(material).conductivity_W_mK.value, `conductivity of ${material}, library`],
    }),
    ...outsideFilmSteps(moment, outside),
    writtenStep(
      `Conductance of piece ${piece + 1} of ${condenser.segments} of the tube: film, wall, fouling and film in series`,
      "g = \\frac{N\\,\\Delta z}{\\frac{1}{\\pi D_i h_i}+R'+\\frac{R_f}{\\pi D_o}+\\frac{1}{\\pi D_o h_o}}",
      [condenser.condensing[piece] as number, 'W/K', 'resistances in series, Incropera et al. 6e section 3.3'],
      ['N', condenser.tubes, '1', 'tubes', 'scenario: tubes'],
      ['\\Delta z', condenser.segmentLength, 'm', 'length of a piece', 'scenario: tube length, condenser segments'],
      ['D_i', D_i, 'm', 'bore', 'scenario: tube bore'],
      ['h_i', condenser.filmFactor * inside.coefficient, 'W/(m² K)', 'film inside', STEP],
      ["R'", condenser.wallResistance, 'm K/W', 'wall', STEP],
      ['R_f', fouling_m2K_W * scenario.factors.fouling, 'm² K/W', 'fouling', 'scenario: fouling and its factor'],
      ['D_o', D_o, 'm', 'outside', 'scenario: tube outside'],
      ['h_o', condenser.coolantFactor * outside.coefficient, 'W/(m² K)', 'film outside', STEP],
    ),
  ];
}

export function condensingLength(moment: Moment): WorkingSheet | null {
  const { still, peaks, dt, time_s } = moment;
  const { condenser, coolant, arrivingWater } = still;
  const { terms, segmentLength, dewTemperature } = condenser;
  if (!(arrivingWater > 0) || !(terms.latent > 0)) return null;
  const ends = terms.possible > 0;
  const piece = Math.min(terms.whole, condenser.segments - 1);
  const conductance = condenser.condensing[piece] as number;
  return sheetOf(
    ['condensing-length', 'Tube needed to condense', time_s],
    `Length that condenses at ${peaks ? 'the hardest' : 'this'} moment. Films are those that the run last worked out, at most half a minute before.`,
    peaks ? 'the run’s summary: peak of the condensing length' : 'the run’s record: condensing length',
    ...(conductance > 0 ? conductanceSteps(moment, piece) : []),
    ends &&
      writtenStep(
        'Heat that this piece can take while its water warms',
        '\\dot Q_p = g\\,r\\,(T_s-T_c)',
        [terms.possible / dt, 'W', BALANCE],
        ['g', conductance, 'W/K', 'conductance', STEP],
        [
          'r',
          coolant.implicitFactor[piece] as number,
          '1',
          'share that counts while the water warms',
          'heat its water holds',
        ],
        ['T_s', dewTemperature, 'K', 'dew temperature', RUN],
        ['T_c', terms.water, 'K', 'cooling water', RUN],
      ),
    writtenStep(
      'Heat to be taken out until all is liquid at the dew temperature',
      '\\dot Q_{lat} = \\dot H_{in}-\\dot H_{liq}',
      [terms.latent / dt, 'W', BALANCE],
      ['\\dot H_{in}', terms.vapourEnthalpy / dt, 'W', 'enthalpy of the steam and oil that arrive', RUN],
      ['\\dot H_{liq}', terms.asLiquid / dt, 'W', 'enthalpy of the same as liquid', 'IAPWS, oil’s heat capacity'],
    ),
    writtenStep(
      ends
        ? 'Length: whole pieces that condense, and the part of the next that takes the rest'
        : 'The whole tube condenses and vapour is left over',
      ends ? 'L = \\Delta z\\,\\left(n+\\frac{\\dot Q_{lat}-\\dot Q_n}{\\dot Q_p}\\right)' : 'L = \\Delta z\\,n',
      [condenser.condensingLength, 'm', BALANCE],
      ['\\Delta z', segmentLength, 'm', 'length of a piece', 'scenario: tube length and condenser segments'],
      ['n', terms.whole, '1', 'pieces that condense along their whole length', 'counted off until the heat is spent'],
      ends && ['\\dot Q_{lat}', terms.latent / dt, 'W', 'heat to be taken out', STEP],
      ends && ['\\dot Q_n', (terms.latent - terms.left) / dt, 'W', 'what the whole pieces take', 'sum over the pieces'],
      ends && ['\\dot Q_p', terms.possible / dt, 'W', 'what the next piece could take', 'heat of that piece above'],
    ),
    peaks &&
      writtenStep(
        'Mean over half a minute, weighted by the vapour',
        "\\overline L = \\frac{J'+s\\,(\\dot m_v\\,L-J')}{\\overline{\\dot m}}",
        [peaks.vapourTimesLength.now / peaks.vapour.now, 'm', 'definition of the summary’s peaks'],
        ["J'", peaks.vapourTimesLength.before, 'kg m/s', 'smoothed vapour times length', BEFORE],
        shareRow(dt),
        ['\\dot m_v', arrivingWater / dt, 'kg/s', 'water vapour that arrives', RUN],
        ['L', condenser.condensingLength, 'm', 'its length', STEP],
        ['\\overline{\\dot m}', peaks.vapour.now, 'kg/s', 'smoothed vapour', RUN],
      ),
  );
}

/** How the condensate cools in the piece of tube after the last vapour; nothing where that piece is above the water. */
function coolingSteps({ still, scenario }: Pick<Moment, 'still' | 'scenario'>): WorkingStep[] {
  const { condenser } = still;
  const { condensateCooling: tube, segmentLength, tubes, wallResistance, coolantFactor } = condenser;
  const { insideDiameter_m: D_i, outsideDiameter_m: D_o, material } = scenario.condenser;
  const piece = Math.min(condenser.terms.whole + 1, condenser.segments - 1);
  const film = condenser.condensateFilms[piece] as CondensateFilm;
  if (!(film.resistance < Infinity)) return [];
  const straight = tube.coilDiameter === Infinity;
  const at = 'water at the condensate’s temperature there, IAPWS';
  const given: Readonly<Record<string, Given>> = {
    m: [film.m, 'what arrives, a tube'],
    D_i: [D_i, 'scenario: tube bore'],
    slope: [tube.slope, 'scenario: coil diameter and pitch, or slope'],
    D_coil: [tube.coilDiameter, 'scenario: coil diameter'],
    s: [tube.curvature, 'scenario: coil bend factor'],
    phi: [film.phi, STEP],
    z_1: [film.z_1, 'distance from the last vapour'],
    z_2: [film.z_2, 'distance from the last vapour'],
    rho_l: [film.rho_l, at],
    mu_l: [film.mu_l, at],
    k_l: [film.k_l, at],
    cp_l: [film.cp_l, at],
    t: [tube.wallThickness, 'scenario: tube bore and outside'],
    k_w: [tube.wallConductivity, `conductivity of ${material}, library`],
    h_o: [film.outside, STEP],
  };
  const outside = condenser.coolOutsideFilms[piece] as OutsideFilm;
  return [
    ...(tube.upright
      ? [entryStep('falling-film-conductance', given, 'How well the condensate cools: a film on the whole bore')]
      : [
          entryStep('rivulet-half-angle', given),
          entryStep(
            straight ? 'rivulet-conductance' : 'rivulet-conductance-coil',
            given,
            'How well the condensate cools: a thin rivulet, not a full pipe',
          ),
        ]),
    writtenStep(
      'Film of the cooling water and fouling together',
      'h_f = \\frac{1}{\\frac{1}{h_o}+R_f}',
      [film.outside, 'W/(m² K)', 'resistances in series'],
      ['h_o', coolantFactor * outside.coefficient, 'W/(m² K)', 'film outside, as for the pieces that condense', RUN],
      ['R_f', tube.fouling, 'm² K/W', 'fouling', 'scenario: fouling and its factor'],
    ),
    ...(tube.upright ? [] : [entryStep('rivulet-wall-share', given)]),
    writtenStep(
      `Conductance of piece ${piece + 1} of ${condenser.segments} of the tube`,
      tube.upright
        ? "g = \\frac{N\\,\\Delta z}{\\frac{1}{F\\,U}+R'+\\frac{1}{h_f\\,\\pi D_o}}"
        : "g = \\frac{N\\,\\Delta z}{\\frac{1}{F\\,U}+R'\\frac{\\pi}{\\varphi}+\\frac{1}{h_f\\,\\pi D_o\\,a}}",
      [(tubes * segmentLength) / film.resistance, 'W/K', 'resistances in series'],
      ['N', tubes, '1', 'tubes', 'scenario: tubes'],
      ['\\Delta z', segmentLength, 'm', 'length of a piece', 'scenario: tube length, condenser segments'],
      ['F', tube.factor, '1', 'condensate factor', 'scenario: condensate factor'],
      ['U', film.conductance, 'W/(m K)', 'condensate to wall', STEP],
      ["R'", wallResistance, 'm K/W', 'wall all round', 'bore, outside and conductivity of the tube'],
      !tube.upright && ['\\varphi', film.phi, 'rad', 'angle that is wet on either side', STEP],
      ['h_f', film.outside, 'W/(m² K)', 'film and fouling outside', STEP],
      ['D_o', D_o, 'm', 'outside', 'scenario: tube outside'],
      !tube.upright && ['a', film.share, '1', 'share of the outside that takes the heat', STEP],
    ),
  ];
}

export function outletTemperature({ still, scenario, peaks, dt, time_s }: Moment): WorkingSheet | null {
  const { condenser, oil } = still;
  const { condensate, escaped, terms } = condenser;
  if (!(condensate.water > 0)) return null;
  const left = condensate.enthalpy / dt;
  const flow = condensate.water / dt;
  const T = condenser.condensateTemperature;
  return sheetOf(
    ['outlet-temperature', 'Temperature of the distillate', time_s],
    peaks ? 'At the outlet, when it is warmest.' : 'At the outlet, at this moment.',
    peaks ? 'the run’s summary: warmest distillate' : 'the run’s record: temperature of the distillate',
    ...coolingSteps({ still, scenario }),
    writtenStep(
      'Heat left in the distillate',
      '\\dot H_d = \\dot H_{v}+\\dot H_n-\\dot Q-\\dot H_{esc}',
      [left, 'W', BALANCE],
      ['\\dot H_{v}', terms.vapourEnthalpy / dt, 'W', 'enthalpy of the vapour that arrives', RUN],
      ['\\dot H_n', terms.liquidEnthalpy / dt, 'W', 'enthalpy of the neck’s condensate', RUN],
      ['\\dot Q', condenser.duty / dt, 'W', 'heat taken out along the whole tube, condensing and cooling', RUN],
      ['\\dot H_{esc}', escaped.enthalpy / dt, 'W', 'carried off by vapour that escapes', RUN],
    ),
    writtenStep(
      'Temperature at which the distillate holds that heat',
      '\\dot m_w\\,h_l(T)+\\dot m_o\\,c_o\\,(T-T_z) = \\dot H_d',
      [T, 'K', 'IAPWS R7-97(2012), solved for T', 'T'],
      ['\\dot H_d', left, 'W', 'heat left', STEP],
      ['\\dot m_w', flow, 'kg/s', 'water', RUN],
      ['\\dot m_o', condensate.oilTotal() / dt, 'kg/s', 'oil', RUN],
      ['c_o', oil.heatCapacity, 'J/(kg K)', 'heat capacity of the oil', 'constituents of the oil'],
      ['T_z', ENTHALPY_ZERO, 'K', 'zero of the enthalpies', 'triple point of water'],
    ),
    peaks &&
      writtenStep(
        'Mean over half a minute, weighted by the flow',
        "\\overline T = \\frac{J'+s\\,(\\dot m_w\\,T-J')}{\\overline{\\dot m}}",
        [peaks.flowTimesTemperature.now / peaks.flow.now, 'K', 'definition of the summary’s peaks'],
        ["J'", peaks.flowTimesTemperature.before, 'kg K/s', 'smoothed flow times temperature', BEFORE],
        shareRow(dt),
        ['\\dot m_w', flow, 'kg/s', 'water now', RUN],
        ['T', T, 'K', 'its temperature', STEP],
        ['\\overline{\\dot m}', peaks.flow.now, 'kg/s', 'smoothed flow', RUN],
      ),
  );
}

export function pressureDrop({ still, scenario, dt, time_s }: Moment): WorkingSheet | null {
  const { condenser, arrivingWater } = still;
  if (!(arrivingWater > 0)) return null;
  const { terms, condensingLength: L, drop } = condenser;
  const { insideDiameter_m: D_i } = scenario.condenser;
  const T = condenser.dewTemperature;
  const water = 'water at the dew temperature, IAPWS';
  const steam = 'steam at the dew temperature, IAPWS';
  const common = {
    G: [terms.massFlux, STEP],
    D: [D_i, 'scenario: tube bore'],
    roughness: [0, 'smooth drawn tube'],
  } as const;
  const capped = drop === HIGHEST_GAUGE;
  return sheetOf(
    ['coil-pressure-drop', 'Pressure lost in the condenser tube', time_s],
    'Friction of steam and condensate along the tube; the pot stands above the air by this much and the drops of bed and neck.',
    'the run’s record: pressure drop of the condenser',
    writtenStep(
      'Mass flux at the inlet',
      'G = \\frac{4\\,\\dot m}{N\\,\\pi D_i^2}',
      [terms.massFlux, 'kg/(m² s)'],
      ['\\dot m', arrivingWater / dt, 'kg/s', 'steam arriving', RUN],
      ['N', condenser.tubes, '1', 'tubes', 'scenario: tubes'],
      ['D_i', D_i, 'm', 'bore', 'scenario: tube bore'],
    ),
    entryStep(
      'friction-gradient',
      { ...common, rho: [tableLiquidDensity(T), water], mu: [tableLiquidViscosity(T), water] },
      'If all of it ran as liquid',
    ),
    entryStep(
      'friction-gradient',
      { ...common, rho: [tableVapourDensity(T), steam], mu: [tableVapourViscosity(T), steam] },
      'If all of it ran as steam',
    ),
    entryStep('mean-two-phase-gradient', {
      A: [terms.liquidGradient, STEP],
      B: [terms.steamGradient, STEP],
      x_in: [1, 'all vapour at the inlet'],
      x_out: [terms.escapingShare, 'share that escapes'],
    }),
    writtenStep(
      'Drop of the whole tube',
      capped ? '\\Delta p = \\min(L_c\\,B_m+L_l\\,A,\\,p_{max})' : '\\Delta p = L_c\\,B_m+L_l\\,A',
      [drop, 'Pa', 'sum of both zones'],
      ['L_c', L, 'm', 'length that condenses', RUN],
      ['B_m', terms.meanGradient, 'Pa/m', 'mean gradient there', STEP],
      ['L_l', condenser.length() - L, 'm', 'length that only carries liquid', RUN],
      ['A', terms.liquidGradient, 'Pa/m', 'gradient of the liquid', 'second step'],
      capped && ['p_{max}', HIGHEST_GAUGE, 'Pa', 'highest that the steam tables cover', 'limit of the model'],
    ),
  );
}
