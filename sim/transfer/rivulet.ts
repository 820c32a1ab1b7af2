import { correlation, forReaders, type Argument, type Correlation } from '../correlation.ts';
import { nusseltGnielinski } from './tube-flow.ts';

/**
 * The condensate after the last steam, in a sloping or coiled tube: a laminar rivulet along the lowest line of the bore,
 * which wets it up to an angle φ on either side. Its surface is level, without shear and without heat.
 *
 * Solved by this project (flow and temperature in a circular segment on finite elements, and with cross-flow for a
 * coil); the functions are fits to the solutions, whose tables are in the tests. Nobody has measured the heat transfer of
 * a rivulet in such tubes. What the solutions leave out, above all the surface that clings to the wall or draws back from
 * it (contact angle 10° to 60°: × 1.4 to × 0.67), is the spread of the rivulet factor F.
 */

/** Flow number W of a bore that is half full and of a full one: exact, π/16 and π/8. */
const HALF_FULL = Math.PI / 16;
const FULL = Math.PI / 8;
const QUARTER = Math.PI / 2;

/** Share of φ − sin φ cos φ: area over R²; its series where the difference loses its figures. */
const segmentArea = (phi: number): number =>
  phi < 0.01 ? ((2 * phi * phi * phi) / 3) * (1 - (phi * phi) / 5) : phi - Math.sin(phi) * Math.cos(phi);

const flowSeries = (square: number): number =>
  1 + square * (-0.65681 + square * (0.24198 + square * (-0.06001 + square * 0.0072214)));

/** Laminar flow in a circular segment: entry `rivulet-flow-number`. */
export const rivuletFlowNumber = (phi: number): number => {
  if (phi >= QUARTER) return HALF_FULL + (FULL - HALF_FULL) * Math.min(1, (phi - QUARTER) / QUARTER);
  if (!(phi > 0)) return 0;
  const square = phi * phi;
  return (4 / 105) * square * square * square * phi * flowSeries(square);
};

/** Angle from the lowest line of the bore to the edge of the rivulet: entry `rivulet-half-angle`. */
export const rivuletHalfAngle = (
  m: number,
  D_i: number,
  slope: number,
  rho_l: number,
  mu_l: number,
  g: number,
): number => {
  if (!(m > 0)) return 0;
  const fall = rho_l * rho_l * g * Math.sin(Math.abs(slope));
  const R = 0.5 * D_i;
  const W = (m * mu_l) / (fall * R * R * R * R);
  if (!(W < FULL)) return Math.PI;
  if (W >= HALF_FULL) return QUARTER * (1 + (W - HALF_FULL) / (FULL - HALF_FULL));
  // The flow grows as the seventh power; a fit to the seventh root, good to 0.04 %, and a step of Newton's method.
  const root = Math.pow((105 / 4) * W, 1 / 7);
  const r = root * root;
  let phi = root * (1 + r * (0.091955 + r * (0.030234 + r * (-0.018511 + r * 0.014453))));
  const square = phi * phi;
  const sixth = (4 / 105) * square * square * square;
  const series = flowSeries(square);
  const rise = 2 * square * (-0.65681 + square * (2 * 0.24198 + square * (3 * -0.06001 + square * 4 * 0.0072214)));
  phi -= (sixth * phi * series - W) / (sixth * (7 * series + rise));
  return Math.min(QUARTER, phi);
};

/** Greatest depth of the rivulet, m: R (1 − cos φ). */
export const rivuletDepth = (phi: number, D_i: number): number => 0.5 * D_i * (1 - Math.cos(phi));

/** Cross-section of the rivulet, m²: R² (φ − sin φ cos φ). */
export const rivuletArea = (phi: number, D_i: number): number => 0.25 * D_i * D_i * segmentArea(phi);

/** Hydraulic diameter of the rivulet on its wetted wall, m: 4 A/(2 R φ); 0 with none. */
export const rivuletHydraulicDiameter = (phi: number, D_i: number): number =>
  phi > 0 ? (D_i * segmentArea(phi)) / phi : 0;

/** Nusselt number of the developed rivulet on its hydraulic diameter: entry `rivulet-nusselt-developed`. */
export const rivuletNusseltDeveloped = (phi: number): number => {
  const p = Math.min(QUARTER, Math.max(0, phi));
  return 2.29686 + p * (1.46835 + p * (0.29782 + p * (-0.76541 + p * 0.21117)));
};

