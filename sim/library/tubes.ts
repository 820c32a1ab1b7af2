/** Every tube a condenser or neck is made of, by standard. */
import { findRow } from './find-row.ts';
import type { Provenance } from './provenance.ts';
import {
  astmA269,
  astmB280,
  astmB88,
  astmB88M,
  benderRadiiDrawn,
  benderRadiiInch,
  benderRadiiMetric,
  corrugated,
  en1057,
  en10312,
  glassTubes,
  lightCoils,
  type SizeRow,
} from './tube-tables.ts';
import type { Tube } from './types.ts';

const INCH = 0.0254;
const MILLIMETRE = 0.001;
/** kg/m³, as the tube standards' masses are reckoned. */
const DENSITY: Readonly<Record<string, number>> = { copper: 8940, 'stainless-steel': 7900, 'borosilicate-glass': 2230 };
/** By hand round a former, empty: radius over outside diameter; walls of about 0.6 mm kink sooner. */
const HAND_RADIUS = 8;
const HAND_RADIUS_THIN = 10;
const THIN_WALL_m = 0.000_62;
/** With a bender, tube over 30 mm: the trade body's table jumps to this ratio there. */
const LARGE_m = 0.03;
const LARGE_RATIO = 6.5;

const practiceRadius: Provenance = {
  kind: 'common-practice',
  source: 'by hand round a former 8 times the outside diameter, 10 times for walls near 0.6 mm',
  note: '5 times when packed with fine dry salt or sand, or in a bending spring; a good coil is 12 to 20 outside diameters across',
};

/** Radius by a published row for this outside diameter, or by ratio where the table has none. */
const benderRadius = (
  outsideDiameter_m: number,
  rows: readonly (readonly [number, number])[],
  ratio: number,
): { radius: number; tabled: boolean } => {
  const row = rows.find(([outside]) => Math.abs(outside * MILLIMETRE - outsideDiameter_m) < 0.000_05);
  return row
    ? { radius: row[1] * MILLIMETRE, tabled: true }
    : { radius: Math.max(ratio, outsideDiameter_m > LARGE_m ? LARGE_RATIO : 0) * outsideDiameter_m, tabled: false };
};

interface Family {
  readonly prefix: string;
  readonly standard: string;
  readonly unit: number;
  readonly material: 'copper' | 'stainless-steel' | 'borosilicate-glass';
  readonly temper: Tube['temper'];
  readonly coilable: (outsideDiameter_m: number) => boolean;
  readonly packs: (outsideDiameter_m: number) => readonly number[];
  readonly bender: {
    readonly rows: readonly (readonly [number, number])[];
    readonly ratio: number;
    readonly source: string;
  } | null;
  readonly handRatio: number | null;
  readonly provenance: Provenance;
  /** As the trade calls it, whatever units its buyer reads. */
  readonly name: (row: SizeRow) => string;
}

const slug = (text: string): string => text.replaceAll(' x ', 'x').replaceAll(/[ /]/g, '-');

const bendingOf = (family: Family, tabled: boolean): Provenance => {
  if (family.bender === null) return { kind: 'assumption', source: 'glass is not bent cold' };
  const tool = tabled ? family.bender.source : 'with a bender: estimated from the neighbouring sizes';
  if (family.handRatio === null)
    return { kind: tabled ? 'seen' : 'estimated', source: tool, note: 'hard tube: not by hand' };
  return { ...practiceRadius, source: `${tool}; ${practiceRadius.source}` };
};

const familyOf = (
  family: Family,
  rows: readonly SizeRow[],
  idOf: (row: SizeRow) => string = (row) => slug(row.designation),
): Tube[] =>
  rows.map((row) => {
    const outsideDiameter_m = row.outside * family.unit;
    const wall_m = row.wall * family.unit;
    const bent = family.bender ? benderRadius(outsideDiameter_m, family.bender.rows, family.bender.ratio) : null;
    const byHand =
      family.handRatio === null
        ? null
        : (family.handRatio === HAND_RADIUS && wall_m < THIN_WALL_m ? HAND_RADIUS_THIN : family.handRatio) *
          outsideDiameter_m;
    return {
      id: `${family.prefix}-${idOf(row)}`,
      standard: family.standard,
      designation: row.designation,
      name: family.name(row),
      material: family.material,
      outsideDiameter_m,
      wall_m,
      insideDiameter_m: outsideDiameter_m - 2 * wall_m,
      massPerLength_kg_m: Math.PI * (outsideDiameter_m - wall_m) * wall_m * (DENSITY[family.material] as number),
      temper: family.temper,
      coilable: family.coilable(outsideDiameter_m),
      coilLengths_m: family.packs(outsideDiameter_m),
      minimumBendRadius_m: { withTool: bent?.radius ?? null, byHand },
      areaFactor: 1,
      provenance: family.provenance,
      bendProvenance: bendingOf(family, bent?.tabled ?? false),
    };
  });

