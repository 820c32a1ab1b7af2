/** The size of a condenser in English. */
import { isBundle, isCoil, waterSource } from '../../geometry/condenser-kind.ts';
import { tubVolume } from '../../geometry/tub.ts';
import type { HardestBoil, LeastWater } from '../../answers/condenser-size/heat-and-water.ts';
import { MOST_FLOW } from '../../answers/condenser-size/heat-and-water.ts';
import { coilThatFits, type OtherCoil } from '../../answers/condenser-size/coil-that-fits.ts';
import { NINE_IN_TEN, SIZING_DRAWS } from '../../answers/condenser-size/in-doubt.ts';
import type { TubeCost } from '../../answers/shopping/prices.ts';
import { LONGEST_TUBE } from '../../answers/condenser-size/shortest-length.ts';
import { TUBE_PRESSURE_LIMIT, type CondenserFailure } from '../../answers/condenser-size/trial.ts';
import type { Packs } from '../../answers/condenser-size/packs.ts';
import type { Bend, TubeSize, TubeVerdict } from '../../answers/condenser-size/tubes.ts';
import { findMaterial } from '../../library/index.ts';
import type { Summary } from '../../run/result.ts';
import type { Scenario } from '../../scenario/scenario.ts';
import { displayUnit } from '../../units/index.ts';
import type { Quantities } from '../quantities.ts';
import { wholeMessage, type Message } from '../section.ts';
import { UNCERTAIN } from './doubts.ts';

type Still = Pick<Scenario, 'condenser'>;
/** What a length of tube is told for. */
type Boil = Pick<Scenario, 'condenser' | 'cooling' | 'heat'>;

/** Lengths nearer than this count as the same, m. */
const SAME_LENGTH = 0.005;
/** What is left over of a tube that is worth a word, m. */
const LEFT_OVER = 0.1;
/** How near to a whole number counts as one after conversion. */
const WHOLE = 1e-9;

const NOTHING_COMES = 'Almost nothing comes over in this run';
const COMPUTED_AS_PLAIN =
  'It is computed as a plain tube of the same outside diameter, so the length is on the safe side.';
const MORE_COOLING = 'Use more or colder water, or less heat.';

const said = (sentence: string, advice: string | null = null): Message => ({ sentence, advice });

const BENDS: Readonly<Record<Bend, string>> = {
  'by-hand': 'by hand',
  'with-bender': 'with a bender',
  'too-tight': 'too tight',
};

/** What everybody in the trade knows. */
const FOOD_CONTACT: Readonly<Record<string, string>> = {
  copper: 'good; lead-free joints',
  'stainless-steel': 'good; food grade',
  'borosilicate-glass': 'good; breaks',
};

const condenserNoun = ({ condenser }: Still): string =>
  isCoil(condenser) ? 'coil' : isBundle(condenser) ? 'bundle' : 'tube';

