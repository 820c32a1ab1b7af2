/** Finds units of the other system in the words of a page. */
import type { Page } from 'playwright-core';
import { tubes, type UnitSystem } from '../../sim/index.ts';

/**
 * Signs and words that mean a unit wherever they stand, signs that do so only behind a number or in brackets, and those
 * that must be joined to it without a breaking space: `0.06 in energy` is not a length.
 */
interface Marks {
  readonly anywhere: readonly string[];
  readonly behindNumber: readonly string[];
  readonly joined: readonly string[];
}

const MARKS: Readonly<Record<UnitSystem, Marks>> = {
  metric: {
    anywhere: [
      ...[
        '°C',
        'mm',
        'cm',
        'km',
        'kg',
        'g/L',
        'mL/kg',
        'kPa',
        'hPa',
        'MPa',
        'mbar',
        'L/min',
        'mL/min',
        'kg/h',
        'g/h',
        'm/s',
      ],
      ...['mm/s', 'kg/m³', 'kg/m', 'g/m', 'W/m', 'W/m²', 'kW/m²', 'W/(m K)', 'W/(m² K)', 'm²', 'cm²', 'm³', 'J/(kg K)'],
      ...['kJ/kg', 'W/K', 'Celsius', 'kelvin', 'litres?', 'liters?', 'met(re|er)s?', '(milli|centi)met(re|er)s?'],
      ...['(kilo|milli)?grams?', 'kilos?', '(kilo|hecto)?pascals?', '\\d+-litre'],
    ],
    behindNumber: ['m', 'g', 'L', 'Pa', 'bar', 'K', 'C'],
    joined: [],
  },
  us: {
    anywhere: [
      ...[
        '°F',
        'psi',
        'in H₂O',
        'in Hg',
        'lb',
        'lbf',
        'gal',
        'gal/min',
        'qt',
        'qt/h',
        'ft',
        'ft/s',
        'lb/h',
        'oz/h',
        'oz',
      ],
      ...['lb/ft³', 'lb/ft', 'W/ft', 'W/in²', 'ft²', 'ft³', 'in²', 'BTU[^ ]*', 'Fahrenheit', 'pounds?', 'ounces?'],
      ...['gallons?', 'quarts?', 'feet', 'inch(es)?'],
    ],
    behindNumber: ['F'],
    joined: ['in'],
  },
};

const escaped = (mark: string): string => mark.replace(/[/()]/gu, '\\$&');

const SEARCHES = Object.fromEntries(
  Object.entries(MARKS).map(([system, { anywhere, behindNumber, joined }]) => {
    const signs = anywhere.map((mark) => (mark.includes('?') || mark.includes('[') ? mark : escaped(mark))).join('|');
    const short = behindNumber.join('|');
    const every = [signs, ...behindNumber, ...joined].join('|');
    return [
      system,
      new RegExp(
        [
          `(?<![\\p{L}\\p{N}_:-])(?:${signs})(?![\\p{L}\\p{N}²³/])`,
          `\\d[ \\u00a0\\u202f]?(?:${short})(?![\\p{L}\\p{N}²³/’-])`,
          ...joined.map((mark) => `\\d[\\u00a0\\u202f]?${mark}(?![\\p{L}\\p{N}])`),
          `\\d[\\s\\u00a0\\u202f]?(?:${signs})(?![\\p{L}\\p{N}])`,
          `^(?:${every})$`,
          `\\((?:${every})\\)`,
        ].join('|'),
        'u',
      ),
    ];
  }),
) as Readonly<Record<UnitSystem, RegExp>>;

const OTHER: Readonly<Record<UnitSystem, UnitSystem>> = { metric: 'us', us: 'metric' };

/** A tube is called in the trade by the size of its standard, whoever buys it. */
const TRADE_NAMES = tubes.map(({ name }) => name).sort((a, b) => b.length - a.length);

const QUOTED = /“[^”]*”/gu;

/** Whether words speak in units that a reader of `system` did not choose; what the reader typed is quoted to them. */
export function hasForeignUnit(words: string, system: UnitSystem): boolean {
  const own = TRADE_NAMES.reduce((left, name) => left.replaceAll(name, ''), words.replaceAll(QUOTED, ''));
  return SEARCHES[OTHER[system]].test(own.trim());
}

/**
 * All that a page says just now, a text a line: what is seen, read out or shown on hovering. Equations and what is
 * quoted from a source stand as they were printed and are left out, and so are the choices of a unit and the names of keys.
 */
export const wordsOfPage = (page: Page, within = 'body'): Promise<readonly string[]> =>
  page.evaluate((root) => {
    const AS_PRINTED = '.katex, [data-as-printed], kbd';
    const found = new Set<string>();
    const add = (words: string | null) => {
      const text = (words ?? '').replaceAll(/[ \n\t\r]+/gu, ' ').trim();
      if (text !== '') found.add(text);
    };
    const walk = (node: Node) => {
      if (node instanceof Text) add(node.data);
      if (!(node instanceof Element)) return;
      if (node.matches(AS_PRINTED) || ['SCRIPT', 'STYLE'].includes(node.tagName)) return;
      if (node instanceof HTMLElement && !node.checkVisibility()) return;
      for (const name of ['aria-label', 'title', 'placeholder', 'alt', 'aria-valuetext', 'aria-description'])
        add(node.getAttribute(name));
      node.childNodes.forEach(walk);
    };
    const roots = document.querySelectorAll(root);
    if (roots.length === 0) throw new Error(`nothing on the page is ${root}`);
    roots.forEach(walk);
    return [...found];
  }, within);
