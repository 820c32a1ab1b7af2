/** What a dilution comes to, in English. */
import type { DilutionFinding, DilutionVerdict } from '../../products/dilution.ts';
import { findBotanical } from '../../library/index.ts';
import { isOwnPlant, ownPlantName } from '../../scenario/own-name.ts';
import { constituentById } from '../../fluids/constituents.ts';
import type { Use } from '../../library/use-limits.ts';
import type { Quantities } from '../quantities.ts';

const USE_WORDS: Readonly<Record<Use, string>> = {
  body: 'on the body',
  face: 'on the face',
  'small-area': 'on a small area for a few days',
  bath: 'in a bath',
  cleaning: 'in a cleaner',
  diffuser: 'in a diffuser',
};

/** Shares of a product, which may be very small. */
const SHARE = { significant: 2 } as const;

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const nameOf = (botanical: string): string => {
  if (!isOwnPlant(botanical)) return capital(findBotanical(botanical).name.value);
  const name = ownPlantName(botanical);
  return name === '' ? 'The oil of your own plant' : capital(name);
};

export function dilution(q: Quantities) {
  const told: { readonly [K in DilutionFinding['kind']]: (finding: Extract<DilutionFinding, { kind: K }>) => string } =
    {
      'all-over-usual': ({ share, limit }) =>
        `All oils together are ${q.share(share, SHARE)} of the product: more than the ${q.share(limit, SHARE)} that is usual at most.`,
      'oil-over-limit': ({ botanical, share, limit }) =>
        `${nameOf(botanical)}: ${q.share(share, SHARE)} exceeds its limit of ${q.share(limit, SHARE)}.`,
      'limit-to-look-up': ({ botanical }) =>
        `${nameOf(botanical)}: a limit stricter than the usual one exists for this oil. We have not read its source and show no figure. Look it up before use on skin.`,
      'limit-unknown': ({ botanical }) =>
        `${nameOf(botanical)}: we know no limits for this oil. That does not make it safe. Look it up before use on skin.`,
      'constituent-over-limit': ({ constituent, share, limit, supposed }) =>
        `${capital(constituent)}: ${q.share(share, SHARE)} of the product exceeds its limit of ${q.share(limit, SHARE)}${supposed ? ', by what such an oil usually holds' : ''}.`,
    };
  return {
    use: (use: Use): string => USE_WORDS[use],
    finding: <K extends DilutionFinding['kind']>(finding: Extract<DilutionFinding, { kind: K }>): string =>
      (told[finding.kind] as (of: DilutionFinding) => string)(finding),
    lead: ({ findings }: DilutionVerdict, use: Use): string => {
      const over = findings.filter(({ kind }) => kind !== 'limit-to-look-up' && kind !== 'limit-unknown').length;
      const open = findings.length - over;
      if (over > 0)
        return `Too strong ${USE_WORDS[use]}: ${over === 1 ? 'one limit is' : `${over} limits are`} exceeded.`;
      if (open > 0)
        return `Look up ${open === 1 ? 'one limit' : `${open} limits`} before you use this ${USE_WORDS[use]}.`;
      return use === 'bath' || use === 'diffuser'
        ? 'Percent is no measure here. Count drops, and stay with few.'
        : `Within the limits that we know for use ${USE_WORDS[use]}. That is no proof that it is safe for you.`;
    },
    forUse: (use: Use): readonly string[] =>
      use === 'bath'
        ? [
            'At most 3–8 drops in a full bath, first mixed into a solubiliser: oil does not mix with water and burns where it floats.',
            'Never oils rich in phenols, mint, clove, citrus or pine in a bath.',
          ]
        : use === 'diffuser'
          ? [
              'At most 1–4 drops, for 15–30 minutes, then air the room.',
              'Never near infants, people with asthma, cats or birds. Never hydrosol in an ultrasonic diffuser.',
            ]
          : use === 'cleaning'
            ? [
                'Oil does not mix with water alone: use a surfactant or alcohol. Not on natural stone, rubber and some plastics.',
                'Air the room: vapour of citrus and pine makes haze with ozone.',
              ]
            : [
                'Mix into a fixed oil, gel or emulsion. Oil does not mix with water or hydrosol alone.',
                'Try it on a small spot first, and wait a day.',
              ],
    always: [
      'Never swallow essential oils. If somebody has, do not make them vomit: call the poison centre or emergency number at once.',
      'Not for anyone under 12 without a professional. Some oils can close the throat of a small child.',
      'In pregnancy, while breast-feeding, with epilepsy, asthma or regular medicine: ask a professional first.',
      'Keep oils and running diffusers away from cats, birds and other pets.',
      'Pressed citrus oils burn the skin in sunlight; distilled ones do not. Old, oxidised oil makes skin allergic: do not use it.',
      'In the eye: rinse with water for 15 minutes and see a doctor. On the skin: wipe off, then soap and water.',
      'This page makes no claim that an oil heals. Products that you sell fall under rules for cosmetics and chemicals: check your local rules.',
    ] as readonly string[],
    allergens: ({ allergens, listedOils }: DilutionVerdict): string => {
      const names = [
        ...listedOils.map((id) => nameOf(id)),
        ...allergens.map((id) => constituentById(id).shortName ?? constituentById(id).name),
      ];
      return names.length === 0
        ? 'No listed allergen reaches 0.001 % here.'
        : `To name on the label in the EU, from 0.001 % in what stays on the skin: ${names.join(', ')}.`;
    },
  };
}
