/** Working of the condenser: the length that condenses, the distillate's temperature, the pressure lost in the tube. */
import { STANDARD_GRAVITY } from '../constants.ts';
import {
  tableLiquidConductivity,
  tableLiquidDensity,
  tableLiquidEnthalpy,
  tableLiquidHeatCapacity,
  tableLiquidViscosity,
  tableVapourDensity,
  tableVapourViscosity,
} from '../fluids/water-table.ts';
import { findMaterial } from '../library/materials.ts';
import { HIGHEST_GAUGE } from '../still/pot.ts';
import { ENTHALPY_ZERO } from '../still/stream.ts';
import { insideFilmSteps, outsideFilmSteps, settledWalls, type Piece } from './films.ts';
import { smoothingStep } from './boiling.ts';
import { smoothingShare, type Moment, type Peak, type Survey } from './moment.ts';
import { entryStep, symbol, writtenStep, type WorkingSheet, type WorkingStep } from './sheet.ts';

const RUN = 'the run at this moment';
const BALANCE = 'balance of heat';

interface Arriving {
  readonly tubes: number;
  /** Enthalpy of all that arrives above liquid at the zero, and of it what is not vapour to be condensed, J. */
  readonly enthalpy: number;
  readonly latent: number;
  readonly massFlux: number;
}

/** What arrives at the condenser in a step, from what it leaves as: liquid, vapour and heat taken out. */
function arrivingAt({ still, scenario, dt }: Moment): Arriving {
  const { condenser, oil, neck, arrivingWater, arrivingOil } = still;
  const tubes = scenario.condenser.kind === 'bundle' ? scenario.condenser.tubes : 1;
  const enthalpy = condenser.condensate.enthalpy + condenser.duty + condenser.escaped.enthalpy;
  const liquid = (water: number, oilMass: number, T: number): number =>
    water * tableLiquidEnthalpy(T) + oilMass * oil.heatCapacity * (T - ENTHALPY_ZERO);
  const neckWater = condenser.condensate.water + condenser.escaped.water - arrivingWater;
  const neckOil = condenser.condensate.oilTotal() + condenser.escaped.oilTotal() - arrivingOil;
  return {
    tubes,
    enthalpy,
    latent: Math.max(
      0,
      enthalpy -
        liquid(neckWater, neckOil, neck.temperature) -
        liquid(arrivingWater, arrivingOil, condenser.dewTemperature),
    ),
    massFlux: arrivingWater / (dt * tubes * (Math.PI / 4) * scenario.condenser.insideDiameter_m ** 2),
  };
}

/**
 * Goes along the tube with the run's own conductances. They are the engine's inner state: read, never written.
 * @returns length that condenses, whole segments in it, latent heat left for the last one and what it could take, J
 */
function marchAgain(
  { still, dt }: Moment,
  latent: number,
  tubes: number,
): { length: number; whole: number; left: number; possible: number } {
  const { condenser, coolant } = still;
  let left = latent;
  for (let s = 0; s < condenser.segments; s++) {
    const heatPerMetre = condenser.heatPerMetre[s] as number;
    const T_c = (condenser.wall[s] as number) - heatPerMetre * (condenser.outerResistance[s] as number);
    const possible =
      (condenser.condensing[s] as number) *
      (coolant.relief[s] as number) *
      Math.max(0, condenser.dewTemperature - T_c) *
      dt;
    if (possible >= left)
      return {
        length: (s + left / possible) * condenser.segmentLength,
        whole: s,
        left: left / (dt * tubes),
        possible: possible / (dt * tubes * condenser.segmentLength),
      };
    left -= possible;
  }
  return { length: condenser.length(), whole: condenser.segments, left: left / (dt * tubes), possible: 0 };
}

