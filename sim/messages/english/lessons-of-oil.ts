/** The lessons about the oil, in English. */
import type { LessonWords } from '../lesson-words.ts';
import type { Quantities } from '../quantities.ts';

type OilLessons = {
  readonly [
    Id in 'two-liquids' | 'gentle-or-hard' | 'when-to-stop' | 'float-or-sink' | 'drops-rise' | 'water-back'
  ]: LessonWords<Id>;
};

const FINE = { decimals: 1 } as const;
const ML = 1e-6;

export const lessonsOfOil = (q: Quantities): OilLessons => {
  const taps = { top: 'At the top', bottom: 'At the bottom', neither: 'Nowhere: it hardly separates' };
  const boils = { gentle: 'The gentle boil', hard: 'The hard boil', same: 'About the same' };
  return {
    'two-liquids': {
      title: 'Oil and water in one pot',
      setUp: [
        'Lavender oil alone boils only when it is far hotter than boiling water.',
        'Now it floats on water in one pot, and we heat the pot.',
      ],
      questions: {
        where: {
          ask: 'How hot must it get before oil comes over with the steam?',
          options: {
            'own-boiling-point': 'As hot as the boiling point of the oil',
            between: 'Somewhere between the two boiling points',
            'at-water': 'Exactly the boiling point of water',
            'below-water': 'A little below the boiling point of water',
          },
        },
        together: { ask: 'At what temperature do the two boil together?' },
      },
      believed: 'Many people say: steam knocks the drops along, or: somewhere it must get that hot.',
      big: ({ together_K, water_K }) => [
        { value: q.temperature(together_K, FINE), says: 'they boil together' },
        { value: q.temperature(water_K, FINE), says: 'water alone' },
      ],
      happened: ({ together_K, water_K, oilAlone_K }) => [
        together_K < water_K
          ? `They boil together at ${q.temperature(together_K, FINE)}, which is ${q.temperatureDifference(water_K - together_K)} below the boiling point of water.`
          : `Water alone boils at ${q.temperature(water_K, FINE)}.`,
        together_K < water_K
          ? `The oil alone would boil at about ${q.temperature(oilAlone_K)}.`
          : 'Without oil nothing helps it.',
      ],
      why: ({ waterPressure_Pa, oilPressure_Pa, air_Pa, oilShare }) => [
        `Two liquids that do not mix both push. Water pushes with ${q.pressure(waterPressure_Pa)}, the oil adds ${q.pressure(oilPressure_Pa)}: together that is the pressure of the air, ${q.pressure(air_Pa)}.`,
        `The oil leaves by its share of the push. Its particles are heavy, so it makes up ${q.share(oilShare)} of what comes over by weight, as long as oil floats there.`,
      ],
      tryIt: {
        label: 'On the water floats',
        says: 'Try another oil. One that pushes harder boils lower.',
        options: { lavender: 'lavender oil', pine: 'pine oil', clove: 'clove oil', 'water-alone': 'nothing' },
      },
      leavesOut:
        'How oil particles disturb one another, and the heat of mixing. If the two did mix, each would push less.',
      further: 'In a real charge the oil sits in the plant. Why does much less come over than this share?',
    },
    'gentle-or-hard': {
      title: 'A gentle boil, or a hard one?',
      setUp: [
        'Two stills hold the same lavender. One boils gently, the other at full heat.',
        'Both run until the same amount of water has come over. The coil is long enough for both.',
      ],
      questions: {
        'by-time': { ask: 'When the hard boil ends: which has more oil at that minute?', options: boils },
        'by-water': { ask: 'After the same amount of water: which has more oil?', options: boils },
        ester: {
          ask: 'Which has more of the fresh, fruity part (linalyl acetate) in its first tenth of oil?',
          options: boils,
        },
      },
      believed: 'Some say: hard is quicker, so it is better. Others say: gentle always gives more.',
      big: ({ gentleByWater_mL, hardByWater_mL }) => [
        { value: q.oilVolume(gentleByWater_mL * ML), says: 'boiled gently, for the same water' },
        { value: q.oilVolume(hardByWater_mL * ML), says: 'boiled hard' },
      ],
      happened: ({ time_s, gentleByTime_mL, hardByTime_mL, water_kg, gentleByWater_mL, hardByWater_mL }) => [
        `At ${q.time(60 * Math.round(time_s / 60))}: gentle ${q.oilVolume(gentleByTime_mL * ML)}, hard ${q.oilVolume(hardByTime_mL * ML)}.`,
        `After ${q.water(water_kg)} of water: gentle ${q.oilVolume(gentleByWater_mL * ML)}, hard ${q.oilVolume(hardByWater_mL * ML)}.`,
      ],
      why: ({ gentleEster, hardEster, sameWithin }) => [
        'More steam takes more oil a minute, until the plant cannot follow: its oil has to come out of the leaf first. After that only water comes faster.',
        `Linalyl acetate in the first tenth: ${q.share(gentleEster, FINE)} and ${q.share(hardEster, FINE)}. Differences under ${q.share(sameWithin)} count as the same, because the model is not surer than that.`,
      ],
      tryIt: { label: 'Lavender in each', says: 'Put in less plant. Does the winner change?' },
      leavesOut: 'Taste and trade: what a nose or a buyer likes.',
      further: 'What does the hard boil cost in cooling water?',
    },
    'when-to-stop': {
      title: 'When do we stop?',
      setUp: [
        'A large pot of fresh rosemary runs for three hours on gas.',
        'Gas costs money, and somebody has to stay with the still.',
      ],
      questions: {
        oil: { ask: 'Draw how the oil in the receiver grows, from the start to three hours.' },
        nine: { ask: 'By when are nine tenths of the oil over?' },
      },
      believed: 'Many people say: go on until no more oil comes.',
      big: ({ nine_s, all_mL }) => [
        { value: q.time(60 * Math.round(nine_s / 60)), says: 'for nine tenths of the oil' },
        { value: q.oilVolume(all_mL * ML), says: 'in three hours' },
      ],
      happened: ({ firstDrop_s, half_s, nine_s, end_s }) => [
        `Half of the oil came within ${q.time(60 * Math.round((half_s - firstDrop_s) / 60))} of the first drop, nine tenths by ${q.time(60 * Math.round(nine_s / 60))}.`,
        `The last tenth took from there to ${q.time(end_s)}.`,
      ],
      why: ({ energyNine_J, energyRest_J }) => [
        'Each minute takes a share of what is left in the plant. The less is left, the less comes.',
        `Nine tenths of the oil took ${q.energy(energyNine_J)} of gas. The last tenth alone took ${q.energy(energyRest_J)}, ${q.number(energyRest_J / energyNine_J, FINE)} times as much.`,
      ],
      tryIt: { label: 'Rosemary in the pot', says: 'Fill in less plant. When are nine tenths over now?' },
      leavesOut: 'What the last oil smells like: it can be worth the wait.',
      further: 'A second batch waits. When would you stop the first?',
    },
    'float-or-sink': {
      title: 'Float or sink?',
      setUp: [
        `Three oils come out of three stills, with water, at ${q.temperature(293.15)}.`,
        'The separator has a tap at the top and a tap at the bottom.',
      ],
      questions: {
        lavender: { ask: 'Lavender oil: where is it tapped?', options: taps },
        clove: { ask: 'Clove oil: where is it tapped?', options: taps },
        mixed: { ask: 'Cloves and fennel from one pot: where is that oil tapped?', options: taps },
      },
      believed: 'Many people say: oil always floats.',
      big: ({ lavender_kg_m3, clove_kg_m3, mixed_kg_m3, water_kg_m3 }) => [
        { value: q.density(lavender_kg_m3), says: 'lavender oil' },
        { value: q.density(clove_kg_m3), says: 'clove oil' },
        { value: q.density(mixed_kg_m3), says: 'cloves with fennel' },
        { value: q.density(water_kg_m3), says: 'water' },
      ],
      happened: ({ clove_kg_m3, water_kg_m3, lavender_kg_m3, mixed_kg_m3, receiver_K }) => [
        `At ${q.temperature(receiver_K)} lavender oil is lighter than water by ${q.density(water_kg_m3 - lavender_kg_m3)}, clove oil heavier by ${q.density(clove_kg_m3 - water_kg_m3)}.`,
        `The mixture differs from water by only ${q.density(Math.abs(water_kg_m3 - mixed_kg_m3))}.`,
      ],
      why: ({ mixedCold_kg_m3, mixedWarm_kg_m3, coldReceiver_K, warmReceiver_K, least_kg_m3 }) => [
        `What counts is weight for the same volume. A drop that weighs less than its water is pushed up, one that weighs more sinks. With less than ${q.density(least_kg_m3)} between them, drops stay cloudy.`,
        `Warm oil swells more than warm water. The mixture is ${q.density(Math.abs(mixedCold_kg_m3))} ${mixedCold_kg_m3 < 0 ? 'heavier' : 'lighter'} than water at ${q.temperature(coldReceiver_K)}, but ${q.density(Math.abs(mixedWarm_kg_m3))} ${mixedWarm_kg_m3 < 0 ? 'heavier' : 'lighter'} at ${q.temperature(warmReceiver_K)}.`,
      ],
      tryIt: {
        label: 'Temperature of the receiver',
        says: 'Warm the receiver, then cool it. Which oil changes its tap?',
      },
      leavesOut: 'Emulsions: soap or dust in the water can keep drops apart for days.',
      further: 'Clove oil sinks. Would you run its receiver warm or cool?',
    },
    'drops-rise': {
      title: 'Which jar loses least oil?',
      setUp: [
        `Distillate runs at ${q.distillateFlow(1.2 / 3600)} through three jars. Small drops of oil must rise before the water leaves.`,
        `Tall: ${q.size(0.05)} wide, ${q.size(0.4)} high. Wide: ${q.size(0.1)} wide, ${q.size(0.1)} high. Both hold the same. Tiny: ${q.size(0.035)} wide, ${q.size(0.1)} high.`,
      ],
      questions: {
        jar: {
          ask: 'Which jar loses the least oil with the water?',
          options: {
            tall: 'The tall one',
            wide: 'The wide one',
            tiny: 'The tiny one',
            same: 'Tall and wide alike: they hold the same',
          },
        },
        stand: {
          ask: 'The water that runs off is cloudy. How long must it stand until nine tenths of the haze are gone?',
        },
      },
      believed: 'Many people say: tall is better, or: only the volume counts.',
      big: ({ tallLost, wideLost, tinyLost }) => [
        { value: q.share(wideLost, FINE), says: 'lost from the wide jar' },
        { value: q.share(tallLost, FINE), says: 'lost from the tall one' },
        { value: q.share(tinyLost, FINE), says: 'lost from the tiny one' },
      ],
      happened: ({ tallLost, wideLost, clears_s, jar_m }) => [
        `The wide jar loses ${q.share(wideLost, FINE)} of the oil, the tall one of the same volume ${q.share(tallLost, FINE)}.`,
        `In a jar filled ${q.size(jar_m)} deep it takes ${q.time(60 * Math.round(clears_s / 60))} until the water is clear.`,
      ],
      why: ({ tallCut_m, wideCut_m }) => [
        'The water sinks on its way to the outlet. A drop is saved if it rises faster than the water sinks, and that is flow divided by surface. Height does not help.',
        `The tall jar saves drops of ${q.drop(tallCut_m)} and larger whole, the wide one from ${q.drop(wideCut_m)}.`,
      ],
      tryIt: { label: 'Distillate', says: 'Let the distillate run slower or faster.' },
      leavesOut: 'How large the drops really are: nobody has measured it, so the sizes are assumed.',
      further: 'What is gained if the water stands overnight?',
    },
    'water-back': {
      title: 'Is the water worth keeping?',
      setUp: [
        'Fresh lemon balm holds very little oil. Much water comes over with it.',
        'Two stills run alike. One keeps its water in a jar, the other returns it to the pot.',
      ],
      questions: {
        share: { ask: 'The water is kept in a jar. What share of the oil that came over is in that water?' },
      },
      believed: 'Many people say: the water is waste.',
      big: ({ inWater, oilWithout_mL, oilWith_mL }) => [
        { value: q.share(inWater), says: 'of the oil is in the water' },
        {
          value: `${q.oilVolume(oilWithout_mL * ML, { decimals: 2 })} → ${q.oilVolume(oilWith_mL * ML, { decimals: 2 })}`,
          says: 'oil without and with return',
        },
      ],
      happened: ({ inWater, oilWithout_mL, oilWith_mL, returnShare }) => [
        `${q.share(inWater)} of the oil that came over was in the water, dissolved or as haze.`,
        `With ${q.share(returnShare)} of the water returned, the still collected ${q.oilVolume(oilWith_mL * ML, { decimals: 2 })} in place of ${q.oilVolume(oilWithout_mL * ML, { decimals: 2 })}.`,
      ],
      why: ({ water_kg }) => [
        `A little oil dissolves in water. When there is little oil and much water, here ${q.water(water_kg)}, that little is a large part of it.`,
        'Water that goes back to the pot is already full of oil and takes hardly any more.',
      ],
      tryIt: {
        label: 'Plant',
        says: 'Try lavender, which has much more oil. Is returning worth it there?',
        options: { 'lemon-balm': 'lemon balm', lavender: 'lavender' },
      },
      leavesOut: 'Boiling the water again can bring other smells.',
      further: 'Scented water is sold too. What would you do with it?',
    },
  };
};
