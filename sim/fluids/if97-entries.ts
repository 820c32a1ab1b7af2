/** Entries of the desk reference that IF97 regions 1 and 2 have in common. */
import { correlation, type Correlation, type Role } from '../correlation.ts';

interface Region {
  readonly region: 1 | 2;
  readonly fluid: string;
  readonly temperature: readonly [number, number];
  readonly pressure: readonly [number, number];
  /** TeX of the region's Gibbs energy. */
  readonly gibbs: string;
  readonly source: string;
  volume(T: number, p: number): number;
  enthalpy(T: number, p: number): number;
  entropy(T: number, p: number): number;
  heatCapacity(T: number, p: number): number;
}

export function regionCorrelations(region: Region): readonly Correlation[] {
  const entry = (
    quantity: string,
    words: string,
    symbol: string,
    unit: string,
    tex: string,
    property: (T: number, p: number) => number,
    role: Role,
  ): Correlation =>
    correlation({
      name: `region-${region.region}-${quantity}`,
      says: `${words} of ${region.fluid} at a temperature and pressure.`,
      arguments: {
        T: { unit: 'K', says: 'temperature', range: region.temperature },
        p: { unit: 'Pa', says: 'pressure', range: region.pressure },
      },
      result: { symbol, unit },
      tex: `${tex},\\quad ${region.gibbs}`,
      source: region.source,
      outside: 'gives no value, nor on the other side of the saturation line',
      role,
      compute: property,
    });
  return [
    entry('volume', 'Specific volume', 'v', 'm³/kg', 'v=\\frac{RT}{p}\\pi\\gamma_\\pi', region.volume, 'other-form'),
    entry('enthalpy', 'Specific enthalpy', 'h', 'J/kg', 'h=RT\\,\\tau\\gamma_\\tau', region.enthalpy, 'other-form'),
    entry('entropy', 'Specific entropy', 's', 'J/(kg K)', 's=R(\\tau\\gamma_\\tau-\\gamma)', region.entropy, 'look-up'),
    entry(
      'heat-capacity',
      'Isobaric heat capacity',
      'c_p',
      'J/(kg K)',
      'c_p=-R\\tau^2\\gamma_{\\tau\\tau}',
      region.heatCapacity,
      region.region === 1 ? 'other-form' : 'look-up',
    ),
  ];
}
