/**
 * Forms of the VDI Heat Atlas (sections G1 to G3, 2006), and relations for coils that it is compared with, written out
 * once more from the publications. Pure numbers.
 */

/** Laminar flow in a tube with entry, constant wall temperature (G1). */
export const laminarTube = (Re: number, Pr: number, D: number, L: number): number =>
  (3.66 ** 3 + 0.7 ** 3 + (1.615 * ((Re * Pr * D) / L) ** (1 / 3) - 0.7) ** 3) ** (1 / 3);

/** Turbulent flow in a tube of finite length, friction of Filonenko (G1). */
export function turbulentTube(Re: number, Pr: number, D: number, L: number): number {
  const xi = (1.82 * Math.log10(Re) - 1.64) ** -2;
  return (((xi / 8) * Re * Pr) / (1 + 12.7 * (xi / 8) ** 0.5 * (Pr ** (2 / 3) - 1))) * (1 + (D / L) ** (2 / 3));
}

/** Annulus with heated inner wall, case 1 (G2). */
export function annulus(Re: number, Pr: number, D_i: number, D_o: number, L: number): number {
  const a = D_i / D_o;
  const d_h = D_o - D_i;
  const laminar = (R: number): number =>
    ((3.66 + 1.2 * a ** -0.8) ** 3 + (1.615 * (1 + 0.14 * a ** -0.5) * ((R * Pr * d_h) / L) ** (1 / 3)) ** 3) **
    (1 / 3);
  const turbulent = (R: number): number => 0.86 * a ** -0.16 * turbulentTube(R, Pr, d_h, L);
  if (Re < 2300) return laminar(Re);
  if (Re > 1e4) return turbulent(Re);
  const gamma = (Re - 2300) / (1e4 - 2300);
  return (1 - gamma) * laminar(2300) + gamma * turbulent(1e4);
}

/** Laminar flow in a coil (G3, after Schmidt 1967), without the factor for viscosity at the wall. */
export const laminarCoil = (Re: number, Pr: number, d: number, D: number): number =>
  3.66 + 0.08 * (1 + 0.8 * (d / D) ** 0.9) * Re ** (0.5 + 0.2903 * (d / D) ** 0.194) * Pr ** (1 / 3);

/** Turbulent flow in a coil (G3, after Gnielinski 1986). */
export function turbulentCoil(Re: number, Pr: number, d: number, D: number): number {
  const xi = 0.3164 * Re ** -0.25 + 0.03 * (d / D) ** 0.5;
  return ((xi / 8) * Re * Pr) / (1 + 12.7 * (xi / 8) ** 0.5 * (Pr ** (2 / 3) - 1));
}

/** Laminar flow in a coil (Manlapaz and Churchill 1981). */
export function manlapazChurchill(Re: number, Pr: number, d: number, D: number): number {
  const Dn = Re * (d / D) ** 0.5;
  const first = 3.66 + 4.343 / (1 + 957 / (Pr * Dn ** 2)) ** 2;
  return (first ** 3 + 1.158 * (Dn / (1 + 0.477 / Pr)) ** 1.5) ** (1 / 3);
}

/** Turbulent flow in a coil (Seban and McLaughlin 1963): f/8 Re Pr^0.4 with f = 0.184 Re^-0.2 (Re (d/D)²)^0.05. */
export const sebanMcLaughlin = (Re: number, Pr: number, d: number, D: number): number =>
  ((0.184 * Re ** -0.2 * (Re * (d / D) ** 2) ** 0.05) / 8) * Re * Pr ** 0.4;
