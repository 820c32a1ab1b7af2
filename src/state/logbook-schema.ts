/** The run book as it is kept and saved: what was logged at real runs, and the stills that were fitted to them. */
import * as z from 'zod/mini';
import { FIT_NAMES, MOST_FACTORS, type FitName, type OwnBands } from '../../sim/index.ts';
import type { Keeping, Shape } from './kept-shape.ts';
import { EMPTY_ROW, LOG_UNITS, TIME_ZEROS, type LoggedRows, type TimeZero } from './logbook.ts';
import { newId } from './new-id.ts';
import { factsSchema, type RunFacts } from './run-facts.ts';
import { CONFLICT, threeWay } from './three-way.ts';

/** A photo of a run; the picture itself is kept apart (`photos.ts`). */
export interface LoggedPhoto {
  readonly id: string;
  /** Since the heat went on; `null` where nobody said. */
  readonly at_s: number | null;
  readonly words: string;
}

export interface LoggedRun extends LoggedRows {
  readonly id: string;
  readonly name: string;
  readonly notes: string;
  /** The still as it stood when the log was begun, as JSON. */
  readonly scenario: unknown;
  /** Text in the box for pasting that has not become rows yet. */
  readonly draft: string;
  /** Factors to fit. */
  readonly factors: readonly FitName[];
  readonly zero: TimeZero;
  readonly zeroAt: string;
  readonly facts: RunFacts;
  readonly photos: readonly LoggedPhoto[];
}

/** A still with the factors of a fit. */
export interface KeptStill {
  readonly id: string;
  readonly name: string;
  readonly scenario: unknown;
  /** What the fit leaves in doubt. */
  readonly bands: OwnBands;
}

export interface Logbook {
  readonly logs: readonly LoggedRun[];
  readonly stills: readonly KeptStill[];
  /** Entries that this version cannot read; they are kept and handed on untouched. */
  readonly unread: readonly unknown[];
}

const LOGBOOK_KIND = 'limbeck-run-book';
export const NO_LOGS: Logbook = { logs: [], stills: [], unread: [] };

/** What is typed into a cell; older books may hold numbers. Anything else counts as nothing typed. */
const typed = z.catch(z.pipe(z.union([z.string(), z.number()]), z.transform(String)), '');

const row = z.catch(z.object({ time: typed, oil: typed, outlet: typed, tub: typed, distillate: typed }), EMPTY_ROW);

const units = z.object({
  oil: z.catch(z.enum(LOG_UNITS.oil), LOG_UNITS.oil[0]),
  temperature: z.catch(z.enum(LOG_UNITS.temperature), LOG_UNITS.temperature[0]),
  distillate: z.catch(z.enum(LOG_UNITS.distillate), LOG_UNITS.distillate[0]),
});

const factors = z.pipe(
  z.catch(z.array(z.unknown()), []),
  z.transform((names) => FIT_NAMES.filter((name) => names.includes(name)).slice(0, MOST_FACTORS)),
);

const photo = z.object({ id: z.string(), at_s: z.catch(z.nullable(z.number()), null), words: typed });

/** Logs of the second version and before have none. */
const photos = z.pipe(
  z.catch(z.array(z.unknown()), []),
  z.transform((all): readonly LoggedPhoto[] =>
    all.flatMap((given) => {
      const read = photo.safeParse(given);
      return read.success ? [read.data] : [];
    }),
  ),
);

const log = z.object({
  id: typed,
  name: typed,
  notes: typed,
  scenario: z._default(z.unknown(), null),
  units: z.catch(units, units.parse({})),
  rows: z.array(row),
  draft: typed,
  factors,
  zero: z.catch(z.enum(TIME_ZEROS), 'heat-on'),
  zeroAt: typed,
  facts: factsSchema,
  photos,
});

/** A band without an origin comes from a fit too: it was kept before bands named theirs. */
const band = z.object({
  low: z.number(),
  high: z.number(),
  origin: z.catch(z.enum(['fit', 'stated'] as const), 'fit'),
});

const bands = z.pipe(
  z.catch(z.record(z.string(), z.unknown()), {}),
  z.transform((all): OwnBands =>
    Object.fromEntries(
      Object.entries(all).flatMap(([name, given]) => {
        const read = band.safeParse(given);
        return read.success ? [[name, read.data]] : [];
      }),
    ),
  ),
);

const still = z.object({ id: typed, name: typed, scenario: z.record(z.string(), z.unknown()), bands });

const list = z.catch(z.array(z.unknown()), []);
const book = z.object({ kind: z.literal(LOGBOOK_KIND), logs: list, stills: list, unread: list });

/** Changes of different parts are joined; where both windows changed the same, the other's is kept beside. */
const bothEntries: NonNullable<Keeping['both']> = (key, mine, theirs, base) => {
  const joined = threeWay(base, mine, theirs);
  if (joined !== CONFLICT) return { [key]: joined };
  const { name } = theirs as { readonly name?: unknown };
  const beside = key.replace(/[^/]*$/u, newId());
  return { [key]: mine, [beside]: { ...(theirs as object), name: `${String(name)} (other window)` } };
};

const shapeOf = <T>(version: number, schema: z.ZodMiniType<T>): Shape<T> => ({
  version,
  both: bothEntries,
  read: (value) => {
    const read = schema.safeParse(value);
    return read.success ? read.data : null;
  },
});

export const logShape: Shape<LoggedRun> = shapeOf(3, log);
export const stillShape: Shape<KeptStill> = shapeOf(1, still);
/** Reads a run book from a file; `null` when it is none. What cannot be read of it is kept as it is. */
export function readLogbook(value: unknown): Logbook | null {
  const read = book.safeParse(value);
  if (!read.success) return null;
  const unread = [...read.data.unread];
  const entries = <T>(all: readonly unknown[], { version, read: readOne }: Shape<T>): readonly T[] =>
    all.flatMap((entry) => {
      const found = readOne(entry, version);
      if (found === null) unread.push(entry);
      return found === null ? [] : [found];
    });
  return { logs: entries(read.data.logs, logShape), stills: entries(read.data.stills, stillShape), unread };
}

export const writtenLogbook = (kept: Logbook): Readonly<Record<string, unknown>> => ({
  kind: LOGBOOK_KIND,
  version: 3,
  ...kept,
});