export function condensingLength(moment: Moment, peak: Peak | null): WorkingSheet | null {
  const share = smoothingShare(moment.dt);
  const { still, scenario, dt, time_s } = moment;
  const { condenser, arrivingWater, arrivingOil } = still;
  const { insideDiameter_m: D_i, outsideDiameter_m: D_o, material, fouling_m2K_W } = scenario.condenser;
  const { tubes, latent, massFlux, enthalpy } = arrivingAt(moment);
  if (!(arrivingWater > 0) || !(latent > 0)) return null;
  const again = marchAgain(moment, latent, tubes);
  const segment = Math.min(condenser.segments - 1, Math.floor(0.5 * Math.max(0, again.whole - 1)));
  const heatPerMetre = condenser.heatPerMetre[segment] as number;
  const wall = entryStep('cylinder-resistance', {
    D_i: [D_i, 'scenario: tube bore'],
    D_o: [D_o, 'scenario: tube outside'],
    k: [findMaterial(material).conductivity_W_mK.value, `conductivity of ${material}, library`],
  });
  const fouling = (fouling_m2K_W * scenario.factors.fouling) / (Math.PI * D_o);
  const piece: Piece = {
    segment,
    T_s: condenser.dewTemperature,
    T_c: (condenser.wall[segment] as number) - heatPerMetre * (condenser.outerResistance[segment] as number),
    G: massFlux,
    x: segment === 0 ? 1 : (condenser.vapourShare[segment - 1] as number),
    filmLength: Math.max(condenser.condensingLength, condenser.segmentLength),
    R_w: wall.result.value,
    R_f: fouling,
  };
  const walls = settledWalls(moment, piece);
  const series = 1 / (walls.h_i * Math.PI * D_i) + piece.R_w + fouling + 1 / (walls.h_o * Math.PI * D_o);
  const flux = (piece.T_s - piece.T_c) / series;
  const ofRun = (condenser.condensing[segment] as number) / (tubes * condenser.segmentLength);
  const covered = walls.h_o > 0;
  const where = `in the piece of tube from ${(segment * condenser.segmentLength).toFixed(2)} m`;
  const chain: WorkingStep[] = covered
    ? [
        ...insideFilmSteps(moment, piece, walls),
        wall,
        ...outsideFilmSteps(moment, piece, walls),
        writtenStep({
          title: `Heat a metre of tube takes, ${where}: film, wall, fouling and film in series`,
          tex: "q' = \\frac{T_s-T_c}{\\frac{1}{\\pi D_i h_i}+R'+\\frac{R_f}{\\pi D_o}+\\frac{1}{\\pi D_o h_o}}",
          symbols: [
            symbol('T_s', 'dew temperature', piece.T_s, 'K', RUN),
            symbol('T_c', 'cooling water', piece.T_c, 'K', RUN),
            symbol('D_i', 'bore', D_i, 'm', 'scenario: tube bore'),
            symbol('h_i', 'film inside', walls.h_i, 'W/(m² K)', 'step above'),
            symbol("R'", 'wall', piece.R_w, 'm K/W', 'step above'),
            symbol(
              'R_f',
              'fouling',
              fouling_m2K_W * scenario.factors.fouling,
              'm² K/W',
              'scenario: fouling and its factor',
            ),
            symbol('D_o', 'outside', D_o, 'm', 'scenario: tube outside'),
            symbol('h_o', 'film outside', walls.h_o, 'W/(m² K)', 'step above'),
          ],
          result: { tex: "q'", value: flux, unit: 'W/m' },
          source: 'resistances in series, Incropera et al. 6e section 3.3',
          valid: {
            inside: true,
            says: [
              `The run renews its films every half minute; here it counts with ${(ofRun * (piece.T_s - piece.T_c)).toPrecision(4)} W/m.`,
            ],
          },
        }),
      ]
    : [];
  const steps: WorkingStep[] = [
    ...chain,
    writtenStep({
      title: 'Heat to be taken out until all is liquid at the dew temperature',
      tex: '\\dot Q_{lat} = \\dot H_{in}-\\dot H_{liq}',
      symbols: [
        symbol(
          '\\dot H_{in}',
          `enthalpy arriving with ${(arrivingWater / dt).toExponential(3)} kg/s of steam, ${(arrivingOil / dt).toExponential(3)} kg/s of oil vapour and the neck’s condensate`,
          enthalpy / dt,
          'W',
          RUN,
        ),
        symbol(
          '\\dot H_{liq}',
          'enthalpy of the same as liquid',
          (enthalpy - latent) / dt,
          'W',
          'IAPWS, oil’s heat capacity',
        ),
      ],
      result: { tex: '\\dot Q_{lat}', value: latent / dt, unit: 'W' },
      source: BALANCE,
    }),
    writtenStep({
      title:
        again.possible > 0
          ? 'Length: whole pieces that condense, and the part of the next that takes the rest'
          : 'The whole tube condenses and vapour is left over',
      tex: again.possible > 0 ? "L = n\\,\\Delta z+\\frac{\\dot Q_{left}}{q'_{n+1}}" : 'L = n\\,\\Delta z',
      symbols: [
        symbol(
          'n',
          'pieces that condense along their whole length',
          again.whole,
          '1',
          'counted off until the heat is spent',
        ),
        symbol(
          '\\Delta z',
          'length of a piece',
          condenser.segmentLength,
          'm',
          'scenario: tube length and condenser segments',
        ),
        ...(again.possible > 0
          ? [
              symbol(
                '\\dot Q_{left}',
                'heat left for the next piece, a tube',
                again.left,
                'W',
                'what the whole pieces took off',
              ),
              symbol("q'_{n+1}", 'heat a metre of it takes', again.possible, 'W/m', 'chain above, at that place'),
            ]
          : []),
      ],
      result: { tex: 'L', value: again.length, unit: 'm' },
      source: BALANCE,
    }),
  ];
  if (peak !== null)
    steps.push(
      smoothingStep(
        'the length',
        'L',
        'm',
        {
          ...peak,
          instant: again.length,
          smoothed: peak.smoothedBefore + share * (again.length - peak.smoothedBefore),
        },
        share,
      ),
    );
  const shown = peak === null ? again.length : peak.smoothedBefore + share * (again.length - peak.smoothedBefore);
  return {
    id: 'condensing-length',
    title: 'Tube needed to condense',
    says: peak === null ? 'Length that condenses at this moment.' : 'Length that condenses at the hardest moment.',
    time_s,
    steps,
    result: { value: shown, unit: 'm' },
    ofRun: {
      value: peak === null ? condenser.condensingLength : peak.smoothed,
      from: peak === null ? 'record: condensing length' : 'summary: peak of the condensing length',
    },
  };
}

