/** The run sheet that one follows at the still, in English. */
import type { SheetKind, SheetStep } from '../../answers/run-sheet/run-sheet.ts';
import type { Quantities } from '../quantities.ts';
import { schedule } from './schedule.ts';

type StepOf<K extends SheetKind> = Extract<SheetStep, { readonly kind: K }>;

interface StepWords<K extends SheetKind> {
  /** What to do, in a few words. */
  readonly title: (step: StepOf<K>) => string;
  /** What to look at. */
  readonly look: string;
  /** What is dangerous about it; `null` where nothing is. */
  readonly danger: string | null;
}

export interface SaidStep {
  readonly title: string;
  readonly look: string;
  readonly danger: string | null;
}

export function runSheet(q: Quantities) {
  const { moment } = schedule(q);
  const turned = (what: string, said: string, { values }: StepOf<'heat' | 'tap'>): string => {
    const how = values.evenly ? 'evenly to' : 'to';
    const awaited =
      values.after === undefined ? '' : `${values.wait_s === 0 ? ' at' : ','} ${moment(values.wait_s, values.after)}`;
    return `Turn the ${what} ${how} ${said}${awaited}`;
  };

  const words: { readonly [K in SheetKind]: StepWords<K> } = {
    fill: {
      title: () => 'Fill the pot and the tub, and check the still',
      look: 'Water as planned, seals tight, tap running, receiver under the outlet. Blow through the outlet: it must be open.',
      danger: 'A closed outlet turns the pot into a bomb. Never close or block it.',
    },
    'heat-on': {
      title: ({ values }) =>
        values.rate_kg_s !== null
          ? `Heat on. Hold ${q.distillateFlow(values.rate_kg_s)} of distillate`
          : `Heat on, at ${q.share(values.setting)}`,
      look: 'Stay with the still from now on.',
      danger: 'Oil and its vapour burn. Keep the receiver away from flame and hot plate.',
    },
    'first-drop': {
      title: () => 'First drop expected',
      look: 'Log it when it falls. The distillate should run cool, without steam.',
      danger: 'If steam comes instead of drops, turn the heat down at once.',
    },
    heat: {
      title: (step) => turned('heat', q.share(step.values.value), step),
      look: 'The distillate follows within a few minutes.',
      danger: null,
    },
    tap: {
      title: (step) =>
        step.values.value === 0 ? 'Close the tap' : turned('tap', q.waterFlow(step.values.value), step),
      look: 'Feel the tub near the top: it must not get hot.',
      danger: null,
    },
    'check-water': {
      title: ({ values }) => `Check the water in the pot: about ${q.water(values.planned_kg)} left`,
      look: 'The water must stand well above the base or the element.',
      danger: 'A pot that runs dry burns the plant and can be ruined.',
    },
    'pot-low': {
      title: () => 'The pot may soon run low',
      look: 'Fill in hot water, or stop.',
      danger: 'Heat off before you open the pot, and wait until it has stopped steaming.',
    },
    'tub-hot': {
      title: ({ values }) => `The tub is at ${q.temperature(values.limit_K)}`,
      look: 'Open the tap further, or add cold water or ice.',
      danger: 'Water this hot scalds within seconds. Soon the coil no longer condenses everything.',
    },
    receiver: {
      title: ({ values }) => `Change the receiver: it holds ${q.water(values.holds_kg)}`,
      look: 'Have the next one ready. Keep the oil with its water until all has settled.',
      danger: 'Never close the outlet to change it.',
    },
    'no-reading': {
      title: ({ values }) => `No reading since ${q.time(values.since_s)}`,
      look: 'Read the oil, the outlet and the tub.',
      danger: null,
    },
    stop: {
      title: () => 'Stop: heat off',
      look: 'The oil that still comes is no longer worth it, by your rule.',
      danger: null,
    },
    'shut-down': {
      title: () => 'Let it cool with water running and outlet open',
      look: 'Water off last. Open the pot when it has stopped steaming.',
      danger: 'Steam under the lid scalds. Lift it away from you.',
    },
  };
  const of = <K extends SheetKind>(step: StepOf<K>): SaidStep => {
    const { title, look, danger } = words[step.kind] as unknown as StepWords<K>;
    return { title: title(step), look, danger };
  };

  return {
    step: (step: SheetStep): SaidStep => of(step),
    /** `27 min (24 min to 31 min)` */
    when: ({ at_s, range }: Pick<SheetStep, 'at_s' | 'range'>): string =>
      at_s === 0
        ? 'Start'
        : range === null
          ? q.time(at_s)
          : `${q.time(at_s)} (${q.time(range.low)} to ${q.time(range.high)})`,
    /** When a step is due: `Next, in 4 min`, `Due now`, `Due 6 min ago` */
    due(wait_s: number): string {
      const minutes = Math.round(Math.abs(wait_s) / 60) * 60;
      if (minutes === 0) return 'Due now';
      return wait_s > 0 ? `Next, in ${q.time(minutes)}` : `Due ${q.time(minutes)} ago`;
    },
  };
}
