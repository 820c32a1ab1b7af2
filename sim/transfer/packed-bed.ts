import { correlation, forReaders, type Argument, type Correlation } from '../correlation.ts';

/** Flow of steam or water through a bed of plant matter. The void share enters cubed and is the great unknown. */

/** Pressure gradient in a packed bed: entry `ergun-gradient`. */
export const ergunGradient = (v: number, d: number, voidage: number, rho: number, mu: number): number => {
  const solid = 1 - voidage;
  const cubed = voidage * voidage * voidage;
  return (150 * mu * solid * solid * v) / (d * d * cubed) + (1.75 * rho * solid * v * Math.abs(v)) / (d * cubed);
};

/** Velocity of creeping flow through a packed bed: entry `blake-kozeny-velocity`. */
export const blakeKozenyVelocity = (gradient: number, d: number, voidage: number, mu: number): number => {
  const solid = 1 - voidage;
  return (gradient * d * d * voidage * voidage * voidage) / (150 * mu * solid * solid);
};

const bed: Readonly<Record<string, Argument>> = {
  d: { unit: 'm', says: 'particle size, six times volume over surface' },
  voidage: { unit: '1', says: 'void share of the bed', range: [0.35, 0.75] },
};
const viscosity: Argument = { unit: 'Pa s', says: 'viscosity' };

export const packedBedCorrelations: readonly Correlation[] = [
  correlation({
    name: 'ergun-gradient',
    says: 'Pressure lost per length by a fluid passing through a packed bed.',
    arguments: {
      v: { unit: 'm/s', says: 'superficial velocity' },
      ...bed,
      rho: { unit: 'kg/m³', says: 'density' },
      mu: viscosity,
    },
    result: { symbol: '\\Delta p/L', unit: 'Pa/m' },
    tex: '\\frac{\\Delta p}{L} = 150\\frac{\\mu(1-\\varepsilon)^2v}{d^2\\varepsilon^3}+1.75\\frac{\\rho v^2(1-\\varepsilon)}{d\\,\\varepsilon^3}',
    source: 'Ergun, Chem. Eng. Prog. 48 (1952) 89–94',
    outside: 'evaluated; the sign follows the flow, zero without flow',
    checks: [
      {
        symbol: 'Re_bed',
        says: 'bed Reynolds number ρ v d / [μ (1 − ε)]',
        range: [0, 2500],
        value: (values) =>
          ((values['rho'] ?? 0) * Math.abs(values['v'] ?? 0) * (values['d'] ?? 0)) /
          ((values['mu'] ?? 1) * (1 - (values['voidage'] ?? 0))),
      },
    ],
    compute: ergunGradient,
  }),
  forReaders({
    name: 'blake-kozeny-velocity',
    says: 'Superficial velocity of creeping flow through a packed bed under a given gradient.',
    arguments: { gradient: { unit: 'Pa/m', says: 'driving pressure gradient' }, ...bed, mu: viscosity },
    result: { symbol: 'v', unit: 'm/s' },
    tex: 'v = \\frac{\\Delta p}{L}\\,\\frac{d^2\\varepsilon^3}{150\\mu(1-\\varepsilon)^2}',
    source: 'Blake–Kozeny; de Nevers, Fluid Mechanics for Chemical Engineers, ch. 11',
    outside: 'evaluated; high once inertia counts (bed Reynolds number above 10)',
    compute: blakeKozenyVelocity,
  }),
];
