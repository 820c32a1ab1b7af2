/** What a fit comes to, in sentences. */
import type { Fit, FittedFactor } from '../../../sim/index.ts';
import { formatNumber } from '../../units/index.ts';

/** Three digits for a factor near one. */
export const factorNumber = (value: number): string => formatNumber(value, Math.abs(value) < 0.1 ? 3 : 2);

export const rangeWords = ({ low, high }: Pick<FittedFactor, 'low' | 'high'>): string => `${factorNumber(low)} to ${factorNumber(high)}`;

const listed = (said: readonly string[]): string => (said.length < 2 ? (said[0] ?? '') : `${said.slice(0, -1).join(', ')} and ${said.at(-1)}`);

/** Whether the data settle a factor to within a factor of three or so. */
const SETTLED_RATIO = 3;
const isSettled = ({ low, high, held }: FittedFactor): boolean => !held && high / low < SETTLED_RATIO;

export function fitLead({ factors, residuals, reducedChiSquare }: Fit): string {
  const told = factors.filter(isSettled).map(({ title, value }) => `the ${title.toLowerCase()} is ${factorNumber(value)}`);
  const unsure = factors.filter((factor) => !isSettled(factor)).map(({ title }) => `the ${title.toLowerCase()}`);
  const readings = `${residuals.length} readings`;
  if (told.length === 0) return `From ${readings} alone one cannot tell ${listed(unsure)}.`;
  const good = reducedChiSquare < 2 ? 'and the model then follows them as well as they are sure' : 'though the model still misses some of them';
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
