/** The desk reference against the same chains calculated by hand, over what a small still meets. */
import { describe, expect, it } from 'vitest';
import { celsius, look, perHour } from '../transfer/look.ts';
import { annulusNusselt } from './annulus-eigenvalue.ts';
import { coilLength, inJacket, inTub } from './condenser-chain.ts';
import {
  cavallini,
  chato,
  outsideTube,
  shah2009,
  steamReynolds,
  vapourSpeeds,
  verticalPlate,
} from './condensing-steam.ts';
import { carrier, potLid, potSide, radiation, tubeInStream, tubeInWater } from './outside-films.ts';
import * as vdi from './vdi-forms.ts';

/** Both are evaluated in double precision from the same formulas. */
const SAME = 1e-9;
const expectSame = (ours: number, byHand: number, within = SAME): void =>
  expect(Math.abs(ours / byHand - 1), `${ours} against ${byHand} by hand`).toBeLessThanOrEqual(within);

const T_sat = celsius(100);

describe('condensing steam at 100 °C', () => {
  it.each([
    [80, 0.3],
    [95, 0.3],
  ])('on a vertical wall at %d °C, %d m high', (wall, L) => {
    const T_wall = celsius(wall);
    expectSame(look('film-coefficient-nusselt-vertical-steam', { T_sat, T_wall, L }), verticalPlate(T_sat, T_wall, L));
  });

  it.each([
    [80, 0.012],
    [60, 0.022],
  ])('outside a tube at %d °C, %d m across', (wall, D) => {
    const T_wall = celsius(wall);
    expectSame(look('film-coefficient-tube-outside-steam', { T_sat, T_wall, D }), outsideTube(T_sat, T_wall, D));
  });

  it.each([
    [40, 0.006],
    [60, 0.008],
    [80, 0.01],
    [90, 0.01],
    [90, 0.015],
    [60, 0.02],
  ])('in a tube at %d °C, bore %d m (Chato)', (wall, D_i) => {
    const T_wall = celsius(wall);
    expectSame(look('film-coefficient-chato-steam', { T_sat, T_wall, D_i }), chato(T_sat, T_wall, D_i));
  });

  it.each([
    [1, 0.01],
    [5, 0.01],
    [5, 0.006],
    [10, 0.006],
  ])('with the speeds of %d kg/h of steam in %d m', (kg_h, D_i) => {
    const m = perHour(kg_h);
    expectSame(look('vapour-reynolds-steam', { m, D_i, T_sat }), steamReynolds(m, D_i, T_sat));
    const { J, J_T } = vapourSpeeds(m, 0.9, D_i, T_sat);
    expectSame(look('dimensionless-vapour-velocity-steam', { m, x: 0.9, D_i, T_sat }), J);
    expectSame(look('cavallini-transition-velocity-steam', { x: 0.9, T_sat }), J_T);
  });

  it.each([
    [1, 0.5, 0.01, 20],
    [2, 0.9, 0.01, 20],
    [5, 0.5, 0.01, 20],
    [10, 0.9, 0.01, 20],
    [2, 0.5, 0.008, 40],
  ])('where %d kg/h are vapour to %d in %d m, %d K over the wall (Cavallini)', (kg_h, x, D_i, dT) => {
    const m = perHour(kg_h);
    expectSame(look('film-coefficient-cavallini-steam', { m, x, D_i, T_sat, dT }), cavallini(m, x, D_i, T_sat, dT));
  });

  it.each([
    [10, 0.01],
    [5, 0.006],
  ])('by the shear term of Shah 2009, %d kg/h in %d m', (kg_h, D_i) => {
    const m = perHour(kg_h);
    const G = m / (0.25 * Math.PI * D_i * D_i);
    const water = { k_l: 0.6772, mu_l: 281.585e-6, cp_l: 4216.6, mu_v: 12.232e-6, p_r: 101418 / 22.064e6 };
    // The water's properties here are rounded.
    expectSame(look('film-coefficient-shah-2009', { G, x: 0.9, D_i, ...water }), shah2009(m, 0.9, D_i, T_sat), 1e-4);
  });
});

