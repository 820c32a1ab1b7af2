/**
 * How far each kind of mark has moved. Phases grow with real time at rates the record gives, so that drops fall as
 * often as they would beside the still; they stand still whenever the time mark does.
 */
import type { StillState } from '../still-state.ts';

export interface Phases {
  /** Pixels that vapour has moved in the neck and in the bed. */
  neck: number;
  bed: number;
  /** Pixels that bubbles have risen. */
  bubbles: number;
  /** Drops let go. */
  drops: number;
  /** Pixels that cooling water has moved in its hoses. */
  coolant: number;
  /** Pixels that oil drops have risen or sunk. */
  oil: number;
  /** Pixels that escaping vapour has risen. */
  escape: number;
}

export const stillPhases = (): Phases => ({ neck: 3, bed: 5, bubbles: 7, drops: 0.4, coolant: 2, oil: 4, escape: 6 });

/** Vapour in the neck is shown twenty-five times slower than it flows, or no eye could follow it. */
const NECK_SLOWDOWN = 25;
const clamp = (value: number, low: number, high: number): number => Math.min(high, Math.max(low, value));

/** Vapour speed on screen in the neck, px/s; zero when none flows. */
export const neckPace = (state: StillState, pxPerMetre: number): number =>
  state.vapour_kg_s <= 0 ? 0 : clamp((state.neckSpeed_m_s * pxPerMetre) / NECK_SLOWDOWN, 6, 150);

/** Steam rising through the bed, at its true superficial speed, px/s. */
export function bedPace(state: StillState, pxPerMetre: number, neckBore_m: number, potDiameter_m: number): number {
  if (state.steam_kg_s <= 0) return 0;
  const slow = state.neckSpeed_m_s * (neckBore_m / potDiameter_m) ** 2 * pxPerMetre;
  return clamp(slow, 4, 60);
}

/** Rise of bubbles about 0.1 m/s among their crowd, px/s. */
const BUBBLE_RISE_M_S = 0.1;
/** Fastest hose dashes, px/s, and the flow at which they are reached, kg/s. */
const HOSE_PACE = 60;
const HOSE_FLOW = 0.1;

export function advancePhases(
  phases: Phases,
  state: StillState,
  dt_s: number,
  pxPerMetre: number,
  neckBore_m: number,
  potDiameter_m: number,
): void {
  phases.neck += neckPace(state, pxPerMetre) * dt_s;
  phases.bed += bedPace(state, pxPerMetre, neckBore_m, potDiameter_m) * dt_s;
  if (state.steam_kg_s > 0) phases.bubbles += clamp(BUBBLE_RISE_M_S * pxPerMetre, 24, 90) * dt_s;
  phases.drops += state.dropsPerSecond * dt_s;
  phases.coolant +=
    state.coolantFlow_kg_s > 0 ? clamp((HOSE_PACE * state.coolantFlow_kg_s) / HOSE_FLOW, 5, HOSE_PACE) * dt_s : 0;
  if (state.oilRate_kg_s > 0) phases.oil += 9 * dt_s;
  if (state.alarms.escaping) phases.escape += 26 * dt_s;
}
