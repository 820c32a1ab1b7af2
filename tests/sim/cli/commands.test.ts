/** What each command answers, asked within the process; `process.test.ts` starts the program itself. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import {
  COLUMN_NAMES,
  englishReader,
  eventMessage,
  examples,
  exampleScenario,
  readScenario,
  simulate,
} from '../../../sim/index.ts';
import { answerTo } from '../../../sim/cli/answer.ts';
import { answered, complaints, ownFolder } from './asking.ts';

const { folder, written } = ownFolder();
const shortStill = { ...examples[0]?.scenario, run: { duration_s: 1800 } };
const short = written('short.json', JSON.stringify(shortStill));

describe('run', () => {
  it('prints the summary, events and balance that the model gives, with columns and grids on request', () => {
    const printed = answered(
      'run',
      short,
      '--series',
      '--with',
      'condenser.length_m=4',
      '--with',
      'cooling.flow_kg_s=0.02',
    ) as Record<string, Record<string, unknown>>;
    const read = readScenario({
      ...shortStill,
      condenser: { ...shortStill.condenser, length_m: 4 },
      cooling: { ...shortStill.cooling, flow_kg_s: [{ at_s: 0, value: 0.02 }] },
    });
    if (!read.ok) throw new Error('the scenario should be valid');
    const { summary, events, balance, record } = simulate(read.scenario);
    expect(printed['summary']).toEqual(JSON.parse(JSON.stringify(summary)));
    expect(printed['events']).toEqual(
      JSON.parse(
        JSON.stringify(events.map((event) => ({ ...event, ...eventMessage(event, englishReader('metric')) }))),
      ),
    );
    expect(printed['balance']).toEqual(JSON.parse(JSON.stringify(balance)));
    expect(Object.keys(printed['series'] as object)).toEqual(COLUMN_NAMES);
    expect(printed['series']?.['potTemperature_K']).toEqual(Array.from(record.columns.potTemperature_K));
    expect(printed['grids']?.['bedTemperature_K']).toMatchObject({ cells: record.grids.bedTemperature_K.cells });
    expect((printed['grids']?.['bedTemperature_K'] as { rows: number[][] }).rows).toHaveLength(record.rows);
  });

  it('gives null for times never reached, and a table with a heading line', () => {
    const file = written('minutes.json', JSON.stringify({ name: 'From a file', run: { duration_s: 300 } }));
    expect(answered('run', file)).toMatchObject({
      name: 'From a file',
      summary: { end_s: 300, firstBoil_s: null, t90_s: null },
    });
    const lines = answerTo(['run', file, '--csv']).split('\n');
    expect(lines[0]).toBe(COLUMN_NAMES.join(','));
    expect(lines).toHaveLength(32);
    expect(new Set(lines.map((line) => line.split(',').length))).toEqual(new Set([COLUMN_NAMES.length]));
  });

  it('names each mistake with path, value and allowed range', () => {
    const lines = complaints(
      'run',
      'gentle-lavender',
      '--with',
      'condenser.length_m=-3',
      '--with',
      'pot.colour=red',
      '--with',
      'heat.kind=sun',
    );
    expect(lines).toHaveLength(3);
    expect(lines.find((line) => line.includes('condenser.length_m'))).toMatch(/-3 .*allowed is 0\.05–100.m/);
    expect(lines.find((line) => line.includes('pot.colour'))).toMatch(/red/);
    expect(lines.find((line) => line.includes('heat.kind'))).toMatch(/sun.*electric-plate/);
  });

  it('refuses what is not JSON, and what is neither example nor file', () => {
    expect(complaints('run', written('broken.json', '{"name": '))).toEqual([
      expect.stringMatching(/broken\.json is not JSON: /),
    ]);
    expect(complaints('run', 'gentle-lavendel')).toEqual([
      expect.stringMatching(/neither an example nor a file; the closest example is “gentle-lavender”/),
    ]);
    expect(complaints('run', folder)).toEqual([expect.stringMatching(/can't be read \(EISDIR\)/)]);
  });
});

describe('size', () => {
  it('sizes the own tube and those asked for, to the limit and margin given', () => {
    const printed = answered(
      'size',
      short,
      '--json',
      '--tube',
      'en-1057-15x1',
      '--tube',
      'glass-10x1',
      '--outlet-limit',
      '30',
      '--margin',
      '0.1',
    ) as {
      outletLimit_C: number;
      margin: number;
      own: { typical_m: number; length_m: number; lengthWithMargin_m: number; verdict: string; decidedBy: string };
      atFullHeat: null;
      confidence: number;
      otherParts: {
        separator: { leastBore_m: number; sentence: string };
        tub: { typical_m3: number; sentence: string };
        heat: { ratedPower_W: number; sentence: string };
      };
      tubes: { id: string; verdict: string; sentence: string }[];
    };
    expect(printed).toMatchObject({ outletLimit_C: 30, margin: 0.1, own: { verdict: 'holds' } });
    // Both are rounded up to whole centimetres: by the margin, and by up to a centimetre more.
    expect(printed.own.lengthWithMargin_m).toBeCloseTo(Math.ceil(110 * printed.own.length_m - 1e-6) / 100, 9);
    expect(printed.own.length_m).toBeGreaterThan(1.1 * printed.own.typical_m);
    expect(printed.own.decidedBy.length).toBeGreaterThan(3);
    const { separator, tub, heat } = printed.otherParts;
    expect(separator.sentence).toContain(`${(1000 * separator.leastBore_m).toFixed(0)}\u202fmm inside`);
    expect(tub.sentence).toContain(`this run needs ${(1000 * tub.typical_m3).toFixed(0)}\u202fL`);
    expect(heat.sentence).toContain(`Yours of ${(heat.ratedPower_W / 1000).toFixed(1)}\u202fkW`);
    expect(printed.tubes.map(({ id, verdict }) => [id, verdict])).toEqual([
      ['en-1057-15x1', 'holds'],
      ['glass-10x1', 'cannot-be-coiled'],
    ]);
  });

  it('prints a table with units, and answers the inverse questions in sentences', () => {
    expect(answerTo(['size', short, '--own'])).toMatch(
      /nine runs of ten[^]*ends and cutting[^]*counts most[^]*Separator: [^]*Tub: [^]*Heat: [^]*default price[^]*tube +length m +as planned m +with margin m +turns +coil height mm +fits tub/,
    );
    expect(answerTo(['size', short, '--own', '--units', 'us'])).toMatch(
      /distillate at most 95\u202f°F[^]*in of 12 × 1 mm copper is enough[^]*tube +length ft .* coil height in .* mass lb/,
    );
    const lines = answerTo(['size', short, '--hardest-boil', '--least-water']).split('\n');
    expect(lines).toHaveLength(2);
    expect(answered('size', short, '--hardest-boil', '--least-water', '--json')).toMatchObject({
      hardestBoil: { kind: 'up-to', sentence: expect.stringMatching(/^Your coil can handle up to 3\.4/) as string },
      leastWater: { kind: 'none-needed', flow_kg_s: 0, sentence: lines[1], advice: null },
    });
  });

  it('takes prices of one’s own, and any share of the runs', () => {
    const prices = written(
      'prices.csv',
      'tube,price,sold by,length (m)\nen-1057-12x1,55,piece,10\nen-1057-15x1,8,metre,\n',
    );
    const printed = answered(
      'size',
      short,
      '--json',
      '--tube',
      'en-1057-15x1',
      '--prices',
      prices,
      '--confidence',
      '0.5',
      '--full-heat',
    ) as {
      own: { length_m: number; confidence: number; cost: object; sentence: string };
      atFullHeat: null;
      tubes: { toBuy_m: number; cost: { amount: number } }[];
    };
    expect(printed.own).toMatchObject({
      confidence: 0.5,
      cost: { amount: 55, basis: 'own', bought_m: 10 },
      sentence: expect.stringMatching(/full out .* in 50\u202f% of runs/) as string,
    });
    expect(printed.atFullHeat).toBe(null);
    const sheet = join(folder, 'sheet.svg');
    answerTo(['size', short, '--own', '--sheet', sheet]);
    expect(readFileSync(sheet, 'utf8')).toMatch(/^<svg [^]*data-dimension="tub-diameter"[^]*<\/svg>\n$/);
    expect(complaints('size', short, '--own', '--sheet', join(folder, 'nowhere', 'sheet.svg'))).toEqual([
      expect.stringMatching(/can't be written \(ENOENT\)/),
    ]);
    const [other] = printed.tubes;
    expect(other?.cost.amount).toBeCloseTo(8 * (other?.toBuy_m ?? 0), 9);
    const bad = written('bad.csv', 'tube,price,sold by\nno-such-tube,5,metre\n');
    expect(complaints('size', short, '--prices', bad)).toEqual([expect.stringMatching(/Line 2: “no-such-tube”/)]);
  });

  it('refuses a limit, a margin and a tube that are none', () => {
    for (const [flag, value, says] of [
      ['--confidence', '0.99', /0\.5 to 0\.95/],
      ['--outlet-limit', '95', /5 to 90 °C/],
      ['--margin', 'much', /0 to 5/],
      ['--margin', '', /0 to 5/],
      ['--tube', 'en-1057-12x2', /closest are en-1057-12x/],
    ] as const)
      expect(complaints('size', 'gentle-lavender', flag, value)).toEqual([expect.stringMatching(says)]);
    expect(complaints('size', 'gentle-lavender', '--json', '--table')).toEqual([
      'Only one of --json and --table can be given.',
    ]);
  });
});

describe('plan', () => {
  it('makes a still of a few answers, and says what was assumed', () => {
    const printed = answered(
      'plan',
      '--json',
      '--pot-L',
      '10',
      '--plant-kg',
      '0.5',
      '--heat',
      'immersion-element',
      '--heat-kW',
      '1.5',
      '--tub-L',
      '40',
    ) as { works: string; next: string[]; assumed: string[]; scenario: object; size: { length_m: number } };
    expect(printed.assumed).toEqual(['plant', 'tap_K', 'waterRuns', 'hose', 'altitude_m', 'tube']);
    expect(printed.next[0]).toMatch(/^Tube for the coil.*1\.5\u202fkW full out/);
    expect(readScenario(printed.scenario)).toMatchObject({
      ok: true,
      scenario: { condenser: { length_m: printed.size.length_m } },
    });
    expect(complaints('plan', '--heat', 'bonfire')).toEqual([expect.stringMatching(/--heat: “bonfire” is not known/)]);
    expect(complaints('plan', '--pot-L', '0')).toEqual([expect.stringMatching(/1 to 1000 L/)]);
    expect(complaints('plan', 'gentle-lavender')).toEqual([expect.stringMatching(/takes flags only/)]);
  });
});

describe('look-up', () => {
  it('prints the value with unit, range, source and equation, as text and as JSON', () => {
    expect(answerTo(['look-up', 'saturation-pressure', 'T=100C'])).toMatch(
      /^p_sat = 101417\.9\d* Pa\n[^]*273\.15 to 647\.096 K, in range[^]*source: IAPWS R7-97[^]*equation: /,
    );
    expect(answered('look-up', 'saturation-pressure', 'T=373.15', '--json')).toMatchObject({
      unit: 'Pa',
      inRange: true,
      symbol: 'p_sat',
    });
    expect(answerTo(['look-up', 'film-coefficient-chato-steam', 'T_sat=100C', 'T_wall=80C', 'D_i=0.06'])).toMatch(
      /D_i = 0\.06 m.*OUT OF RANGE[^]*out of range: D_i/,
    );
  });

  it('says what it takes when it is asked wrongly', () => {
    const lines = complaints('look-up', 'saturation-pressure', 'p=1');
    expect(lines).toHaveLength(2);
    expect(lines[0]).toMatch(/T is missing: T is the temperature in K, 273\.15 to 647\.096 K/);
    expect(complaints('look-up', 'saturation-pressure', 'T')).toEqual([expect.stringContaining('symbol=value')]);
    expect(complaints('look-up', 'saturation-pressure', 'T=300', 'T=310')).toEqual(['T is given twice.']);
    expect(complaints('look-up', '--search', 'zeppelin')).toEqual([
      expect.stringContaining('Nothing in the desk reference'),
    ]);
  });

  it('names everything, or what speaks of a word, with arguments, units and ranges', () => {
    const all = answered('look-up', '--list', '--json') as {
      name: string;
      arguments: Record<string, { unit: string; says: string }>;
    }[];
    expect(all.find(({ name }) => name === 'saturation-pressure')?.arguments['T']).toEqual({
      unit: 'K',
      says: 'temperature',
      range: [273.15, 647.096],
    });
    expect(answerTo(['look-up', '--search', 'lid force'])).toBe(
      'lid-force → F in N\n    Force on a round lid from the pressure under it.\n    D: diameter of the lid, m; no limits given\n    dp: pressure over the outside, Pa; 0 to 75000 Pa',
    );
  });
});

describe('list, schema and example', () => {
  it.each([
    'examples',
    'botanicals',
    'tubes',
    'vessels',
    'heat-sources',
    'materials',
    'constituents',
    'separators',
    'tubs',
    'circuits',
  ])('gives %s in full as JSON and short as a table', (name) => {
    const rows = answered('list', name, '--json') as { id: string }[];
    const table = answerTo(['list', name]).split('\n');
    expect(table[0]).toMatch(/^id +/);
    expect(table.slice(1).map((line) => line.split(' ')[0])).toEqual(rows.map(({ id }) => id));
  });

  it('suggests the list that was meant', () => {
    expect(complaints('list', 'tub')).toEqual([expect.stringContaining('did you mean tubs?')]);
  });

  it('prints a scenario that the program reads back as it is', () => {
    const printed = answered('example', 'class-glass');
    expect(printed).toEqual(exampleScenario('class-glass'));
    expect(readScenario(printed)).toEqual({ ok: true, scenario: exampleScenario('class-glass') });
    expect(complaints('example', 'glass')).toEqual([expect.stringContaining('did you mean class-glass?')]);
  });
});

describe('help', () => {
  it('is there for the program and for every command, with units', () => {
    expect(answerTo(['--help'])).toMatch(/look-up +any property/);
    for (const command of ['run', 'plan', 'size', 'predict', 'compare', 'fit', 'look-up', 'list', 'schema', 'example'])
      expect(answerTo([command, '--help'])).toMatch(new RegExp(`^limbeck ${command}[^]*SI units|kg|°C`));
    expect(answerTo(['size', '-h'])).toMatch(/--outlet-limit C +warmest distillate in °C/);
    expect(answerTo(['predict', '--help'])).toMatch(
      /share +so much of the oil that can come is collected: 0\.05 to 0\.999; 0\.9 when left out[^]*--runs N +draws, 0 to 100000; 100 when left out/,
    );
    expect(answerTo(['compare', '--help'])).toMatch(
      /^limbeck compare <scenario> <scenario>[^]*<scenario> --gentle-against-hard/,
    );
    expect(answerTo(['fit', '--help'])).toMatch(
      /--log file +columns with a line of headings[^]*oilContent,release when left out/,
    );
  });

  it('is what a missing or unknown command is answered with', () => {
    expect(complaints()[0]).toBe('A command is missing.');
    expect(complaints('distil')).toEqual([
      expect.stringContaining('“distil” is no command; there are run, plan, size'),
    ]);
  });
});