describe('a whole condenser tube', () => {
  it.each([
    [0.01, 0.012, 20],
    [0.01, 0.012, 60],
    [0.006, 0.008, 30],
  ])('of %d and %d m in water at %d °C', (D_i, D_o, water) => {
    const T_water = celsius(water);
    const tube = { D_i, D_o, k: 390 };
    const { U, T_wo } = inTub(T_sat, T_water, tube);
    expectSame(look('tube-in-tub-overall', { T_sat, T_water, ...tube }), U);
    expectSame(look('tube-in-tub-wall-temperature', { T_sat, T_water, ...tube }), T_wo);
  });

  it.each([20, 70])('in which 3 kg/h condense in a coil in water at %d °C', (water) => {
    const T_water = celsius(water);
    const tube = { D_i: 0.01, D_o: 0.012, k: 390 };
    const m = perHour(3);
    expectSame(look('coil-length-to-condense', { m, T_sat, T_water, ...tube }), coilLength(m, T_sat, T_water, tube));
  });

  it.each([
    [2, 60],
    [3, 150],
  ])('in a jacket, %d kg/h of steam and %d kg/h of water', (kg_h, water_kg_h) => {
    const [m, m_c, T_in] = [perHour(kg_h), perHour(water_kg_h), celsius(15)] as const;
    const [tube, D_s] = [{ D_i: 0.01, D_o: 0.012, k: 390 }, 0.02] as const;
    const { T_out, Re, h_o, U, L } = inJacket(m, m_c, T_in, T_sat, D_s, tube);
    const flow = { m, m_c, T_in, T_sat };
    expectSame(look('jacket-coolant-outlet', flow), T_out);
    expectSame(look('jacket-reynolds', { ...flow, D_o: 0.012, D_s }), Re);
    expectSame(look('jacket-film-coefficient', { ...flow, D_o: 0.012, D_s, L }), h_o);
    expectSame(look('jacket-overall', { ...flow, ...tube, D_s }), U);
    expectSame(look('jacket-condensing-length', { ...flow, ...tube, D_s }), L);
  });
});

describe('films outside', () => {
  const walls = [50, 60, 70, 80, 90];
  const pairs = [15, 30, 45, 60, 75].flatMap((bulk) =>
    walls.filter((wall) => wall > bulk).map((wall) => [wall, bulk] as const),
  );

  it.each(pairs)('of a 12 mm tube at %d °C in still water at %d °C', (wall, bulk) => {
    const [T_wall, T_bulk] = [celsius(wall), celsius(bulk)];
    expectSame(
      look('natural-convection-tube-in-water', { T_wall, T_bulk, D_o: 0.012 }),
      tubeInWater(T_wall, T_bulk, 0.012),
    );
  });

  it.each([0.02, 0.05, 0.1, 0.2])('of a 12 mm tube in a stream of %d m/s', (V) => {
    expectSame(
      look('cross-flow-tube-in-water', { V, T: celsius(60), D_o: 0.012 }),
      tubeInStream(V, celsius(60), 0.012),
    );
  });

  it.each([
    [95, 0.2],
    [60, 0.9],
  ])('of a side at %d °C with emissivity %d', (t, emissivity) => {
    const side = { T_s: celsius(t), T_air: celsius(20), L: 0.4 };
    const h = potSide(side.T_s, side.T_air, side.L);
    expectSame(look('pot-side-convection', side), h);
    const flux = h * (t - 20) + radiation(emissivity, side.T_s, side.T_air);
    expectSame(look('pot-side-loss-flux', { ...side, emissivity }), flux, 1e-7);
  });

  it('of a bright lid at 95 °C', () => {
    const top = { T_s: celsius(95), T_air: celsius(20), D: 0.3 };
    const h = potLid(top.T_s, top.T_air, top.D);
    expectSame(look('pot-lid-convection', top), h);
    const flux = h * 75 + radiation(0.2, top.T_s, top.T_air);
    expectSame(look('pot-lid-loss-flux', { ...top, emissivity: 0.2 }), flux, 1e-7);
  });

  it.each([
    [40, 0],
    [60, 0.1],
    [80, 0],
  ])('of open water at %d °C in a draught of %d m/s', (t, V) => {
    const top = { T_water: celsius(t), T_air: celsius(20), RH: 0.5, V };
    const [heat, water] = carrier(top.T_water, top.T_air, 0.5, V);
    expectSame(look('open-water-evaporation', top), heat);
    expectSame(look('open-water-evaporation-rate', top), water);
  });
});

