/** What is wrong with an input, in English. */
import type { NeededType, ProblemKind, ProblemValues } from '../../scenario/problem.ts';

/** How the numbers of one field are written. */
export interface FieldFigures {
  readonly range: (min: number, max: number) => string;
  /** A lower limit of the field. */
  readonly least: (value: number) => string;
  /** An upper limit of the field. */
  readonly most: (value: number) => string;
  /** A time after the heat goes on, s. */
  readonly at: (time_s: number) => string;
  readonly option: (id: string) => string;
  /** What is added to a range where the field may be left open. */
  readonly orOpen: string;
}

const NEEDED: Readonly<Record<NeededType, string>> = {
  object: 'fields in braces are needed',
  list: 'a list is needed',
  text: 'a text is needed',
  truth: 'true or false is needed',
};

const ALLOWED: { readonly [K in ProblemKind]: (values: ProblemValues[K], figures: FieldFigures) => string } = {
  'not-a-scenario': () => 'a JSON object with the fields of a scenario is needed',
  'other-version': ({ version }) => `this program reads version ${version}`,
  'unknown-field': () => 'no field has this name',
  'not-a-number': ({ min, max, orOpen }, figures) =>
    min === undefined || max === undefined
      ? 'a number is needed'
      : `allowed is ${figures.range(min, max)}${orOpen ? figures.orOpen : ''}`,
  'outside-range': ({ min, max, orOpen }, figures) =>
    `allowed is ${figures.range(min, max)}${orOpen ? figures.orOpen : ''}`,
  'below-least': ({ least }, { least: said }) => `at least ${said(least)} is needed`,
  'above-most': ({ most }, { most: said }) => `at most ${said(most)} is allowed`,
  'not-an-option': ({ options }, { option }) => `allowed is ${options.map(option).join(', ')}`,
  'other-type': ({ needed }) => NEEDED[needed],
  'too-few-entries': ({ least }) => `at least ${least} ${least === 1 ? 'entry is' : 'entries are'} needed`,
  'too-many-entries': ({ most }) => `at most ${most} entries are allowed`,
  'too-long-a-text': ({ most }) => `at most ${most} characters are allowed`,
  'schedule-begins-late': () => 'the first entry must be at the start, 0 s',
  'schedule-out-of-order': ({ before_s }, { at }) => `it must be later than the entry before it (${at(before_s)})`,
  'schedule-phases-out-of-order': () =>
    'entries must stand in the order of what they count from: the start, first-boil, first-drop',
  'unknown-botanical': () => 'the name of a plant of the library is needed, or “own”',
  'unknown-constituent': () => 'the name of a known oil constituent is needed',
  'constituent-twice': () => 'each constituent may stand once',
  'shares-not-whole': (_, { most }) => `the shares must add up to ${most(1)}`,
  'bore-not-within-tube': ({ outside_m }, { most }) => `it must be less than the outside diameter, ${most(outside_m)}`,
  'jacket-too-narrow': ({ least_m }, { least }) => `it must be at least ${least(least_m)} to hold the tube or tubes`,
  'turns-too-close': ({ least_m }, { least }) => `it must be at least the tube's outside diameter, ${least(least_m)}`,
  'coil-too-tight': ({ least_m }, { least }) =>
    `it must be at least twice the tube's outside diameter, that is ${least(least_m)}`,
  'rise-longer-than-neck': ({ most_m }, { most }) => `it must be at most the neck length, ${most(most_m)}`,
  'inlet-below-separator': ({ below_m }, { most }) => `it must be less than the separator height, ${most(below_m)}`,
  'grid-above-pot': ({ below_m }, { most }) => `it must be less than the pot height, ${most(below_m)}`,
  'charge-too-large': ({ most_kg }, { most }) => `the pot holds at most ${most(most_kg)} of plant, packed as it is`,
  'pot-too-full': ({ most_kg }, { most }) => `water and charge together must stay below ${most(most_kg)} in this pot`,
  'boiler-too-full': ({ most_kg }, { most }) => `the boiler holds at most ${most(most_kg)}`,
  'water-above-grid': ({ most_kg }, { most }) => `at most ${most(most_kg)} fits under the grid`,
  'takes-too-long': ({ least_s }, { least }) =>
    `a run this long, with so many layers and segments, needs steps of at least ${least(least_s)}, or it takes too long to calculate`,
};

export const problems = () => ({
  sentence: (name: string, value: string, allowed: string) => `${name}: ${value} is not possible; ${allowed}.`,
  wholeFile: 'The scenario',
  /** Where there is no value. */
  nothing: 'nothing',
  /** A value that is no number or text. */
  something: 'this',
  /** Added to a range where the field may be left open, on the page and in a file. */
  orEmpty: ', or leave it empty',
  orNull: ', or null',
  allowed: ALLOWED,
});
