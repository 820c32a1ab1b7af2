/** The plants the library knows, one data file each. */
import { botanicalFrom } from './botanical-row.ts';
import { caraway } from './botanicals/caraway.ts';
import { cedarwoodVirginia } from './botanicals/cedarwood-virginia.ts';
import { chamomileGerman } from './botanicals/chamomile-german.ts';
import { cloveBud } from './botanicals/clove-bud.ts';
import { eucalyptusGlobulus } from './botanicals/eucalyptus-globulus.ts';
import { fennelBitter } from './botanicals/fennel-bitter.ts';
import { geraniumRose } from './botanicals/geranium-rose.ts';
import { juniperBerry } from './botanicals/juniper-berry.ts';
import { lavandin } from './botanicals/lavandin.ts';
import { lavenderTrue } from './botanicals/lavender-true.ts';
import { lemonBalm } from './botanicals/lemon-balm.ts';
import { orangePeel } from './botanicals/orange-peel.ts';
import { oregano } from './botanicals/oregano.ts';
import { peppermint } from './botanicals/peppermint.ts';
import { rosemary } from './botanicals/rosemary.ts';
import { sage } from './botanicals/sage.ts';
import { scotsPine } from './botanicals/scots-pine.ts';
import { thymeThymol } from './botanicals/thyme-thymol.ts';
import { findRow } from './find-row.ts';
import type { Botanical } from './types.ts';

/** In the order a newcomer would look: flowers, herbs and leaves, then seeds, peel, wood and needles. */
export const botanicals: readonly Botanical[] = [
  lavenderTrue,
  lavandin,
  rosemary,
  peppermint,
  thymeThymol,
  oregano,
  sage,
  lemonBalm,
  chamomileGerman,
  eucalyptusGlobulus,
  juniperBerry,
  fennelBitter,
  caraway,
  cloveBud,
  orangePeel,
  cedarwoodVirginia,
  geraniumRose,
  scotsPine,
].map(botanicalFrom);

export const findBotanical = (id: string): Botanical => findRow('botanical', botanicals, id);
