/**
 * Heat source: follows its setting with a first-order lag and gives a fixed share of its heat to the pot.
 *
 * States: heat stored in the source [J]. Equations: dS/dt = P_set − S/τ, integrated exactly over a step; a share η of
 * S/τ enters the pot, the rest goes to the room. Control: a schedule, or a PI controller that holds a distillate
 * rate (full heat up to the boil, feed-forward, then PI), with limits 0–1 and conditional integration against wind-up.
 * Limits: one time constant for warming and cooling; no dependence of η on the setting.
 */
import { latentHeat } from '../fluids/water.ts';
import type { Scenario } from '../scenario/scenario.ts';

/** Time constant that the controlled rate is tuned for, s (lambda tuning). */
const CLOSED_LOOP = 60;
/** Time over which the measured rate is smoothed, s. */
const RATE_MEMORY = 10;
/** Distance from the boil, K, that counts as boiling, and at which a pot has fallen off the boil. */
const AT_BOIL = 0.05;
const FALLEN_OFF_BOIL = 1;

export class HeatSource {
  /** Heat stored in the source, J. */
  stored = 0;
  /** Setting in force, share of rated power. */
  setting = 0;
  /** Energy taken in the last step, J. */
  taken = 0;
  /** Energy given to the pot in the last step, J. */
  toPot = 0;
  /** Energy lost to the room in the last step, J. */
  missed = 0;
  private readonly heat: Scenario['heat'];
  /** Setting that makes just the rate asked for, without losses. */
  private readonly forward: number;
  private readonly resetTime: number;
  private readonly gain: number;
  private integral: number;
  private smoothedRate = 0;
  /** Whether the heat stored is taken to bring the pot to the boil, or it boils. */
  private coasting = false;

  constructor(heat: Scenario['heat']) {
    this.heat = heat;
    this.forward = Math.min(1, (heat.targetRate_kg_s * latentHeat(373.15)) / (heat.ratedPower_W * heat.shareToPot));
    this.resetTime = heat.lag_s + 30;
    this.gain = (this.resetTime / CLOSED_LOOP) * this.forward;
    this.integral = this.forward;
  }

  /**
   * Sets the heat for holding a distillate rate: full until the pot is about to boil, then the setting that makes the
   * rate, then a PI controller that starts there.
   * @param rate distillate of the last step, kg/s
   * @param toBoil how far the pot is below its boiling point, K; `warming` how fast it rises, K/s
   * @param last length of the last step, `dt` of the coming one, s
   */
  control(rate: number, toBoil: number, warming: number, last: number, dt: number): void {
    this.smoothedRate += (rate - this.smoothedRate) * -Math.expm1(-last / RATE_MEMORY);
    if (this.smoothedRate <= 0.02 * this.heat.targetRate_kg_s) {
      this.setting = this.settingBeforeDistillate(toBoil, warming, dt);
      return;
    }
    // The setting holds for the coming step: it answers the rate that is to be expected half way through it.
    const ahead = this.smoothedRate + (rate - this.smoothedRate) * -Math.expm1((-0.5 * dt) / RATE_MEMORY);
    const error = 1 - ahead / this.heat.targetRate_kg_s;
    const wanted = this.gain * error + this.integral;
    if ((wanted > 0 && wanted < 1) || wanted >= 1 === error < 0)
      this.integral += (this.gain * error * dt) / this.resetTime;
    this.setting = Math.min(1, Math.max(0, this.gain * error + this.integral));
  }

  /** Full heat until the heat stored suffices to reach the boil, in the midst of a step where need be. */
  private settingBeforeDistillate(toBoil: number, warming: number, dt: number): number {
    const coming = this.heat.lag_s * warming;
    // Latched with a gap, or the setting would jump between the two at every step near the boil.
    if (this.coasting && toBoil > 2 * coming + FALLEN_OFF_BOIL) this.coasting = false;
    if (this.coasting) return this.forward;
    const missing = toBoil - coming - AT_BOIL;
    if (missing >= warming * dt) return 1;
    this.coasting = true;
    return this.forward + (1 - this.forward) * (missing > 0 ? missing / (warming * dt) : 0);
  }

  step(dt: number): void {
    const power = this.setting * this.heat.ratedPower_W;
    const lag = this.heat.lag_s;
    const before = this.stored;
    this.taken = power * dt;
    if (lag > 0) {
      const decay = Math.exp(-dt / lag);
      this.stored = before * decay + power * lag * (1 - decay);
    }
    const given = this.taken + before - this.stored;
    this.toPot = this.heat.shareToPot * given;
    this.missed = given - this.toPot;
  }
}
