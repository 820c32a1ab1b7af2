import { correlation, type Correlation } from '../correlation.ts';

/** Mean Nusselt number of a cylinder in cross flow: entry `nusselt-cross-flow-cylinder`. */
export const nusseltCrossFlowCylinder = (Re: number, Pr: number): number => {
  if (!(Re > 0)) return 0.3;
  const fluid = Math.cbrt(0.4 / Pr);
  const laminar = (0.62 * Math.sqrt(Re) * Math.cbrt(Pr)) / Math.sqrt(Math.sqrt(1 + fluid * fluid));
  return 0.3 + laminar * Math.pow(1 + Math.pow(Re / 282000, 0.625), 0.8);
};

export const crossFlowCorrelations: readonly Correlation[] = [
  correlation({
    name: 'nusselt-cross-flow-cylinder',
    says: 'Mean forced convection round a cylinder in cross flow, such as a coil turn in a stirred tub.',
    arguments: {
      Re: { unit: '1', says: 'Reynolds number on the diameter', range: [0, 1e7] },
      Pr: { unit: '1', says: 'Prandtl number at the film temperature' },
    },
    result: { symbol: 'Nu', unit: '1' },
    tex: 'Nu = 0.3+\\frac{0.62Re^{1/2}Pr^{1/3}}{\\left[1+(0.4/Pr)^{2/3}\\right]^{1/4}}\\left[1+\\left(\\frac{Re}{282000}\\right)^{5/8}\\right]^{4/5}',
    source: 'Churchill and Bernstein, J. Heat Transfer 99 (1977) 300–306',
    outside: 'evaluated; 0.3 without flow',
    checks: [
      {
        symbol: 'Pe',
        says: 'Péclet number Re Pr',
        range: [0.2, Number.MAX_VALUE],
        value: (values) => (values['Re'] ?? 0) * (values['Pr'] ?? 0),
      },
    ],
    compute: nusseltCrossFlowCylinder,
  }),
];
