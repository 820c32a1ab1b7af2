/** Each lesson claims something; if the physics changes so that it no longer holds, a test here fails. */
import { describe, expect, test } from 'vitest';
import type { LessonFacts, LessonId } from '../../../sim/answers/lessons/facts.ts';
import { findLesson, LESSON_IDS } from '../../../sim/answers/lessons/lessons.ts';
import { answered } from './answered.ts';
import type { Turned } from '../../../sim/answers/lessons/lesson.ts';

const factsOf = <Id extends LessonId>(id: Id, turned: Turned = {}): LessonFacts[Id] =>
  answered(id, turned).facts as LessonFacts[Id];

describe('each claim, against the model', () => {
  test('boiling two of eight litres away takes 1.4 to 1.9 times the heat, while the thermometer stands', () => {
    const { heatUp_J, boilAway_J, moved_K } = factsOf('heat-of-steam');
    expect(boilAway_J / heatUp_J).toBeGreaterThan(1.4);
    expect(boilAway_J / heatUp_J).toBeLessThan(1.9);
    expect(moved_K).toBeLessThan(0.5);
  });

  test('with twice the water heating takes twice as much, and boiling two litres away as much as before', () => {
    const once = factsOf('heat-of-steam');
    const twice = factsOf('heat-of-steam', { water: 16 });
    expect(twice.heatUp_J / once.heatUp_J).toBeCloseTo(2, 1);
    expect(twice.boilAway_J / once.boilAway_J).toBeCloseTo(1, 1);
  });

  test.each([900, 1800, 2700])('a harder flame after %i s makes no hotter steam, but twice as much', (minute) => {
    const { before_K, after_K, steamBefore_kg_s, steamAfter_kg_s } = factsOf('harder-flame', { minute });
    expect(Math.abs(after_K - before_K)).toBeLessThan(1);
    expect(after_K).toBeGreaterThan(before_K);
    expect(steamAfter_kg_s / steamBefore_kg_s / 2).toBeGreaterThan(0.85);
    expect(steamAfter_kg_s / steamBefore_kg_s / 2).toBeLessThan(1.15);
  });

  test('at two thousand metres it boils 6 to 7 K lower', () => {
    expect(factsOf('harder-flame').after_K - factsOf('harder-flame', { altitude: 2000 }).after_K).toBeCloseTo(6.4, 0);
  });

  test.each(['lavender', 'pine', 'clove'])(
    'water with %s oil boils below water, by a part of a kelvin to a few',
    (oil) => {
      const { water_K, together_K, oilAlone_K, waterPressure_Pa, oilPressure_Pa, air_Pa } = factsOf('two-liquids', {
        oil,
      });
      expect(water_K - together_K).toBeGreaterThan(0.05);
      expect(water_K - together_K).toBeLessThan(5);
      expect(waterPressure_Pa + oilPressure_Pa).toBeCloseTo(air_Pa, 0);
      expect(oilAlone_K - water_K).toBeGreaterThan(50);
    },
  );

  test('without oil nothing boils below water', () => {
    const { water_K, together_K, oilShare } = factsOf('two-liquids', { oil: 'water-alone' });
    expect(together_K).toBe(water_K);
    expect(oilShare).toBe(0);
  });

  test('steam is gone in the first metre of a cold coil, and needs twice as much in a warm one', () => {
    const { cold_m, warm_m, coldLeft, warmLeft } = factsOf('steam-in-the-coil');
    expect(cold_m).toBeLessThan(1);
    expect(warm_m / cold_m).toBeGreaterThan(1.9);
    expect(coldLeft.reduce((sum, left) => sum + left, 0)).toBeLessThan(warmLeft.reduce((sum, left) => sum + left, 0));
  });

  test.each([2700, 3600, 4500])(
    'with the tap closed at %i s the distillate warms late, then fast, then steam escapes',
    (minute) => {
      const { closed_s, tooWarm_s, escapes_s, firstHalf_K, secondHalf_K } = factsOf('tap-off', { minute });
      expect(tooWarm_s).not.toBeNull();
      expect((tooWarm_s ?? 0) - closed_s).toBeGreaterThan(900);
      expect(escapes_s).toBeGreaterThan(tooWarm_s ?? Infinity);
      expect(secondHalf_K).toBeGreaterThan(3 * (firstHalf_K ?? Infinity));
    },
  );

  test('for the same water the gentle boil brings more oil; the hard one is as far by the clock', () => {
    const { gentleByWater_mL, hardByWater_mL, gentleByTime_mL, hardByTime_mL } = factsOf('gentle-or-hard');
    expect(gentleByWater_mL / hardByWater_mL).toBeGreaterThan(1.05);
    expect(hardByTime_mL / gentleByTime_mL).toBeGreaterThan(0.95);
  });

  test('half the oil comes in the first third, and the last tenth costs as much as the rest', () => {
    const { firstDrop_s, half_s, end_s, energyNine_J, energyRest_J } = factsOf('when-to-stop');
    expect(half_s - firstDrop_s).toBeLessThan((end_s - firstDrop_s) / 3);
    expect(energyRest_J / energyNine_J).toBeGreaterThan(0.8);
  });

  test('lavender floats, clove sinks, and the mixture separates only when it is warm', () => {
    expect(answered('float-or-sink').truths).toMatchObject({
      lavender: { option: 'top' },
      clove: { option: 'bottom' },
      mixed: { option: 'neither' },
    });
    expect(answered('float-or-sink', { receiver: 328.15 }).truths['mixed']).toEqual({ kind: 'choice', option: 'top' });
  });

  test('of two jars of one volume the wide one loses less, and small drops take hours', () => {
    const { tallLost, wideLost, tinyLost, clears_s } = factsOf('drops-rise');
    expect(wideLost).toBeLessThan(tallLost / 2);
    expect(tallLost).toBeLessThan(tinyLost);
    expect(clears_s).toBeGreaterThan(3600);
  });

  test('a large share of the oil of lemon balm is in the water, and returning it brings part of it back', () => {
    const { inWater, oilWithout_mL, oilWith_mL } = factsOf('water-back');
    expect(inWater).toBeGreaterThan(0.25);
    expect(oilWith_mL).toBeGreaterThan(1.1 * oilWithout_mL);
    expect(factsOf('water-back', { plant: 'lavender' }).inWater).toBeLessThan(inWater / 3);
  });

  test('a closed outlet pushes the lid like a person within seconds to a minute or two', () => {
    const { onePerson_s, minutePeople } = factsOf('closed-outlet');
    expect(onePerson_s).toBeGreaterThan(5);
    expect(onePerson_s).toBeLessThan(120);
    expect(minutePeople).toBeGreaterThan(1);
    expect(factsOf('closed-outlet', { lid: 0.5 }).minutePeople).not.toBe(minutePeople);
  });

  test('the pot is dry within minutes of water over steam rate, and not at all when it holds enough', () => {
    const { dry_s, reckoned_s } = factsOf('dry-pot');
    expect(Math.abs((dry_s ?? Infinity) - reckoned_s)).toBeLessThan(300);
    expect(factsOf('dry-pot', { water: 8 }).dry_s).toBeNull();
  });
});

