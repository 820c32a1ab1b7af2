/** What is wrong with an edit, in the units on the screen. */
import { fieldAt, type Problem, allowedWords, formatQuantity, type UnitSystem } from '../../../../sim/index.ts';
import { valueWords } from './field-values.ts';

const NUMBER_AND_UNIT = /(-?\d+(?:\.\d+)?(?:e[+-]?\d+)?) (m|kg|K|s|W)(?![\w/])/gu;

export function problemWords(problem: Problem, units: UnitSystem): string {
  const field = fieldAt(problem.path);
  if (!field) return problem.message;
  const isNumber = field.kind === 'number' || field.kind === 'integer';
  if (!isNumber || field.path !== problem.path) return problem.message.replace(` (${problem.path})`, '');
  const { min = -Infinity, max = Infinity } = field;
  const value = problem.value;
  const outside = typeof value !== 'number' || value < min || value > max;
  const allowed = outside
    ? allowedWords(field, units)
    : problem.allowed.replace(NUMBER_AND_UNIT, (_, number: string, unit: string) =>
        formatQuantity(Number(number), unit, units, { hint: unit === field.unit ? field.path : '' }),
      );
  return `${field.title}: ${typeof value === 'number' ? valueWords(value, field, units) : 'this'} is not possible; ${allowed}.`;
}

export const problemsInWords = (problems: readonly Problem[], units: UnitSystem): string =>
  problems.map((problem) => problemWords(problem, units)).join(' ');
