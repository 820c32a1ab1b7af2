import { describe, expect, it } from 'vitest';
import { coolingChart } from '../../../src/charts/catalogue/cooling.ts';
import { condensingEnd } from '../../../src/charts/catalogue/condenser.ts';
import { captureWords, cutSizeFlag, dropDomain, dropsChart } from '../../../src/charts/catalogue/drops.ts';
import { oilChart } from '../../../src/charts/catalogue/oil.ts';
import { oilNames } from '../../../src/charts/catalogue/oil-names.ts';
import { recoveryChart } from '../../../src/charts/catalogue/recovery.ts';
import { temperaturesChart } from '../../../src/charts/catalogue/temperatures.ts';
import { captureByDropSize, englishReader, positionOf } from '../../../sim/index.ts';
import type { Chart } from '../../../src/charts/model/chart.ts';
import { endLabels } from '../../../src/charts/model/end-labels.ts';
import { flagsOf, timedWords } from '../../../src/charts/model/event-words.ts';
import { layOutChart } from '../../../src/charts/model/layout.ts';
import { colourOf, lightness, oilStep } from '../../../src/charts/model/palette.ts';
import { pixelOf, prepare, settleBounds, xAtPixel, type PreparedChart } from '../../../src/charts/model/prepare.ts';
import { readingWords, readKey, spokenReading } from '../../../src/charts/model/reading.ts';
import { readLine } from '../../../src/charts/model/sample.ts';
import { shapesOf } from '../../../src/charts/model/shapes.ts';
import { readingSteps, tickWords, timeTicks } from '../../../src/charts/model/time-axis.ts';
import { xTicks, xWords } from '../../../src/charts/model/x-axis.ts';
import { handMadeRun } from './hand-made-run.ts';
import { darkPalette, lightPalette } from './palettes.ts';

const result = handMadeRun();
const runs = [{ name: 'by hand', result }];
const preparedOf = (chart: Chart, width = 960): PreparedChart =>
  prepare(
    chart,
    layOutChart(chart, width, { left: 52, right: 152 }, 1),
    settleBounds(chart, 'metric'),
    [0, 540],
    'metric',
  );

describe('a reading', () => {
  it('lies on the straight line between two rows', () => {
    expect(readLine({ xs: [0, 60, 120], values: [10, 16, 40] }, 90)).toBe(28);
    expect(positionOf([0, 60, 120], 90)).toEqual({ row: 1, share: 0.5 });
  });

  it('holds the nearest end outside the run', () => {
    expect(readLine({ xs: [0, 60], values: [10, 16] }, -5)).toBe(10);
    expect(readLine({ xs: [0, 60], values: [10, 16] }, 500)).toBe(16);
    expect(readLine({ xs: [], values: [] }, 5)).toBe(NaN);
  });

  it('comes in words with its unit, for the eye and for the ear', () => {
    const chart = temperaturesChart(runs);
    const labels = endLabels(preparedOf(chart));
    const pot = labels.find(({ key }) => key === 'potTemperature_K');
    if (!pot) throw new Error('the pot has no name');
    expect(readingWords(chart, pot, 270, 'metric')).toBe('57.5\u202f°C');
    expect(spokenReading(chart, labels, 270, 'metric')).toContain('Pot 57.5\u202f°C');
  });

  it('shows a dash where there is no number', () => {
    const chart = temperaturesChart(runs);
    const label = endLabels(preparedOf(chart)).find(({ key }) => key === 'condensateTemperature_K');
    if (!label) throw new Error('the distillate has no name');
    expect(readingWords(chart, label, 0, 'metric')).toBe('–');
  });

  it('takes the rise of the cooling water from outlet and inlet', () => {
    expect(readKey(coolingChart(runs), 'rise', 540)).toBeCloseTo(27, 9);
  });
});

