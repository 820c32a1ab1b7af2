/** The numbers of each lesson, in SI: what its sentences are made of. */
export interface LessonFacts {
  'heat-of-steam': {
    readonly water_kg: number;
    readonly boiledAway_kg: number;
    readonly heatUp_J: number;
    readonly boilAway_J: number;
    readonly heatUp_s: number;
    readonly boilAway_s: number;
    readonly boil_K: number;
    /** How far the thermometer moved while it boiled. */
    readonly moved_K: number;
    readonly lost_J: number;
  };
  'harder-flame': {
    readonly at_s: number;
    readonly before_K: number;
    readonly after_K: number;
    readonly steamBefore_kg_s: number;
    readonly steamAfter_kg_s: number;
    readonly gaugeAfter_Pa: number;
    readonly altitude_m: number;
  };
  'two-liquids': {
    readonly air_Pa: number;
    readonly water_K: number;
    readonly together_K: number;
    readonly oilAlone_K: number;
    readonly waterPressure_Pa: number;
    readonly oilPressure_Pa: number;
    readonly oilShare: number;
    /** Curves for the picture. */
    readonly at_K: readonly number[];
    readonly waterAt_Pa: readonly number[];
    readonly oilAt_Pa: readonly number[];
  };
  'steam-in-the-coil': {
    readonly length_m: number;
    readonly heat_W: number;
    readonly coldTub_K: number;
    readonly warmTub_K: number;
    readonly cold_m: number;
    readonly warm_m: number;
    /** Steam left at the end of each piece of tube, from the vapour end. */
    readonly coldLeft: readonly number[];
    /** When the two were looked at. */
    readonly coldAt_s: number;
    readonly warmAt_s: number;
    readonly warmLeft: readonly number[];
  };
  'tap-off': {
    readonly closed_s: number;
    readonly before_K: number;
    readonly limit_K: number;
    readonly tooWarm_s: number | null;
    readonly escapes_s: number | null;
    /** Rise of the distillate in the first and in the second half of the time until it is too warm. */
    readonly firstHalf_K: number | null;
    readonly secondHalf_K: number | null;
    readonly tub_kg: number;
  };
  'gentle-or-hard': {
    readonly time_s: number;
    readonly water_kg: number;
    readonly gentleByTime_mL: number;
    readonly hardByTime_mL: number;
    readonly gentleByWater_mL: number;
    readonly hardByWater_mL: number;
    /** Share of linalyl acetate in the first tenth of the oil. */
    readonly gentleEster: number;
    readonly hardEster: number;
    /** Differences below this share count as none. */
    readonly sameWithin: number;
    readonly steamEscapes: boolean;
  };
  'when-to-stop': {
    readonly firstDrop_s: number;
    readonly half_s: number;
    readonly nine_s: number;
    readonly end_s: number;
    readonly all_mL: number;
    readonly energyNine_J: number;
    readonly energyRest_J: number;
  };
  'float-or-sink': {
    readonly receiver_K: number;
    readonly water_kg_m3: number;
    readonly lavender_kg_m3: number;
    readonly clove_kg_m3: number;
    readonly mixed_kg_m3: number;
    readonly least_kg_m3: number;
    /** Of the mixed oil, cold and warm. */
    readonly coldReceiver_K: number;
    readonly warmReceiver_K: number;
    readonly mixedCold_kg_m3: number;
    readonly mixedWarm_kg_m3: number;
  };
  'drops-rise': {
    readonly flow_kg_s: number;
    readonly volume_m3: number;
    readonly tallCut_m: number;
    readonly wideCut_m: number;
    readonly tinyCut_m: number;
    readonly tallLost: number;
    readonly wideLost: number;
    readonly tinyLost: number;
    readonly clears_s: number;
    readonly jar_m: number;
  };
  'water-back': {
    readonly inWater: number;
    readonly oilWithout_mL: number;
    readonly oilWith_mL: number;
    readonly water_kg: number;
    readonly returnShare: number;
  };
  'closed-outlet': {
    readonly person_kg: number;
    readonly onePerson_s: number;
    readonly minute_Pa: number;
    readonly minutePeople: number;
    /** The same second by second from the closing, up to a minute. */
    readonly peopleAt: readonly number[];
    readonly lid_m: number;
    readonly heat_W: number;
  };
  'dry-pot': {
    readonly water_kg: number;
    readonly boil_s: number;
    readonly steam_kg_s: number;
    readonly reckoned_s: number;
    readonly dry_s: number | null;
    readonly enough_kg: number;
  };
}

export type LessonId = keyof LessonFacts;
