/** Tests of a still at home, in English: what each is for, its steps, its dangers, and what it found. */
import type { HomeTest, TestedPath, TestedValue, TestFound, TestProblem } from '../../answers/home-tests/home-test.ts';
import { isCoil } from '../../geometry/condenser-kind.ts';
import { tubVolume } from '../../geometry/tub.ts';
import type { Scenario } from '../../scenario/scenario.ts';
import type { Quantities } from '../quantities.ts';
import type { Message } from '../section.ts';

export interface TestWords {
  readonly title: string;
  /** What it finds and why nobody knows it beforehand. */
  readonly why: string;
  readonly needs: string;
  readonly steps: readonly string[];
  readonly danger: string;
}

const NAMES: Readonly<Record<TestedPath, { readonly title: string; readonly of: string }>> = {
  'factors.jetMixing': { title: 'Mixing of the tub', of: 'the mixing by the incoming water' },
  'factors.curvature': { title: 'Bend of the coil', of: 'the share of the bend that counts' },
  'factors.rivulet': { title: 'Cooling of the condensate', of: 'the heat that passes from condensate to tube' },
  'heat.shareToPot': { title: 'Heat that reaches the pot', of: 'the share of the source’s heat' },
  'factors.heatLoss': { title: 'Heat loss', of: 'the heat lost to the air' },
};

const INLETS: Readonly<Record<Scenario['cooling']['inlet'], string>> = {
  laid: 'Lay the hose on the floor of the tub as in a run',
  'pointing-up': 'Fix the hose on the floor of the tub, pointing up, as in a run',
  perforated: 'Lay the perforated pipe on the floor of the tub as in a run',
  top: 'Hang the hose in from the top as in a run',
};

/** Reduced chi square above which the model misses what was read. */
const POOR_FIT = 4;
const HOT_TUB = [318.15, 333.15] as const;