/** Constant C of the entry, mean Nu = C z*^−⅓: fit to the solution, 0.1 % for φ 0.1 to π/2; above half full 1.615. */
export const rivuletEntryConstant = (phi: number): number => {
  const p = Math.min(QUARTER, Math.max(0, phi));
  return 1.53788 + p * (0.022238 + p * (0.082339 - p * 0.041901));
};

/** z^⅔, with no end. */
const twoThirds = (z: number): number => {
  const root = Math.cbrt(z);
  return root * root;
};

/**
 * Nusselt number of a rivulet in a straight tube over a stretch after the place where it begins to cool, pure number:
 * [Nu_T⁵ + (C (z₂^⅔ − z₁^⅔)/(z₂ − z₁))⁵]^⅕ with z* = z/(D_h Re Pr); the second term is the exact mean of ⅔ C z*^−⅓.
 * @param phi angle, rad; @param z_1, z_2 dimensionless distances z* at which the stretch begins and ends
 * Range: within 6 % of the solution for φ 0.3–π/2 and z* above 0.01; up to 11 % high for thin rivulets at the start.
 */
export const rivuletNusseltStretch = (phi: number, z_1: number, z_2: number): number => {
  const developed = rivuletNusseltDeveloped(phi);
  const C = rivuletEntryConstant(phi);
  const length = z_2 - z_1;
  const entry = !(z_2 < Infinity)
    ? 0
    : length > 1e-9 * z_2
      ? (C * (twoThirds(z_2) - twoThirds(z_1))) / length
      : (2 * C) / (3 * Math.cbrt(Math.max(1e-12, z_2)));
  const ratio = entry / developed;
  const square = ratio * ratio;
  return developed * Math.pow(1 + square * square * ratio, 0.2);
};

/** The same at one place: entry `rivulet-nusselt-local`. */
export const rivuletNusseltLocal = (phi: number, z: number): number => rivuletNusseltStretch(phi, z, z);

/** What the curvature of a coil adds: entry `rivulet-curvature-gain`. Cross-flow takes the warm middle to the wall. */
export const rivuletCurvatureGain = (De: number, Pr: number): number => {
  if (!(De > 0)) return 0;
  const weak = Math.pow(689 / (De * De * Pr), 1.914);
  return (0.557 * Math.sqrt(De) * Math.pow(Pr, 0.159)) / (1 + weak);
};

/** Reynolds numbers between which the rivulet of a straight tube turns turbulent: judgement, closed-duct values. */
const LAMINAR_END = 2300;
const TURBULENT_START = 4000;

/** Nusselt number of a stretch in a straight tube, blended into turbulent flow between Re 2300 and 4000. */
const nusseltStraight = (phi: number, Re: number, Pr: number, z_1: number, z_2: number): number => {
  const laminar = rivuletNusseltStretch(phi, z_1, z_2);
  if (Re <= LAMINAR_END) return laminar;
  const share = Math.min(1, (Re - LAMINAR_END) / (TURBULENT_START - LAMINAR_END));
  return (1 - share) * laminar + share * Math.max(laminar, nusseltGnielinski(Re, Pr));
};

/** Nusselt number of a stretch in a coil. Turbulence, above Re 4500 or so, is left out: it would help. */
export const rivuletNusseltCoil = (
  phi: number,
  De: number,
  Pr: number,
  z_1: number,
  z_2: number,
  s: number,
): number => {
  const stretch = rivuletNusseltStretch(phi, z_1, z_2);
  const developed = rivuletNusseltDeveloped(phi);
  const coil = developed + s * rivuletCurvatureGain(De, Pr);
  return Math.cbrt(stretch * stretch * stretch + coil * coil * coil - developed * developed * developed);
};

/** Conductance of a stretch of rivulet in a straight tube per metre: entry `rivulet-conductance`. */
export const rivuletConductance = (
  phi: number,
  m: number,
  D_i: number,
  z_1: number,
  z_2: number,
  mu_l: number,
  k_l: number,
  cp_l: number,
): number => {
  if (!(phi > 0 && m > 0)) return 0;
  const D_h = rivuletHydraulicDiameter(phi, D_i);
  const Re = (4 * m) / (mu_l * D_i * phi);
  const Pr = (mu_l * cp_l) / k_l;
  const scale = 1 / (D_h * Re * Pr);
  return (nusseltStraight(phi, Re, Pr, z_1 * scale, z_2 * scale) * k_l * D_i * phi) / D_h;
};

