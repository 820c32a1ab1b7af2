/** For each kind of event a still in which it must be raised, and what its numbers must be near to or beyond. */
import { exampleScenario, type EventKind, type EventValues, type RunEvent, type Scenario } from '../../../sim/index.ts';
import { scenarioOf, type Parts } from '../still/ideal-still.ts';

export const steps = (...knots: readonly (readonly [number, number])[]) =>
  knots.map(([at_s, value]) => ({ at_s, value }));
export const warm = { waterTemperature_K: 370 };
export const own = (constituent: string): Parts['charge'] => ({
  botanical: 'own',
  mass_kg: 1,
  moisture: 0.3,
  oilContent: 0.05,
  composition: [{ constituent, share: 1 }],
});

/** A still whose small separator fills with oil up to its inlet. */
export const smallSeparator = (constituent: string): Scenario =>
  scenarioOf({
    pot: { ...warm, water_kg: 9 },
    charge: { ...own(constituent), release: { takeUp: { hydrocarbon: 2, oxygenate: 2 } } },
    condenser: { length_m: 8 },
    separator: { bore_m: 0.02, height_m: 0.05, inletDepth_m: 0.012, dropMedian_m: 0.002 },
    run: { duration_s: 10_800 },
  });

interface Provoked {
  readonly kind: EventKind;
  readonly scenario: () => Scenario;
  /** Whether the event's numbers are what they must be near to or beyond. */
  readonly holds: (event: RunEvent) => boolean;
}

const raises = <K extends EventKind>(
  kind: K,
  scenario: () => Scenario,
  holds: (values: EventValues[K]) => boolean,
): Provoked => ({ kind, scenario, holds: (event) => event.kind === kind && holds(event.values as EventValues[K]) });

