/** Texts that nobody means well with, wherever one may be given: files of stills, logs, links, names. */
import { csvParseRows } from 'd3-dsv';
import fc from 'fast-check';
import { fromCsv } from '../../sim/messages/csv.ts';
import {
  englishReader,
  fitMessages,
  problemMessage,
  readPoints,
  readScenario,
  scenarioFields,
  toCsv,
  understood,
} from '../../sim/index.ts';
import { element, words } from '../../src/charts/export/svg-markup.ts';
import { readLogbook, writtenLogbook } from '../../src/state/logbook-schema.ts';
import { readPasted } from '../../src/state/logbook.ts';
import { tagsOf } from '../app/charts/well-formed.ts';
import { anyJson, text, throughJson } from './hostile-values.ts';
import type { Part } from './part.ts';

const stillsAreReadOrRefused = fc.property(
  fc.constantFrom(...scenarioFields.map(({ path }) => path)),
  anyJson,
  (path, value) => {
    const [part = '', field] = path.split('.');
    const file = throughJson({ [part]: field === undefined ? value : { [field]: value } });
    const read = readScenario(file);
    if (!read.ok)
      for (const problem of read.problems)
        if (problemMessage(problem, englishReader('us')) === '') throw new Error('a problem without words');
    if (read.ok && /null|NaN|Infinity/u.test(JSON.stringify(Object.values(read.scenario.factors))))
      throw new Error('a number that is none was taken');
    if (Object.hasOwn(Object.prototype, 'polluted')) throw new Error('the prototype of all objects has changed');
  },
);

const cell = fc.oneof(
  { weight: 4, arbitrary: fc.double({ min: -10, max: 500, noNaN: true }).map((value) => value.toFixed(2)) },
  { weight: 1, arbitrary: fc.constantFrom('1,234', '"2,5"', '', '-', 'n/a', '1:45', '1h05') },
  { weight: 1, arbitrary: text },
);
const log = fc
  .tuple(
    fc.constantFrom('', 'time (min),oil (mL)', 'time;oil (g);tub °F', 'min\toil\tnotes', 'time (constructor);oil'),
    fc.constantFrom(',', ';', '\t', ' '),
    fc.array(fc.array(cell, { minLength: 1, maxLength: 4 }), { maxLength: 12 }),
    fc.constantFrom('\n', '\r\n', '\r'),
  )
  .map(([heading, sign, rows, end]) => [heading, ...rows.map((row) => row.join(sign))].join(end));

const logsAreReadOrTold = fc.property(log, (given) => {
  const { points, problems } = readPoints(given);
  const { pointsProblem, understood: told } = fitMessages(englishReader('metric'));
  for (const point of points)
    if (!Object.values(point).every((value) => Number.isFinite(value) && value >= 0))
      throw new Error(`a reading that is no number: ${JSON.stringify(point)}`);
  for (const problem of problems) if (pointsProblem(problem) === '') throw new Error('a problem without words');
  const found = understood(given);
  if (found !== null) told(found.table, found.reading);
  readPasted(given, { oil: 'mL', temperature: '°C', distillate: 'L' });
});

const booksAreReadOrKept = fc.property(anyJson, anyJson, (one, other) => {
  const file = throughJson({ kind: 'limbeck-run-book', version: 3, logs: [one, other], stills: [other], unread: [] });
  const book = readLogbook(file);
  if (book === null) throw new Error('a run book was not known for one');
  const { logs, stills, unread } = book;
  if (logs.length + stills.length + unread.length !== 3) throw new Error('an entry was lost');
  if (readLogbook(throughJson(writtenLogbook(book))) === null) throw new Error('it cannot be read back');
});

const picturesStayWhole = fc.property(text, text, (name, value) => {
  tagsOf(element('svg', { 'aria-label': value }, element('title', {}, words(name))));
});

const tablesAreText = fc.property(text, text, (heading, cell) => {
  const csv = toCsv([heading, 'oil (mL)'], [[cell, 1.5]]);
  for (const line of csvParseRows(csv))
    for (const each of line)
      if (/^[=@\t\r]|^[+-](?![\d.,][^=+\-*/()|!@]*$)/u.test(each))
        throw new Error(`a spreadsheet works it out: ${each}`);
  const [headings, row] = fromCsv(csv);
  if (headings?.[0] !== heading || row?.[0] !== cell) throw new Error('it cannot be read back');
});

export const hostileText: readonly Part[] = [
  {
    name: 'scenarios',
    says: 'files with anything in one of their fields',
    few: 300,
    many: 200_000,
    check: (asked) => fc.check(stillsAreReadOrRefused, asked),
  },
  { name: 'logs', says: 'pasted logs', few: 300, many: 200_000, check: (asked) => fc.check(logsAreReadOrTold, asked) },
  {
    name: 'books',
    says: 'run books with odd entries',
    few: 300,
    many: 200_000,
    check: (asked) => fc.check(booksAreReadOrKept, asked),
  },
  {
    name: 'tables',
    says: 'names in tables for spreadsheets',
    few: 300,
    many: 200_000,
    check: (asked) => fc.check(tablesAreText, asked),
  },
  {
    name: 'pictures',
    says: 'names in pictures',
    few: 300,
    many: 200_000,
    check: (asked) => fc.check(picturesStayWhole, asked),
  },
];
