/**
 * Thresholds of smell in air, as the widest that methods give: of what a nose at a tube notices, and of what people at a
 * bottle are sure to. They differ by up to a thousandfold, so that they serve for bands and never as a figure to show.
 */
import { origin, type Provenance } from './provenance.ts';

export interface OdourThreshold {
  /** kg/m³, lowest and highest. */
  readonly range: readonly [number, number];
  readonly provenance: Provenance;
}

const MICROGRAM_kg = 1e-9;

const between = (low_ug_m3: number, high_ug_m3: number, provenance: Provenance): OdourThreshold => ({
  range: [low_ug_m3 * MICROGRAM_kg, high_ug_m3 * MICROGRAM_kg],
  provenance,
});

const nagata = origin('memory', 'Nagata, triangle bags, 223 substances', 'the opening was read, the figures were not');
const squeezed = origin(
  'read',
  'Cometto-Muñiz, Cain et al. 1998, squeeze bottles, abstract',
  'the low end from memory',
);
const linaloolEnds = origin(
  'read',
  'Elsharif, Banerjee, Buettner 2015, a nose at a gas chromatograph; Cometto-Muñiz, Cain et al. 1998, squeeze bottles',
);
const geraniolEnds = origin(
  'read',
  'Cometto-Muñiz, Cain et al. 1998, abstract, for the high end',
  'the low end from memory',
);
const ranked = origin('estimated', 'Mølhave 2000, abstract: stronger than limonene and alpha-pinene');
const byClass = origin('estimated', 'order of magnitude by chemical class, a decade either way');

export const odourThresholds: Readonly<Record<string, OdourThreshold>> = {
  alpha_pinene: between(100, 20000, nagata),
  beta_pinene: between(184, 20000, nagata),
  limonene: between(200, 2500, nagata),
  p_cymene: between(12, 5486, squeezed),
  cineole_1_8: between(10, 6305, squeezed),
  linalool: between(3.2, 6305, linaloolEnds),
  geraniol: between(25, 6305, geraniolEnds),
  alpha_terpineol: between(20, 2000, ranked),
  camphene: between(100, 10000, byClass),
  sabinene: between(50, 5000, byClass),
  myrcene: between(10, 1000, byClass),
  gamma_terpinene: between(50, 5000, byClass),
  linalyl_acetate: between(15, 1500, byClass),
  camphor: between(30, 3000, byClass),
  borneol: between(30, 3000, byClass),
  bornyl_acetate: between(15, 1500, byClass),
  terpinen_4_ol: between(30, 3000, byClass),
  menthol: between(10, 1000, byClass),
  menthone: between(15, 1500, byClass),
  menthyl_acetate: between(30, 3000, byClass),
  thymol: between(1.5, 150, byClass),
  carvacrol: between(3, 300, byClass),
  carvone: between(3, 300, byClass),
  trans_anethole: between(3, 300, byClass),
  eugenol: between(1, 100, byClass),
  eugenyl_acetate: between(20, 2000, byClass),
  citronellal: between(3, 300, byClass),
  citral: between(3, 300, byClass),
  beta_caryophyllene: between(50, 5000, byClass),
  alpha_bisabolol: between(100, 10000, byClass),
  chamazulene: between(100, 10000, byClass),
  cedrol: between(50, 5000, byClass),
  alpha_cedrene: between(100, 10000, byClass),
  alpha_santalol: between(10, 1000, byClass),
  citronellol: between(3, 300, byClass),
  fenchone: between(50, 5000, byClass),
};
