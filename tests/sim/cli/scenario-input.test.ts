import { beforeAll, describe, expect, it } from 'vitest';
import { chargeFromBotanical, exampleScenario } from '../../../sim/index.ts';
import { BadInput } from '../../../sim/cli/bad-input.ts';
import { predictCommand } from '../../../sim/cli/predict-command.ts';
import { fitCommand } from '../../../sim/cli/fit-command.ts';
import { runCommand } from '../../../sim/cli/run-command.ts';
import { fetchUnitsFor, scenarioFrom } from '../../../sim/cli/read-input.ts';
import { schemaCommand } from '../../../sim/cli/scenario-commands.ts';
import { cell, toJson, toTable } from '../../../sim/cli/print.ts';
import { ownFolder } from './asking.ts';
import { readScenario, simulate } from '../../../sim/index.ts';
import { counted, runTold } from '../../../sim/cli/progress.ts';

const { written } = ownFolder();

const complaintsOf = (ask: () => unknown): readonly string[] => {
  try {
    ask();
  } catch (error) {
    if (error instanceof BadInput) return error.lines;
    throw error;
  }
  return [];
};
const complaints = (source: string, ...assignments: string[]): readonly string[] =>
  complaintsOf(() => scenarioFrom(source, assignments));

describe('a field that is set', () => {
  it('takes numbers, words, null, and a bare number as a constant schedule', () => {
    const set = scenarioFrom('gentle-lavender', [
      'heat.setting=0.5',
      'pot.material=copper',
      'site.barometer_Pa=95000',
      'run.stopAtShare=null',
      'name=My still',
    ]);
    expect(set.heat.setting).toEqual([{ at_s: 0, value: 0.5, shape: 'step' }]);
    expect(set).toMatchObject({
      name: 'My still',
      pot: { material: 'copper' },
      site: { barometer_Pa: 95_000 },
      run: { stopAtShare: null },
    });
  });

  it('may lie inside a list or be a whole list', () => {
    const set = scenarioFrom('gentle-lavender', [
      'heat.setting.0.value=0.25',
      'cooling.flow_kg_s=[{"at_s":0,"value":0.01},{"at_s":60,"value":0.02}]',
    ]);
    expect(set.heat.setting[0]?.value).toBe(0.25);
    expect(set.cooling.flow_kg_s.map(({ value }) => value)).toEqual([0.01, 0.02]);
  });

  it('lets a change of heat wait for an event', () => {
    const { heat } = scenarioFrom('rosemary-jacket', ['heat.setting.1.after=first-drop', 'heat.setting.1.at_s=5 min']);
    expect(heat.setting[1]).toEqual({ at_s: 300, after: 'first-drop', value: 0.7, shape: 'step' });
    expect(complaints('rosemary-jacket', 'heat.setting.1.after=second-drop').join()).toContain('"first-drop"');
  });

  it('leaves the rest and the example itself as they are', () => {
    const before = exampleScenario('gentle-lavender');
    const set = scenarioFrom('gentle-lavender', ['condenser.length_m=7']);
    expect(set).toEqual({ ...before, condenser: { ...before.condenser, length_m: 7 } });
    expect(exampleScenario('gentle-lavender')).toEqual(before);
  });

  it('brings the figures of another plant, but for those set too', () => {
    const { charge } = scenarioFrom('gentle-lavender', ['charge.botanical=peppermint', 'charge.oilContent=0.02']);
    expect(charge).toMatchObject({
      ...chargeFromBotanical('peppermint'),
      oilContent: 0.02,
      mass_kg: exampleScenario('gentle-lavender').charge.mass_kg,
    });
  });

  it('is refused by name when it is not there, not a path or out of range', () => {
    expect(complaints('gentle-lavender', 'pot.depth_m=1')).toEqual([expect.stringContaining('pot.depth_m')]);
    expect(complaints('gentle-lavender', 'pot.diameter_m.x=1')).toEqual([
      expect.stringContaining('pot.diameter_m.x is not a field'),
    ]);
    expect(complaints('gentle-lavender', 'heat.setting.9.value=1')).toEqual([
      expect.stringContaining('counted from 0'),
    ]);
    expect(complaints('gentle-lavender', '__proto__.polluted=1')).toEqual([expect.stringContaining('is not a field')]);
    expect(complaints('gentle-lavender', 'length')).toEqual([
      expect.stringContaining('a path, “=” and a value are needed'),
    ]);
    expect(complaints('gentle-lavender', 'pot.diameter_m=9')).toEqual([
      expect.stringMatching(/pot\.diameter_m\): 9 .* 0\.05–1\.5.m/),
    ]);
  });
});