it('evaporates from a bath at 50 °C as the heat and mass analogy says, within one per cent (after Cengel 3e, Example 14-13)', () => {
  const [p_w, p_a, p] = [12.35e3, 0.52 * 3.17e3, 92e3];
  const [L, nu] = [3.5 / 9, 1.849e-5 / (92 / 101.325)];
  const density = (p_v: number, T: number): number => look('moist-air-density', { p_v, p, T });
  const Gr = look('moist-air-grashof', {
    rho_s: density(p_w, celsius(50)),
    rho_inf: density(p_a, celsius(25)),
    L,
    nu,
    g: 9.81,
  });
  const D = look('vapour-diffusivity-in-air', { T: celsius(37.5), p });
  const h_mass = (look('sherwood-hot-side-up', { Gr, Sc: nu / D }) * D) / L;
  const analogy = h_mass * (p_w / (461.5 * celsius(50)) - p_a / (461.5 * celsius(25)));
  expectSame(look('evaporation-rate-carrier', { p_w, p_a, V: 0, h_fg: 2382e3 }), analogy, 0.012);
});

describe('flow in tubes, gaps and coils', () => {
  it.each([
    [1000, 7, 0.01, 2],
    [500, 5, 0.008, 1],
  ])('laminar in a tube: Re %d, Pr %d, bore %d m, %d m', (Re, Pr, D, L) => {
    expectSame(look('nusselt-laminar-tube', { Re, Pr, D, L }), vdi.laminarTube(Re, Pr, D, L));
  });

  it.each([
    [800, 6, 0.012, 0.02, 2],
    [12000, 5, 0.012, 0.02, 2],
    [5000, 6, 0.012, 0.022, 3],
  ])('in a gap: Re %d, Pr %d, %d to %d m, %d m', (Re, Pr, D_i, D_o, L) => {
    expectSame(look('nusselt-annulus', { Re, Pr, D_i, D_o, L }), vdi.annulus(Re, Pr, D_i, D_o, L));
  });

  // The table is Kays and Perkins's as Incropera and others print it (Table 8.2), to three or four figures.
  it.each([0.05, 0.1, 0.25, 0.5, 0.6, 0.75, 0.999])('developed in a gap of ratio %d, as an eigenvalue', (ratio) => {
    expectSame(look('nusselt-annulus-exact', { ratio }), annulusNusselt(ratio), 0.002);
  });

  const tight = { d: 0.01, D_coil: 0.2 };
  it.each([
    [1500, 6],
    [4000, 5],
  ])('laminar in a coil: Re %d, Pr %d', (Re, Pr) => {
    expectSame(look('nusselt-coil-laminar', { Re, Pr, ...tight }), vdi.laminarCoil(Re, Pr, 0.01, 0.2));
    expectSame(look('nusselt-coil-manlapaz-churchill', { Re, Pr, ...tight }), vdi.manlapazChurchill(Re, Pr, 0.01, 0.2));
  });

  it('turbulent in a coil', () => {
    const flow = { Re: 25000, Pr: 5, ...tight };
    expectSame(look('nusselt-coil-turbulent', flow), vdi.turbulentCoil(25000, 5, 0.01, 0.2));
    expectSame(look('nusselt-coil-seban-mclaughlin', flow), vdi.sebanMcLaughlin(25000, 5, 0.01, 0.2));
  });
});
