/** An event of every kind with numbers as a run gives them, for tests of what is said and shown of events. */
import { EVENT_KINDS, runEvent, type EventKind, type EventValues, type RunEvent } from '../../../sim/index.ts';

const VALUES: EventValues = {
  'first-boil': { boilingPoint_K: 372.7 },
  'front-through': { bedHeight_m: 0.18 },
  'first-drop': { distillate_kg: 0.000_06 },
  'tub-warm': { water_K: 323.2, limit_K: 323.15, condenser: 'coil-in-tub' },
  'tub-hot': { water_K: 333.2, limit_K: 333.15, condenser: 'coil-in-tub' },
  'vapour-escapes': { escaping_kg_s: 0.000_04, share: 0.03 },
  'vapour-held-again': { condensingLength_m: 3.1 },
  'outlet-warm': { distillate_K: 310.4, limit_K: 308.15 },
  'cooling-boils': { water_K: 371.9 },
  'oil-freezes': { constituent: 'trans_anethole', wall_K: 282.9, freezes_K: 287.6, solidShare: 0.27 },
  'coil-uncovered': { depth_m: 0.31 },
  'separator-overrun': { captureShare: 0.893, limit: 0.9 },
  'oil-at-inlet': { layer_m: 0.0213 },
  'near-neutral-oil': {
    difference_kg_m3: 9,
    water_kg_m3: 992,
    temperature_K: 313.15,
    advised_K: 338.15,
    differenceThere_kg_m3: 20.2,
    waterThere_kg_m3: 980,
  },
  'oil-rate-low': { oilRate_kg_s: 1.93e-6, limit_kg_s: 1.95e-6, over_s: 600 },
  'pot-low': { water_kg: 1.2, vessel: 'pot' },
  'pot-dry': { water_kg: 0.05, vessel: 'pot' },
  'pressure-high': { gauge_Pa: 5100, limit_Pa: 5000 },
  'over-pressure': { gauge_Pa: 50_400, limit_Pa: 50_000 },
  'neck-fast': { speed_m_s: 31.6, limit_m_s: 30 },
  'bed-lifts': { pressureDrop_Pa: 380, weight_Pa: 370 },
  'foam-carry-over': { speed_m_s: 1.87, limit_m_s: 1.8, vessel: 'pot' },
  scorch: { flux_W_m2: 83_000, limit_W_m2: 70_000 },
  'circuit-overloaded': { peak_W: 7200, limit_W: 3680 },
  'rate-not-held': { rate_kg_s: 0.000_31, target_kg_s: 0.001 },
  'tube-hazard': { because: 'pressure', pressureDrop_Pa: 2100, speed_m_s: 34 },
  'stop-rule': { rule: 'stop-share', share: 0.901, limit: 0.9 },
  'run-ends': { duration_s: 9000 },
};

/** An event of a kind; `more` may change its values, severity or part. */
export const eventOf = (kind: EventKind, time_s: number, more: Partial<Omit<RunEvent, 'kind'>> = {}): RunEvent =>
  ({ ...runEvent(kind, time_s, VALUES[kind]), ...more }) as RunEvent;

const others = (time_s: number): readonly RunEvent[] => [
  runEvent('tub-hot', time_s, { water_K: 334.1, limit_K: 333.15, condenser: 'bundle' }),
  runEvent('vapour-escapes', time_s, { escaping_kg_s: 1e-6, share: 0.003 }),
  runEvent('near-neutral-oil', time_s, {
    difference_kg_m3: -11,
    water_kg_m3: 992,
    temperature_K: 313.15,
    advised_K: 288.15,
    differenceThere_kg_m3: -20.4,
    waterThere_kg_m3: 999,
  }),
  runEvent('pot-low', time_s, { water_kg: 0.6, vessel: 'boiler' }),
  runEvent('tube-hazard', time_s, { because: 'speed', pressureDrop_Pa: 900, speed_m_s: 37 }),
  runEvent('stop-rule', time_s, { rule: 'stop-distillate', distillate_kg: 2.01, limit_kg: 2 }),
  runEvent('stop-rule', time_s, { rule: 'stop-oil-rate', oilRate_kg_s: 1.9e-6, limit_kg_s: 2e-6 }),
];

/** One of every kind, and of each way in which a kind can be said. */
export const everyEvent: readonly RunEvent[] = [...EVENT_KINDS.map((kind) => eventOf(kind, 5040)), ...others(5040)];
