/** Vapour pressures of the oil constituents against measurements at room temperature and under vacuum, as printed. */
import { describe, expect, it } from 'vitest';
import { constituentById, constituents, curveOf, vapourPressure } from '../../sim/fluids/constituents.ts';
import { curvePressure } from '../../sim/fluids/vapour-curve.ts';
import { checkPrinted, work, type Scatter } from './printed.ts';

const keating = work('Keating, Harris and Chickos, J. Chem. Thermodyn. 107 (2017) 18–25');
const espinosa = work('Espinosa Díaz and others, Fluid Phase Equilib. 157 (1999) 257');
const hsdb = work('National Library of Medicine, Hazardous Substances Data Bank, turpentine');
const ilo = work('International Labour Organization, International Chemical Safety Card of linalool');
const merck = work('Merck Index, 11th ed.');

const at25 = (id: string) => (): number => vapourPressure(constituentById(id), 298.15);
const MMHG = 133.322387;

/** Temperature at which the constituent boils under that many mmHg, °C. */
const boilingUnder = (id: string, mmHg: number) => (): number => {
  let [cold, hot] = [300, 453];
  for (let step = 0; step < 50; step++) {
    const T = (cold + hot) / 2;
    if (vapourPressure(constituentById(id), T) > mmHg * MMHG) hot = T;
    else cold = T;
  }
  return cold - 273.15;
};

const stated = (within: number): Scatter => ({ within, because: 'as the authors state' });
const linalool: Scatter = { within: 4, because: 'three publications print 21, 23 and 27 Pa' };
const caryophyllene: Scatter = {
  within: 1.5,
  because: 'the two ranges lie 11 K apart, which no vapour pressure does between 9.7 and 14 mmHg',
};

describe('vapour pressures at 25 °C, Pa', () => {
  checkPrinted([
    ['liquid menthol', at25('menthol'), '4.5', keating('abstract'), stated(0.44)],
    ['alpha-bisabolol', at25('alpha_bisabolol'), '0.020', keating('abstract'), stated(0.003)],
    ['limonene', at25('limonene'), '200', espinosa('abstract')],
    ['linalool, static method', at25('linalool'), '27', espinosa('abstract'), linalool],
    ['linalool, safety card', at25('linalool'), '21', ilo('physical data'), linalool],
    ['beta-pinene, mmHg', () => at25('beta_pinene')() / MMHG, '2.93', hsdb('vapour pressure')],
  ]);
});

describe('boiling points under vacuum, °C', () => {
  checkPrinted([
    [
      'beta-caryophyllene under 14 mmHg',
      boilingUnder('beta_caryophyllene', 14),
      '129.5',
      merck('caryophyllene, 129–130 °C'),
      caryophyllene,
    ],
    [
      'beta-caryophyllene under 9.7 mmHg',
      boilingUnder('beta_caryophyllene', 9.7),
      '118.5',
      merck('caryophyllene, 118–119 °C'),
      caryophyllene,
    ],
    ['chamazulene under 12 mmHg', boilingUnder('chamazulene', 12), '161', merck('no. 2031')],
  ]);
});

/** Constituents whose boiling points the handbooks print 1 to 6 K apart. */
const DOUBTFUL = ['carvone', 'citronellal', 'eugenyl_acetate', 'menthone', 'myrcene', 'thymol'];

describe('boiling points at one atmosphere', () => {
  it('are those of the CRC Handbook and of Yaws within 2 % of the pressure, but for six on which they disagree', () => {
    const off = constituents.filter(
      (entry) => Math.abs(curvePressure(curveOf(entry), entry.normalBoilingPoint.value) / 101_325 - 1) > 0.02,
    );
    expect(off.map(({ id }) => id).toSorted()).toEqual(DOUBTFUL);
  });
});
