/**
 * Chance with a seed: a generator, normal scores and a Latin hypercube. The same seed gives the same numbers on every
 * machine: whole-number arithmetic and IEEE doubles only.
 */

const rotateLeft = (x: number, k: number): number => (x << k) | (x >>> (32 - k));

/** Scrambles a 32-bit word: the finaliser of MurmurHash3 (A. Appleby, public domain). */
const scramble = (word: number): number => {
  let x = word;
  x = Math.imul(x ^ (x >>> 16), 0x85ebca6b);
  x = Math.imul(x ^ (x >>> 13), 0xc2b2ae35);
  return x ^ (x >>> 16);
};

/** Weyl increment by which a seed is spread over the state: the golden ratio times 2³². */
const GOLDEN = 0x9e3779b9;

/**
 * Generator xoshiro128** 1.1 (Blackman and Vigna, ACM Trans. Math. Softw. 47 (2021) 36): four 32-bit words, period
 * 2¹²⁸ − 1.
 */
export class Xoshiro128 {
  private readonly s: Int32Array;

  /** From a whole number, spread over the four words by Weyl steps and a finaliser. */
  static fromSeed(seed: number): Xoshiro128 {
    const words = [1, 2, 3, 4].map((k) => scramble((Math.trunc(seed) + Math.imul(k, GOLDEN)) | 0));
    return new Xoshiro128(words as [number, number, number, number]);
  }

  constructor(state: readonly [number, number, number, number]) {
    this.s = Int32Array.from(state);
    if (this.s.every((word) => word === 0)) this.s[0] = 1;
  }

  /** Next 32-bit word, 0 to 2³² − 1. */
  word(): number {
    const { s } = this;
    const s0 = s[0] as number;
    const s1 = s[1] as number;
    const s2 = (s[2] as number) ^ s0;
    const s3 = (s[3] as number) ^ s1;
    const result = Math.imul(rotateLeft(Math.imul(s1, 5), 7), 9) >>> 0;
    s[1] = s1 ^ s2;
    s[0] = s0 ^ s3;
    s[2] = s2 ^ (s1 << 9);
    s[3] = rotateLeft(s3, 11);
    return result;
  }

  /** Uniform share, never 0 and never 1: the middle of one of 2³² equal cells. */
  share(): number {
    return (this.word() + 0.5) / 4_294_967_296;
  }

  /** Whole number from 0 to below `count`, each as likely as the next to one part in 2³²/count. */
  below(count: number): number {
    return Math.floor(this.share() * count);
  }
}

const horner = (coefficients: readonly number[], x: number): number => {
  let sum = 0;
  for (const coefficient of coefficients) sum = sum * x + coefficient;
  return sum;
};

// Algorithm AS 241, routine PPND16 (Wichura, Appl. Statist. 37 (1988) 477–484), highest power first.
const CENTRE_TOP = [
  2509.0809287301226727, 33430.575583588128105, 67265.770927008700853, 45921.953931549871457, 13731.693765509461125,
  1971.5909503065514427, 133.14166789178437745, 3.387132872796366608,
];
const CENTRE_BOTTOM = [
  5226.495278852545925, 28729.085735721942674, 39307.89580009271061, 21213.794301586595867, 5394.1960214247511077,
  687.1870074920579083, 42.313330701600911252, 1,
];
const MIDDLE_TOP = [
  7.7454501427834140764e-4, 0.0227238449892691845833, 0.24178072517745061177, 1.27045825245236838258,
  3.64784832476320460504, 5.7694972214606914055, 4.6303378461565452959, 1.42343711074968357734,
];
const MIDDLE_BOTTOM = [
  1.05075007164441684324e-9, 5.475938084995344946e-4, 0.0151986665636164571966, 0.14810397642748007459,
  0.68976733498510000455, 1.6763848301838038494, 2.05319162663775882187, 1,
];
const TAIL_TOP = [
  2.01033439929228813265e-7, 2.71155556874348757815e-5, 0.0012426609473880784386, 0.026532189526576123093,
  0.29656057182850489123, 1.7848265399172913358, 5.4637849111641143699, 6.6579046435011037772,
];
const TAIL_BOTTOM = [
  2.04426310338993978564e-15, 1.4215117583164458887e-7, 1.8463183175100546818e-5, 7.868691311456132591e-4,
  0.0148753612908506148525, 0.13692988092273580531, 0.59983220655588793769, 1,
];

/** Score z of a standard normal distribution below which a share p lies; relative error about 1e-16. p in 0–1. */
export function normalScore(p: number): number {
  const q = p - 0.5;
  if (Math.abs(q) <= 0.425) {
    const r = 0.180625 - q * q;
    return (q * horner(CENTRE_TOP, r)) / horner(CENTRE_BOTTOM, r);
  }
  const r = Math.sqrt(-Math.log(q < 0 ? p : 1 - p));
  const score =
    r <= 5
      ? horner(MIDDLE_TOP, r - 1.6) / horner(MIDDLE_BOTTOM, r - 1.6)
      : horner(TAIL_TOP, r - 5) / horner(TAIL_BOTTOM, r - 5);
  return q < 0 ? -score : score;
}

/**
 * Latin hypercube: `rows` points in `dimensions` dimensions, so that every dimension has exactly one point in each of
 * `rows` equal slices (McKay, Beckman and Conover, Technometrics 21 (1979) 239–245).
 */
export function latinHypercube(rows: number, dimensions: number, chance: Xoshiro128): readonly Float64Array[] {
  const points = Array.from({ length: rows }, () => new Float64Array(dimensions));
  const slice = new Int32Array(rows);
  for (let d = 0; d < dimensions; d++) {
    for (let k = 0; k < rows; k++) {
      const other = chance.below(k + 1);
      slice[k] = slice[other] as number;
      slice[other] = k;
    }
    points.forEach((point, row) => {
      point[d] = ((slice[row] as number) + chance.share()) / rows;
    });
  }
  return points;
}