const tradeBody = 'with a bender as in the Copper Tube Handbook of the Copper Development Association (seen)';
const metricBender = 'with a bender, common practice, no source: sheets of makers for EN 1057 (22 mm from memory)';
const geometry = 'mass reckoned from outside diameter, wall and 8940 kg/m³';
const always = (): boolean => true;
const never = (): boolean => false;
const inchBender = { rows: benderRadiiInch, ratio: 3.5, source: tradeBody };

const b88 = (type: 'K' | 'L' | 'M'): Tube[] =>
  familyOf(
    {
      prefix: `astm-b88-${type.toLowerCase()}`,
      standard: `ASTM B88 type ${type}`,
      unit: INCH,
      material: 'copper',
      temper: type === 'M' ? 'drawn' : 'annealed',
      coilable: type === 'M' ? never : always,
      packs: (outside) => (type === 'M' ? [3.05, 6.1] : outside > 0.03 ? [18.3] : [18.3, 30.5]),
      bender: type === 'M' ? { rows: benderRadiiDrawn, ratio: 4, source: tradeBody } : inchBender,
      handRatio: type === 'M' ? null : HAND_RADIUS,
      provenance:
        type === 'M'
          ? {
              kind: 'memory',
              source: 'ASTM B88 dimension table',
              note: `walls recalled, outside diameters seen; ${geometry}`,
            }
          : { kind: 'seen', source: 'ASTM B88 dimension table, public reproduction', note: geometry },
      // Its nominal size is an eighth of an inch less than its outside.
      name: (row) => `${row.designation} in nominal, type ${type}`,
    },
    astmB88[type],
  );

/** The trade calls two walls of 3/4 in by one size. */
const inches = (row: SizeRow, rest: string): string =>
  row.designation.endsWith(' heavy')
    ? `${row.designation.replace(' heavy', ' in')} ${rest}, heavy wall`
    : `${row.designation} in ${rest}`;
const b280: Provenance = {
  kind: 'seen',
  source: 'ASTM B280 dimension table, public reproduction',
  note: `named by true outside diameter; ${geometry}, within 1 % of the printed masses`,
};

const b88m = (type: 'A' | 'B' | 'C'): Tube[] =>
  familyOf(
    {
      prefix: `astm-b88m-${type.toLowerCase()}`,
      standard: `ASTM B88M type ${type}`,
      unit: MILLIMETRE,
      material: 'copper',
      temper: type === 'C' ? 'drawn' : 'annealed',
      coilable: type === 'C' ? never : always,
      packs: () => (type === 'C' ? [3, 6] : [18, 30]),
      bender: { rows: benderRadiiMetric, ratio: 4, source: metricBender },
      handRatio: type === 'C' ? null : HAND_RADIUS,
      provenance: {
        kind: 'seen',
        source: 'ASTM B88M dimension table, public reproduction',
        note: `${geometry}; tempers and packs from memory`,
      },
      name: (row) => `${row.outside} mm type ${type}`,
    },
    astmB88M[type],
    (row) => String(row.outside),
  );

const stainless = 'mass reckoned from outside diameter, wall and 7900 kg/m³';

const corrugatedTubes: Tube[] = corrugated.map(({ nominal, bore, crest, bendRadius, areaFactor }) => {
  const wall_m = 0.000_25;
  return {
    id: `corrugated-dn${nominal}`,
    standard: 'flexible corrugated tube',
    designation: `DN ${nominal}`,
    name: `DN ${nominal} corrugated stainless`,
    material: 'stainless-steel',
    outsideDiameter_m: crest * MILLIMETRE,
    wall_m,
    insideDiameter_m: bore * MILLIMETRE,
    massPerLength_kg_m: Math.PI * crest * MILLIMETRE * areaFactor * wall_m * (DENSITY['stainless-steel'] as number),
    temper: 'annealed',
    coilable: true,
    coilLengths_m: [1, 2, 5, 10],
    minimumBendRadius_m: { withTool: null, byHand: bendRadius * MILLIMETRE },
    areaFactor,
    provenance: {
      kind: 'memory',
      source: 'flexible corrugated stainless tube, solar and gas connection type',
      note: 'sizes differ between makers by up to 1 mm and walls from 0.18 to 0.35 mm: measure; the folds hold back oil',
    },
    bendProvenance: { kind: 'memory', source: 'static bend radius of the same tube' },
  };
});