describe.each(LESSON_IDS)('the lesson %s', (id) => {
  const lesson = findLesson(id);
  const answer = answered(id);

  test('has one to three questions, each with an answer that can be given', () => {
    expect(lesson.questions.length).toBeGreaterThan(0);
    expect(lesson.questions.length).toBeLessThanOrEqual(3);
    expect(Object.keys(answer.truths)).toEqual(lesson.questions.map((question) => question.id));
    for (const question of lesson.questions) {
      const truth = answer.truths[question.id];
      expect(truth?.kind).toBe(question.kind);
      if (question.kind === 'choice' && truth?.kind === 'choice') expect(question.options).toContain(truth.option);
      if (question.kind === 'number' && truth?.kind === 'number') {
        expect(truth.value).toBeGreaterThan(question.min);
        expect(truth.value).toBeLessThan(question.max);
      }
      if (question.kind === 'curve' && truth?.kind === 'curve') {
        expect(truth.at_s.length).toBeGreaterThan(50);
        expect(Math.min(...truth.values)).toBeGreaterThanOrEqual(question.min);
        expect(Math.max(...truth.values)).toBeLessThanOrEqual(question.max);
        expect(Math.max(...truth.at_s)).toBeLessThanOrEqual(question.until_s);
      }
    }
  });

  test('answers at both ends of what can be turned', () => {
    const { tryIt } = lesson;
    const ends = tryIt.kind === 'choice' ? tryIt.options : [tryIt.min, tryIt.max];
    for (const end of ends) {
      const turned = answered(id, { [tryIt.id]: end });
      expect(JSON.stringify(turned.facts)).not.toMatch(/NaN|undefined/);
    }
  });
});
