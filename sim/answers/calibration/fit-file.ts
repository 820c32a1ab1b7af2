/** A fit as a file, which the command line prints and the page saves: what the next plan takes from it. */
import * as z from 'zod/mini';
import { UNCERTAIN_IDS, type OwnBands, type UncertainId } from '../ensemble/factors.ts';

export type FitFileProblem =
  | { readonly kind: 'not-a-fit' }
  | { readonly kind: 'unknown-input'; readonly id: string }
  /** The ends of a band, relative to the fitted value: low above 0 and at most 1, high at least 1. */
  | { readonly kind: 'bad-band'; readonly id: UncertainId; readonly value: unknown };

export type ReadFitFile =
  | { readonly ok: true; readonly factors: Readonly<Record<string, unknown>>; readonly bands: OwnBands }
  | { readonly ok: false; readonly problems: readonly FitFileProblem[] };

const anything = z.record(z.string(), z.unknown());

const fitFile = z.object({ fitted: z.object({ scenario: z.object({ factors: anything }), bands: anything }) });

const band = z.object({
  low: z.number().check(z.positive(), z.maximum(1)),
  high: z.number().check(z.minimum(1)),
  origin: z.catch(z.optional(z.literal('fit')), undefined),
});

export function readFitFile(value: unknown): ReadFitFile {
  const read = fitFile.safeParse(value);
  if (!read.success) return { ok: false, problems: [{ kind: 'not-a-fit' }] };
  const { scenario, bands } = read.data.fitted;
  const problems: FitFileProblem[] = [];
  const found = Object.entries(bands).flatMap(([name, given]) => {
    const id = UNCERTAIN_IDS.find((known) => known === name);
    if (id === undefined) {
      problems.push({ kind: 'unknown-input', id: name });
      return [];
    }
    const one = band.safeParse(given);
    if (!one.success) problems.push({ kind: 'bad-band', id, value: given });
    if (!one.success) return [];
    const { low, high, origin } = one.data;
    return [[id, { low, high, ...(origin === undefined ? {} : { origin }) }] as const];
  });
  if (problems.length > 0) return { ok: false, problems };
  return { ok: true, factors: scenario.factors, bands: Object.fromEntries(found) };
}