/** The same in a coil: entry `rivulet-conductance-coil`. */
export const rivuletConductanceCoil = (
  phi: number,
  m: number,
  D_i: number,
  D_coil: number,
  s: number,
  z_1: number,
  z_2: number,
  mu_l: number,
  k_l: number,
  cp_l: number,
): number => {
  if (!(phi > 0 && m > 0)) return 0;
  const D_h = rivuletHydraulicDiameter(phi, D_i);
  const Re = (4 * m) / (mu_l * D_i * phi);
  const Pr = (mu_l * cp_l) / k_l;
  const scale = 1 / (D_h * Re * Pr);
  const De = Re * Math.sqrt(D_h / D_coil);
  return (rivuletNusseltCoil(phi, De, Pr, z_1 * scale, z_2 * scale, s) * k_l * D_i * phi) / D_h;
};

/** Share of the outside that gives off the rivulet’s heat: entry `rivulet-wall-share`. */
export const rivuletWallShare = (phi: number, D_i: number, t: number, k_w: number, h_o: number): number => {
  const dry = Math.PI - phi;
  const x = 0.5 * Math.sqrt(Math.max(0, h_o) / (k_w * t)) * dry * (D_i + t);
  return (phi + dry * (x > 1e-4 ? Math.tanh(x) / x : 1)) / Math.PI;
};

const angle: Argument = { unit: 'rad', says: 'angle from the lowest line to the edge', range: [0.1, 1.5708] };
const prandtl: Argument = { unit: '1', says: 'Prandtl number of the condensate', range: [2, 6] };
const bore: Argument = { unit: 'm', says: 'bore of the tube' };
const rate: Argument = { unit: 'kg/s', says: 'condensate in the tube' };
const viscosity: Argument = { unit: 'Pa s', says: 'viscosity of the condensate' };
const stretch: Readonly<Record<string, Argument>> = {
  z_1: { unit: 'm', says: 'where the stretch begins, from where the condensate began to cool', range: [0, 10] },
  z_2: { unit: 'm', says: 'where it ends', range: [0, 10] },
  mu_l: viscosity,
  k_l: { unit: 'W/(m K)', says: 'conductivity of the condensate' },
  cp_l: { unit: 'J/(kg K)', says: 'heat capacity of the condensate' },
};
const conductance = { symbol: "UA'", unit: 'W/(m K)' };
const SOLVED = 'solved by this project on finite elements, checked by a second method; not measured';
const NUSSELT_TEX = "UA' = Nu\\,k_l\\frac{D_i\\varphi}{D_h}";

