/**
 * Vapour pressure at room temperature, 298.15 K, and the heat of vaporisation there, of every oil constituent: liquid,
 * subcooled where it would be solid. The curves in `constituents/` were mostly fitted from 60 °C up and read up to
 * three times too high for alcohols and phenols when they are carried down to a room. Data only, SI.
 */
import type { ConstituentProvenance } from './constituent.ts';

export interface RoomVapour extends ConstituentProvenance {
  /** Pa at 298.15 K. */
  readonly pressure: number;
  /** Lowest and highest value that sources allow, Pa. */
  readonly range: readonly [number, number];
  /** Heat of vaporisation about 298.15 K, J/mol. */
  readonly heat: number;
}

export const roomVapours: Readonly<Record<string, RoomVapour>> = {
  alpha_pinene: {
    pressure: 584,
    range: [560, 640],
    heat: 45400,
    kind: 'published',
    source: 'the curve in use, which is within its range from 293 K',
  },
  beta_pinene: {
    pressure: 390,
    range: [370, 480],
    heat: 45800,
    kind: 'published',
    source: 'the curve in use, which is within its range from 293 K',
  },
  camphene: {
    pressure: 470,
    range: [370, 560],
    heat: 44700,
    kind: 'estimated',
    source: 'middle of two curves of the subcooled liquid, 374 and 558 Pa, both extrapolated',
  },
  sabinene: {
    pressure: 430,
    range: [340, 520],
    heat: 46500,
    kind: 'estimated',
    source: 'the curve in use, a fit from 293 K',
  },
  myrcene: {
    pressure: 275,
    range: [265, 365],
    heat: 50600,
    kind: 'published',
    source: 'the curve in use with a little more, as gas-chromatographic retention suggests 15–25 % more',
  },
  limonene: {
    pressure: 200,
    range: [200, 310],
    heat: 49500,
    kind: 'published',
    source: 'measured by a static method, 200 Pa (Static1999); published curves extrapolate to 233–272 Pa',
  },
  p_cymene: {
    pressure: 196,
    range: [190, 210],
    heat: 49500,
    kind: 'published',
    source: 'three published curves extrapolated, 194–210 Pa',
  },
  gamma_terpinene: {
    pressure: 147,
    range: [120, 212],
    heat: 51400,
    kind: 'estimated',
    source: 'the curve in use, 150 Pa, a little lowered',
  },
  cineole_1_8: {
    pressure: 257,
    range: [250, 260],
    heat: 51100,
    kind: 'published',
    source: 'the curve in use, which is within its range from 288 K',
  },
  linalool: {
    pressure: 23,
    range: [21, 32],
    heat: 64000,
    kind: 'published',
    source: 'measured, 21–27 Pa (stored with the constituent); the curve from 333 K reads 32 Pa',
  },
  linalyl_acetate: {
    pressure: 14.8,
    range: [10, 20],
    heat: 57800,
    kind: 'published',
    source: 'two published curves extrapolated over 30 K, 14.8–14.9 Pa',
  },
  camphor: {
    pressure: 60,
    range: [30, 70],
    heat: 54900,
    kind: 'estimated',
    source: 'subcooled liquid extrapolated, 48–66 Pa; the solid sublimes with 60 Pa',
  },
  borneol: {
    pressure: 9.5,
    range: [5, 15],
    heat: 60000,
    kind: 'estimated',
    source: 'fit to the subcooled liquid; the heat of 73.7 kJ/mol stored for the solid is too steep for it',
  },
  bornyl_acetate: {
    pressure: 15,
    range: [10, 32],
    heat: 55000,
    kind: 'estimated',
    source: 'scaled to linalyl and menthyl acetate; the published curve reads 32 Pa, too high against retention',
  },
  terpinen_4_ol: {
    pressure: 8,
    range: [6, 26],
    heat: 60000,
    kind: 'estimated',
    source: 'the curve extrapolates to 26 Pa, as those of alcohols overshoot; an older estimate of 6.4 Pa from memory',
  },
  alpha_terpineol: {
    pressure: 5.5,
    range: [4, 19],
    heat: 60700,
    kind: 'memory',
    source: 'about 0.042 mmHg at 24 °C in property compilations, from memory; the curve extrapolates to 19 Pa',
  },
  menthol: {
    pressure: 4.5,
    range: [4.1, 10],
    heat: 74200,
    kind: 'published',
    source: 'liquid DL-menthol 4.5 ± 0.44 Pa, 74.2 kJ/mol (Keating 2017, abstract)',
  },
  menthone: {
    pressure: 35,
    range: [25, 40],
    heat: 59100,
    kind: 'estimated',
    source: 'published curves extrapolated over 40 K, 38–39 Pa, lowered by 10 %',
  },
  menthyl_acetate: {
    pressure: 9,
    range: [6, 14],
    heat: 58200,
    kind: 'estimated',
    source: 'middle of two published curves, 6.6 and 13.9 Pa',
  },
  thymol: {
    pressure: 4.0,
    range: [2.5, 6.2],
    heat: 70000,
    kind: 'derived',
    source:
      'subcooled liquid from the solid, 2.2 Pa, by a heat of fusion of 21 kJ/mol and 322.65 K: 4.3 Pa; a published curve reads 6.2 Pa',
  },
  carvacrol: {
    pressure: 3.2,
    range: [2.3, 5.4],
    heat: 69200,
    kind: 'estimated',
    source: 'published curves extrapolated, 2.4–5.4 Pa',
  },
  carvone: {
    pressure: 13,
    range: [9, 15],
    heat: 58400,
    kind: 'estimated',
    source: 'published curves extrapolated, 14.4–14.6 Pa, lowered by 10 %',
  },
  trans_anethole: {
    pressure: 6,
    range: [2, 10],
    heat: 61900,
    kind: 'estimated',
    source: 'published curves extrapolated, 2.1–9.8 Pa',
  },
  eugenol: {
    pressure: 1.85,
    range: [1.3, 3.9],
    heat: 66300,
    kind: 'published',
    source: 'the published curve that holds below 333 K',
  },
  eugenyl_acetate: {
    pressure: 0.4,
    range: [0.2, 0.55],
    heat: 68900,
    kind: 'estimated',
    source: 'published curves extrapolated over 75 K, 0.52–0.53 Pa, lowered',
  },
  geraniol: {
    pressure: 3.0,
    range: [2.0, 6.4],
    heat: 66000,
    kind: 'estimated',
    source: 'published curves extrapolated, 5.1–6.4 Pa, lowered as those of alcohols overshoot',
  },
  citronellal: {
    pressure: 25,
    range: [20, 37],
    heat: 58000,
    kind: 'estimated',
    source: 'published curves extrapolated, 20.5–21.3 Pa, raised',
  },
  citral: {
    pressure: 9,
    range: [7, 12],
    heat: 61800,
    kind: 'estimated',
    source: 'published curves extrapolated, 7.9–9.9 Pa',
  },
  beta_caryophyllene: {
    pressure: 3.0,
    range: [1.7, 4.5],
    heat: 65500,
    kind: 'estimated',
    source: 'the curve in use, a fit, 3.4 Pa, a little lowered',
  },
  alpha_bisabolol: {
    pressure: 0.02,
    range: [0.017, 0.023],
    heat: 96600,
    kind: 'published',
    source: 'measured, 0.020 ± 0.003 Pa, 96.6 kJ/mol (Keating 2017, abstract)',
  },
  chamazulene: {
    pressure: 0.15,
    range: [0.05, 0.3],
    heat: 84100,
    kind: 'estimated',
    source: 'the curve in use, a fit; good to a factor of 2–3',
  },
  cedrol: {
    pressure: 0.15,
    range: [0.08, 0.3],
    heat: 88300,
    kind: 'estimated',
    source: 'the curve in use, a fit to the subcooled liquid; good to a factor of 2',
  },
  alpha_cedrene: {
    pressure: 3.0,
    range: [2.0, 4.5],
    heat: 64700,
    kind: 'estimated',
    source: 'the curve in use, a fit, 3.7 Pa, a little lowered',
  },
  alpha_santalol: {
    pressure: 0.03,
    range: [0.01, 0.06],
    heat: 96600,
    kind: 'estimated',
    source: 'between a fit, 0.059 Pa, and a published curve, 0.011 Pa',
  },
};