describe('a field that is typed with a unit', () => {
  beforeAll(() => fetchUnitsFor(['condenser.length_m=2 furlongs']));

  it('is read in any unit, and as a sum or a product; bare numbers are in SI', () => {
    const set = scenarioFrom('gentle-lavender', [
      'condenser.length_m=3/8 in + 3 m',
      'charge.mass_kg=2 * 0.75 kg',
      'pot.diameter_m=0.3 + 0.02',
      'site.airTemperature_K=68 °F',
      'heat.setting=50 %',
      'cooling.flow_kg_s.0.value=2 gpm',
      'run.stopAtShare=open',
    ]);
    expect(set).toMatchObject({
      condenser: { length_m: 3.009525 },
      charge: { mass_kg: 1.5 },
      pot: { diameter_m: 0.32 },
      site: { airTemperature_K: 293.15 },
      heat: { setting: [{ at_s: 0, value: 0.5 }] },
      run: { stopAtShare: null },
    });
    expect(set.cooling.flow_kg_s[0]?.value).toBeCloseTo((2 * 3.785412) / 60, 6);
  });

  it('may have its moments typed too', () => {
    const { heat } = scenarioFrom('gentle-lavender', [
      'heat.setting=[{"at_s":0,"value":1},{"at_s":600,"value":0.5}]',
      'heat.setting.1.at_s=1 h + 10 min',
    ]);
    expect(heat.setting.map(({ at_s }) => at_s)).toEqual([0, 4200]);
  });

  it('is refused by name with the part that does not fit and what is allowed', () => {
    expect(complaints('gentle-lavender', 'pot.diameter_m=120 mm + 2 kg')).toEqual([
      expect.stringMatching(
        /^--with: .* \(pot\.diameter_m\): “120 mm \+ 2 kg” can't be read: “2 kg” is not a length; allowed is 50–1500.mm\.$/u,
      ),
    ]);
    expect(complaints('gentle-lavender', 'pot.diameter_m=2 m')).toEqual([
      expect.stringMatching(/\(pot\.diameter_m\): 2000.mm is too much; allowed is 50–1500.mm\.$/u),
    ]);
    expect(complaints('gentle-lavender', 'pot.diameter_m=process.exit()')).toEqual([
      expect.stringContaining('no number could be read'),
    ]);
  });
});

describe('hostile input', () => {
  it('is refused in a few printable lines', () => {
    const many = Object.fromEntries(Array.from({ length: 5000 }, (_, key) => [`key${key}\u001B[31m`, key]));
    const lines = complaintsOf(() => runCommand([written('many.json', JSON.stringify(many))]));
    expect(lines).toHaveLength(21);
    expect(lines.at(-1)).toBe('… and 4980 more.');
    expect(lines.join('')).not.toMatch(/\p{Cc}/u);
    const deep = `${Array.from({ length: 20_000 }, () => 'a').join('.')}=1`;
    expect(complaints('gentle-lavender', deep)).toEqual([expect.stringMatching(/^--with: [a.]{80} is not a field/)]);
    expect(
      complaintsOf(() => fitCommand(['gentle-lavender', '--log', written('long.csv', 'x;y\n'.repeat(60_000))])),
    ).not.toEqual([]);
  });

  it('does not include a byte-order mark', () => {
    const file = written('marked.json', `\uFEFF${JSON.stringify({ run: { duration_s: 60 } })}`);
    expect(scenarioFrom(file, []).run.duration_s).toBe(60);
  });
});

describe('the schema', () => {
  it('states unit and source of every field', () => {
    interface Node {
      readonly properties?: Record<string, Node>;
      readonly items?: Node;
      readonly unit?: string;
      readonly source?: string;
      readonly title?: string;
    }
    const silent: string[] = [];
    const walk = (path: string, node: Node): void => {
      if (node.properties) for (const [key, child] of Object.entries(node.properties)) walk(`${path}.${key}`, child);
      else if (!node.unit || !node.source) silent.push(path);
      if (node.items) walk(`${path}[]`, node.items);
    };
    walk('', JSON.parse(schemaCommand([])) as Node);
    expect(silent).toEqual([]);
  });
});