export function homeTests(q: Quantities) {
  const value = ({ path }: Pick<TestedValue, 'path'>, number: number): string =>
    path === 'heat.shareToPot' ? q.share(number, { decimals: 0 }) : q.number(number, { decimals: 2 });
  const degrees = (kelvin: number): string => q.temperature(kelvin, { decimals: 0 });

  const tub = ({ cooling }: Scenario): TestWords => ({
    title: 'How far does the water mix the tub?',
    why: 'Water from a loose hose mixes a part of the tub. How large a part, nobody can work out beforehand, and it decides how much cooling water a run needs.',
    needs:
      'Hot water for the tub, a bucket, a watch, and a thermometer on a stick. Food colour in the hose shows the same to the eye.',
    steps: [
      `Fill the tub to its overflow with water of ${degrees(HOT_TUB[0])} to ${degrees(HOT_TUB[1])}. No heat, no steam in the coil. Stir it and read it.`,
      'Open the tap as in a run. Catch the water in a bucket and take the time. Read its temperature. Do not touch the tap again.',
      `${INLETS[cooling.inlet]}, and let in about half the tub: ${q.volume(0.5 * tubVolume({ ...cooling, tubFill: 1 }))}. Let the overflow run off.`,
      'Take the hose out gently. At once, without stirring, read the temperature at five heights, from the floor up.',
    ],
    danger: `Water of ${degrees(HOT_TUB[1])} scalds within seconds. Keep children away. A full tub is too heavy to lift: never move it, and keep it away from sockets.`,
  });

  const coil = (still: Scenario): TestWords => ({
    title: isCoil(still.condenser) ? 'How well does the coil cool?' : 'How well does the tube cool?',
    why: isCoil(still.condenser)
      ? 'Distillate runs down a coil as a thin stream. Its bends stir that stream, and nobody has measured by how much. It decides how long the coil must be.'
      : 'Distillate runs down the tube as a thin stream. How well it cools depends on how the metal is wetted. It decides how long the tube must be.',
    needs: 'A kettle, a funnel with a piece of hose and a clamp, two thermometers, a jug and a balance, a watch.',
    steps: [
      isCoil(still.condenser)
        ? 'Put the coil into its tub and fill the tub with cold water. Close the tap: the water must stand still.'
        : 'Take the tube out of its jacket. Lay it in a trough of cold, still water, with the slope it has in the still.',
      'Fix the funnel above the upper end, with hose and clamp. Leave the funnel open, so that air gets in, and the outlet free: the tube must never run full.',
      'Pour in water just off the boil and set the clamp. Let three fillings run through before you read.',
      'Catch what runs out for a minute and weigh it. Read the water in the funnel, the stream at the outlet, and the water round the tube halfway down.',
      'Do that three times at least, if you can at different settings of the clamp.',
    ],
    danger:
      'Boiling water scalds. Fix funnel and hose so that they cannot tip, wear gloves, and keep your face away from both ends. No flame and no steam in this test.',
  });

  const heatUp = ({ pot, heat }: Scenario): TestWords => ({
    title: 'How much heat reaches the water?',
    why: 'Of the heat that you pay for, a part goes past the pot, and the hot pot loses some again. Both decide when the first drop comes and how fast the run goes.',
    needs: 'Water, a thermometer through the lid, a watch.',
    steps: [
      `Take the plant and the grid out. Fill in water only, about ${q.water(pot.water_kg)}. Lid on as in a run, outlet open. Read the water and the air.`,
      `Turn the heat on at full setting, ${q.power(heat.ratedPower_W)} here, and start the watch.`,
      `Read the water every five minutes, up to about ${degrees(363.15)}. Stop before it boils.`,
      'Turn the heat off and note when. Leave the lid on and read three times more, every twenty minutes. Without these the loss shows only roughly.',
    ],
    danger:
      'Stay with the pot. Never close the outlet: steam in a closed pot bursts it. With gas or wood, let fresh air in and through.',
  });

  return {
    words: (test: HomeTest, still: Scenario): TestWords =>
      test === 'tub' ? tub(still) : test === 'coil' ? coil(still) : heatUp(still),

    name: ({ path }: Pick<TestedValue, 'path'>): string => NAMES[path].title,
    value,
    interval: (found: TestedValue): string => `${value(found, found.low)} to ${value(found, found.high)}`,
    /** What the value means, and where the readings leave it open. */
    meaning(found: TestedValue): string {
      const { path, start, value: now, open } = found;
      if (open === 'both') return 'these readings do not show it';
      const left =
        open === null
          ? ''
          : open === 'low'
            ? ' It may be less: the readings do not say.'
            : ' It may be more: the readings do not say.';
      if (path === 'heat.shareToPot') return `was set to ${value(found, start)}.${left}`;
      const ratio = start > 0 ? now / start : 1;
      return Math.abs(ratio - 1) < 0.05
        ? `much as it was.${left}`
        : `${q.number(ratio, { decimals: 2 })} times ${NAMES[path].of}.${left}`;
    },

    lead({ values, readings, reducedChiSquare }: TestFound): string {
      const known = values.filter(({ open }) => open !== 'both');
      const said = known.map(
        (each) =>
          `${NAMES[each.path].title}: ${value(each, each.value)} (${value(each, each.low)} to ${value(each, each.high)})`,
      );
      const fits =
        reducedChiSquare > POOR_FIT
          ? 'The model misses these readings. Check them: was everything as the steps say?'
          : `The model then follows the ${readings.length} readings.`;
      return `${said.join('. ')}. ${fits}`;
    },

    /** The model beside the readings. */
    left: ({ readings }: TestFound): string =>
      `Model less reading: ${readings.map(({ predicted_K, value_K }) => q.temperatureDifference(predicted_K - value_K)).join(', ')}. Up to ${q.temperatureDifference(2)} is what a household thermometer allows.`,

    /** A flow for the clamp, tried by the model. */
    flowToTry: (flow_kg_s: number, outlet_K: number): string =>
      `Set the clamp to about ${q.water(60 * flow_kg_s)} a minute: the model then expects the outlet at about ${degrees(outlet_K)}, clear of the water round the tube.`,

    refusal(problem: TestProblem): Message {
      switch (problem.kind) {
        case 'hose-from-top':
          return {
            sentence: 'The hose of this still hangs in from the top, and that mixes the whole tub.',
            advice: 'There is nothing to test.',
          };
        case 'no-tub':
          return { sentence: 'This still has no tub.', advice: 'There is nothing to test.' };
        case 'bundle':
          return {
            sentence: 'Water poured by hand does not divide evenly over the tubes of a bundle.',
            advice: 'Fit the condenser to the outlet temperatures of a run.',
          };
        case 'too-few-readings':
          return {
            sentence: `${problem.readings} of the ${problem.needed} readings that this needs are there.`,
            advice: null,
          };
        case 'too-close':
          return {
            sentence: `The temperatures are only ${q.temperatureDifference(problem.apart_K, { decimals: 0 })} apart: that shows too little.`,
            advice: `Bring them ${q.temperatureDifference(problem.needed_K, { decimals: 0 })} apart at least.`,
          };
        case 'impossible':
          return {
            sentence: `Reading ${problem.reading}: an outlet of ${degrees(problem.value_K)} is not between the water round the tube and the water that goes in.`,
            advice: 'Check the three temperatures of that line.',
          };
        case 'nothing-shown':
          return {
            sentence: 'These readings are the same whatever the value is.',
            advice: 'Repeat the test as its steps say.',
          };
      }
    },
  };
}