export const tubes: readonly Tube[] = [
  ...b88('L'),
  ...b88('K'),
  ...b88('M'),
  ...familyOf(
    {
      prefix: 'astm-b280',
      standard: 'ASTM B280 annealed',
      unit: INCH,
      material: 'copper',
      temper: 'annealed',
      coilable: always,
      packs: () => [15.24],
      bender: inchBender,
      handRatio: HAND_RADIUS,
      provenance: b280,
      name: (row) => inches(row, 'air-conditioning tube'),
    },
    astmB280.annealed,
  ),
  ...familyOf(
    {
      prefix: 'astm-b280-drawn',
      standard: 'ASTM B280 drawn',
      unit: INCH,
      material: 'copper',
      temper: 'drawn',
      coilable: never,
      packs: () => [6.1],
      bender: { rows: benderRadiiDrawn, ratio: 4, source: tradeBody },
      handRatio: null,
      provenance: b280,
      name: (row) => `${row.designation} in hard air-conditioning tube`,
    },
    astmB280.drawn,
  ),
  ...familyOf(
    {
      prefix: 'light-coil',
      standard: 'light air-conditioning coil',
      unit: MILLIMETRE,
      material: 'copper',
      temper: 'annealed',
      coilable: always,
      packs: () => [15],
      bender: inchBender,
      handRatio: HAND_RADIUS,
      provenance: {
        kind: 'common-practice',
        source: 'common practice, no source: tables of makers of 15 m coils',
        note: `thinner than ASTM B280 and kinks sooner; ${geometry}, within 1 % of the printed coil masses`,
      },
      name: (row) => `${row.designation} in light coil, ${row.wall} mm wall`,
    },
    lightCoils,
    (row) => `${slug(row.designation)}-${row.wall}`,
  ),
  ...familyOf(
    {
      prefix: 'en-1057',
      standard: 'EN 1057',
      unit: MILLIMETRE,
      material: 'copper',
      temper: 'annealed',
      coilable: (outside) => outside < 0.023,
      packs: (outside) => (outside < 0.013 ? [10, 25, 50] : outside < 0.023 ? [25, 50] : [3, 5]),
      bender: { rows: benderRadiiMetric, ratio: 4, source: metricBender },
      handRatio: HAND_RADIUS,
      provenance: {
        kind: 'seen',
        source: 'EN 1057 size matrix, reproduced in a leaflet of a trade body',
        note: `22 and 28 mm walls partly ambiguous in the copy; ${geometry}, within 0.6 % of the printed masses`,
      },
      name: (row) => `${row.outside} × ${row.wall} mm copper`,
    },
    en1057,
  ),
  ...b88m('A'),
  ...b88m('B'),
  ...b88m('C'),
  ...([1, 2] as const).flatMap((series) =>
    familyOf(
      {
        prefix: 'en-10312',
        standard: `EN 10312 series ${series}`,
        unit: MILLIMETRE,
        material: 'stainless-steel',
        temper: 'annealed',
        coilable: never,
        packs: () => [6],
        bender: { rows: [], ratio: 3.5, source: '' },
        handRatio: null,
        provenance: {
          kind: 'seen',
          source: `EN 10312 series ${series} dimension table, suppliers’ reproduction`,
          note: stainless,
        },
        name: (row) => `${row.outside} × ${row.wall} mm stainless`,
      },
      en10312[series],
    ),
  ),
  ...familyOf(
    {
      prefix: 'astm-a269',
      standard: 'ASTM A269',
      unit: INCH,
      material: 'stainless-steel',
      temper: 'annealed',
      coilable: (outside) => outside < 0.013,
      packs: () => [6.1, 15.2],
      bender: { rows: [], ratio: 3, source: '' },
      handRatio: 12,
      provenance: { kind: 'memory', source: 'ASTM A269 common stock sizes', note: stainless },
      name: (row) => inches(row, 'stainless tube'),
    },
    astmA269,
  ),
  ...corrugatedTubes,
  ...familyOf(
    {
      prefix: 'glass',
      standard: 'ISO 4799 laboratory condenser',
      unit: MILLIMETRE,
      material: 'borosilicate-glass',
      temper: 'rigid',
      coilable: never,
      packs: () => [0.16, 0.2, 0.25, 0.3, 0.4, 0.6],
      bender: null,
      handRatio: null,
      provenance: {
        kind: 'memory',
        source: 'ISO 4799 laboratory condensers',
        note: 'inner tubes 10 to 16 mm outside with 1.0 to 1.8 mm walls; lengths are jacket lengths',
      },
      name: (row) => `${row.outside} × ${row.wall} mm glass inner tube`,
    },
    glassTubes,
  ),
];

export const findTube = (id: string): Tube => findRow('tube', tubes, id);
