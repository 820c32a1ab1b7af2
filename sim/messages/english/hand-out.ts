/** What stands on the sheet that one takes to the still, in English. */
import type { Scenario } from '../../scenario/scenario.ts';
import { coilFit } from '../../geometry/coil.ts';
import { isBundle, isCoil, waterSource } from '../../geometry/condenser-kind.ts';
import type { Quantities } from '../quantities.ts';

export interface NamedValue {
  readonly name: string;
  readonly value: string;
}

const LAYOUTS: Readonly<Record<Scenario['pot']['layout'], string>> = {
  water: 'in the water',
  'water-and-steam': 'on a grid above the water',
  steam: 'fed with steam from the boiler',
};

/** A knot of a plan, in the imperative, with the event to wait for. */
const turned = (what: string, said: string, evenly: boolean, awaited: string | null): string => {
  if (evenly) return `${what} evenly up or down to reach ${said} ${awaited === null ? 'now' : `at ${awaited}`}`;
  return `${what} to ${said}${awaited === null ? '' : ` at ${awaited}`}`;
};

export const handOut = (q: Quantities) => ({
  headings: {
    still: 'The still',
    plan: 'What to do, and what to see',
    expected: 'What to expect',
    cautions: 'Safety',
    log: 'What really happened',
    link: 'This still, to open again',
  },
  printed: (date: string) => `Printed ${date}`,
  figure: 'Drawn to scale, half-way through the run.',
  planColumns: { time: 'Time', what: 'What' },
  sinceHeat: 'Times count from the moment the heat goes on.',
  andMore: (count: number) =>
    `${count} more ${count === 1 ? 'entry is' : 'entries are'} on the page, which the link opens.`,
  ranges: (runs: number) => `Of ${runs} likely runs: the typical one, and the range in which 8 of 10 lie.`,
  noRanges: 'As planned. Print with the button in the Files menu to have the ranges too.',
  tooLong: 'This still differs in too much for a short link. Save it as a file.',
  codeSays: 'Code that opens this still',
  cautions: ['This is a calculation. Watch the still, not the paper.'] as readonly string[],
  blanks: [
    'Date',
    'Who',
    'Plant, where and when cut',
    'Weight of the plant',
    'Water in the pot',
    'Heat on at',
  ] as const,
  logColumns: ['Time', 'Heat', 'Tap', 'Distillate', 'Oil', 'Tub', 'Outlet', 'Note'] as const,
  heat: (value: number, evenly: boolean, awaited: string | null) => turned('Heat', q.share(value), evenly, awaited),
  tap: (value: number, evenly: boolean, awaited: string | null) =>
    value === 0 && !evenly
      ? `Tap closed${awaited === null ? '' : ` at ${awaited}`}`
      : turned('Tap', q.waterFlow(value), evenly, awaited),
  holdRate: (rate_kg_s: number) => `Heat up and down to hold ${q.distillateFlow(rate_kg_s)} of distillate`,
  sizes(scenario: Scenario, plant: string | null, source: string): readonly NamedValue[] {
    const { heat, pot, boiler, charge, neck, condenser, cooling, separator } = scenario;
    const across = (diameter_m: number, height_m: number): string =>
      `${q.size(diameter_m)} across, ${q.size(height_m)} high`;
    const tube = `${q.wall(condenser.insideDiameter_m)} inside, ${q.tubeOutside(condenser.outsideDiameter_m)} outside`;
    const coiled = isCoil(condenser);
    const fed = pot.layout === 'steam';
    const fill = `${q.water(pot.water_kg)} of water`;
    const tub = waterSource(scenario);
    return [
      { name: 'Heat', value: `${source}, ${q.power(heat.ratedPower_W)}` },
      ...(fed ? [{ name: 'Boiler', value: `${across(boiler.diameter_m, boiler.height_m)}, ${fill}` }] : []),
      { name: 'Pot', value: `${across(pot.diameter_m, pot.height_m)}${fed ? '' : `, ${fill}`}` },
      {
        name: 'Charge',
        value: `${q.mass(charge.mass_kg)}${plant === null ? '' : ` of ${plant}`}, ${LAYOUTS[pot.layout]}`,
      },
      { name: 'Swan neck', value: `${q.bore(neck.bore_m)} inside, ${q.tubeLength(neck.length_m)} long` },
      {
        name: coiled ? 'Coil' : isBundle(condenser) ? 'Tube bundle' : 'Condenser',
        value: [
          isBundle(condenser)
            ? `${condenser.tubes} tubes of ${q.tubeLength(condenser.length_m)}`
            : `${q.tubeLength(condenser.length_m)} of tube`,
          tube,
          coiled
            ? `${q.number(coilFit(condenser, cooling).turns, { decimals: 1 })} turns, ${q.size(condenser.coilDiameter_m)} across`
            : `in a jacket of ${q.bore(condenser.jacketDiameter_m)}`,
        ].join(', '),
      },
      ...(tub === 'tap'
        ? []
        : [{ name: tub === 'tub' ? 'Tub' : 'Barrel', value: across(cooling.tubDiameter_m, cooling.tubHeight_m) }]),
      { name: 'Separator', value: across(separator.bore_m, separator.height_m) },
    ];
  },
});