export const rivuletCorrelations: readonly Correlation[] = [
  correlation({
    name: 'rivulet-half-angle',
    says: 'How far up the bore a rivulet of condensate reaches in a sloping tube.',
    arguments: {
      m: rate,
      D_i: bore,
      slope: { unit: 'rad', says: 'inclination of the tube', range: [0.017, 0.27] },
      rho_l: { unit: 'kg/m³', says: 'density of the condensate' },
      mu_l: viscosity,
      g: { unit: 'm/s²', says: 'acceleration of gravity' },
    },
    result: { symbol: '\\varphi', unit: 'rad' },
    tex: '\\frac{\\dot m\\,\\mu_l}{\\rho_l^2g\\sin\\alpha\\,(D_i/2)^4} = W(\\varphi)',
    source: SOLVED,
    outside:
      'evaluated; meant for laminar flow, at most half full, and slopes of 1–15°; a level tube counts as full; zero without flow',
    compute: rivuletHalfAngle,
  }),
  correlation({
    name: 'rivulet-conductance',
    says: 'Heat that a stretch of rivulet gives to the wall of a straight tube, per length and degree.',
    arguments: { phi: angle, m: rate, D_i: bore, ...stretch },
    result: conductance,
    tex: `${NUSSELT_TEX},\\quad Nu = \\left[Nu_T^5+\\left(C\\frac{z_2^{2/3}-z_1^{2/3}}{z_2-z_1}(D_hRe\\,Pr)^{1/3}\\right)^5\\right]^{1/5}`,
    source: `${SOLVED}; above Re 2300 blended into Gnielinski at Re 4000 (judgement)`,
    outside: 'evaluated; zero without flow',
    compute: rivuletConductance,
  }),
  correlation({
    name: 'rivulet-conductance-coil',
    says: 'Heat that a stretch of rivulet gives to the wall of a coil, per length and degree.',
    arguments: {
      phi: angle,
      m: rate,
      D_i: bore,
      D_coil: { unit: 'm', says: 'diameter of the coil' },
      s: { unit: '1', says: 'share of the solved curvature that counts', range: [0, 1.1] },
      ...stretch,
    },
    result: conductance,
    tex: `${NUSSELT_TEX},\\quad Nu = \\left[Nu_z^3+(Nu_T+s\\,\\Delta Nu)^3-Nu_T^3\\right]^{1/3}`,
    source: SOLVED,
    outside: 'evaluated; turbulence, above Re 4500 or so, is left out; zero without flow',
    compute: rivuletConductanceCoil,
  }),
  forReaders({
    name: 'rivulet-flow-number',
    says: 'Laminar flow of a rivulet that wets a tube up to an angle, against slope and viscosity.',
    arguments: { phi: angle },
    result: { symbol: 'W', unit: '1' },
    tex: 'W = \\frac{\\dot m\\,\\mu_l}{\\rho_l^2g\\sin\\alpha\\,R^4} = \\tfrac{4}{105}\\varphi^7(1-0.657\\varphi^2+0.242\\varphi^4-0.060\\varphi^6+0.0072\\varphi^8)',
    source: SOLVED,
    outside: 'within 0.3 % of the solution to half full; above in proportion to the angle up to the full bore',
    compute: rivuletFlowNumber,
  }),
  correlation({
    name: 'rivulet-nusselt-developed',
    says: 'Heat transfer of a rivulet of condensate in a straight tube, far from where it begins to cool.',
    arguments: { phi: angle },
    result: { symbol: 'Nu_T', unit: '1' },
    tex: 'Nu_T = 2.297+1.468\\varphi+0.298\\varphi^2-0.765\\varphi^3+0.211\\varphi^4',
    source: SOLVED,
    outside:
      'within 0.02 % of the solution; above half full 3.657, the value of a full tube, of which it is the mirrored half',
    compute: rivuletNusseltDeveloped,
  }),
  forReaders({
    name: 'rivulet-nusselt-local',
    says: 'Heat transfer of a rivulet of condensate in a straight tube at a distance from where it begins to cool.',
    arguments: { phi: angle, z: { unit: '1', says: 'distance, z/(D_h Re Pr)', range: [0.001, 1] } },
    result: { symbol: 'Nu_z', unit: '1' },
    tex: 'Nu_z = \\left[Nu_T^5+\\left(\\tfrac23C\\,z_*^{-1/3}\\right)^5\\right]^{1/5}',
    source: SOLVED,
    outside:
      'evaluated; within 6 % of the solution for angles above 0.3 and distances above 0.01, up to 11 % high for thin rivulets at the start',
    compute: rivuletNusseltLocal,
  }),
  correlation({
    name: 'rivulet-curvature-gain',
    says: 'What the bend of a coil adds to the Nusselt number of its rivulet.',
    arguments: { De: { unit: '1', says: 'Dean number of the rivulet', range: [5, 310] }, Pr: prandtl },
    result: { symbol: '\\Delta Nu', unit: '1' },
    tex: '\\Delta Nu = \\frac{0.557\\,De^{1/2}Pr^{0.159}}{1+\\left(\\frac{689}{De^2Pr}\\right)^{1.914}}',
    source: `${SOLVED}; fit to 105 flows, De 5–105, to 3 % (worst 10 %); with φ = π/2 within 12 % of two published relations for full coils`,
    outside: 'evaluated; 2 to 7 % low from De 110 to 310',
    compute: rivuletCurvatureGain,
  }),
  correlation({
    name: 'rivulet-wall-share',
    says: 'Share of a tube’s outside that gives off the heat of a rivulet: the wetted arc, and the dry wall as a fin.',
    arguments: {
      phi: angle,
      D_i: bore,
      t: { unit: 'm', says: 'wall of the tube', range: [0.0003, 0.003] },
      k_w: { unit: 'W/(m K)', says: 'conductivity of the wall', range: [0.2, 400] },
      h_o: { unit: 'W/(m² K)', says: 'film on the outside' },
    },
    result: { symbol: 'a', unit: '1' },
    tex: 'a = \\frac1\\pi\\left[\\varphi+(\\pi-\\varphi)\\frac{\\tanh x}{x}\\right],\\quad x=\\sqrt{\\frac{h_o}{k_wt}}\\,(\\pi-\\varphi)\\frac{D_i+t}{2}',
    source: 'fin with an adiabatic tip, textbook',
    outside: 'evaluated',
    compute: rivuletWallShare,
  }),
];