export const provoked: readonly Provoked[] = [
  raises(
    'first-boil',
    () => exampleScenario('gentle-lavender'),
    ({ boilingPoint_K }) => Math.abs(boilingPoint_K - 372.7) < 1,
  ),
  raises(
    'front-through',
    () => exampleScenario('gentle-lavender'),
    ({ bedHeight_m }) => bedHeight_m > 0.1 && bedHeight_m < 0.2,
  ),
  raises(
    'first-drop',
    () => exampleScenario('gentle-lavender'),
    ({ distillate_kg }) => distillate_kg >= 0.000_05 && distillate_kg < 0.001,
  ),
  raises(
    'run-ends',
    () => exampleScenario('gentle-lavender'),
    ({ duration_s }) => duration_s === exampleScenario('gentle-lavender').run.duration_s,
  ),
  raises(
    'tub-warm',
    () => exampleScenario('hard-boiled-lavender'),
    ({ water_K, limit_K, condenser }) =>
      limit_K === 323.15 && water_K >= limit_K && water_K < 324 && condenser === 'coil-in-tub',
  ),
  raises(
    'tub-hot',
    () => exampleScenario('hard-boiled-lavender'),
    ({ water_K, limit_K, condenser }) =>
      limit_K === 333.15 && water_K >= limit_K && water_K < 334 && condenser === 'coil-in-tub',
  ),
  raises(
    'vapour-escapes',
    () => exampleScenario('hard-boiled-lavender'),
    ({ escaping_kg_s, share }) => escaping_kg_s > 0 && share > 0.002 && share < 1,
  ),
  raises(
    'cooling-boils',
    () =>
      scenarioOf({
        pot: warm,
        heat: { ratedPower_W: 4000 },
        charge: { mass_kg: 0 },
        condenser: { length_m: 20, coilPitch_m: 0.013, coilDiameter_m: 0.2, insideDiameter_m: 0.01 },
        cooling: { tubDiameter_m: 0.25, tubHeight_m: 0.5, flow_kg_s: steps([0, 0]) },
      }),
    ({ water_K }) => water_K > 360,
  ),
  raises(
    'pot-dry',
    () => exampleScenario('hard-boiled-lavender'),
    ({ water_kg, vessel }) => water_kg < 0.1 && vessel === 'pot',
  ),
  raises(
    'pot-low',
    () => exampleScenario('hard-boiled-lavender'),
    ({ water_kg, vessel }) => water_kg < 1.3 && vessel === 'pot',
  ),
  raises(
    'vapour-held-again',
    () =>
      scenarioOf({
        pot: warm,
        heat: { ratedPower_W: 4000, lag_s: 10, setting: steps([0, 1], [1500, 0.2]) },
        charge: { mass_kg: 0 },
        condenser: { length_m: 0.6 },
      }),
    ({ condensingLength_m }) => condensingLength_m > 0 && condensingLength_m < 0.6,
  ),
  raises(
    'outlet-warm',
    () =>
      scenarioOf({
        pot: warm,
        heat: { ratedPower_W: 2000 },
        charge: { mass_kg: 0 },
        condenser: { length_m: 0.8, outletLimit_K: 303.15 },
      }),
    ({ distillate_K, limit_K }) => limit_K === 303.15 && distillate_K > limit_K,
  ),
  raises(
    'oil-freezes',
    () =>
      scenarioOf({
        pot: warm,
        charge: own('trans_anethole'),
        condenser: { length_m: 8 },
        cooling: { startTemperature_K: 282.15, tapTemperature_K: steps([0, 281.15]), flow_kg_s: steps([0, 0.05]) },
      }),
    ({ constituent, wall_K, freezes_K, solidShare }) =>
      constituent === 'trans_anethole' && wall_K < freezes_K && freezes_K === 294.55 && solidShare === 1,
  ),
  raises(
    'coil-uncovered',
    () =>
      scenarioOf({
        pot: warm,
        cooling: { tubFill: 0.6, flow_kg_s: steps([0, 0]) },
        charge: { mass_kg: 0 },
        run: { duration_s: 60 },
      }),
    ({ depth_m }) => Math.abs(depth_m - 0.3) < 0.01,
  ),
  raises(
    'separator-overrun',
    () => scenarioOf({ pot: warm, separator: { bore_m: 0.02, dropMedian_m: 0.00005 } }),
    ({ captureShare, limit }) => limit === 0.9 && captureShare < limit,
  ),
  raises(
    'near-neutral-oil',
    () => scenarioOf({ pot: warm, charge: own('trans_anethole') }),
    ({ difference_kg_m3, water_kg_m3 }) => Math.abs(difference_kg_m3) < 15 && water_kg_m3 > 900,
  ),
  raises(
    'pressure-high',
    () =>
      scenarioOf({
        pot: warm,
        charge: { mass_kg: 0 },
        heat: { ratedPower_W: 6000 },
        condenser: { insideDiameter_m: 0.006, outsideDiameter_m: 0.008, coilPitch_m: 0.03 },
      }),
    ({ gauge_Pa, limit_Pa }) => limit_Pa === 5000 && gauge_Pa > limit_Pa,
  ),
  raises(
    'over-pressure',
    () =>
      scenarioOf({
        pot: warm,
        charge: { mass_kg: 0 },
        heat: { ratedPower_W: 9000 },
        condenser: { insideDiameter_m: 0.004, outsideDiameter_m: 0.006, coilPitch_m: 0.03 },
      }),
    ({ gauge_Pa, limit_Pa }) => limit_Pa === 50_000 && gauge_Pa >= limit_Pa,
  ),
  raises(
    'tube-hazard',
    () =>
      scenarioOf({
        pot: warm,
        charge: { mass_kg: 0 },
        heat: { ratedPower_W: 6000 },
        condenser: { insideDiameter_m: 0.006, outsideDiameter_m: 0.008, coilPitch_m: 0.03 },
      }),
    ({ because, pressureDrop_Pa }) => because === 'pressure' && pressureDrop_Pa > 2000,
  ),
  raises(
    'neck-fast',
    () => scenarioOf({ pot: warm, charge: { mass_kg: 0 }, heat: { ratedPower_W: 4000 }, neck: { bore_m: 0.008 } }),
    ({ speed_m_s, limit_m_s }) => limit_m_s === 30 && speed_m_s > limit_m_s,
  ),
  raises(
    'bed-lifts',
    () =>
      scenarioOf({
        pot: { ...warm, diameter_m: 0.2, height_m: 0.4, water_kg: 3 },
        heat: { ratedPower_W: 6000 },
        charge: { ...own('linalool'), particleSize_m: 0.0002, voidShare: 0.4, bulkDensity_kg_m3: 150 },
        condenser: { insideDiameter_m: 0.02, outsideDiameter_m: 0.022 },
      }),
    ({ pressureDrop_Pa, weight_Pa }) => weight_Pa > 150 * 9.81 * 0.2 && pressureDrop_Pa > weight_Pa,
  ),
  raises(
    'foam-carry-over',
    () =>
      scenarioOf({
        pot: { ...warm, diameter_m: 0.1, height_m: 0.4, water_kg: 0.9 },
        charge: { mass_kg: 0 },
        heat: { ratedPower_W: 30_000, lag_s: 0 },
        neck: { bore_m: 0.08 },
        condenser: { insideDiameter_m: 0.04, outsideDiameter_m: 0.042 },
      }),
    ({ speed_m_s, limit_m_s }) => limit_m_s > 1.5 && speed_m_s > limit_m_s,
  ),
  raises(
    'scorch',
    () =>
      scenarioOf({
        pot: { layout: 'water', diameter_m: 0.2, water_kg: 4 },
        charge: own('linalool'),
        heat: { ratedPower_W: 5000 },
        run: { duration_s: 60 },
      }),
    ({ flux_W_m2, limit_W_m2 }) => limit_W_m2 === 70_000 && flux_W_m2 > limit_W_m2,
  ),
  raises(
    'circuit-overloaded',
    () => scenarioOf({ heat: { ratedPower_W: 4000, supplyVolts_V: 230, supplyAmps_A: 13 }, run: { duration_s: 60 } }),
    ({ peak_W, limit_W }) => peak_W === 4000 && limit_W === 230 * 13,
  ),
  raises(
    'rate-not-held',
    () =>
      scenarioOf({
        pot: warm,
        charge: { mass_kg: 0 },
        heat: { ratedPower_W: 800, control: 'hold-rate', targetRate_kg_s: 0.001 },
      }),
    ({ rate_kg_s, target_kg_s }) => target_kg_s === 0.001 && rate_kg_s > 0 && rate_kg_s < 800 / 2.2e6,
  ),
  raises(
    'oil-rate-low',
    () => scenarioOf({ pot: warm, run: { duration_s: 36_000, stopAtOilRate_kg_s: 2e-6 } }),
    ({ oilRate_kg_s, limit_kg_s }) => limit_kg_s === 2e-6 && oilRate_kg_s > 0 && oilRate_kg_s < limit_kg_s,
  ),
  raises(
    'stop-rule',
    () => scenarioOf({ pot: warm, run: { duration_s: 36_000, stopAtDistillate_kg: 0.2 } }),
    (values) => values.rule === 'stop-distillate' && values.limit_kg === 0.2 && values.distillate_kg >= 0.2,
  ),
  raises(
    'oil-at-inlet',
    () => smallSeparator('limonene'),
    ({ layer_m }) => layer_m > 0.012 && layer_m < 0.013,
  ),
];
