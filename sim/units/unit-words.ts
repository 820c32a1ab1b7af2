/** How people spell units, turned into the spelling mathjs reads. Nothing here knows how large a unit is. */

const EVERYWHERE: readonly (readonly [RegExp, string])[] = [
  [/[µμ]/gu, 'u'],
  [/²/gu, '^2'],
  [/³/gu, '^3'],
  [/₂/gu, '2'],
  [/[·⋅*]/gu, ' '],
  [/[£$€]/gu, ''],
  [/\bper\b/giu, '/'],
  [/["″”]/gu, 'in'],
  [/['′’]/gu, 'ft'],
  [/\bin\.?\s*hg\b/giu, 'inHg'],
  [/\bin\.?\s*(?:h2o|wc)\b/giu, 'inH2O'],
  [/\bimp(?:erial|\.)?\s*gal(?:lons?)?\b/giu, 'impgal'],
  [/\bu\.?s\.?\s+(?=gal|fl|qt|pt|quart|pint|cup)/giu, ''],
  [/\b1000\s*gal(?:lons?)?\b/giu, 'kgal'],
  [/\bfl\.?\s*oz\b\.?/giu, 'floz'],
  [/\bgpm\b/giu, 'gal/min'],
  [/\bgph\b/giu, 'gal/h'],
  [/\blpm\b/giu, 'L/min'],
  [/\blph\b/giu, 'L/h'],
  [/\bmph\b/giu, 'mi/h'],
  [/\bk(?:ph|mh)\b/giu, 'km/h'],
  [/\bbtu\b/giu, 'BTU'],
  [/\bmicrons?\b/giu, 'um'],
  [/\bthou\b/giu, 'mil'],
  [/metre(s?)\b/giu, 'meter$1'],
  [/\bgrammes?\b/giu, 'g'],
  [/\bgalls?\b/giu, 'gal'],
  [/\bft\s*2\b/gu, 'ft^2'],
  [/\b(in|mm|cm|dm|m)\s*([23])\b/gu, '$1^$2'],
  [/°\s*(?=$|[^CFKcfk])/gu, 'deg '],
];

const TEMPERATURES: readonly (readonly [RegExp, string])[] = [
  [/℃/gu, 'degC'],
  [/℉/gu, 'degF'],
  [/(?:°|\bdeg(?:rees?)?\.?)\s*(?:c|celsius)\b/giu, 'degC'],
  [/(?:°|\bdeg(?:rees?)?\.?)\s*(?:f|fahrenheit)\b/giu, 'degF'],
  [/(?:°|\bdeg(?:rees?)?\.?)\s*k\b/giu, 'K'],
];

/** Letters that mean a temperature only where a temperature is asked for: elsewhere C is a charge, F a capacity. */
const TEMPERATURE_LETTERS: readonly (readonly [RegExp, string])[] = [
  [/\b(?:c|celsius)\b/giu, 'degC'],
  [/\b(?:f|fahrenheit)\b/giu, 'degF'],
  [/\b(?:k|kelvins?)\b/giu, 'K'],
];

/** In a difference a degree is only a size: 10 °C is 10 K. */
const DIFFERENCES: readonly (readonly [RegExp, string])[] = [
  [/degC/gu, 'K'],
  [/degF/gu, 'degR'],
];

export type TemperatureReading = 'none' | 'absolute' | 'difference' | 'compound';

/** One typed unit in mathjs spelling; a leading stroke (`/min`, `per kWh`) becomes one over it. */
export function unitWords(typed: string, temperature: TemperatureReading): string {
  let text = typed.trim();
  const apply = (rules: readonly (readonly [RegExp, string])[]): void => {
    for (const [pattern, spelling] of rules) text = text.replace(pattern, spelling);
  };
  apply(TEMPERATURES);
  if (temperature !== 'none') apply(TEMPERATURE_LETTERS);
  if (temperature === 'difference') apply(DIFFERENCES);
  apply(EVERYWHERE);
  text = text.replace(/\s+/gu, ' ').trim();
  return text.startsWith('/') ? `1${text}` : text;
}

const SPELLINGS = [
  'W',
  'kW',
  'MW',
  'Wh',
  'kWh',
  'J',
  'kJ',
  'MJ',
  'm',
  'mm',
  'cm',
  'km',
  'um',
  'in',
  'inch',
  'inches',
  'ft',
  'feet',
  'foot',
  'yd',
  'g',
  'kg',
  'mg',
  'lb',
  'lbs',
  'oz',
  'L',
  'mL',
  'cL',
  'dL',
  'gal',
  'gallon',
  'gallons',
  'floz',
  'qt',
  'pt',
  'quart',
  'pint',
  'cup',
  's',
  'sec',
  'min',
  'mins',
  'h',
  'hr',
  'hrs',
  'hour',
  'hours',
  'minutes',
  'seconds',
  'days',
  'Pa',
  'kPa',
  'hPa',
  'mbar',
  'bar',
  'psi',
  'V',
  'A',
  'rad',
  'deg',
  'hp',
] as const;
const SPELLING_OF = new Map(SPELLINGS.map((spelling) => [spelling.toLowerCase(), spelling]));

/** The same unit with the capitals it is written with (`KW` → `kW`), for a second try when the first is unknown. */
export const recapitalised = (unit: string): string =>
  unit.replace(/[A-Za-z]+/gu, (word) => SPELLING_OF.get(word.toLowerCase()) ?? word);
