/**
 * When the film coefficients of a condenser are worked out anew: all at the first vapour and while it settles, and when
 * rates, cooling water or the end of the vapour have changed at once; else segment by segment, in batches.
 */
import type { Coolant } from './coolant.ts';

/** Time in which every segment is looked at whether its films are still good, s. */
const REFRESH_TIME = 30;
/** Time between batches of segments that are looked at, s. */
const REFRESH_BATCH = 5;
/** Relative change of the vapour rate at which every coefficient is worked out anew. */
const REFRESH_CHANGE = 0.05;
/** Share of its flow below which water warms so much more that what each segment took up before tells nothing. */
const FAILING_FLOW = 0.5;
/** Segments by which the end of the vapour may move before every coefficient is worked out anew. */
const REFRESH_SHIFT = 1;
/** Time after the first vapour in which every coefficient is worked out in every step, s: walls and condensate settle. */
const SETTLING_TIME = 10;

const hasChanged = (now: number, before: number): boolean => Math.abs(now - before) > REFRESH_CHANGE * before;

/** `batch`: every `stride`-th segment from `offset` on. `step`: none, but the step has another length. */
export type Due = 'start' | 'settle' | 'change' | 'batch' | 'step' | 'nothing';

export class FilmTiming {
  stride = 1;
  offset = 0;
  /** What all coefficients were last worked out for. */
  private rate = 0;
  private arriving = 0;
  private flow = -1;
  private uncovered = 0;
  private length = 0;
  /** Time since the first vapour, s. */
  private sinceStart = 0;
  /** Time since a batch of segments was looked at, s, and how many have been. */
  private sinceBatch = 0;
  private batch = 0;
  private lastStep = 0;

  /** Whether nothing at all came in before. */
  wasIdle(): boolean {
    return this.arriving === 0;
  }

  /** Whether the cooling water has as good as stopped since all was last worked out. */
  isFailing(coolant: Coolant): boolean {
    return coolant.flow < FAILING_FLOW * this.flow;
  }

  /** @param rate of vapour and `arriving` of all that flows in, kg/s; lengths in m */
  due(rate: number, arriving: number, coolant: Coolant, length: number, segmentLength: number, dt: number): Due {
    const isOtherStep = dt !== this.lastStep;
    this.lastStep = dt;
    this.sinceBatch += dt;
    if (this.rate === 0 && rate > 0) {
      this.sinceStart = 0;
      return 'start';
    }
    this.sinceStart += dt;
    if (this.sinceStart < SETTLING_TIME) return 'settle';
    if (
      hasChanged(rate, this.rate) ||
      hasChanged(arriving, this.arriving) ||
      hasChanged(coolant.flow, this.flow) ||
      coolant.uncovered !== this.uncovered ||
      Math.abs(length - this.length) > REFRESH_SHIFT * segmentLength
    )
      return 'change';
    if (this.sinceBatch > REFRESH_BATCH - 0.5 * dt) {
      this.stride = Math.max(1, Math.round(REFRESH_TIME / this.sinceBatch));
      this.offset = this.batch++ % this.stride;
      this.sinceBatch = 0;
      return 'batch';
    }
    return isOtherStep ? 'step' : 'nothing';
  }

  /** All coefficients have been worked out for this. */
  keep(rate: number, arriving: number, coolant: Coolant, length: number): void {
    this.rate = rate;
    this.arriving = arriving;
    this.flow = coolant.flow;
    this.uncovered = coolant.uncovered;
    this.length = length;
  }

  /** Nothing comes in. */
  rest(): void {
    this.rate = 0;
    this.arriving = 0;
  }
}
