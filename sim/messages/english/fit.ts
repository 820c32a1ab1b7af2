/** Logs of real runs and fits to them, in English. */
import {
  type CalibrationProblem,
  type Fit,
  type FitName,
  type FitNote,
  type FittedFactor,
} from '../../answers/calibration/calibrate.ts';
import type { LogTable, Separator } from '../../answers/calibration/log-table.ts';
import type {
  ColumnMeaning,
  LineProblem,
  LogColumnKind,
  LogReading,
  PointsProblem,
} from '../../answers/calibration/points.ts';
import { DEFAULT_UNCERTAINTY, READING_KINDS, type ReadingKind } from '../../answers/calibration/readings.ts';
import { formatNumber } from '../../units/index.ts';
import type { Quantities } from '../quantities.ts';

interface FactorNames {
  /** Within a sentence. */
  readonly name: string;
  readonly title: string;
  /** What a multiple of it multiplies, in the shed. */
  readonly of: string;
  /** What to log so that it shows. */
  readonly readings: string;
}

const OUTLET = 'Add readings of the outlet temperature.';
const EARLY_OIL = 'Add readings of oil collected, early ones too.';

const FACTORS: Readonly<Record<FitName, FactorNames>> = {
  oilContent: {
    name: 'oil content',
    title: 'Oil content',
    of: 'the oil that was expected in the plant',
    readings: 'Add readings of oil collected, up to the end of the run.',
  },
  release: {
    name: 'speed of release',
    title: 'Speed of release',
    of: 'the speed at which the plant gives up its oil',
    readings: EARLY_OIL,
  },
  condensingFilm: {
    name: 'heat transfer on the steam side',
    title: 'Heat transfer, steam side',
    of: 'the heat that passes from steam to tube',
    readings: OUTLET,
  },
  coolantFilm: {
    name: 'heat transfer on the water side',
    title: 'Heat transfer, water side',
    of: 'the heat that passes from tube to cooling water',
    readings: OUTLET,
  },
  rivulet: {
    name: 'cooling of the condensate',
    title: 'Cooling of the condensate',
    of: 'the heat that passes from condensate to tube',
    readings: OUTLET,
  },
  heatLoss: {
    name: 'heat loss',
    title: 'Heat loss',
    of: 'the heat lost to the air',
    readings: 'Add readings of the distillate.',
  },
  fouling: { name: 'scale in the tube', title: 'Scale in the tube', of: 'the scale in the tube', readings: OUTLET },
  dropSize: {
    name: 'size of the oil drops',
    title: 'Size of the oil drops',
    of: 'the size of the oil drops',
    readings: EARLY_OIL,
  },
};

const READINGS: Readonly<Record<ReadingKind, { readonly title: string; readonly why: string }>> = {
  oil_mL: { title: 'Oil by volume', why: 'a graduated tube with a curved surface, drops clinging to glass' },
  oil_kg: { title: 'Oil by weight', why: 'a fine kitchen balance and wet glass' },
  outlet_K: { title: 'Outlet', why: 'a probe in a thin stream' },
  tub_K: { title: 'Tub', why: 'a stirred tub and a household thermometer' },
  distillate_kg: { title: 'Distillate', why: 'a jug or a kitchen balance' },
};

const COLUMNS: Readonly<Record<LogColumnKind, string>> = {
  time_s: 'the time',
  oil_mL: 'oil by volume',
  oil_kg: 'oil by weight',
  outlet_K: 'the outlet temperature',
  tub_K: 'the tub temperature',
  distillate_kg: 'the distillate',
};

const SPELT: Readonly<Record<string, string>> = {
  ml: 'mL',
  l: 'L',
  floz: 'fl oz',
  c: '°C',
  '°c': '°C',
  f: '°F',
  '°f': '°F',
  k: 'K',
};
const HEADINGS: Readonly<Record<LogColumnKind, string>> = {
  time_s: 'time',
  oil_mL: 'oil',
  oil_kg: 'oil',
  outlet_K: 'outlet',
  tub_K: 'tub',
  distillate_kg: 'distillate',
};
const PARTED: Readonly<Record<Separator, string>> = {
  tab: 'tabs',
  semicolon: 'semicolons',
  comma: 'commas',
  blanks: 'blanks',
};
/** What a column is, with its unit as people write it. */
const meaning = ({ column, unit }: ColumnMeaning): string => `${HEADINGS[column]} (${SPELT[unit] ?? unit})`;

/** Highest over lowest below which a factor counts as known. */
const KNOWN_RATIO = 3;
const isKnown = ({ low, high, held }: FittedFactor): boolean => !held && high / low < KNOWN_RATIO;
/** Reduced chi square up to which the model follows the readings. */
const FOLLOWS = 2;
/** Changes smaller than this part are none. */
const UNCHANGED = 0.02;

