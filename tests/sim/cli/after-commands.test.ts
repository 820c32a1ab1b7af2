/** The commands before and after the still give the numbers of the page. */
import { describe, expect, it } from 'vitest';
import {
  drying,
  fading,
  filmOfOils,
  findBotanical,
  hydrosolLife,
  judgeDilution,
  keeping,
  leftToBottle,
  planBottles,
  USUAL_SURFACES,
} from '../../../sim/index.ts';
import { answered, complaints } from './asking.ts';

const asked = (...args: string[]) => answered(...args) as Readonly<Record<string, unknown>>;

describe('plant', () => {
  it('begins with the deadly look-alikes', () => {
    const { lookAlikes, oil_mL_kg } = asked('plant', 'sage') as unknown as {
      lookAlikes: readonly { severity: string; plant: string }[];
      oil_mL_kg: { fresh: { typical: number } };
    };
    expect(lookAlikes[0]).toMatchObject({ severity: 'deadly' });
    expect(lookAlikes[0]?.plant).toMatch(/foxglove/u);
    expect(oil_mL_kg.fresh.typical).toBeCloseTo(4, 6);
  });

  it('speaks in the units that are asked for', () => {
    expect(asked('plant', 'oregano')['cutting']).not.toMatch(/\{/u);
    expect(asked('plant', 'sage', '--units', 'us')['wilting']).toMatch(/°F/u);
  });

  it('tells of an unknown plant what must never be distilled', () => {
    const lines = complaints('plant', 'hemlock');
    expect(lines[0]).toMatch(/not a plant of the library/u);
    expect(lines.join(' ')).toMatch(/Never distil yew/u);
  });
});

it('quantity gives the plant, batches and garden for a wanted amount of oil', () => {
  const found = asked('quantity', 'lavender-true', '--oil', '50', '--chamber', '20') as unknown as {
    plant_kg: { typical: number };
    batches: { typical: number };
  };
  expect(found.plant_kg.typical).toBeCloseTo(5.73, 2);
  expect(found.batches.typical).toBe(2);
  expect(complaints('quantity', 'lavender-true')[0]).toMatch(/either --oil mL/u);
  expect(complaints('quantity', 'clove-bud', '--oil', '5', '--state', 'fresh')[0]).toMatch(/nothing is known/u);
});

it('bottle takes off what filter and salt keep', () => {
  const found = asked('bottle', 'orange-peel', '--oil', '25', '--filter', 'paper', '--dried') as unknown as {
    left_m3: number;
    bottles: { full: number };
  };
  const orange = findBotanical('orange-peel').composition.value.map(({ constituent, massFraction }) => ({
    constituent,
    share: massFraction,
  }));
  const { left_m3 } = leftToBottle(25e-6, 'paper', drying(orange, 25e-6, 298.15));
  expect(left_m3).toBeCloseTo(25e-6 - 0.65e-6 - (25e-6 * (20 * 0.3e-3 + 50 * 0.5e-3)) / 2, 12);
  expect(found.left_m3 / left_m3).toBeCloseTo(1, 6);
  expect(found.bottles.full).toBe(planBottles(left_m3, 10e-6, 0.95, 288.15).full);
  expect(complaints('bottle', 'orange-peel', '--filter', 'sock')[0]).toMatch(/none, cotton, paper/u);
});

it('bottle plans bottles and says how long oil and hydrosol keep', () => {
  const found = asked('bottle', 'orange-peel', '--oil', '25', '--bottle', '10', '--kept-at', '5', '--opened-often');
  const close = (value: number) => expect.closeTo(value, 6 - Math.ceil(Math.log10(Math.abs(value)))) as number;
  const { full, last_m3 } = planBottles(25e-6, 10e-6, 0.95, 278.15);
  expect(found['bottles']).toMatchObject({ full, last_m3: close(last_m3) });
  expect(found['keeping']).toMatchObject({ life_s: close(keeping('orange-peel', 278.15, true).life_s) });
  expect(found['hydrosol']).toMatchObject({ kitchen_s: close(hydrosolLife('kitchen', 278.15)) });
});

it('dilute says what exceeds which limit, as the page does', () => {
  const found = asked('dilute', '--oil', 'lavender-true=3', '--oil', 'clove-bud', '--strength', '4', '--use', 'face');
  const composition = (id: string) =>
    findBotanical(id).composition.value.map(({ constituent, massFraction }) => ({ constituent, share: massFraction }));
  const verdict = judgeDilution(
    [
      { botanical: 'lavender-true', composition: composition('lavender-true'), share: 0.03 },
      { botanical: 'clove-bud', composition: composition('clove-bud'), share: 0.01 },
    ],
    'face',
  );
  const findings = found['findings'] as readonly { readonly kind: string; readonly sentence: string }[];
  expect(findings.map(({ kind }) => kind)).toEqual(verdict.findings.map(({ kind }) => kind));
  expect(found['lead']).toMatch(/Too strong on the face/u);
  expect(complaints('dilute')[0]).toMatch(/At least one --oil/u);
  expect(complaints('dilute', '--oil', 'lavender-true', '--use', 'nose')[0]).toMatch(/there are body, face/u);
});

it('blend fades by the exact solution, and sooner as a real mixture', () => {
  const two = ['blend', '--oil', 'lavender-true=2', '--oil', 'orange-peel=1', '--until', '7200'];
  const ideal = asked(...two) as unknown as { half_s: number; times: readonly { time_s: number; left: number }[] };
  expect(ideal.half_s).toBeGreaterThan(300);
  expect(ideal.times[0]?.left).toBeGreaterThan(0.95);
  expect(ideal.times.at(-1)?.time_s).toBeCloseTo(7200, 6);
  const real = asked(...two, '--real') as unknown as typeof ideal;
  expect(real.half_s).toBeLessThan(ideal.half_s);
  const at = (of: typeof ideal, time_s: number) => of.times.find((each) => each.time_s > time_s)?.left ?? 0;
  expect(at(real, 900)).toBeLessThan(at(ideal, 900));
  // As the page has it: by volume, on the axis of its picture.
  const oil = (id: string, parts: number) => ({
    parts,
    composition: findBotanical(id).composition.value.map(({ constituent, massFraction }) => ({
      constituent,
      share: massFraction,
    })),
  });
  const film = filmOfOils([oil('lavender-true', 2), oil('orange-peel', 1)], 1, USUAL_SURFACES.paper);
  if (!film) throw new Error('no oil');
  const { half_s } = asked(...two.slice(0, 5), '--real') as unknown as typeof ideal;
  expect(half_s / fading(film, true).summary.half_s).toBeCloseTo(1, 6);
  expect(complaints('blend', '--oil', 'lavender-true', '--surface', 'wall')[0]).toMatch(/paper, skin, dish/u);
});
