/** A botanical as its data file states it, and the arithmetic that turns it into the library's shape. */
import { constituentById, liquidDensity } from '../fluids/constituents.ts';
import { describePieces, sauterDiameter, type Piece } from './piece-size.ts';
import { band, sourced, type Band, type Sourced } from './provenance.ts';
import { commonRelease } from './release-rows.ts';
import type { Botanical, BotanicalState, ChargeState, ReleaseParameters } from './types.ts';

export interface StateRow {
  readonly moisture: Sourced<Band>;
  /** mL of oil per kg of plant as charged in this state. */
  readonly oil_mL_kg: Sourced<Band>;
  readonly bulkDensity_kg_m3: BotanicalState['bulkDensity_kg_m3'];
  readonly particleDensity_kg_m3: Sourced<number>;
  /** Shapes of the pieces at the default cut. */
  readonly pieces: Sourced<readonly Piece[]>;
  readonly dryHeatCapacity_J_kgK: Sourced<number>;
  readonly waterHolding: Sourced<number>;
}

export interface BotanicalRow extends Omit<Botanical, 'states' | 'composition' | 'oilDensity_kg_m3' | 'release'> {
  readonly states: Readonly<Partial<Record<ChargeState, StateRow>>>;
  /** Constituent and share of the oil. */
  readonly composition: Sourced<readonly (readonly [constituent: string, massFraction: number])[]>;
  /** What is the plant's own; the rest is common to all plants. */
  readonly release: Omit<ReleaseParameters, keyof typeof commonRelease>;
}

const ROOM_K = 293.15;

/** kg/m³ of the mixed oil at 20 °C: volumes add. */
const mixedDensity = (composition: BotanicalRow['composition']['value']): number =>
  1 /
  composition.reduce(
    (sum, [constituent, massFraction]) => sum + massFraction / liquidDensity(constituentById(constituent), ROOM_K),
    0,
  );

const overBand = (of: Band, change: (value: number) => number): Band =>
  band(change(of.typical), change(of.low), change(of.high));

const fraction = (value: number): number => Math.round(value * 1000) / 1000;

const stateFrom = (row: StateRow, oilDensity: number): BotanicalState => {
  const dryShare = 1 - row.moisture.value.typical;
  const bulk = row.bulkDensity_kg_m3.value;
  const particle = row.particleDensity_kg_m3.value;
  return {
    moisture: row.moisture,
    oilContent: {
      value: overBand(row.oil_mL_kg.value, (millilitres) => (millilitres * 1e-6 * oilDensity) / dryShare),
      kind: 'derived',
      source: `${row.oil_mL_kg.value.typical} mL/kg as charged (${row.oil_mL_kg.kind}) times ${oilDensity.toFixed(0)} kg/m³ over ${fraction(dryShare)} dry; ${row.oil_mL_kg.source}`,
      ...(row.oil_mL_kg.note === undefined ? {} : { note: row.oil_mL_kg.note }),
    },
    bulkDensity_kg_m3: row.bulkDensity_kg_m3,
    particleDensity_kg_m3: row.particleDensity_kg_m3,
    voidFraction: {
      value: { loose: fraction(1 - bulk.loose / particle), packed: fraction(1 - bulk.packed / particle) },
      kind: 'derived',
      source: 'one less bulk density over the density of a piece',
    },
    particleSize_m: {
      value: sauterDiameter(row.pieces.value),
      kind: 'derived',
      source: `d = 6 V/S of ${describePieces(row.pieces.value)}`,
      note: `sizes ${row.pieces.kind}: ${row.pieces.source}; leaves that lie on each other act coarser`,
    },
    dryHeatCapacity_J_kgK: row.dryHeatCapacity_J_kgK,
    waterHolding: row.waterHolding,
  };
};

export const botanicalFrom = ({ states, composition, release, ...row }: BotanicalRow): Botanical => {
  const oilDensity = mixedDensity(composition.value);
  return {
    ...row,
    release: { ...release, ...commonRelease },
    states: {
      ...(states.fresh === undefined ? {} : { fresh: stateFrom(states.fresh, oilDensity) }),
      ...(states.dry === undefined ? {} : { dry: stateFrom(states.dry, oilDensity) }),
    },
    composition: {
      ...composition,
      value: composition.value.map(([constituent, massFraction]) => ({
        constituent,
        massFraction,
        group: constituentById(constituent).group,
      })),
    },
    oilDensity_kg_m3: sourced(
      oilDensity,
      'computed',
      'ideal mixing of the composition with the constituents’ densities at 20 °C',
    ),
  };
};