export function outletTemperature(moment: Moment, outlet: Survey['outlet']): WorkingSheet | null {
  const share = smoothingShare(moment.dt);
  const { still, scenario, before, dt, time_s } = moment;
  const { condenser, oil, coolant } = still;
  const { condensate, escaped } = condenser;
  if (!(condensate.water > 0)) return null;
  const { tubes, enthalpy } = arrivingAt(moment);
  const last = coolant.segmentTemperature.length - 1;
  const T_mean = Math.max(
    275,
    0.5 *
      (condenser.dewTemperature + Math.max(before.condensateTemperature, coolant.segmentTemperature[last] as number)),
  );
  const fall =
    scenario.condenser.coilPitch_m /
    Math.hypot(Math.PI * scenario.condenser.coilDiameter_m, scenario.condenser.coilPitch_m);
  const upright = scenario.condenser.kind !== 'coil-in-tub' && scenario.condenser.orientation === 'upright';
  const slope = scenario.condenser.kind === 'coil-in-tub' ? Math.asin(fall) : scenario.condenser.slope_rad;
  const film = 'water at the condensate’s mean temperature, IAPWS';
  const condensateFlow = {
    m: [(condensate.water + escaped.water) / (dt * tubes), 'water arriving, a tube'],
    D_i: [scenario.condenser.insideDiameter_m, 'scenario: tube bore'],
    rho_l: [tableLiquidDensity(T_mean), film],
    mu_l: [tableLiquidViscosity(T_mean), film],
    k_l: [tableLiquidConductivity(T_mean), film],
    g: [STANDARD_GRAVITY, 'standard acceleration of free fall'],
  } as const;
  const duty = condenser.heatPerMetre.reduce((sum, heat) => sum + heat, 0) * condenser.segmentLength * tubes;
  const left = enthalpy / dt - duty - escaped.enthalpy / dt;
  const oilFlow = condensate.oilTotal() / dt;
  const water = condensate.water / dt;
  let T = ENTHALPY_ZERO + left / (water * 4186);
  for (let pass = 0; pass < 20; pass++)
    T -=
      (water * tableLiquidEnthalpy(T) + oilFlow * oil.heatCapacity * (T - ENTHALPY_ZERO) - left) /
      (water * tableLiquidHeatCapacity(T) + oilFlow * oil.heatCapacity);
  const steps: WorkingStep[] = [
    upright
      ? entryStep(
          'falling-film-conductance',
          condensateFlow,
          'How well the condensate cools where all is liquid: a film on the whole bore',
        )
      : entryStep(
          'subcooling-conductance',
          { ...condensateFlow, slope: [slope, 'scenario: coil diameter and pitch, or slope'] },
          'How well the condensate cools where all is liquid: a thin rivulet, not a full pipe',
        ),
    writtenStep({
      title: 'Heat taken out along the whole tube',
      tex: "\\dot Q = N\\int_0^L q'\\,dz",
      symbols: [
        symbol('N', 'tubes', tubes, '1', 'scenario: tubes'),
        symbol(
          "\\int_0^L q'\\,dz",
          'heat of a tube: condensing, then cooling',
          duty / tubes,
          'W',
          'profile of the run, drawn along the condenser',
        ),
      ],
      result: { tex: '\\dot Q', value: duty, unit: 'W' },
      source: 'sum over the pieces of the tube',
    }),
    writtenStep({
      title: 'Heat left in the distillate',
      tex: '\\dot H_d = \\dot H_{in}-\\dot Q-\\dot H_{esc}',
      symbols: [
        symbol('\\dot H_{in}', 'enthalpy arriving', enthalpy / dt, 'W', RUN),
        symbol('\\dot Q', 'taken out', duty, 'W', 'step above'),
        symbol('\\dot H_{esc}', 'carried off by vapour that escapes', escaped.enthalpy / dt, 'W', RUN),
      ],
      result: { tex: '\\dot H_d', value: left, unit: 'W' },
      source: BALANCE,
    }),
    writtenStep({
      title: 'Temperature at which the distillate holds that heat',
      tex: '\\dot m_w\\,h_l(T)+\\dot m_o\\,c_o\\,(T-T_z) = \\dot H_d',
      symbols: [
        symbol('\\dot H_d', 'heat left', left, 'W', 'step above'),
        symbol('\\dot m_w', 'water', water, 'kg/s', RUN),
        symbol('\\dot m_o', 'oil', oilFlow, 'kg/s', RUN),
        symbol('c_o', 'heat capacity of the oil', oil.heatCapacity, 'J/(kg K)', 'constituents of the oil'),
        symbol('T_z', 'zero of the enthalpies', ENTHALPY_ZERO, 'K', 'triple point of water'),
      ],
      result: { tex: 'T', value: T, unit: 'K' },
      source: 'IAPWS R7-97(2012), solved for T',
    }),
  ];
  let shown = T;
  if (outlet !== null) {
    const { flow, flowTimesTemperature } = outlet;
    shown =
      (flowTimesTemperature.smoothedBefore + share * (water * T - flowTimesTemperature.smoothedBefore)) / flow.smoothed;
    steps.push(
      writtenStep({
        title: 'Mean over half a minute, weighted by the flow',
        tex: "\\overline T = \\frac{\\overline{\\dot mT}'+s\\,(\\dot m_wT-\\overline{\\dot mT}')}{\\overline{\\dot m}}",
        symbols: [
          symbol(
            "\\overline{\\dot mT}'",
            'smoothed flow times temperature, a step before',
            flowTimesTemperature.smoothedBefore,
            'kg K/s',
            'the run, one step before',
          ),
          symbol('s', 'share of the way in a step, 1 − exp(−Δt/30 s)', share, '1', 'time step of the run'),
          symbol('\\dot m_wT', 'flow times temperature now', water * T, 'kg K/s', 'step above'),
          symbol('\\overline{\\dot m}', 'smoothed flow', flow.smoothed, 'kg/s', 'the run'),
        ],
        result: { tex: '\\overline T', value: shown, unit: 'K' },
        source: 'definition of the summary’s peaks',
      }),
    );
  }
  return {
    id: 'outlet-temperature',
    title: 'Temperature of the distillate',
    says: outlet === null ? 'At the outlet, at this moment.' : 'At the outlet, when it is warmest.',
    time_s,
    steps,
    result: { value: shown, unit: 'K' },
    ofRun: {
      value:
        outlet === null ? condenser.condensateTemperature : outlet.flowTimesTemperature.smoothed / outlet.flow.smoothed,
      from: outlet === null ? 'record: temperature of the distillate' : 'summary: warmest distillate',
    },
  };
}

