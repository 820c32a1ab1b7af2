import { describe, expect, it } from 'vitest';
import { englishReader } from '../../../sim/index.ts';
import { bedChart } from '../../../src/charts/catalogue/bed.ts';
import {
  condenserChart,
  condenserExtents,
  condensingEnd,
  tubeLength,
} from '../../../src/charts/catalogue/condenser.ts';
import { coolingChart } from '../../../src/charts/catalogue/cooling.ts';
import { oilChart } from '../../../src/charts/catalogue/oil.ts';
import { oilNames } from '../../../src/charts/catalogue/oil-names.ts';
import { temperaturesChart } from '../../../src/charts/catalogue/temperatures.ts';
import { csvOf } from '../../../src/charts/export/csv.ts';
import { chartPicture } from '../../../src/charts/export/chart-svg.ts';
import { chartTable, thinnedRows } from '../../../src/charts/export/data-table.ts';
import { energyPicture, energyTable } from '../../../src/charts/export/energy-svg.ts';
import { element, words } from '../../../src/charts/export/svg-markup.ts';
import type { Chart } from '../../../src/charts/model/chart.ts';
import type { Domain } from '../../../src/charts/model/domain.ts';
import { endLabels } from '../../../src/charts/model/end-labels.ts';
import { energyLedger } from '../../../src/charts/model/energy-ledger.ts';
import { flagsOf, type Flag } from '../../../src/charts/model/event-words.ts';
import { layOutChart } from '../../../src/charts/model/layout.ts';
import { prepare, settleBounds } from '../../../src/charts/model/prepare.ts';
import type { UnitSystem } from '../../../sim/units/index.ts';
import { handMadeRun, ROWS } from './hand-made-run.ts';
import { lightPalette } from './palettes.ts';
import { tagsOf } from './well-formed.ts';

const result = handMadeRun();
const runs = [{ name: result.scenario.name, result }];
const END_s = 540;

function pictureOf(chart: Chart, xDomain: Domain, flags: readonly Flag[], system: UnitSystem = 'metric'): string {
  const prepared = prepare(
    chart,
    layOutChart(chart, 960, { left: 56, right: 184 }, 1),
    settleBounds(chart, system),
    xDomain,
    system,
  );
  return chartPicture({
    prepared,
    labels: endLabels(prepared),
    flags,
    palette: lightPalette,
    system,
    subtitle: 'Tern Hollow',
    readAt: xDomain[1],
  });
}

const pictures: Record<string, () => string> = {
  temperatures: () => pictureOf(temperaturesChart(runs), [0, END_s], flagsOf(result.events, englishReader('metric'))),
  cooling: () => pictureOf(coolingChart(runs), [0, END_s], flagsOf(result.events, englishReader('metric'))),
  oil: () =>
    pictureOf(
      oilChart(runs, oilNames(result.record.constituents)),
      [0, END_s],
      flagsOf(result.events, englishReader('metric')),
    ),
  bed: () => pictureOf(bedChart(runs, 0.18), [0, END_s], flagsOf(result.events, englishReader('metric'))),
  condenser: () =>
    pictureOf(
      condenserChart(runs, condenserExtents(result), 300),
      [0, tubeLength(result)],
      condensingEnd(result, 300, 'metric'),
    ),
  energy: () => energyPicture(energyLedger(result.record, END_s), lightPalette, 'metric', 'Tern Hollow'),
};

