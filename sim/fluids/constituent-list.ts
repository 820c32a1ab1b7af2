/** The oil constituents the tool knows, one data file each. */
import type { Constituent } from './constituent.ts';
import { alphaBisabolol } from './constituents/alpha-bisabolol.ts';
import { alphaCedrene } from './constituents/alpha-cedrene.ts';
import { alphaPinene } from './constituents/alpha-pinene.ts';
import { alphaSantalol } from './constituents/alpha-santalol.ts';
import { alphaTerpineol } from './constituents/alpha-terpineol.ts';
import { betaCaryophyllene } from './constituents/beta-caryophyllene.ts';
import { betaPinene } from './constituents/beta-pinene.ts';
import { borneol } from './constituents/borneol.ts';
import { bornylAcetate } from './constituents/bornyl-acetate.ts';
import { camphene } from './constituents/camphene.ts';
import { camphor } from './constituents/camphor.ts';
import { carvacrol } from './constituents/carvacrol.ts';
import { carvone } from './constituents/carvone.ts';
import { cedrol } from './constituents/cedrol.ts';
import { chamazulene } from './constituents/chamazulene.ts';
import { cineole18 } from './constituents/cineole-1-8.ts';
import { citral } from './constituents/citral.ts';
import { citronellal } from './constituents/citronellal.ts';
import { citronellol } from './constituents/citronellol.ts';
import { eugenol } from './constituents/eugenol.ts';
import { eugenylAcetate } from './constituents/eugenyl-acetate.ts';
import { fenchone } from './constituents/fenchone.ts';
import { gammaTerpinene } from './constituents/gamma-terpinene.ts';
import { geraniol } from './constituents/geraniol.ts';
import { limonene } from './constituents/limonene.ts';
import { linalool } from './constituents/linalool.ts';
import { linalylAcetate } from './constituents/linalyl-acetate.ts';
import { menthol } from './constituents/menthol.ts';
import { menthone } from './constituents/menthone.ts';
import { menthylAcetate } from './constituents/menthyl-acetate.ts';
import { myrcene } from './constituents/myrcene.ts';
import { pCymene } from './constituents/p-cymene.ts';
import { sabinene } from './constituents/sabinene.ts';
import { terpinen4Ol } from './constituents/terpinen-4-ol.ts';
import { thymol } from './constituents/thymol.ts';
import { transAnethole } from './constituents/trans-anethole.ts';

/** All constituents, hydrocarbons first, then alcohols and phenols, then ethers, esters, aldehydes and ketones. */
export const constituents: readonly Constituent[] = [
  alphaPinene,
  betaPinene,
  camphene,
  sabinene,
  myrcene,
  limonene,
  pCymene,
  gammaTerpinene,
  betaCaryophyllene,
  chamazulene,
  alphaCedrene,
  linalool,
  borneol,
  terpinen4Ol,
  alphaTerpineol,
  menthol,
  thymol,
  carvacrol,
  eugenol,
  geraniol,
  citronellol,
  alphaBisabolol,
  cedrol,
  alphaSantalol,
  cineole18,
  linalylAcetate,
  camphor,
  fenchone,
  bornylAcetate,
  menthone,
  menthylAcetate,
  carvone,
  transAnethole,
  eugenylAcetate,
  citronellal,
  citral,
];
