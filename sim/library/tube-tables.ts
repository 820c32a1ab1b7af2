/**
 * Tube sizes as the standards print them. Inches for ASTM B88, B280 and A269; millimetres otherwise.
 * `tubes.ts` turns the rows into the library's shape.
 */

export interface SizeRow {
  readonly designation: string;
  readonly outside: number;
  readonly wall: number;
}

const sizes = (
  ...rows: readonly (readonly [designation: string, outside: number, wall: number])[]
): readonly SizeRow[] => rows.map(([designation, outside, wall]) => ({ designation, outside, wall }));

/** ASTM B88 by type, inches. The outside diameter is the nominal size plus 1/8 in. */
export const astmB88 = {
  K: sizes(
    ['1/4', 0.375, 0.035],
    ['3/8', 0.5, 0.049],
    ['1/2', 0.625, 0.049],
    ['5/8', 0.75, 0.049],
    ['3/4', 0.875, 0.065],
    ['1', 1.125, 0.065],
    ['1-1/4', 1.375, 0.065],
    ['1-1/2', 1.625, 0.072],
  ),
  L: sizes(
    ['1/4', 0.375, 0.03],
    ['3/8', 0.5, 0.035],
    ['1/2', 0.625, 0.04],
    ['5/8', 0.75, 0.042],
    ['3/4', 0.875, 0.045],
    ['1', 1.125, 0.05],
    ['1-1/4', 1.375, 0.055],
    ['1-1/2', 1.625, 0.06],
  ),
  M: sizes(
    ['3/8', 0.5, 0.025],
    ['1/2', 0.625, 0.028],
    ['3/4', 0.875, 0.032],
    ['1', 1.125, 0.035],
    ['1-1/4', 1.375, 0.042],
    ['1-1/2', 1.625, 0.049],
  ),
} as const;

/** ASTM B280, inches. Named by the true outside diameter, unlike B88. */
export const astmB280 = {
  annealed: sizes(
    ['1/4', 0.25, 0.03],
    ['5/16', 0.312, 0.032],
    ['3/8', 0.375, 0.032],
    ['1/2', 0.5, 0.032],
    ['5/8', 0.625, 0.035],
    ['3/4', 0.75, 0.035],
    ['3/4 heavy', 0.75, 0.042],
    ['7/8', 0.875, 0.045],
  ),
  drawn: sizes(
    ['3/8', 0.375, 0.03],
    ['1/2', 0.5, 0.035],
    ['5/8', 0.625, 0.04],
    ['3/4', 0.75, 0.042],
    ['7/8', 0.875, 0.045],
  ),
} as const;

/** Light annealed coils of 15 m sold as air-conditioning tube, millimetres. */
export const lightCoils = sizes(
  ['1/4', 6.35, 0.56],
  ['1/4', 6.35, 0.61],
  ['3/8', 9.52, 0.56],
  ['3/8', 9.52, 0.61],
  ['1/2', 12.7, 0.61],
  ['1/2', 12.7, 0.66],
  ['5/8', 15.9, 0.61],
  ['5/8', 15.9, 0.66],
  ['3/4', 19.1, 0.66],
  ['3/4', 19.1, 0.71],
);

const metric = (...rows: readonly (readonly [outside: number, wall: number])[]): readonly SizeRow[] =>
  rows.map(([outside, wall]) => ({ designation: `${outside} x ${wall}`, outside, wall }));

/** EN 1057, millimetres. */
export const en1057 = metric(
  [6, 0.6],
  [6, 0.8],
  [6, 1],
  [8, 0.6],
  [8, 0.8],
  [8, 1],
  [10, 0.6],
  [10, 0.7],
  [10, 0.8],
  [10, 1],
  [12, 0.6],
  [12, 0.8],
  [12, 1],
  [15, 0.7],
  [15, 0.8],
  [15, 1],
  [18, 0.8],
  [18, 1],
  [22, 0.9],
  [22, 1],
  [22, 1.2],
  [22, 1.5],
  [28, 0.9],
  [28, 1],
  [28, 1.2],
  [28, 1.5],
);

/** ASTM B88M by type, millimetres. */
export const astmB88M = {
  A: metric([6, 0.9], [8, 0.9], [10, 0.9], [12, 1.2], [15, 1.2], [18, 1.2], [22, 1.6], [28, 1.6]),
  B: metric([6, 0.7], [8, 0.8], [10, 0.8], [12, 0.9], [15, 1.0], [18, 1.0], [22, 1.1], [28, 1.2]),
  C: metric([6, 0.6], [8, 0.6], [10, 0.6], [12, 0.6], [15, 0.7], [18, 0.7], [22, 0.8], [28, 0.9]),
} as const;

/** EN 10312 by series, millimetres. */
export const en10312 = {
  1: metric([6, 0.6], [8, 0.6], [10, 0.6], [12, 0.6], [15, 0.6], [18, 0.7], [22, 0.7], [28, 0.8], [35, 1]),
  2: metric([12, 1], [15, 1], [18, 1], [22, 1.2], [28, 1.2], [35, 1.5]),
} as const;

/** ASTM A269 stock sizes, inches. */
export const astmA269 = sizes(
  ['1/4', 0.25, 0.035],
  ['3/8', 0.375, 0.035],
  ['1/2', 0.5, 0.035],
  ['1/2 heavy', 0.5, 0.049],
  ['5/8', 0.625, 0.049],
  ['3/4', 0.75, 0.049],
  ['1', 1, 0.065],
);

/** Corrugated stainless tube, millimetres: bore, crest, bend radius, and outside surface against a plain tube. */
export const corrugated = [
  { nominal: 12, bore: 12.1, crest: 16.0, bendRadius: 25, areaFactor: 1.6 },
  { nominal: 16, bore: 16.5, crest: 21.4, bendRadius: 30, areaFactor: 1.6 },
  { nominal: 20, bore: 20.5, crest: 26.3, bendRadius: 40, areaFactor: 1.7 },
  { nominal: 25, bore: 25.5, crest: 31.7, bendRadius: 50, areaFactor: 1.7 },
] as const;

/** Inner tubes of glass condensers, millimetres. */
export const glassTubes = metric([10, 1], [13, 1.5], [16, 1.8]);

/** Trade-body minimum radii with a bender, annealed copper: outside diameter and radius in millimetres. */
export const benderRadiiInch: readonly (readonly [outside: number, radius: number])[] = [
  [9.525, 19.05],
  [12.7, 38.1],
  [15.875, 57.15],
  [22.225, 76.2],
  [28.575, 101.6],
  [34.925, 228.6],
];
/** The same for drawn tube. */
export const benderRadiiDrawn: readonly (readonly [outside: number, radius: number])[] = [
  [12.7, 44.45],
  [15.875, 63.5],
  [22.225, 76.2],
];
/** Metric copper with a bender. */
export const benderRadiiMetric: readonly (readonly [outside: number, radius: number])[] = [
  [10, 40],
  [12, 45],
  [15, 55],
  [18, 70],
  [22, 77],
];
