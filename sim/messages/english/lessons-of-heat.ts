/** The lessons about heat, steam and safety, in English. */
import type { LessonWords } from '../lesson-words.ts';
import type { Quantities } from '../quantities.ts';

type HeatLessons = {
  readonly [
    Id in 'heat-of-steam' | 'harder-flame' | 'steam-in-the-coil' | 'tap-off' | 'closed-outlet' | 'dry-pot'
  ]: LessonWords<Id>;
};

const FINE = { decimals: 1 } as const;

export const lessonsOfHeat = (q: Quantities): HeatLessons => ({
  'heat-of-steam': {
    title: 'To heat it, or to boil it away?',
    setUp: [
      `A pot holds ${q.water(8)} of cold water. The plate runs at full heat.`,
      `First the water warms up to the boil. Then we boil ${q.water(2)} of it away as steam.`,
    ],
    questions: {
      more: {
        ask: 'Which part takes more energy?',
        options: {
          heating: 'Heating all the water to the boil',
          boiling: `Boiling ${q.water(2)} of it away`,
          same: 'Both take about the same',
        },
      },
    },
    believed: 'Many people say: once it boils, the work is done.',
    big: ({ heatUp_J, boilAway_J, boilAway_s }) => [
      { value: q.energy(boilAway_J), says: `to boil the ${q.water(2)} away, in ${q.time(boilAway_s)}` },
      { value: q.energy(heatUp_J), says: 'to heat all the water' },
    ],
    happened: ({ heatUp_J, boilAway_J, moved_K, boil_K }) => [
      boilAway_J > heatUp_J
        ? `Boiling part of it away took ${q.number(boilAway_J / heatUp_J, FINE)} times the energy of heating it all.`
        : `Heating so much water took ${q.number(heatUp_J / boilAway_J, FINE)} times the energy of boiling part of it away.`,
      `All that time the thermometer stood at ${q.temperature(boil_K, FINE)}. It moved by ${q.temperatureDifference(moved_K)}.`,
    ],
    why: ({ heatUp_J, boilAway_J, water_kg, boiledAway_kg }) => [
      'In water the particles hold on to one another. To set them free as steam takes energy, and that energy makes nothing warmer.',
      `For each litre it took ${q.number(boilAway_J / boiledAway_kg / (heatUp_J / water_kg), FINE)} times as much to turn it to steam as to heat it. The condenser must take all of that out again.`,
    ],
    tryIt: { label: 'Water in the pot', says: 'Double the water. Which number changes, and which does not?' },
    leavesOut: 'The pot also loses heat to the room. The run counts it, the comparison does not.',
    further: 'Why does steam burn the skin worse than boiling water?',
  },
  'harder-flame': {
    title: 'What does a harder flame do?',
    setUp: [
      'A wrapped pot of lavender boils gently and drips into the receiver.',
      'Then somebody doubles the heat. You choose when.',
    ],
    choose: { label: 'Double the heat this long after the first drop' },
    questions: {
      pot: { ask: 'Draw the temperature of the water in the pot, from cold to the end.' },
      steam: {
        ask: 'How much steam comes after the heat is doubled?',
        options: {
          same: 'As much as before',
          'half-more': 'Half as much again',
          twice: 'Twice as much',
          'four-times': 'Four times as much',
        },
      },
    },
    believed: 'Many people say: more flame, hotter steam.',
    big: ({ before_K, after_K, steamBefore_kg_s, steamAfter_kg_s }) => [
      {
        value: q.temperatureDifference(after_K - before_K, { decimals: 2 }),
        says: 'warmer water after the heat was doubled',
      },
      { value: `${q.number(steamAfter_kg_s / steamBefore_kg_s, FINE)} ×`, says: 'as much steam' },
    ],
    happened: ({ before_K, after_K, steamBefore_kg_s, steamAfter_kg_s, at_s }) => [
      `At ${q.time(at_s)} the heat was doubled. The water stood at ${q.apart('temperature', before_K, after_K).join(' before and at ')} afterwards.`,
      `The steam rose from ${q.steamFlow(steamBefore_kg_s)} to ${q.steamFlow(steamAfter_kg_s)}.`,
    ],
    why: ({ gaugeAfter_Pa, altitude_m }) => [
      'While the air presses on it, boiling water gets no hotter. All extra heat makes more steam.',
      `More steam must squeeze through the same pipe. That holds back ${q.pressure(gaugeAfter_Pa)}, which lifts the boiling point by a hair. Here the air is that of ${q.altitude(altitude_m)} above the sea.`,
    ],
    tryIt: { label: 'Altitude of the shed', says: 'Take the still up a mountain. What does the thermometer say now?' },
    leavesOut: 'Closed pots that cook under pressure are another matter, and never a still.',
    further: 'What must the condenser do when the steam doubles?',
  },
  'steam-in-the-coil': {
    title: 'How far does the steam get?',
    setUp: [
      `${q.power(3000)} of heat go into the pot, and all of it leaves as steam into a coil of ${q.tubeLength(4)}.`,
      `The coil lies in a tub: first at ${q.temperature(285.15)}, then in one that is already at ${q.temperature(333.15)}.`,
    ],
    questions: {
      cold: { ask: 'Cold tub: how far along the coil is the last steam gone?' },
      warm: { ask: 'Warm tub: how far along the coil is the last steam gone now?' },
    },
    believed: 'Many people say: the whole coil turns steam to water.',
    big: ({ cold_m, warm_m }) => [
      { value: q.tubeLength(cold_m), says: 'of coil in the cold tub' },
      { value: q.tubeLength(warm_m), says: 'of coil in the warm tub' },
    ],
    happened: ({ cold_m, warm_m, length_m }) => [
      `In the cold tub the steam was gone after ${q.tubeLength(cold_m)} of ${q.tubeLength(length_m)}.`,
      `In the warm tub it needed ${q.tubeLength(warm_m)}, which is ${q.number(warm_m / cold_m, FINE)} times as far.`,
    ],
    why: ({ coldTub_K, warmTub_K, heat_W }) => [
      `Heat flows by the difference between warm and cold. Steam at about ${q.temperature(373.15)} meets water at ${q.temperature(coldTub_K)}, or only ${q.temperature(warmTub_K)}: less pull, so more wall is needed for the same ${q.power(heat_W)}.`,
      'The rest of the coil cools the water that the steam has become.',
    ],
    tryIt: {
      label: 'Tube',
      says: 'Try a narrow tube, or steel in place of copper.',
      options: { 'as-is': 'Wide copper tube', narrow: 'Narrow copper tube', steel: 'Wide steel tube' },
    },
    leavesOut: 'Where exactly the film of water in the tube breaks up, nobody can say.',
    further: 'The tub warms up during a run. What follows for the length of a coil?',
  },
  'tap-off': {
    title: 'Who turned off the tap?',
    setUp: [
      'Lavender is running, and cold water flows through the tub.',
      'Then somebody turns off the tap. You choose when.',
    ],
    choose: { label: 'The tap is closed at' },
    questions: { distillate: { ask: 'Draw the temperature of the distillate, from the first drop to the end.' } },
    believed: 'Many people say: nothing happened at once, so it is all right.',
    big: ({ closed_s, tooWarm_s, escapes_s }) => [
      {
        value: tooWarm_s === null ? '–' : q.time(tooWarm_s - closed_s),
        says: 'from closing the tap until the distillate is too warm',
      },
      { value: escapes_s === null ? '–' : q.time(escapes_s - closed_s), says: 'until steam escapes' },
    ],
    happened: ({ closed_s, before_K, limit_K, tooWarm_s, escapes_s }) => [
      `At ${q.time(closed_s)} the tap was closed. The distillate was at ${q.temperature(before_K)}.`,
      tooWarm_s === null
        ? `In this run it stays below ${q.temperature(limit_K)}.`
        : `It passed ${q.temperature(limit_K)} at ${q.time(tooWarm_s)}.${escapes_s === null ? '' : ` From ${q.time(escapes_s)} on, steam escapes.`}`,
    ],
    why: ({ tub_kg, firstHalf_K, secondHalf_K }) => [
      `The ${q.water(tub_kg)} in the tub are a store of cold. They fill with heat from the top down, and the end of the coil lies at the bottom.`,
      firstHalf_K === null || secondHalf_K === null
        ? 'So the mistake stays hidden until the store is full.'
        : `So the mistake stays hidden: in the first half of that time the distillate warmed by ${q.temperatureDifference(firstHalf_K)}, in the second by ${q.temperatureDifference(secondHalf_K)}.`,
    ],
    tryIt: {
      label: 'The hose ends',
      says: 'Let the cold water in at the bottom, or at the top.',
      options: { laid: 'at the bottom', top: 'at the top' },
    },
    leavesOut: 'Wind over the tub, and a lid on it.',
    further: 'What would you look at to notice the closed tap in time?',
  },
  'closed-outlet': {
    title: 'Never close the outlet',
    setUp: [
      `A pot with a lid of ${q.size(0.32)} boils at full heat. In the model, and only there, the outlet is closed.`,
      'The steam has no way out.',
    ],
    questions: { person: { ask: 'After how long does the steam push the lid as hard as a person who stands on it?' } },
    believed: 'Many people say: the lid would just hiss.',
    big: ({ onePerson_s, minutePeople }) => [
      { value: q.time(onePerson_s), says: 'until the lid is pushed as by one person' },
      { value: q.number(minutePeople, FINE), says: 'people, after one minute' },
    ],
    happened: ({ onePerson_s, minutePeople, person_kg }) => [
      `After ${q.time(onePerson_s)} the lid is pushed with the weight of one person of ${q.mass(person_kg)}.`,
      `After a minute it is that of ${q.number(minutePeople, FINE)} people.`,
    ],
    why: ({ minute_Pa, lid_m }) => [
      'Steam that cannot leave raises the pressure, and pressure pushes on every piece of the lid: force is pressure times area.',
      `After a minute the steam presses with ${q.pressure(minute_Pa)} on a lid of ${q.size(lid_m)}. That is why the way out must always be open.`,
    ],
    tryIt: { label: 'Width of the lid', says: 'Make the lid wider. What does the same pot do now?' },
    leavesOut: 'What breaks first. We never try.',
    further: 'Which parts of a still could block the way out by accident?',
  },
  'dry-pot': {
    title: 'The pot that ran dry',
    setUp: [
      `Two pots boil with the same heat. One holds ${q.water(8)} of water, the other far too little: ${q.water(2.5)}.`,
      'Nobody looks. This is shown in the model only.',
    ],
    questions: {
      minute: { ask: 'When does the pot with too little water run dry?' },
      smell: {
        ask: 'The plant stays on hot, dry metal. What happens to the smell of the oil?',
        options: { nothing: 'Nothing', stronger: 'It gets stronger', burnt: 'It gets burnt' },
      },
    },
    believed: 'Many people say: you would notice in time.',
    big: ({ dry_s, reckoned_s }) => [
      { value: dry_s === null ? 'not dry' : q.time(dry_s), says: 'the pot is dry' },
      { value: q.time(60 * Math.round(reckoned_s / 60)), says: 'worked out beforehand: water ÷ steam' },
    ],
    happened: ({ dry_s, water_kg }) => [
      dry_s === null
        ? `With ${q.water(water_kg)} the pot does not run dry in this time.`
        : `The pot with ${q.water(water_kg)} of water was dry at ${q.time(dry_s)}.`,
      'Dry plant on hot metal scorches, and the oil smells burnt. The model knows the time, not the smell.',
    ],
    why: ({ steam_kg_s, boil_s, water_kg }) => [
      `After ${q.time(boil_s)} the pot boils and loses ${q.steamFlow(steam_kg_s)}. Rate times time: ${q.water(water_kg)} last until about ${q.time(60 * Math.round((boil_s + water_kg / steam_kg_s) / 60))}.`,
      'You can work this out before you light the flame.',
    ],
    tryIt: { label: 'Water in the pot', says: 'Fill the pot for a run of three hours.' },
    leavesOut: 'Burnt notes: the model has none.',
    further: 'Why may part of the water come back into the pot, and make it last longer?',
  },
});
