import { describe, expect, it } from 'vitest';
import { readPoints } from '../../../sim/index.ts';

describe('pasted columns', () => {
  const two = [
    { time_s: 2400, oil_mL: 3.5 },
    { time_s: 3000, oil_mL: 8.1 },
  ];

  it.each([
    ['tabs and decimal points', 'time (min)\toil (mL)\n40\t3.5\n50\t8.1'],
    ['semicolons and decimal commas', 'time [min];oil [mL]\n40;3,5\n50;8,1'],
    ['commas', 'time (min), oil (mL)\r\n40, 3.5\r\n50, 8.1\r\n'],
    ['blanks', 'time_min oil_mL\n40 3,5\n50 8,1'],
    ['blanks in the headings too', 'time min   oil mL\n40 3.5\n50 8.1'],
    ['quotes', '"time (min)","oil (mL)"\n"40","3.5"\n"50","8.1"'],
    ['no headings: minutes and millilitres', '40 3.5\n50 8.1'],
    ['remarks, empty lines and the order of the day', '# second run\n\ntime (min);oil (mL)\n50;8.1\n\n40;3.5'],
    ['hours and minutes', 'time (h:mm);oil (mL)\n0:40;3.5\n0:50;8.1'],
    ['a clock in any time column', 'time (h);oil (mL)\n0:40;3.5\n0:50;8.1'],
    ['seconds and litres', 't (s)\toil (L)\n2400\t0.0035\n3000\t0.0081'],
  ])('may come with %s', (_, text) => {
    const { points, problems } = readPoints(text);
    expect(problems).toEqual([]);
    expect(points).toEqual(
      two.map(({ time_s, oil_mL }) => ({
        time_s: expect.closeTo(time_s, 9) as number,
        oil_mL: expect.closeTo(oil_mL, 9) as number,
      })),
    );
  });

  it.each([
    [
      'quotes round decimal commas',
      '"30,5","2,9"\n"40,5","3,1"',
      [
        [1830, 2.9],
        [2430, 3.1],
      ],
    ],
    [
      'notes with blanks and no headings',
      '30,2,first drops came\n40,3,clear',
      [
        [1800, 2],
        [2400, 3],
      ],
    ],
    [
      'notes between blanks',
      '30 2 first drops came\n40 3',
      [
        [1800, 2],
        [2400, 3],
      ],
    ],
    ['a separator within quotes', 'time (min),note,oil (mL)\n30,"hot, then cold",2', [[1800, 2]]],
    ['a line end within quotes', 'time (min);note;oil (mL)\n30;"hot\nthen cold";2', [[1800, 2]]],
    ['a byte-order mark', '\uFEFFtime (min);oil (mL)\n30;2,5', [[1800, 2.5]]],
    [
      'decimal commas with three digits, told by another cell',
      'time (min);oil (mL)\n30;0,500\n40;1,250',
      [
        [1800, 0.5],
        [2400, 1.25],
      ],
    ],
  ] as const)('may come with %s', (_, text, read) => {
    const { points, problems } = readPoints(text);
    expect(problems).toEqual([]);
    expect(points.map(({ time_s, oil_mL }) => [time_s, oil_mL])).toEqual(read);
  });

  it('are read as the reader says, where that differs from what they look like', () => {
    const reading = {
      columns: [{ column: 'oil_kg', unit: 'g' }, { column: 'time_s', unit: 'h' }, null],
      decimal: 'point',
    } as const;
    expect(readPoints('1,200;1.5;fine', reading).points).toEqual([{ time_s: 5400, oil_kg: 1.2 }]);
    expect(readPoints('1,200;1;fine', { ...reading, decimal: 'comma' }).points).toEqual([
      { time_s: 3600, oil_kg: expect.closeTo(0.0012, 12) as number },
    ]);
    expect(readPoints('1;2', { columns: [null, { column: 'oil_mL', unit: 'ml' }], decimal: 'point' }).problems).toEqual(
      [{ line: 1, kind: 'no-time-column' }],
    );
  });

  it('turn their units into those of the model', () => {
    const { points } = readPoints('time (h);oil (g);distillate (L);outlet (F);tub (°C)\n1;9;1.5;95;30');
    expect(points).toEqual([
      {
        time_s: 3600,
        oil_kg: expect.closeTo(0.009, 12) as number,
        distillate_kg: 1.5,
        outlet_K: expect.closeTo(308.15, 9) as number,
        tub_K: expect.closeTo(303.15, 9) as number,
      },
    ]);
    expect(readPoints('min;oil (fl oz);distillate (gal)\n10;1;1').points[0]).toMatchObject({
      oil_mL: expect.closeTo(29.5735, 3) as number,
      distillate_kg: expect.closeTo(3.7854, 3) as number,
    });
  });

  it('may leave cells empty and hold columns that mean nothing here', () => {
    expect(
      readPoints('time (min)\tweather\toil (mL)\toutlet (C)\n40\tsun\t3\t\n\train\t1\t\n50\tsun\t\t28').points,
    ).toEqual([
      { time_s: 2400, oil_mL: 3 },
      { time_s: 3000, outlet_K: 301.15 },
    ]);
  });

  it('name the columns that are passed over', () => {
    expect(readPoints('time (min)\tweather\toil (mL)\toutlt (C)\n40\tsun\t3\t30').passedOver).toEqual([
      'weather',
      'outlt (C)',
    ]);
    expect(readPoints('time (min);oil (mL)\n40;3').passedOver).toEqual([]);
    expect(readPoints('40;3').passedOver).toEqual([]);
  });
});

