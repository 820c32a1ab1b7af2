/**
 * A particle filter for a run that is under way: likely runs are weighed by what was read, and where few carry the
 * weight, new ones are drawn near them.
 *
 * Each particle is a point of scores, one a doubt, standard normal before anything is read, and the course of its run.
 * Readings are brought in by degrees (tempering), each just so far that half of the particles still count; then
 * the particles are drawn anew by weight and each makes a few steps that leave their own normal distribution as it is,
 * taken or not by Metropolis and Hastings' rule, so that the draws follow prior and likelihood whatever their shape. One
 * step alone is too few: copies stay where they were drawn, and what the readings say little of comes out too narrow.
 *
 * N. Chopin, A sequential particle filter method for static models, Biometrika 89 (2002) 539–551; P. Del Moral,
 * A. Doucet and A. Jasra, Sequential Monte Carlo samplers, J. R. Statist. Soc. B 68 (2006) 411–436; the step is the
 * kernel with shrinkage of J. Liu and M. West, Combined parameter and state estimation in simulation-based filtering,
 * in Sequential Monte Carlo Methods in Practice (Springer 2001) 197–223.
 */
import { erfc } from '../../maths/error-function.ts';
import { bisect } from '../../maths/bisect.ts';
import type { StopRule } from '../../run/stop-rules.ts';
import type { Scenario } from '../../scenario/scenario.ts';
import { valueAtShare, type Uncertain } from '../ensemble/factors.ts';
import { latinHypercube, normalScore, Xoshiro128 } from '../ensemble/random.ts';
import type { Course, CoursesAsked, DrawnValues } from './course.ts';
import { logLikelihood, residualOf, type Seen } from './forecast-readings.ts';
import { effectiveSize, NormalCloud, resampled, sharesOf, type Point } from './normal-cloud.ts';

export interface Particle {
  readonly scores: Point;
  readonly course: Course;
}

/** Particles and the logarithms of their weights. */
export interface Population {
  readonly particles: readonly Particle[];
  readonly logWeights: readonly number[];
}

/** Work of which the runs are made by whoever drives it: yields what it needs, and is given the courses. */
export type CourseWork<T> = Generator<
  { readonly asked: CoursesAsked; readonly soFar: Population | null },
  T,
  readonly (Course | null)[]
>;

/** Share of the particles that must go on counting. */
const LEAST_EFFECTIVE = 1 / 2;
/** Length of a step, in spreads of the cloud, and how many follow each other. */
const STEP = 0.7;
const STEPS = 3;
/** Particles that are run first when the plan is turned, for a first answer. */
const FIRST_AGAIN = 60;
const MOST_STAGES = 20;
/** Uncertainties beyond every particle from which the model does not allow a reading. */
const IMPOSSIBLE = 4;

const logPrior = (scores: Point): number => -0.5 * scores.reduce((sum, score) => sum + score * score, 0);

/** The values of the doubts at their scores. */
export const drawnAt = (doubts: readonly Uncertain[], scores: Point): DrawnValues =>
  Object.fromEntries(
    doubts.map((doubt, index) => [doubt.id, valueAtShare(doubt, 0.5 * erfc(-(scores[index] as number) / Math.SQRT2))]),
  );

export class ParticleFilter {
  private readonly doubts: readonly Uncertain[];
  private readonly rule: StopRule;
  private readonly chance: Xoshiro128;
  private scenario: Scenario;
  private readings: readonly Seen[] = [];
  population: Population = { particles: [], logWeights: [] };
  /** Runs of the model so far. */
  runs = 0;

  constructor(scenario: Scenario, doubts: readonly Uncertain[], rule: StopRule, seed: number) {
    this.scenario = scenario;
    this.doubts = doubts;
    this.rule = rule;
    this.chance = Xoshiro128.fromSeed(seed);
  }

  private *courses(
    points: readonly Point[],
    soFar: Population | null,
  ): CourseWork<readonly { readonly scores: Point; readonly course: Course | null }[]> {
    const draws = points.map((scores) => drawnAt(this.doubts, scores));
    const found = yield { asked: { scenario: this.scenario, rule: this.rule, draws }, soFar };
    this.runs += points.length;
    return points.map((scores, index) => ({ scores, course: found[index] ?? null }));
  }

  /** The likely runs before anything is read. */
  *begin(members: number): CourseWork<void> {
    const points = latinHypercube(members, this.doubts.length, this.chance).map((point) =>
      Array.from(point, (share) => normalScore(share)),
    );
    const particles = (yield* this.courses(points, null)).flatMap(({ scores, course }) =>
      course === null ? [] : [{ scores, course }],
    );
    this.population = { particles, logWeights: particles.map(() => 0) };
  }

  /** Readings that no particle comes near. */
  impossible(readings: readonly Seen[]): readonly Seen[] {
    return readings.filter((seen) =>
      this.population.particles.every(({ course }) => Math.abs(residualOf(course, seen)) > IMPOSSIBLE),
    );
  }

