/**
 * Heat source: follows its setting with a first-order lag and gives a fixed share of its heat to the pot.
 *
 * States: heat stored in the source [J]. Equations: dS/dt = P_set − S/τ, integrated exactly over a step; a share η of
 * S/τ enters the pot, the rest goes to the room. Control: a schedule, or a PI controller that holds a distillate
 * rate, with limits 0–1 and conditional integration against wind-up.
 * Limits: one time constant for warming and cooling; no dependence of η on the setting.
 */
import { latentHeat } from '../fluids/water.ts';
import type { Scenario } from '../scenario/scenario.ts';

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
  private integral = 0;
  private readonly gain: number;
  private readonly resetTime: number;

  private readonly heat: Scenario['heat'];

  constructor(heat: Scenario['heat']) {
    this.heat = heat;
    const nominalRate = (heat.ratedPower_W * heat.shareToPot) / latentHeat(373.15);
    this.gain = 0.4 / nominalRate;
    this.resetTime = Math.max(90, 2.5 * heat.lag_s);
  }

  /** Sets the controller's demand from the distillate rate of the last step, kg/s. */
  control(distillateRate: number, dt: number): void {
    const error = this.heat.targetRate_kg_s - distillateRate;
    const trial = this.gain * error + this.integral + (this.gain * error * dt) / this.resetTime;
    if (trial > 0 && trial < 1) this.integral += (this.gain * error * dt) / this.resetTime;
    this.setting = Math.min(1, Math.max(0, this.gain * error + this.integral));
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
