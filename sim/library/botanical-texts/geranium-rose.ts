import { origin, sourced } from '../provenance.ts';
import type { BotanicalText } from '../types.ts';

export const geraniumRose: BotanicalText = {
  oilSite: sourced('surface glandular trichomes (capitate hairs)', 'memory', 'plant anatomy texts'),
  preparation: sourced(
    'whole wilted; spread thinly, heaping over 6 h harms yield and composition',
    'memory',
    'trade practice and pharmacopoeia assay practice',
  ),
  tradeMethod: sourced('direct steam with recycling of distillation water (cohobation)', 'memory', 'trade practice'),
  compositionNotes: [
    'citronellyl formate, geranyl formate and lighter esters: 0.19 as linalyl acetate (real formates hydrolyse too; the model keeps them)',
    'isomenthone: 0.05 in menthone',
    '10-epi-gamma-eudesmol: 0.05 in cedrol',
    'guaia-6,9-diene, germacrene D: all of beta-caryophyllene',
    'cis/trans-rose oxide: 0.01 as 1,8-cineole',
    'geranyl tiglate and heavy esters: 0.035 as alpha-bisabolol',
    'alpha-pinene 0.005 added to myrcene to keep ten entries',
    'limonene 0.005 added to myrcene to keep ten entries',
    '1,8-cineole 0.01 and alpha-terpineol 0.01 added to linalool to keep ten entries',
  ],
  publishedRanges: [
    {
      constituent: 'citronellol content as set in ISO 4731 (1972 wording; probably total alcohols as citronellol)',
      low: 0.42,
      high: 0.55,
      provenance: origin(
        'secondary',
        'Lis-Balchin, Geranium and Pelargonium, ch. 17 abstract (quotes ISO 4731)',
        'Bourbon; Moroccan 35–58, Egyptian and Chinese 40–58',
      ),
    },
    {
      constituent: 'citronellyl formate',
      low: 0.062,
      high: 0.075,
      provenance: origin(
        'read',
        'Rajeswara Rao, Kaul, Syamasundar and Ramesh, Water soluble fractions of rose-scented geranium (Pelargonium species) essential oil, Bioresource Technol. 84 (2002) 243–246, abstract (authors and pages from memory)',
      ),
    },
    {
      constituent: 'geranyl formate',
      low: 0.041,
      high: 0.047,
      provenance: origin(
        'read',
        'Rajeswara Rao, Kaul, Syamasundar and Ramesh, Water soluble fractions of rose-scented geranium (Pelargonium species) essential oil, Bioresource Technol. 84 (2002) 243–246, abstract (authors and pages from memory)',
      ),
    },
    { constituent: 'citronellol', low: 0.18, high: 0.43, provenance: origin('memory', 'ISO 4731:2012 by origin') },
    {
      constituent: '10-epi-gamma-eudesmol',
      low: 0.049,
      high: 0.055,
      provenance: origin(
        'read',
        'Rajeswara Rao, Kaul, Syamasundar and Ramesh, Water soluble fractions of rose-scented geranium (Pelargonium species) essential oil, Bioresource Technol. 84 (2002) 243–246, abstract (authors and pages from memory)',
      ),
    },
  ],
  relativeDensity: sourced(
    { low: 0.882, high: 0.905 },
    'memory',
    'ISO 4731 by origin (0.884–0.892 Bourbon, 0.882–0.892 China)',
  ),
  qualityNotes: [
    sourced(
      '7 % of the oil was in the hydrosol; recovered oil was rich in geraniol (21–38 %), linalool (15–20 %).',
      'read',
      'Rajeswara Rao, Kaul, Syamasundar and Ramesh, Water soluble fractions of rose-scented geranium (Pelargonium species) essential oil, Bioresource Technol. 84 (2002) 243–246, abstract (authors and pages from memory)',
    ),
    sourced(
      'Water distillation gave 0.16–0.22 %, steam 0.06–0.18 %.',
      'read',
      'Babu and Kaul, Flavour Fragr. J. 20 (2005) 222–231, abstract',
    ),
    sourced(
      'Formates hydrolyse to free alcohols and formic acid on standing wet (storage wet cut geraniol, geranyl formate and raised citronellol).',
      'secondary',
      'Kaul et al. 1997 cited by Lawrence, Perfumer & Flavorist (page read)',
    ),
  ],
  cautions: [
    sourced(
      'Monkshood leaves look like a cranesbill’s and are deadly, also through the skin. They have no smell.',
      'memory',
      'guides to poisonous plants',
    ),
    sourced(
      'Geraniol, citronellol, linalool, citral: labelled allergens; IFRA limits by category.',
      'memory',
      'EU 1223/2009; IFRA',
    ),
  ],
};
