/** The table of tubes as a file holds it, in millimetres and metres whatever the reader's units. */
import {
  coilBendRadius,
  isCoil,
  sizingMessages,
  type PriceList,
  type Reader,
  type Scenario,
} from '../../../sim/index.ts';
import type { DataTable } from '../../charts/export/data-table.ts';
import { bendRadius, costOfRow, type TubeRow } from './tube-rows.ts';

/** Radius of the turns that the coil shall have, m. */
export const turnRadius = ({ condenser }: Pick<Scenario, 'condenser'>): number =>
  coilBendRadius(condenser.coilDiameter_m, condenser.coilPitch_m);

/** How a tube can be bent to those turns; empty where that is not known. */
export const bendWords = ({ size }: TubeRow, reader: Reader): string =>
  size === null || size.bend === null ? '' : sizingMessages(reader).bend(size.bend);

export function tubesTable(rows: readonly TubeRow[], scenario: Scenario, reader: Reader, prices: PriceList): DataTable {
  const messages = sizingMessages(reader);
  const turns_mm = isCoil(scenario.condenser) ? turnRadius(scenario) * 1000 : Number.NaN;
  const numbers = (read: (row: TubeRow) => number | null | undefined) => rows.map((row) => read(row) ?? Number.NaN);
  return {
    caption: 'Tubes',
    rows: rows.length,
    columns: [
      { title: 'Tube', unit: '', says: '', decimals: 0, values: rows.map(({ tube }) => tube.name) },
      { title: 'Standard', unit: '', says: '', decimals: 0, values: rows.map(({ tube }) => tube.standard) },
      { title: 'Bore', unit: 'mm', says: '', decimals: 2, values: numbers(({ tube }) => tube.insideDiameter_m * 1000) },
      {
        title: 'Outside',
        unit: 'mm',
        says: '',
        decimals: 2,
        values: numbers(({ tube }) => tube.outsideDiameter_m * 1000),
      },
      {
        title: 'Verdict',
        unit: '',
        says: '',
        decimals: 0,
        values: rows.map(({ size: found }) => (found ? messages.verdict(found.verdict) : 'not tried')),
      },
      {
        title: 'Length for nine runs in ten',
        unit: 'm',
        says: '',
        decimals: 2,
        values: numbers(({ size: found }) => found?.length_m),
      },
      {
        title: 'Length with margin',
        unit: 'm',
        says: '',
        decimals: 2,
        values: numbers(({ size: found }) => found?.lengthWithMargin_m),
      },
      { title: 'Turns', unit: '', says: '', decimals: 1, values: numbers(({ size: found }) => found?.turns) },
      {
        title: 'Coil height',
        unit: 'm',
        says: '',
        decimals: 3,
        values: numbers(({ size: found }) => found?.coilHeight_m),
      },
      {
        title: 'Fits the tub',
        unit: '',
        says: '',
        decimals: 0,
        values: rows.map(({ size: found }) => (found?.fitsTub === true ? 'yes' : found?.fitsTub === false ? 'no' : '')),
      },
      {
        title: 'Smallest bend radius',
        unit: 'mm',
        says: '',
        decimals: 0,
        values: numbers((row) => {
          const radius = bendRadius(row);
          return radius === null ? null : radius * 1000;
        }),
      },
      { title: 'Bending', unit: '', says: '', decimals: 0, values: rows.map((row) => bendWords(row, reader)) },
      { title: 'Wall', unit: 'mm', says: '', decimals: 2, values: numbers(({ tube }) => tube.wall_m * 1000) },
      { title: 'Radius of the turns', unit: 'mm', says: '', decimals: 0, values: rows.map(() => turns_mm) },
      {
        title: 'Steam speed',
        unit: 'm/s',
        says: '',
        decimals: 1,
        values: numbers(({ size: found }) => found?.steamSpeed_m_s),
      },
      {
        title: 'Food contact',
        unit: '',
        says: '',
        decimals: 0,
        values: rows.map(({ tube }) => messages.foodContact(tube.material)),
      },
      { title: 'Metal', unit: 'kg', says: '', decimals: 3, values: numbers(({ size: found }) => found?.mass_kg) },
      {
        title: 'Pressure drop',
        unit: 'Pa',
        says: '',
        decimals: 0,
        values: numbers(({ size: found }) => found?.peakDrop_Pa),
      },
      {
        title: 'Length with ends and cutting',
        unit: 'm',
        says: '',
        decimals: 2,
        values: numbers(({ size: found }) => found?.toBuy_m),
      },
      {
        title: 'Cost',
        unit: '',
        says: '',
        decimals: 2,
        values: numbers((row) => costOfRow(row, scenario, prices)?.amount),
      },
      {
        title: 'Price',
        unit: '',
        says: '',
        decimals: 0,
        values: rows.map((row) => costOfRow(row, scenario, prices)?.basis ?? ''),
      },
      {
        title: 'To buy',
        unit: '',
        says: '',
        decimals: 0,
        values: rows.map((row) => {
          const known = costOfRow(row, scenario, prices);
          return known === null ? '' : messages.toBuy(known);
        }),
      },
    ],
  };
}
