/** What each kind of event is about, and how much it matters; the same for every event of a kind. */
import type { ScenarioPart } from '../scenario/scenario.ts';
import type { EventKind, EventValues, RunEvent, Severity } from './result.ts';

const EVENT_TRAITS: Readonly<Record<EventKind, readonly [Severity, ScenarioPart]>> = {
  'first-boil': ['note', 'pot'],
  'front-through': ['note', 'charge'],
  'first-drop': ['note', 'separator'],
  'tub-warm': ['care', 'cooling'],
  'tub-hot': ['care', 'cooling'],
  'vapour-escapes': ['alarm', 'condenser'],
  'vapour-held-again': ['note', 'condenser'],
  'outlet-warm': ['care', 'condenser'],
  'cooling-boils': ['alarm', 'cooling'],
  'coil-uncovered': ['care', 'cooling'],
  'oil-freezes': ['care', 'condenser'],
  'separator-overrun': ['care', 'separator'],
  'oil-at-inlet': ['care', 'separator'],
  'near-neutral-oil': ['care', 'separator'],
  'oil-rate-low': ['note', 'run'],
  'pot-low': ['alarm', 'pot'],
  'pot-dry': ['alarm', 'pot'],
  'pressure-high': ['alarm', 'pot'],
  'over-pressure': ['alarm', 'pot'],
  'neck-fast': ['care', 'neck'],
  'bed-lifts': ['care', 'charge'],
  'foam-carry-over': ['care', 'pot'],
  scorch: ['alarm', 'heat'],
  'circuit-overloaded': ['alarm', 'heat'],
  'rate-not-held': ['care', 'heat'],
  'tube-hazard': ['care', 'condenser'],
  'stop-rule': ['note', 'run'],
  'run-ends': ['note', 'run'],
};

export const EVENT_KINDS = Object.keys(EVENT_TRAITS) as readonly EventKind[];

export function runEvent<K extends EventKind>(kind: K, time_s: number, values: EventValues[K]): RunEvent<K> {
  const [severity, part] = EVENT_TRAITS[kind];
  return { kind, time_s, severity, part, values };
}
