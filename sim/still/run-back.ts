/**
 * Liquid on its way back to pot or bed: what runs down a wall or through a return pipe takes a few seconds. It is handed
 * on in proportion to what is under way, so that a step four times as long brings four times as much and a change of the
 * step is not felt.
 */
import { LiquidStream } from './stream.ts';

/** Time that liquid is under way, s; judgement. A step at least as long brings all of it. */
const RUN_BACK_TIME = 5;

export class RunBack {
  readonly held: LiquidStream;
  private readonly arriving: LiquidStream;

  constructor(constituents: number) {
    this.held = new LiquidStream(constituents);
    this.arriving = new LiquidStream(constituents);
  }

  /** Sets liquid on its way. */
  add(liquid: LiquidStream): void {
    this.held.add(liquid);
  }

  /** What arrives in a step; holds until the next. */
  give(dt: number): LiquidStream {
    const { held, arriving } = this;
    const share = Math.min(1, dt / RUN_BACK_TIME);
    arriving.water = share * held.water;
    arriving.enthalpy = share * held.enthalpy;
    held.water -= arriving.water;
    held.enthalpy -= arriving.enthalpy;
    for (let i = 0; i < held.oil.length; i++) {
      arriving.oil[i] = share * (held.oil[i] as number);
      held.oil[i] = (held.oil[i] as number) - (arriving.oil[i] as number);
    }
    return arriving;
  }
}
