/** What `fit` printed, or the page saved of a fit, read back for the next plan. */
import type { OwnBands } from '../index.ts';
import { readFitFile, type FitFileProblem } from '../answers/calibration/fit-file.ts';
import { UNCERTAIN_IDS } from '../answers/ensemble/factors.ts';
import { BadInput } from './bad-input.ts';
import { readJson } from './read-input.ts';

export interface ReadFit {
  /** Settings of the fitted factors, as `--with` writes them. */
  readonly assignments: readonly string[];
  readonly bands: OwnBands;
}

function lineFor(problem: FitFileProblem, source: string): string {
  switch (problem.kind) {
    case 'not-a-fit':
      return `--fit: ${source} is not what “fit” prints; fitted.scenario.factors and fitted.bands are needed.`;
    case 'unknown-input':
      return `--fit: fitted.bands.${problem.id} is not an input that is drawn; there are ${UNCERTAIN_IDS.join(', ')}.`;
    case 'bad-band':
      return `--fit: fitted.bands.${problem.id} is ${JSON.stringify(problem.value)}; low must be above 0 and at most 1, high at least 1.`;
  }
}

export function fitFrom(source: string): ReadFit {
  const read = readFitFile(readJson(source, () => `--fit: there is no file “${source}”.`));
  if (!read.ok) throw new BadInput(read.problems.map((problem) => lineFor(problem, source)));
  return {
    assignments: Object.entries(read.factors).map(([name, value]) => `factors.${name}=${JSON.stringify(value)}`),
    bands: read.bands,
  };
}