describe('names at the ends of lines', () => {
  it('stand in the middle of their layer of a stack, lighter layers below', () => {
    const prepared = preparedOf(oilChart(runs, oilNames(result.record.constituents)));
    const [limonene, acetate] = endLabels(prepared);
    const lane = prepared.lanes[0];
    if (!limonene || !acetate || !lane) throw new Error('the stack has no names');
    expect(limonene.label).toBe('d-limonene');
    expect(limonene.wantedY).toBeCloseTo(lane.yOf(0.003 / 800), 6);
    expect(acetate.wantedY).toBeCloseTo(lane.yOf((0.006 + 0.006) / 800), 6);
  });

  it('are two lines at most apart from each other and inside their lane', () => {
    const prepared = preparedOf(temperaturesChart(runs));
    const ys = endLabels(prepared).flatMap(({ y }) => (y === null ? [] : [y]));
    expect(ys).toHaveLength(6);
    const sorted = ys.toSorted((a, b) => a - b);
    sorted.forEach((y, index) => {
      const before = sorted[index - 1];
      if (before !== undefined) expect(y - before).toBeGreaterThanOrEqual(prepared.layout.line - 1e-9);
    });
  });
});

describe('a chart of two runs', () => {
  it('draws the run behind finely, in its own dash, without a name, and has room for both', () => {
    const hotter = handMadeRun({ coolantOut_K: [285.15, 362.15] });
    const chart = coolingChart([...runs, { name: 'before', result: hotter }]);
    const behind = chart.lanes[0]?.series.filter(({ run }) => run === 1) ?? [];
    expect(behind.map(({ key }) => key)).toEqual(['coolantIn_K', 'coolantOut_K']);
    expect(
      behind.every(({ labelled, dash, says }) => labelled === 'none' && dash.length > 0 && says.endsWith('(before)')),
    ).toBe(true);
    expect(settleBounds(chart, 'metric')['temperature °C']?.[1]).toBeGreaterThan(89);
  });
});

describe('recovery', () => {
  it('is what was collected as a share of what was in the charge', () => {
    expect(readKey(recoveryChart(runs), 'recovery', 540)).toBeCloseTo(0.9, 12);
  });

  it('has no line for a charge without oil', () => {
    const empty = { ...result, summary: { ...result.summary, oilInCharge_kg: 0 } };
    expect(recoveryChart([{ name: 'empty', result: empty }]).lanes[0]?.series).toEqual([]);
  });

  it('takes a band of likely runs and weighed points', () => {
    const times = Float64Array.of(0, 540);
    const band = { times, p10: Float64Array.of(0, 0.7), p50: Float64Array.of(0, 0.8), p90: Float64Array.of(0, 0.95) };
    const shapes = shapesOf(preparedOf(recoveryChart(runs, band, [{ x: 300, value: 0.41 }])));
    expect(shapes.map(({ kind }) => kind)).toEqual(['area', 'line', 'line', 'dots']);
  });
});

describe('the condenser at a moment', () => {
  it('flags where condensing ends', () => {
    expect(condensingEnd(result, 270, 'metric')).toMatchObject([
      { x: expect.closeTo(0.9, 9) as number, severity: 'note', words: 'condensing ends at 0.90\u202fm' },
    ]);
  });

  it('raises an alarm when the tube is too short, and says nothing before vapour comes', () => {
    const short = handMadeRun({ condensingLength_m: [0, 5] });
    expect(condensingEnd(short, 540, 'metric')[0]?.severity).toBe('alarm');
    expect(condensingEnd(result, 0, 'metric')).toEqual([]);
  });
});

describe('drop sizes at a moment', () => {
  const capture = captureByDropSize(result.scenario, result.record, 270);

  it('stack what is caught and what is lost to the whole of each size', () => {
    const [caught, lost] = dropsChart(capture).lanes[0]?.series ?? [];
    if (!caught || !lost) throw new Error('a layer is missing');
    capture.share.forEach((share, index) => {
      expect((caught.values[index] as number) + (lost.values[index] as number)).toBeCloseTo(share, 12);
      expect(lost.values[index]).toBeGreaterThanOrEqual(-1e-12);
    });
  });

  it('say what is caught of all, and from which size on all of it', () => {
    const [flag] = cutSizeFlag(capture, 'metric');
    expect(flag?.words).toBe('catches all over 50\u202fµm');
    expect(flag?.x).toBeCloseTo(Math.log10(5e-5), 9);
    const total =
      Number.parseInt(captureWords(capture, 'caught'), 10) + Number.parseInt(captureWords(capture, 'lost'), 10);
    expect(total).toBe(100);
  });

  it('lie on an axis from the smallest to the largest class', () => {
    const [low, high] = dropDomain(capture);
    expect(10 ** low).toBeCloseTo(capture.diameter_m[0] as number, 12);
    expect(high).toBeGreaterThan(low);
  });
});

