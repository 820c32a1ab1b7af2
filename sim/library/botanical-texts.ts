/** What is known of the plants in words, by id; apart from `botanicals.ts`, which every run needs. */
import { caraway } from './botanical-texts/caraway.ts';
import { cedarwoodVirginia } from './botanical-texts/cedarwood-virginia.ts';
import { chamomileGerman } from './botanical-texts/chamomile-german.ts';
import { cloveBud } from './botanical-texts/clove-bud.ts';
import { eucalyptusGlobulus } from './botanical-texts/eucalyptus-globulus.ts';
import { fennelBitter } from './botanical-texts/fennel-bitter.ts';
import { geraniumRose } from './botanical-texts/geranium-rose.ts';
import { juniperBerry } from './botanical-texts/juniper-berry.ts';
import { lavandin } from './botanical-texts/lavandin.ts';
import { lavenderTrue } from './botanical-texts/lavender-true.ts';
import { lemonBalm } from './botanical-texts/lemon-balm.ts';
import { orangePeel } from './botanical-texts/orange-peel.ts';
import { oregano } from './botanical-texts/oregano.ts';
import { peppermint } from './botanical-texts/peppermint.ts';
import { rosemary } from './botanical-texts/rosemary.ts';
import { sage } from './botanical-texts/sage.ts';
import { scotsPine } from './botanical-texts/scots-pine.ts';
import { thymeThymol } from './botanical-texts/thyme-thymol.ts';
import type { BotanicalText } from './types.ts';

export const botanicalTexts: Readonly<Record<string, BotanicalText>> = {
  caraway,
  'cedarwood-virginia': cedarwoodVirginia,
  'chamomile-german': chamomileGerman,
  'clove-bud': cloveBud,
  'eucalyptus-globulus': eucalyptusGlobulus,
  'fennel-bitter': fennelBitter,
  'geranium-rose': geraniumRose,
  'juniper-berry': juniperBerry,
  lavandin,
  'lavender-true': lavenderTrue,
  'lemon-balm': lemonBalm,
  'orange-peel': orangePeel,
  oregano,
  peppermint,
  rosemary,
  sage,
  'scots-pine': scotsPine,
  'thyme-thymol': thymeThymol,
};