describe('flags', () => {
  it('that are unknown or lack their value are named', () => {
    expect(() => runCommand(['gentle-lavender', '--fast'])).toThrow(
      "Unknown option '--fast'; there are --csv, --help, --json, --series, --summary, --table, --units, --with.",
    );
    expect(() => runCommand(['gentle-lavender', '--with'])).toThrow(/--with/);
    expect(() => predictCommand(['gentle-lavender', '--seed', '-1'])).toThrow(
      /'--seed' argument is ambiguous.*use '--seed=-XYZ'\. “--help” lists the flags\.$/,
    );
    expect(() => predictCommand(['gentle-lavender', '--seed', '1', '--seed', '2'])).toThrow(
      '--seed can only be given once.',
    );
    expect(() => runCommand([])).toThrow(/scenario is missing/);
    expect(() => runCommand(['gentle-lavender', 'clove-buds'])).toThrow(/Only one scenario/);
  });
});

describe('printing', () => {
  it('keeps lists of numbers in one line and writes null for what JSON has no word for', () => {
    const text = toJson({ a: Float64Array.of(1, Number.NaN), b: [{ c: [] }], d: undefined, e: {} });
    expect(text).toBe('{\n  "a": [1, null],\n  "b": [\n    {\n      "c": []\n    }\n  ],\n  "e": {}\n}');
  });

  it('gives every sentence of a list a line of its own', () => {
    expect(toJson({ a: ['so', 1], b: ['It boils.', 'And drips on.'] })).toBe(
      '{\n  "a": ["so", 1],\n  "b": [\n    "It boils.",\n    "And drips on."\n  ]\n}',
    );
  });

  it('sets numbers to the right and says nothing with a dash', () => {
    expect(
      toTable(
        ['what', 'm', 'so'],
        [
          ['one', cell(1.23456), cell(null)],
          ['two', cell(12), cell(true)],
        ],
      ),
    ).toBe('what     m  so\none   1.23  –\ntwo     12  yes');
  });
});

describe('a count of what is done', () => {
  const written: string[] = [];
  const onto = (isTTY: boolean) => ({ isTTY, write: (text: string) => written.push(text) });

  it('is told to whoever watches a terminal, and wiped at the end', () => {
    expect(counted(2, 'runs', (index) => 10 * index, onto(true))).toEqual([0, 10]);
    expect(written.splice(0)).toEqual(['\r\u001B[K0 of 2 runs', '\r\u001B[K1 of 2 runs', '\r\u001B[K']);
    expect(() => counted(2, 'runs', () => JSON.parse('{') as unknown, onto(true))).toThrow(SyntaxError);
    expect(written.splice(0).at(-1)).toBe('\r\u001B[K');
  });

  it('is told to no file and no pipe', () => {
    expect(counted(2, 'runs', (index) => index, onto(false))).toEqual([0, 1]);
    expect(counted(1, 'runs', (index) => index, { write: (text: string) => written.push(text) })).toEqual([0]);
    expect(written).toEqual([]);
  });
});

describe('a run that takes long', () => {
  const scenarioOf = (advanced: object) => {
    const read = readScenario({ run: { duration_s: 60_000, stopAtDistillate_kg: 0.1 }, advanced });
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    return read.scenario;
  };
  const costly = scenarioOf({ step_s: 0.1, recordEvery_s: 600, segments: 5, bedLayers: 1, tubLayers: 1 });
  const quick = scenarioOf({ step_s: 10 });

  it('says how long and how far to whoever watches a terminal, and is the same run', () => {
    const written: string[] = [];
    const told = runTold(costly, { isTTY: true, write: (text: string) => written.push(text) });
    expect(written[0]).toBe('\r\u001B[Ka run of about 4\u202fs: 0 % done');
    expect(written[1]).toBe('\r\u001B[Ka run of about 4\u202fs: 2 % done');
    expect(written.at(-1)).toBe('\r\u001B[K');
    expect(told.summary).toEqual(simulate(costly).summary);
  });

  it('is told to no file, and a quick one to nobody', () => {
    const written: string[] = [];
    const write = (text: string) => written.push(text);
    runTold(costly, { write });
    runTold(quick, { isTTY: true, write });
    expect(written).toEqual([]);
  });
});
