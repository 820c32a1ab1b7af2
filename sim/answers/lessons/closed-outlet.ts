/**
 * What a closed outlet does to the lid. Model only: pressure by the heat balance of a tight pot (sim/still/blocked-outlet),
 * force = pressure × area. A grown person: 75 kg, as lifts are reckoned (EN 81-20, rated load per person).
 */
import { STANDARD_GRAVITY } from '../../constants.ts';
import { standardPressure } from '../../fluids/atmosphere.ts';
import { circleArea } from '../../geometry/cylinder.ts';
import { blockedOutletGauge, blockedOutletTime } from '../../still/blocked-outlet.ts';
import { turnedNumber, type Control, type Lesson } from './lesson.ts';

const PERSON_KG = 75;
const HEAT_W = 2600;
const WATER_KG = 8;
const HEIGHT_M = 0.32;
/** Steel of the pot, J/K. */
const METAL_J_K = 1800;
const ALTITUDE_M = 120;
const A_MINUTE_S = 60;

const lid: Control = { kind: 'number', id: 'lid', quantity: 'size', min: 0.2, max: 0.6, step: 0.02, start: 0.32 };

export const closedOutlet: Lesson<'closed-outlet'> = {
  id: 'closed-outlet',
  choose: null,
  tryIt: lid,
  hazards: ['closed-outlet', 'steam'],
  modelOnly: true,
  working: { kind: 'entry', name: 'blocked-outlet-time' },
  questions: [{ kind: 'number', id: 'person', quantity: 'duration', min: 0, max: 600, step: 5 }],
  stills: () => [],
  answer: (_, turned) => {
    const lid_m = turnedNumber(turned, lid);
    const area = circleArea(lid_m);
    const volume = area * HEIGHT_M;
    const air = standardPressure(ALTITUDE_M);
    const water = Math.min(WATER_KG, 0.7 * volume * 1000);
    const weight = PERSON_KG * STANDARD_GRAVITY;
    const onePerson_s = blockedOutletTime(HEAT_W, water, volume, METAL_J_K, air, weight / area);
    const gaugeAt = (time_s: number) => blockedOutletGauge(time_s, HEAT_W, water, volume, METAL_J_K, air);
    const minute_Pa = gaugeAt(A_MINUTE_S);
    return {
      facts: {
        person_kg: PERSON_KG,
        onePerson_s,
        minute_Pa,
        minutePeople: (minute_Pa * area) / weight,
        peopleAt: Array.from({ length: A_MINUTE_S + 1 }, (_unused, time_s) => (gaugeAt(time_s) * area) / weight),
        lid_m,
        heat_W: HEAT_W,
      },
      truths: { person: { kind: 'number', value: onePerson_s } },
    };
  },
};
