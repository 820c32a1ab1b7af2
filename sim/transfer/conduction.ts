import { correlation, forReaders, type Argument, type Correlation } from '../correlation.ts';

/** Resistance of a tube wall, insulation or scale per metre: entry `cylinder-resistance`. */
export const cylinderResistance = (D_i: number, D_o: number, k: number): number =>
  Math.log(D_o / D_i) / (2 * Math.PI * k);

/** Resistance of a flat layer: entry `plane-resistance`. */
export const planeResistance = (thickness: number, k: number): number => thickness / k;

/** Overall coefficient on a tube’s outside area: entry `overall-outside-coefficient`. */
export const overallOutsideCoefficient = (
  h_i: number,
  h_o: number,
  D_i: number,
  D_o: number,
  k: number,
  R_f: number,
): number => (h_i > 0 && h_o > 0 ? 1 / (D_o / (h_i * D_i) + (D_o * Math.log(D_o / D_i)) / (2 * k) + R_f + 1 / h_o) : 0);

const shell: Readonly<Record<string, Argument>> = {
  D_i: { unit: 'm', says: 'inner diameter' },
  D_o: { unit: 'm', says: 'outer diameter' },
};
const conductivity: Argument = { unit: 'W/(m K)', says: 'conductivity of the solid' };
const source = 'Fourier; Incropera et al. 6e section 3.3';
const outside = 'exact; no limits';

export const conductionCorrelations: readonly Correlation[] = [
  correlation({
    name: 'cylinder-resistance',
    says: 'Thermal resistance of a tube wall or a layer of insulation, per length of tube.',
    arguments: { ...shell, k: conductivity },
    result: { symbol: 'R′', unit: 'm K/W' },
    tex: "R' = \\frac{\\ln(D_o/D_i)}{2\\pi k}",
    source,
    outside,
    compute: cylinderResistance,
  }),
  forReaders({
    name: 'plane-resistance',
    says: 'Thermal resistance of a flat layer, by area.',
    arguments: { thickness: { unit: 'm', says: 'thickness' }, k: conductivity },
    result: { symbol: 'R″', unit: 'm² K/W' },
    tex: "R'' = \\frac{s}{k}",
    source,
    outside,
    compute: planeResistance,
  }),
  forReaders({
    name: 'overall-outside-coefficient',
    says: 'Overall coefficient of a tube on its outside area, from the films, the wall and fouling.',
    arguments: {
      h_i: { unit: 'W/(m² K)', says: 'film coefficient inside' },
      h_o: { unit: 'W/(m² K)', says: 'film coefficient outside' },
      ...shell,
      k: conductivity,
      R_f: { unit: 'm² K/W', says: 'fouling on the outside area' },
    },
    result: { symbol: 'U_o', unit: 'W/(m² K)' },
    tex: '\\frac{1}{U_o} = \\frac{D_o}{h_iD_i}+\\frac{D_o\\ln(D_o/D_i)}{2k}+R_f+\\frac{1}{h_o}',
    source: 'Incropera et al. 6e eq. 11.1',
    outside: 'zero when a film coefficient is not positive',
    compute: overallOutsideCoefficient,
  }),
];