const named = (names: readonly string[], joint: 'and' | 'or'): string =>
  names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} ${joint} ${names.at(-1)}`;
const theFactors = (names: readonly FitName[], joint: 'and' | 'or'): string =>
  named(
    names.map((name) => `the ${FACTORS[name].name}`),
    joint,
  );
const toLog = (names: readonly FitName[]): string =>
  [...new Set(names.map((name) => FACTORS[name].readings))].join(' ');
const counted = (count: number, one: string, many: string): string => (count === 1 ? `1 ${one}` : `${count} ${many}`);

/** Two digits after the point for a factor near one. */
const factor = (value: number): string => formatNumber(value, Math.abs(value) < 0.1 ? 3 : 2);

export function fit(q: Quantities) {
  const reading = (kind: ReadingKind, value: number): string =>
    kind === 'oil_mL'
      ? q.stored(value, 'mL', 'oilVolume')
      : kind === 'oil_kg'
        ? q.oilMass(value)
        : kind === 'distillate_kg'
          ? q.water(value)
          : q.temperature(value);
  const uncertainty = (kind: ReadingKind, value: number): string =>
    kind === 'outlet_K' || kind === 'tub_K' ? q.temperatureDifference(value) : reading(kind, value);

  const ofLine = (problem: LineProblem): string => {
    switch (problem.kind) {
      case 'not-a-number':
        return `“${problem.cell}” is not a number.`;
      case 'below-zero':
        return `${problem.cell} is below zero.`;
      case 'below-absolute-zero':
        return `${problem.cell} is below absolute zero.`;
      case 'too-much':
        return `${problem.cell} is more than any such still gives. Is the unit right?`;
      case 'comma-in-doubt':
        return `“${problem.cell}” can be read in two ways: with a decimal comma, or with a comma between thousands. Write it without the comma.`;
      case 'too-many-cells':
        return `There are ${problem.cells} values for ${problem.columns} columns. Put numbers with a decimal comma in quotes, or part the columns with semicolons.`;
      case 'time-missing':
        return 'The time is missing.';
      case 'no-reading':
        return 'There is a time but no reading.';
    }
  };

  /** What is wrong, without saying in which line. */
  function lineProblem(problem: PointsProblem): string {
    switch (problem.kind) {
      case 'nothing-to-read':
        return 'There is nothing to read. Give a line of headings, then one line a reading.';
      case 'unknown-unit':
        return `Headings: the unit “${problem.unit}” of “${problem.heading}” is not known. Known are ${problem.known.join(', ')}.`;
      case 'column-twice':
        return `Headings: two columns are ${COLUMNS[problem.column]}. The later one counts.`;
      case 'no-time-column':
        return 'Headings: no column is the time. Call one “time (min)”.';
      case 'no-reading-column':
        return 'Headings: no column is a reading. Known are oil, distillate, outlet and tub.';
      case 'columns-unnamed':
        return `There are ${problem.columns} columns of numbers without headings. Add a line of headings, such as “time (min), oil (mL), outlet (°C)”.`;
      default:
        return ofLine(problem);
    }
  }

  return {
    columnMeaning: meaning,
    /** How a table was understood, before any of it is taken. */
    understood({ separator, headings, lines }: LogTable, { columns, decimal }: LogReading): string {
      const decimals = { point: 'a point is the decimal sign', comma: 'a comma is the decimal sign' };
      const parts = [
        `${counted(lines.length, 'line', 'lines')} ${headings === null ? 'without headings' : 'under a line of headings'}`,
        `${PARTED[separator]} between the columns`,
        ...(decimal === null ? [] : [decimals[decimal]]),
      ];
      const read = columns.map((column) => (column === null ? 'left out' : meaning(column)));
      return `${parts.join(', ')}. Columns: ${read.join(', ')}.`;
    },

    /** A fitted factor, or an end of its interval. */
    factor,
    factorTitle: (name: FitName): string => FACTORS[name].title,
    factorHelp: (name: FitName): string => `Multiplies ${FACTORS[name].of}. 1 means no correction.`,
    interval: ({ low, high }: Pick<FittedFactor, 'low' | 'high'>): string => `${factor(low)} to ${factor(high)}`,

    /** What a fit comes to. */
    lead({ factors, residuals, reducedChiSquare }: Fit): string {
      const known = factors.filter(isKnown);
      const unknown = factors.filter((each) => !isKnown(each)).map(({ name }) => name);
      const missing =
        unknown.length === 0 ? '' : `These readings do not show ${theFactors(unknown, 'or')}. ${toLog(unknown)}`;
      if (known.length === 0) return missing;
      const found = named(
        known.map(({ name, value }) => `${FACTORS[name].name} × ${factor(value)}`),
        'and',
      );
      const follows =
        reducedChiSquare < FOLLOWS
          ? 'The model then follows the readings within their uncertainty.'
          : 'The model still misses some of the readings.';
      return [`${counted(residuals.length, 'reading gives', 'readings give')} ${found}.`, follows, missing]
        .filter((sentence) => sentence !== '')
        .join(' ');
    },

    /** What a changed factor means in the shed. */
    meaning({ name, start, value, held }: FittedFactor): string {
      if (held) return 'unchanged: the readings do not show it';
      const ratio = start > 0 ? value / start : 1;
      if (Math.abs(ratio - 1) < UNCHANGED) return 'much as it was';
      return `${ratio > 1 ? `${formatNumber(ratio, 2)} times` : `${q.share(ratio, { decimals: 0 })} of`} ${FACTORS[name].of}`;
    },

    note(note: FitNote): string {
      switch (note.kind) {
        case 'not-shown':
          return `These readings do not show ${theFactors([note.factor], 'or')}: doubling it changes nothing in them. It stays at ${factor(note.held)}.`;
        case 'alike': {
          const [name, other] = note.names;
          const how = note.correlation < 0 ? 'more of one with less of the other' : 'more of both together';
          return `These readings cannot tell ${theFactors([name], 'or')} from ${theFactors([other], 'or')}: ${how} fits them as well (correlation ${formatNumber(note.correlation, 2)}). Fit one of them alone, or log more: the first minutes, and on until little oil comes.`;
        }
        case 'mixture':
          return `These readings show only a mixture of ${theFactors(note.factors, 'and')}. Fit fewer at a time.`;
        case 'at-limit':
          return `${FACTORS[note.factor].title} went to the end of its range, ${factor(note.value)}. Something else differs between still and model.`;
        case 'misses':
          return `The model misses the readings by about ${formatNumber(note.times, 1)} times their uncertainty. The intervals are wider by as much.`;
        case 'thinned':
          return `${note.readings} readings are many for a fit. They were drawn together into ${note.means} means, each as sure as the readings in it.`;
        case 'few-readings':
          return 'Few readings are left over, so the intervals are wide. Log more of them.';
        case 'unfinished':
          return 'The fit was stopped before it settled. Take it as a first guess and fit again from it.';
      }
    },

    /** Why there is no fit. */
    refusal(problem: CalibrationProblem): string {
      switch (problem.kind) {
        case 'factor-count':
          return `Choose 1 to ${problem.most} factors to fit, not ${problem.count}.`;
        case 'bad-uncertainty':
          return `Line ${problem.line}, ${READINGS[problem.reading].title.toLowerCase()}: the uncertainty must be above zero.`;
        case 'bad-reading':
          return `Line ${problem.line}, ${READINGS[problem.reading].title.toLowerCase()}: ${reading(problem.reading, problem.value)} at ${q.time(problem.time_s)} cannot be. Times and readings must be numbers from zero up.`;
        case 'too-few-readings':
          return `${counted(problem.readings, 'reading is', 'readings are')} too few to find ${counted(problem.factors, 'factor', 'factors')}. Log at least ${problem.needed}.`;
        case 'broke-off':
          return `The calculation failed at ${q.time(problem.time_s)}, so nothing can be fitted. Undo the last change to the still.`;
        case 'nothing-shown':
          return `These readings do not show ${theFactors(problem.factors, 'or')}. ${toLog(problem.factors)}`;
      }
    },

    lineProblem,

    /** What is wrong in pasted text, with its line where a single reading is at fault. */
    pointsProblem: (problem: PointsProblem): string => {
      const said = lineProblem(problem);
      return 'cell' in problem || problem.kind === 'time-missing' || problem.kind === 'no-reading'
        ? `Line ${problem.line}: ${said}`
        : said;
    },

    /** Oil that a log did not take over, because it keeps it in another way. */
    otherOil: ({ kept, weighed }: { readonly kept: string; readonly weighed: boolean }): string =>
      `This log keeps its oil in ${kept}. Oil measured by ${weighed ? 'weight' : 'volume'} was not taken.`,

    reading: (kind: ReadingKind): string => READINGS[kind].title,

    /** How sure each kind of reading is taken to be, and why. */
    uncertainties: (): readonly string[] =>
      READING_KINDS.map((kind) => {
        const { absolute, relative } = DEFAULT_UNCERTAINTY[kind];
        const share = relative > 0 ? ` and ${q.share(relative, { decimals: 0 })}` : '';
        return `${READINGS[kind].title}: ${uncertainty(kind, absolute)}${share} (judgement: ${READINGS[kind].why})`;
      }),
  };
}
