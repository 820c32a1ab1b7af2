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
  const messages = (text: string) => readPoints(text).problems.map(({ line, message }) => `${line}: ${message}`);

  it('is told line by line, and the rest is kept', () => {
    const text = 'time (min);oil (mL)\n10;1\n20;two\n;3\n30;\n-5;1\n40;4';
    expect(messages(text)).toEqual([
      '3: Line 3: “two” is not a number.',
      '4: Line 4: the time is missing.',
      '5: Line 5: there is a time but no reading.',
      '6: Line 6: -5 is below zero.',
    ]);
    expect(readPoints(text).points).toHaveLength(2);
  });

  it('names an unknown unit with those that are known', () => {
    expect(messages('time (min);oil (drops)\n10;3')[0]).toBe(
      '1: Headings: the unit “drops” of “oil” is not known; known are ml, cm3, cc, l, floz, kg, g, oz, lb.',
    );
  });

  it('says when there is no time, no reading, nothing, or a heading twice', () => {
    expect(messages('weather;oil\n1;2')).toEqual(['1: Headings: no column is the time; call one “time (min)”.']);
    expect(messages('time;weather\n1;2')).toEqual([
      '1: Headings: no column is a reading; known are oil, distillate, outlet and tub.',
    ]);
    expect(messages(' \n\n')).toEqual(['1: Nothing to read: a line of headings is needed, then one line a reading.']);
    expect(messages('time;oil (mL);oil (mL)\n1;2;3')).toEqual([
      '1: Headings: two columns are oil_mL; the later one counts.',
    ]);
  });

  it('does not go below absolute zero', () =>
    expect(messages('time (min);tub (C)\n5;-300')).toEqual(['2: Line 2: -300 is below absolute zero.']));

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
    expect(messages('1e999 2')).toEqual(['1: Line 1: “1e999” is not a number.']);
  });
});