describe('what cannot be read', () => {
  const problems = (text: string) => readPoints(text).problems;

  it('is told line by line, and the rest is kept', () => {
    const text = 'time (min);oil (mL)\n10;1\n20;two\n;3\n30;\n-5;1\n40;4';
    expect(problems(text)).toEqual([
      { line: 3, kind: 'not-a-number', cell: 'two' },
      { line: 4, kind: 'time-missing' },
      { line: 5, kind: 'no-reading' },
      { line: 6, kind: 'below-zero', cell: '-5' },
    ]);
    expect(readPoints(text).points).toHaveLength(2);
  });

  it('names an unknown unit with those that are known', () => {
    expect(problems('time (min);oil (drops)\n10;3')[0]).toEqual({
      line: 1,
      kind: 'unknown-unit',
      unit: 'drops',
      heading: 'oil',
      known: ['ml', 'cm3', 'cc', 'l', 'floz', 'kg', 'g', 'oz', 'lb'],
    });
  });

  it('says when there is no time, no reading, nothing, or a heading twice', () => {
    expect(problems('weather;oil\n1;2')).toEqual([{ line: 1, kind: 'no-time-column' }]);
    expect(problems('time;weather\n1;2')).toEqual([{ line: 1, kind: 'no-reading-column' }]);
    expect(problems(' \n\n')).toEqual([{ line: 1, kind: 'nothing-to-read' }]);
    expect(problems('time;oil (mL);oil (mL)\n1;2;3')).toEqual([{ line: 1, kind: 'column-twice', column: 'oil_mL' }]);
  });

  it('is what may mean two things', () => {
    expect(problems('60,"1,234"')).toEqual([{ line: 1, kind: 'comma-in-doubt', cell: '1,234' }]);
    expect(problems('30,5,2,9')).toEqual([{ line: 1, kind: 'columns-unnamed', columns: 4 }]);
    expect(problems('time (min),oil (mL)\n30,5,2,9')).toEqual([
      { line: 2, kind: 'too-many-cells', cells: 4, columns: 2 },
    ]);
    expect(problems('30;5;20')).toEqual([{ line: 1, kind: 'columns-unnamed', columns: 3 }]);
  });

  it('takes no property of every object for a unit', () =>
    expect(problems('time (constructor);oil (mL)\n1;2')[0]).toMatchObject({ kind: 'unknown-unit' }));

  it('does not go below absolute zero', () =>
    expect(problems('time (min);tub (C)\n5;-300')).toEqual([{ line: 2, kind: 'below-absolute-zero', cell: '-300' }]));

  it('never throws, whatever is pasted', () => {
    for (const junk of [
      '\u0000\u0001',
      '(((',
      ';;;\n;;;',
      'time\n',
      'time time time',
      'oil'.repeat(5000),
      '1e999 2',
      '{"a":1}',
      '\t\t\t',
      'time (min)) oil ((mL\n1 2',
    ])
      for (const point of readPoints(junk).points)
        expect(Object.values(point).every((value) => typeof value === 'number')).toBe(true);
  });

  it('takes no reading that is not finite', () => {
    expect(problems('1e999 2')).toEqual([{ line: 1, kind: 'not-a-number', cell: '1e999' }]);
  });
});