describe('constituents of the oil', () => {
  it('come most volatile first, whatever their order in the record', () => {
    expect(oilNames(['beta_caryophyllene', 'linalool', 'alpha_pinene']).map(({ id }) => id)).toEqual([
      'alpha_pinene',
      'linalool',
      'beta_caryophyllene',
    ]);
  });

  it('keep an unknown id as it is, after the known ones', () => {
    expect(oilNames(['mystery', 'linalool'])).toEqual([
      { id: 'linalool', name: 'linalool' },
      { id: 'mystery', name: 'mystery' },
    ]);
  });

  it('have short names', () => {
    expect(oilNames(['cineole_1_8', 'alpha_pinene', 'camphor']).map(({ name }) => name)).toEqual([
      'α-pinene',
      '1,8-cineole',
      'camphor',
    ]);
  });

  it.each([
    ['light', lightPalette],
    ['dark', darkPalette],
  ])('run from light to dark in the %s theme', (_, palette) => {
    const steps = [0, 0.25, 0.5, 0.75, 1].map((share) => lightness(colourOf(palette, oilStep(share))));
    expect(steps).toEqual(steps.toSorted((a, b) => b - a));
    expect(new Set(steps).size).toBe(5);
  });
});

describe('event flags', () => {
  it('come in order of time, without the end of the run, alarms with a shape', () => {
    const flags = flagsOf(result.events, englishReader('metric'));
    expect(flags.map(timedWords)).toEqual(['boils 2\u202fmin', 'steam escapes 6\u202fmin 40\u202fs']);
    expect(flags[1]?.rank).toBeGreaterThan(flags[0]?.rank ?? Infinity);
  });
});

describe('the time axis', () => {
  it('has round times, no more than fit, and says them as people do', () => {
    expect(timeTicks(10_800, 8).map(tickWords)).toEqual([
      '0',
      '30\u202fmin',
      '1\u202fh',
      '1\u202fh\u202f30',
      '2\u202fh',
      '2\u202fh\u202f30',
      '3\u202fh',
    ]);
    expect(timeTicks(90, 3).map(tickWords)).toEqual(['0', '30\u202fs', '1\u202fmin', '1\u202fmin\u202f30']);
    expect(timeTicks(259_200, 8).length).toBeLessThanOrEqual(9);
  });

  it('is read in steps of about a hundredth of the run', () => {
    expect(readingSteps(10_800)).toEqual({ small: 60, large: 600 });
    expect(readingSteps(60)).toEqual({ small: 1, large: 10 });
  });

  it('turns pixels into times and back, and stays inside the run', () => {
    const prepared = preparedOf(temperaturesChart(runs));
    expect(xAtPixel(prepared, pixelOf(prepared, 123))).toBeCloseTo(123, 9);
    expect(xAtPixel(prepared, -40)).toBe(0);
    expect(xAtPixel(prepared, 5000)).toBe(540);
  });
});

describe('the other axes', () => {
  it('say metres or feet along the tube, and micrometres by decades', () => {
    expect(xTicks('tube', [0, 5], 400, 'metric').map(({ words }) => words)).toEqual([
      '0',
      '1\u202fm',
      '2\u202fm',
      '3\u202fm',
      '4\u202fm',
      '5\u202fm',
    ]);
    expect(xWords('tube', 1.524, 'us')).toBe('5.0\u202fft');
    expect(xTicks('drop', [-5, -3], 300, 'metric').map(({ words }) => words)).toEqual([
      '10\u202fµm',
      '100\u202fµm',
      '1000\u202fµm',
    ]);
  });
});