export function pressureDrop(moment: Moment): WorkingSheet | null {
  const { still, scenario, dt, time_s } = moment;
  const { condenser, arrivingWater } = still;
  if (!(arrivingWater > 0)) return null;
  const { tubes, massFlux: G } = arrivingAt(moment);
  const D = scenario.condenser.insideDiameter_m;
  const T = condenser.dewTemperature;
  const escapingShare = condenser.escaped.water / arrivingWater;
  const smooth = [0, 'smooth drawn tube'] as const;
  const flux = [G, 'step above'] as const;
  const bore = [D, 'scenario: tube bore'] as const;
  const water = 'water at the dew temperature, IAPWS';
  const steam = 'steam at the dew temperature, IAPWS';
  const liquidOnly = entryStep(
    'friction-gradient',
    { G: flux, D: bore, rho: [tableLiquidDensity(T), water], mu: [tableLiquidViscosity(T), water], roughness: smooth },
    'If all of it ran as liquid',
  );
  const vapourOnly = entryStep(
    'friction-gradient',
    { G: flux, D: bore, rho: [tableVapourDensity(T), steam], mu: [tableVapourViscosity(T), steam], roughness: smooth },
    'If all of it ran as steam',
  );
  const mean = entryStep('mean-two-phase-gradient', {
    A: [liquidOnly.result.value, 'all liquid'],
    B: [vapourOnly.result.value, 'all steam'],
    x_in: [1, 'all vapour at the inlet'],
    x_out: [escapingShare, 'share that escapes'],
  });
  const L = condenser.condensingLength;
  const rest = condenser.length() - L;
  const value = Math.min(HIGHEST_GAUGE, L * mean.result.value + rest * liquidOnly.result.value);
  return {
    id: 'coil-pressure-drop',
    title: 'Pressure lost in the condenser tube',
    says: 'Friction of steam and condensate along the tube; the pot stands above the air by this much and the drops of bed and neck.',
    time_s,
    steps: [
      writtenStep({
        title: 'Mass flux at the inlet',
        tex: 'G = \\frac{4\\,\\dot m}{N\\,\\pi D_i^2}',
        symbols: [
          symbol('\\dot m', 'steam arriving', arrivingWater / dt, 'kg/s', RUN),
          symbol('N', 'tubes', tubes, '1', 'scenario: tubes'),
          symbol('D_i', 'bore', D, 'm', 'scenario: tube bore'),
        ],
        result: { tex: 'G', value: G, unit: 'kg/(m² s)' },
        source: 'definition',
      }),
      liquidOnly,
      vapourOnly,
      mean,
      writtenStep({
        title: 'Drop of the whole tube',
        tex: '\\Delta p = L_c\\,\\overline{\\frac{dp}{dz}}+L_l\\,A',
        symbols: [
          symbol('L_c', 'length that condenses', L, 'm', RUN),
          symbol('\\overline{\\frac{dp}{dz}}', 'mean gradient there', mean.result.value, 'Pa/m', 'step above'),
          symbol('L_l', 'length that only carries liquid', rest, 'm', RUN),
          symbol('A', 'gradient of the liquid', liquidOnly.result.value, 'Pa/m', 'second step'),
        ],
        result: { tex: '\\Delta p', value, unit: 'Pa' },
        source: 'sum of both zones',
      }),
    ],
    result: { value, unit: 'Pa' },
    ofRun: { value: condenser.drop, from: 'record: pressure drop of the condenser' },
  };
}
