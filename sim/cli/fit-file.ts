/** What `fit` printed, or the page saved of a fit, read back for the next plan: its factors and what it leaves in doubt. */
import type { OwnBands } from '../index.ts';
import { UNCERTAIN_IDS } from '../answers/ensemble/factors.ts';
import { BadInput } from './bad-input.ts';
import { isObject, readJson } from './read-input.ts';

export interface ReadFit {
  /** Settings of the fitted factors, as `--with` writes them. */
  readonly assignments: readonly string[];
  readonly bands: OwnBands;
}

const isShare = (value: unknown): value is number => typeof value === 'number' && value > 0 && value <= 1;
const isMultiple = (value: unknown): value is number =>
  typeof value === 'number' && value >= 1 && Number.isFinite(value);

export function readFitFile(source: string): ReadFit {
  const input = readJson(source, () => `--fit: there is no file “${source}”.`);
  const fitted = isObject(input) ? input['fitted'] : undefined;
  const factors = isObject(fitted) && isObject(fitted['scenario']) ? fitted['scenario']['factors'] : undefined;
  const bands = isObject(fitted) ? fitted['bands'] : undefined;
  if (!isObject(factors) || !isObject(bands))
    throw new BadInput(
      `--fit: ${source} is not what “fit” prints; fitted.scenario.factors and fitted.bands are needed.`,
    );
  const problems: string[] = [];
  const read = Object.entries(bands).flatMap(([id, band]) => {
    const known = UNCERTAIN_IDS.find((name) => name === id);
    if (known === undefined)
      problems.push(`--fit: fitted.bands.${id} is not an input that is drawn; there are ${UNCERTAIN_IDS.join(', ')}.`);
    const { low, high, origin } = isObject(band) ? band : {};
    if (!isShare(low) || !isMultiple(high)) {
      problems.push(
        `--fit: fitted.bands.${id} is ${JSON.stringify(band)}; low must be above 0 and at most 1, high at least 1.`,
      );
      return [];
    }
    return [[id, { low, high, ...(origin === 'fit' ? { origin } : {}) }] as const];
  });
  if (problems.length > 0) throw new BadInput(problems);
  return {
    assignments: Object.entries(factors).map(([name, value]) => `factors.${name}=${JSON.stringify(value)}`),
    bands: Object.fromEntries(read),
  };
}