describe.each(Object.entries(pictures))('the exported picture of %s', (_, draw) => {
  const svg = draw();

  it('is well-formed and has one root, a title and a description', () => {
    const tags = tagsOf(svg);
    expect(tags[0]).toBe('svg');
    expect(tags.filter((tag) => tag === 'title')).toHaveLength(1);
    expect(tags.filter((tag) => tag === 'desc')).toHaveLength(1);
  });

  it('stands alone: colours resolved, a fallback face named, no link to anything', () => {
    expect(svg).toContain('xmlns="http://www.w3.org/2000/svg"');
    expect(svg).not.toMatch(/var\(|currentcolor|class="chart|url\(|href/iu);
    expect(svg).toMatch(/font-family="[^"]*sans-serif"/u);
    expect(svg).toContain(lightPalette.paper);
  });

  it('holds no number that is not one', () => {
    expect(svg).not.toMatch(/NaN|Infinity|undefined/u);
  });
});

describe('what stands in an exported picture', () => {
  it('is units on the axes, names with their last values, and flags', () => {
    const svg = pictures['temperatures']?.() ?? '';
    expect(svg).toContain('>°C<');
    expect(svg).toContain('>Pot<');
    expect(svg).toContain('>100.0\u202f°C<');
    expect(svg).toContain('>steam escapes 6\u202fmin 40\u202fs<');
    // An alarm is told by a shape, drawn, as well as by its colour.
    expect(svg).toMatch(/<path d="M[\d.]+,7h8L[\d.]+,0Z"/);
    expect(svg).toContain('Tern Hollow');
  });

  it('follows the unit system', () => {
    const svg = pictureOf(temperaturesChart(runs), [0, END_s], [], 'us');
    expect(svg).toContain('>°F<');
    expect(svg).toContain('>212.0\u202f°F<');
    expect(svg).not.toContain('°C');
  });

  it('is escaped, so that a name may hold any sign', () => {
    expect(element('text', { 'data-name': 'a"b<c' }, words('Tom & <Co>'))).toBe(
      '<text data-name="a&quot;b&lt;c">Tom &amp; &lt;Co&gt;</text>',
    );
  });
});

describe('the CSV file of a chart', () => {
  const lines = csvOf(chartTable(temperaturesChart(runs), 'metric')).split('\n');

  it('has a header with units and one line for every row of the record', () => {
    expect(lines[0]).toBe(
      'Time (min),Cooling in (°C),Tub mean (°C),Water out (°C),Distillate (°C),Vapour (°C),Pot (°C)',
    );
    expect(lines).toHaveLength(1 + ROWS + 1);
    expect(lines.at(-1)).toBe('');
  });

  it('holds the real numbers in the unit shown', () => {
    expect(lines[ROWS]).toBe('9,12,27,39,29,99,100');
    const us = csvOf(chartTable(temperaturesChart(runs), 'us')).split('\n');
    expect(us[ROWS]).toBe('9,53.6,80.6,102.2,84.2,210.2,212');
  });

  it('leaves a field empty where there is no number: no distillate, no temperature of it', () => {
    expect(lines[1]).toBe('0,12,12,12,,20,15');
  });

  it('quotes names that hold a comma', () => {
    const table = chartTable(oilChart(runs, [{ id: 'linalyl_acetate', name: '1,8-cineole' }]), 'metric');
    expect(csvOf(table).split('\n')[0]).toBe('Time (min),"1,8-cineole (mL)",Oil rate (mL/h)');
  });

  it('gives a derived reading its own column: the rise is a difference, not a temperature', () => {
    const table = chartTable(coolingChart(runs), 'us');
    const rise = table.columns.find(({ title }) => title === 'Rise');
    expect(rise?.unit).toBe('°F');
    expect(rise?.values[ROWS - 1]).toBeCloseTo(27 * 1.8, 9);
  });

  it('gives words their own columns in the energy flow, and shares that add up', () => {
    const table = energyTable(energyLedger(result.record, END_s), 'metric');
    const [header, first] = csvOf(table).split('\n');
    expect(header).toBe('From,To,Energy (kWh),Share of the fuel (%)');
    expect(first).toBe('Fuel or current,Into the still,0.2083333,75');
  });
});

describe('a table on the page', () => {
  it('shows all rows of a short run, and of a long one a choice with both ends', () => {
    expect(thinnedRows(3, 25)).toEqual([0, 1, 2]);
    const rows = thinnedRows(1081, 25);
    expect(rows).toHaveLength(25);
    expect(rows[0]).toBe(0);
    expect(rows.at(-1)).toBe(1080);
    expect(new Set(rows).size).toBe(25);
  });
});