export function sizing(q: Quantities) {
  /** Steam that leaves the outlet is told apart from distillate that is only too warm. */
  const fails = (failure: CondenserFailure | null, { condenser }: Still): string => {
    if (failure === null) return 'it fails';
    const what = {
      'vapour-escapes': 'steam leaves the outlet',
      'outlet-warm': `the distillate gets warmer than ${q.temperature(condenser.outletLimit_K)}`,
      pressure: `the tube holds back more than ${q.pressure(TUBE_PRESSURE_LIMIT)}`,
      calculation: 'the calculation fails',
    }[failure.kind];
    return `${what} at ${q.time(failure.time_s)}`;
  };
  const when = (failure: CondenserFailure | null): string => (failure === null ? '' : ` at ${q.time(failure.time_s)}`);

  function noLength({ verdict, failure }: Pick<TubeSize, 'verdict' | 'failure'>, still: Still): Message {
    const { outletLimit_K, coilDiameter_m, jacketDiameter_m } = still.condenser;
    const longest = q.tubeLength(LONGEST_TUBE, { decimals: 0 });
    switch (verdict) {
      case 'pressure':
        return said(
          `This tube is too narrow for this boil: it holds back more than ${q.pressure(TUBE_PRESSURE_LIMIT)}${when(failure)}. A lid can lift or spray.`,
          'Use a wider tube, several tubes side by side, or less heat.',
        );
      case 'coolant-boils':
        return said(`The cooling water boils${when(failure)}, so no length is enough.`, MORE_COOLING);
      case 'coolant-warm': {
        const [warm, limit] = q.apart('temperature', failure?.coolant_K ?? outletLimit_K, outletLimit_K);
        return said(
          `The cooling water round the outlet reaches ${warm}${when(failure)}: too warm to keep the distillate below ${limit}. No length is enough.`,
          MORE_COOLING,
        );
      }
      case 'never':
        return said(
          failure?.kind === 'vapour-escapes'
            ? `Even ${longest} does not condense everything${when(failure)}.`
            : `Even ${longest} does not keep the distillate below ${q.temperature(outletLimit_K)}${when(failure)}.`,
          MORE_COOLING,
        );
      case 'calculation-failed':
        return said(`The calculation failed${when(failure)}, so no length can be given.`, 'Undo the last change.');
      case 'cannot-be-coiled':
        return said('This tube is sold only in hard, straight lengths. It cannot be wound into a coil.');
      case 'too-thick-for-turns':
        return said(`This tube is too thick to be wound into turns ${q.size(coilDiameter_m)} across.`);
      case 'too-thick-for-jacket':
        return said(`This tube is too thick for a jacket of ${q.bore(jacketDiameter_m)}.`);
      case 'holds':
      case 'no-vapour':
        return said(`${NOTHING_COMES}, so any length is enough.`);
    }
  }

  const inRuns = ({ confidence }: Pick<TubeSize, 'confidence'>): string =>
    confidence === NINE_IN_TEN ? 'nine runs of ten' : `${q.share(confidence)} of runs`;
  const moreThan = ({ confidence }: Pick<TubeSize, 'confidence'>): string =>
    confidence === NINE_IN_TEN ? 'one run of ten' : `${q.share(1 - confidence)} of runs`;

  const tubeName = ({ name, outsideDiameter_m }: Pick<TubeSize, 'name' | 'outsideDiameter_m'>): string =>
    name ?? `${q.tubeOutside(outsideDiameter_m, { significant: 3 })} tube`;

  /** With its metal, and with its outside where the name only gives a nominal size. */
  const tubeWithMetal = (size: Pick<TubeSize, 'name' | 'outsideDiameter_m' | 'material'>): string => {
    const { name } = findMaterial(size.material);
    const known = tubeName(size);
    if (known.includes(name.split(' ')[0] ?? name)) return known;
    const outside = size.name === null ? '' : `, ${q.tubeOutside(size.outsideDiameter_m)} outside`;
    return `${known} (${name}${outside})`;
  };

  const boil = ({ heat }: Boil): string => {
    if (heat.control === 'hold-rate') return `${q.distillateFlow(heat.targetRate_kg_s)} of distillate`;
    const most = Math.max(...heat.setting.map(({ value }) => value));
    const isFull = heat.setting.every(({ value }) => value === 1);
    return isFull ? `${q.power(heat.ratedPower_W)} full out` : `up to ${q.power(most * heat.ratedPower_W)}`;
  };

  const cooling = (still: Boil): string => {
    const { flow_kg_s, tapTemperature_K, startTemperature_K } = still.cooling;
    const flow = Math.max(...flow_kg_s.map(({ value }) => value));
    const tap = Math.max(...tapTemperature_K.map(({ value }) => value));
    const source = waterSource(still);
    if (source === 'tap') return `with ${q.waterFlow(flow)} of water at ${q.temperature(tap)}`;
    const vessel = `${q.volume(tubVolume(still.cooling))} ${source} at ${q.temperature(startTemperature_K)}`;
    if (source === 'barrel') return `with a ${vessel}`;
    return flow > 0
      ? `into a ${vessel} with ${q.waterFlow(flow)} of tap water`
      : `into a ${vessel} without running water`;
  };

  const conditions = ({ peakVapour_kg_s }: Pick<TubeSize, 'peakVapour_kg_s'>, still: Boil): string => {
    const steam = peakVapour_kg_s === null ? '' : ` (${q.steamFlow(peakVapour_kg_s)} of steam)`;
    return `${boil(still)}${steam} ${cooling(still)}`;
  };

  /** What to buy and what it costs. */
  const purchase = ({ amount, basis, packs, left_m }: TubeCost): string => {
    const price = basis === 'own' ? 'at your price' : 'at the default price of its metal';
    const buy = packs === null ? 'Cut to length' : `Bought as ${packsWords(packs)}`;
    const left = left_m > LEFT_OVER ? ` (${q.tubeLength(left_m)} is left over)` : '';
    return `${buy}${left}, it costs ${q.cost(amount)} ${price}.`;
  };

  /** How to wind a coil that does not fit. */
  const otherCoil = (other: OtherCoil | null): string => {
    if (other === null) return 'Use a wider tub or a thinner tube.';
    const { coilDiameter_m, coilPitch_m, tubHeight_m } = other;
    const ways = [
      ...(coilDiameter_m === null ? [] : [`${q.size(coilDiameter_m)} wide`]),
      ...(coilPitch_m === null ? [] : [`with turns ${q.size(coilPitch_m)} apart`]),
    ];
    if (tubHeight_m === null) return `Wound ${ways.join(' and ')} it fits.`;
    const wound = ways.length === 0 ? '' : ` wound ${ways.join(' and ')},`;
    return `It needs a tub with ${q.size(tubHeight_m)} of water${wound} or a wider tube or tub.`;
  };

  const packsWords = ({ count, length_m, joined }: Packs): string => {
    const shown = displayUnit('m', q.units, 'run').fromSI(length_m);
    const length = q.tubeLength(length_m, { decimals: Math.abs(shown - Math.round(shown)) < WHOLE ? 0 : 1 });
    return `${count} × ${length}${joined ? ', joined' : ''}`;
  };

  const verdictWords: Readonly<Record<TubeVerdict, string>> = {
    holds: 'works',
    'no-vapour': 'any length',
    pressure: 'too narrow: pressure',
    'coolant-boils': 'water boils',
    'coolant-warm': 'water too warm',
    never: `over ${q.tubeLength(LONGEST_TUBE, { decimals: 0 })}`,
    'calculation-failed': 'not known',
    'cannot-be-coiled': 'hard: cannot be wound',
    'too-thick-for-turns': 'too thick',
    'too-thick-for-jacket': 'too thick',
  };

  return {
    condenserNoun,

    bend: (bend: Bend): string => BENDS[bend],

    /** What the turns ask of a tube. */
    turns: (radius_m: number): string =>
      `Your turns have a radius of ${q.size(radius_m)}; a tube that only bends wider would kink.`,

    /** What a tube's material is to steam and oil, in a cell. */
    foodContact: (material: string): string => FOOD_CONTACT[material] ?? 'ask the maker',

    /** The library's name, or the measures of a tube that the library does not know. */
    tubeName,

    /** What a length is told for: heat, steam and cooling water. */
    conditions,

    /** What length of which tube so many of the runs need, for which heat and water, or why no length is enough. */
    size(size: TubeSize, still: Boil): Message {
      const { length_m, lengthWithMargin_m, toBuy_m, typical_m, verdict, tubes } = size;
      if (length_m === null || lengthWithMargin_m === null || toBuy_m === null || verdict !== 'holds') {
        const why = noLength(size, still);
        if (typical_m === null || verdict === 'no-vapour') return why;
        return said(
          `As planned ${q.tubeLength(typical_m)} is enough. But in more than ${moreThan(size)} no length is: ${why.sentence}`,
          why.advice,
        );
      }
      const tube = tubeWithMetal(size);
      const enough =
        tubes > 1
          ? `${tubes} tubes, each ${q.tubeLength(length_m)} of ${tube}, are enough`
          : `${q.tubeLength(length_m)} of ${tube} is enough`;
      const margin = lengthWithMargin_m / length_m - 1;
      const reserve =
        lengthWithMargin_m - length_m > SAME_LENGTH
          ? `${q.tubeLength(lengthWithMargin_m)} with your margin of ${q.share(margin)}, `
          : '';
      const whole = `${q.tubeLength(toBuy_m * tubes)} ${tubes > 1 ? 'in all ' : ''}with ends and cutting`;
      const sentence = `For ${conditions(size, still)}: ${enough} in ${inRuns(size)}; ${reserve}${whole}.`;
      return said(size.computedAsPlain ? `${sentence} ${COMPUTED_AS_PLAIN}` : sentence);
    },

    /** What full heat would need beside the plan; `null` where the plan is full heat. */
    fullHeat(size: TubeSize | null, still: Still): string | null {
      if (size === null || size.verdict === 'no-vapour') return null;
      if (size.length_m === null) return `At full heat: ${noLength(size, still).sentence}`;
      return `At full heat, ${inRuns(size)} need ${q.tubeLength(size.length_m)}.`;
    },

    /** A length in a cell of the small table of both heats. */
    lengthInCell: (length_m: number | null, { verdict }: Pick<TubeSize, 'verdict'>): string =>
      length_m === null || verdict === 'no-vapour' ? verdictWords[verdict] : q.tubeLength(length_m),

    /** The heading of what so many of the runs need. */
    inRuns: ({ confidence }: Pick<TubeSize, 'confidence'>): string => {
      const words = inRuns({ confidence });
      return words.charAt(0).toUpperCase() + words.slice(1);
    },

    /** What the run as planned needs, beside what more of them do; `null` where it was not looked for. */
    typically: ({ typical_m, length_m }: Pick<TubeSize, 'typical_m' | 'length_m'>): string | null =>
      typical_m === null || length_m === null ? null : `A typical run needs ${q.tubeLength(typical_m)}.`,

    /** What the length hangs on most of all that is not known for sure; `null` where it was not looked for. */
    decides({ decidedBy }: Pick<TubeSize, 'decidedBy'>): string | null {
      if (decidedBy === null) return null;
      const name = UNCERTAIN[decidedBy];
      return `Of what is not known for sure, this counts most: ${name.charAt(0).toLowerCase()}${name.slice(1)}.`;
    },

    /** How the lengths of other tubes were found. */
    otherTubes: `Of ${SIZING_DRAWS} runs with what is not known for sure drawn anew, the three that decide your own tube’s length were tried with each tube.`,

    /** What a row of a table cannot show: why no length is enough, or how it was found; empty where there is nothing. */
    remark(size: TubeSize, still: Still): string {
      if (size.verdict === 'holds') return size.computedAsPlain ? COMPUTED_AS_PLAIN : '';
      return wholeMessage(noLength(size, still));
    },

    /** How the reader's own length compares; `null` where no length is enough. */
    ownLength(found: TubeSize, still: Still): string | null {
      const { length_m, lengthWithMargin_m, typical_m, verdict } = found;
      if (length_m === null || lengthWithMargin_m === null || verdict !== 'holds') return null;
      const own = still.condenser.length_m;
      const has = `Your ${condenserNoun(still)} has ${q.tubeLength(own)}`;
      if (own < length_m - SAME_LENGTH) {
        const short = q.tubeLength(length_m - own);
        return typical_m !== null && own > typical_m - SAME_LENGTH
          ? `${has}: enough in a typical run, but ${short} short of what ${inRuns(found)} need.`
          : `${has}: ${short} too short.`;
      }
      if (own < length_m + SAME_LENGTH) return `${has}: just enough, with no reserve.`;
      const reserve = `${has}: ${q.tubeLength(own - length_m)} in reserve`;
      return own < lengthWithMargin_m - SAME_LENGTH ? `${reserve}, less than you asked for.` : `${reserve}.`;
    },

    /** What the length with its margin comes to: turns, height, metal and price; `null` where no length is enough. */
    coil(size: TubeSize, still: Pick<Scenario, 'condenser' | 'cooling'>, cost: TubeCost | null): string | null {
      const { lengthWithMargin_m, verdict, turns, coilHeight_m, mass_kg } = size;
      if (lengthWithMargin_m === null || verdict !== 'holds' || mass_kg === null) return null;
      const metal = `That is ${q.mass(mass_kg, { significant: 2 })} of ${findMaterial(size.material).name}.`;
      const bought = cost === null ? metal : `${metal} ${purchase(cost)}`;
      if (turns === null || coilHeight_m === null) return bought;
      const other = size.fitsTub === false ? coilThatFits(still, lengthWithMargin_m) : null;
      const fit = size.fitsTub === false ? `That does not fit the tub. ${otherCoil(other)}` : 'It fits the tub.';
      const tight = size.bend === 'too-tight' ? ' These turns are too tight for this tube: it would kink.' : '';
      return `As a coil it has ${q.number(turns, { decimals: 1 })} turns and is ${q.size(coilHeight_m)} tall. ${fit}${tight} ${bought}`;
    },

    /** Why the length that is enough is more than the length that condenses; `null` where it is not. */
    condensing(
      { condenser }: Still,
      { condensingLengthPeak_m, waterUncondensed_kg }: Pick<Summary, 'condensingLengthPeak_m' | 'waterUncondensed_kg'>,
    ): string | null {
      const condenses = condensingLengthPeak_m > 0 && !(waterUncondensed_kg > 0);
      if (!condenses || condensingLengthPeak_m > condenser.length_m - SAME_LENGTH) return null;
      const length = q.tubeLength(condensingLengthPeak_m);
      return isBundle(condenser)
        ? `The first ${length} of each tube condenses everything; the rest cools the distillate.`
        : `The first ${length} condenses everything; the rest cools the distillate.`;
    },

    hardestBoil(
      { kind, setting, power_W, limitedBy }: HardestBoil,
      still: Pick<Scenario, 'condenser' | 'heat'>,
    ): Message {
      const coil = `Your ${condenserNoun(still)}`;
      switch (kind) {
        case 'full-heat':
          return said(`${coil} can handle full heat, ${q.power(still.heat.ratedPower_W)}, for the whole run.`);
        case 'up-to':
          return said(
            `${coil} can handle up to ${q.power(power_W)} for the whole run, ${q.share(setting)} of full heat. Above that, ${fails(limitedBy, still)}.`,
          );
        case 'no-boil':
          return said(
            `Up to ${q.power(power_W)} almost nothing comes over in this run. Above that, ${fails(limitedBy, still)}.`,
            'Use a longer tube, or more or colder water.',
          );
        case 'none':
          return said(
            `${coil} cannot handle even the gentlest boil: ${fails(limitedBy, still)}.`,
            'Use a longer tube, or more or colder water.',
          );
        case 'no-vapour':
          return said(`${NOTHING_COMES}, even at full heat.`);
      }
    },

    leastWater({ kind, flow_kg_s, used_kg, limitedBy }: LeastWater, still: Still): Message {
      switch (kind) {
        case 'none-needed':
          return said(
            isCoil(still.condenser) ? 'The tub is big enough: no tap water needed.' : 'No cooling water needs to flow.',
          );
        case 'no-vapour':
          return said(`${NOTHING_COMES}, so no cooling water needs to flow.`);
        case 'at-least': {
          const used = used_kg !== null && used_kg > 0 ? `, ${q.water(used_kg)} in all` : ', pumped round';
          return said(
            `It needs at least ${q.waterFlow(flow_kg_s)} of water${used}. With less, ${fails(limitedBy, still)}.`,
          );
        }
        case 'none-enough': {
          const warm = limitedBy === null ? '' : `, with cooling water at ${q.temperature(limitedBy.coolant_K)}`;
          return said(
            `No flow is enough: even at ${q.waterFlow(MOST_FLOW)}, ${fails(limitedBy, still)}${warm}.`,
            'Use a longer tube or less heat.',
          );
        }
      }
    },

    /** In a cell, where there is no length to show. */
    verdict: (verdict: TubeVerdict): string => verdictWords[verdict],

    otherCoil,

    /** What to buy: `1 × 10 m`; a dash where nothing is known of how the tube is sold. */
    packs: ({ packs }: { readonly packs: Packs | null }): string => (packs === null ? '–' : packsWords(packs)),

    /** What to buy at a price: whole pieces, or a length that is cut. */
    toBuy({ packs, bought_m }: TubeCost): string {
      return packs === null ? `${q.tubeLength(bought_m)}, cut` : packsWords(packs);
    },
  };
}
