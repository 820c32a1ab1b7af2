/** What a fit comes to, in sentences. */
import {
  DEFAULT_UNCERTAINTY,
  type Fit,
  type FittedFactor,
  type ReadingKind,
  formatNumber,
  formatQuantity,
  type UnitSystem,
} from '../../../sim/index.ts';

/** Three digits for a factor near one. */
export const factorNumber = (value: number): string => formatNumber(value, Math.abs(value) < 0.1 ? 3 : 2);

export const rangeWords = ({ low, high }: Pick<FittedFactor, 'low' | 'high'>): string =>
  `${factorNumber(low)} to ${factorNumber(high)}`;

const listed = (said: readonly string[]): string =>
  said.length < 2 ? (said[0] ?? '') : `${said.slice(0, -1).join(', ')} and ${said.at(-1)}`;

/** Whether the data settle a factor to within a factor of three or so. */
const SETTLED_RATIO = 3;
const isSettled = ({ low, high, held }: FittedFactor): boolean => !held && high / low < SETTLED_RATIO;

export function fitLead({ factors, residuals, reducedChiSquare }: Fit): string {
  const told = factors
    .filter(isSettled)
    .map(({ title, value }) => `the ${title.toLowerCase()} is ${factorNumber(value)}`);
  const unsure = factors.filter((factor) => !isSettled(factor)).map(({ title }) => `the ${title.toLowerCase()}`);
  const readings = `${residuals.length} readings`;
  if (told.length === 0) return `From ${readings} alone one cannot tell ${listed(unsure)}.`;
  const good =
    reducedChiSquare < 2
      ? 'and the model then follows them as well as they are sure'
      : 'though the model still misses some of them';
  const rest = unsure.length === 0 ? '' : ` They cannot tell ${listed(unsure)}.`;
  return `By ${readings} ${listed(told)}, ${good}.${rest}`;
}

/** What a changed factor means in the shed. */
export function factorMeaning({ name, start, value, held }: FittedFactor): string {
  if (held) return 'as it was: the readings do not show it';
  const ratio = start > 0 ? value / start : 1;
  const change = Math.abs(ratio - 1) < 0.02 ? null : ratio > 1 ? 'more' : 'less';
  if (change === null) return 'much as the model had it';
  const by = ratio > 1 ? `${formatNumber(ratio, 2)} times` : `${formatNumber(100 * ratio, 0)} % of`;
  const what: Readonly<Record<FittedFactor['name'], string>> = {
    oilContent: 'the oil that was expected in the plant',
    release: 'the speed at which the plant gives it up',
    condensingFilm: 'the heat that the film inside the tube passes',
    coolantFilm: 'the heat that the water outside takes up',
    heatLoss: 'the heat lost to the air',
    fouling: 'the scale on the tube',
    dropSize: 'the size of the oil drops',
  };
  return `${by} ${what[name]}`;
}

const READINGS: Readonly<
  Record<ReadingKind, { readonly title: string; readonly said: (value: number, units: UnitSystem) => string }>
> = {
  oil_mL: {
    title: 'Oil by volume',
    said: (value, units) => formatQuantity(value * 1e-6, 'm³', units, { hint: 'oilVolume' }),
  },
  oil_kg: { title: 'Oil by weight', said: (value, units) => formatQuantity(value, 'kg', units, { hint: 'oil' }) },
  outlet_K: {
    title: 'Outlet',
    said: (value, units) => formatQuantity(value, 'K', units, { hint: 'temperatureDifference' }),
  },
  tub_K: { title: 'Tub', said: (value, units) => formatQuantity(value, 'K', units, { hint: 'temperatureDifference' }) },
  distillate_kg: { title: 'Distillate', said: (value, units) => formatQuantity(value, 'kg', units, { hint: 'water' }) },
};

/** How sure each kind of reading is taken to be, and why. */
export const uncertaintyWords = (units: UnitSystem): readonly string[] =>
  (Object.keys(READINGS) as ReadingKind[]).map((kind) => {
    const { absolute, relative, source } = DEFAULT_UNCERTAINTY[kind];
    const { title, said } = READINGS[kind];
    const share = relative > 0 ? ` and ${formatNumber(100 * relative, 0)}\u202f%` : '';
    return `${title}: ${said(absolute, units)}${share} (${source})`;
  });