  /**
   * Takes in all that was read so far, in the plan as it was followed; readings may have been corrected or taken back.
   * What the model does not allow is left out.
   */
  *update(scenario: Scenario, readings: readonly Seen[]): CourseWork<void> {
    const before = { scenario: this.scenario, readings: this.readings, population: this.population };
    let isDone = false;
    try {
      yield* this.follow(scenario, readings);
      const left = this.impossible(readings);
      this.readings = readings.filter((seen) => !left.includes(seen));
      yield* this.temper(before.readings, this.readings);
      isDone = true;
    } finally {
      // Work that is given up half-way leaves no population of neither the old readings nor the new.
      if (!isDone) Object.assign(this, before);
    }
  }

  private *follow(scenario: Scenario, readings: readonly Seen[]): CourseWork<void> {
    if (JSON.stringify(scenario) === JSON.stringify(this.scenario)) return;
    this.scenario = scenario;
    const { particles, logWeights } = this.population;
    const every = Math.max(1, Math.floor(particles.length / FIRST_AGAIN));
    const places = particles.map((_, place) => place);
    const first = places.filter((place) => place % every === 0);
    const again: { readonly particle: Particle; readonly log: number }[] = [];
    const run = function* (
      this: ParticleFilter,
      chosen: readonly number[],
      soFar: Population | null,
    ): CourseWork<void> {
      const found = yield* this.courses(
        chosen.map((place) => (particles[place] as Particle).scores),
        soFar,
      );
      found.forEach(({ scores, course }, k) => {
        if (course !== null)
          again.push({ particle: { scores, course }, log: logWeights[chosen[k] as number] as number });
      });
    }.bind(this);
    yield* run(first, null);
    const seen = again.map(({ particle: { course }, log }) => log + this.newly(course, readings));
    const soFar = { particles: again.map(({ particle }) => particle), logWeights: this.widened(seen) };
    const rest = places.filter((place) => place % every !== 0);
    if (rest.length > 0) yield* run(rest, soFar.particles.length > 1 ? soFar : null);
    this.population = { particles: again.map(({ particle }) => particle), logWeights: again.map(({ log }) => log) };
  }

  /** What readings add to the logarithm of a weight that has those before them already. */
  private newly(course: Course, readings: readonly Seen[]): number {
    return logLikelihood(course, readings) - logLikelihood(course, this.readings);
  }

  /** Weights flattened until enough particles count, for a first look: rather too wide than resting on a few. */
  private widened(logWeights: readonly number[]): readonly number[] {
    const flat = (part: number) => logWeights.map((log) => part * log);
    const isEnough = (part: number) => effectiveSize(sharesOf(flat(part))) >= LEAST_EFFECTIVE * logWeights.length;
    return isEnough(1) ? logWeights : flat(bisect(isEnough, 0, 1, 20).low);
  }

  private *temper(before: readonly Seen[], after: readonly Seen[]): CourseWork<void> {
    let done = 0;
    for (let stage = 0; done < 1 && this.population.particles.length > 1; stage++) {
      const { particles, logWeights } = this.population;
      const from = particles.map(({ course }) => logLikelihood(course, before));
      const to = particles.map(({ course }) => logLikelihood(course, after));
      const weightsAt = (part: number): readonly number[] =>
        logWeights.map((log, index) => log + (part - done) * ((to[index] as number) - (from[index] as number)));
      const isEnough = (part: number) => effectiveSize(sharesOf(weightsAt(part))) >= LEAST_EFFECTIVE * particles.length;
      if (isEnough(1) || stage === MOST_STAGES) {
        this.population = { particles, logWeights: weightsAt(1) };
        return;
      }
      const part = isEnough(done) ? bisect(isEnough, done, 1, 20).low : done;
      yield* this.move({ particles, logWeights: weightsAt(part) }, (course) => {
        const [old, next] = [logLikelihood(course, before), logLikelihood(course, after)];
        return old + part * (next - old);
      });
      done = part;
    }
  }

  /** Draws the particles anew by weight, and lets each make its steps. */
  private *move(weighed: Population, target: (course: Course) => number): CourseWork<void> {
    const shares = sharesOf(weighed.logWeights);
    const cloud = new NormalCloud(
      weighed.particles.map(({ scores }) => scores),
      shares,
    );
    const height = (scores: Point, course: Course): number =>
      logPrior(scores) + target(course) - cloud.logDensity(scores);
    let particles: readonly Particle[] = resampled(shares, this.chance).map(
      (place) => weighed.particles[place] as Particle,
    );
    for (let step = 0; step < STEPS; step++) {
      const tried = yield* this.courses(
        particles.map(({ scores }) => cloud.near(scores, STEP, this.chance)),
        weighed,
      );
      particles = particles.map((particle, index): Particle => {
        const { scores, course } = tried[index] as (typeof tried)[number];
        const chance = Math.log(this.chance.share());
        if (course === null) return particle;
        const gain = height(scores, course) - height(particle.scores, particle.course);
        return chance < gain ? { scores, course } : particle;
      });
    }
    this.population = { particles, logWeights: particles.map(() => 0) };
  }
}
