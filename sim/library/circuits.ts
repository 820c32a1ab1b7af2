/** Household circuits: what a plug carries, and what it carries for hours. */
import { findRow } from './find-row.ts';
import type { Circuit } from './types.ts';

const circuit = (
  id: string,
  name: string,
  voltage_V: number,
  current_A: number,
  continuousShare: number,
  source: string,
  note?: string,
): Circuit => ({
  id,
  name,
  voltage_V,
  current_A,
  maximumPower_W: voltage_V * current_A,
  continuousPower_W: voltage_V * current_A * continuousShare,
  provenance: note === undefined ? { kind: 'memory', source } : { kind: 'memory', source, note },
});

export const circuits: readonly Circuit[] = [
  circuit('uk-13a', 'UK plug, 230 V 13 A', 230, 13, 1, 'BS 1363', 'a long run at 3 kW warms the plug: feel it'),
  circuit(
    'eu-16a',
    'European outlet, 230 V 16 A',
    230,
    16,
    0.8,
    'IEC 60884 and national rules',
    '80 % is caution for many hours; cheap outlets bear 10 A',
  ),
  circuit(
    'us-15a',
    'North American outlet, 120 V 15 A',
    120,
    15,
    0.8,
    'NEC article 210',
    'continuous means three hours or more',
  ),
  circuit(
    'us-20a',
    'North American outlet, 120 V 20 A',
    120,
    20,
    0.8,
    'NEC article 210',
    'continuous means three hours or more',
  ),
  circuit(
    'us-240v-30a',
    'North American circuit, 240 V 30 A',
    240,
    30,
    0.8,
    'NEC article 210',
    'continuous means three hours or more',
  ),
  circuit('au-nz-10a', 'Australia and New Zealand outlet, 230 V 10 A', 230, 10, 1, 'AS/NZS 3112'),
  circuit('ch-10a', 'Swiss outlet, 230 V 10 A', 230, 10, 1, 'SN 441011'),
  circuit('jp-15a', 'Japanese outlet, 100 V 15 A', 100, 15, 0.8, 'Japanese household outlets'),
  circuit('in-16a', 'Indian outlet, 230 V 16 A', 230, 16, 0.8, 'IS 1293'),
  circuit('blue-16a', 'blue industrial socket, 230 V 16 A', 230, 16, 1, 'IEC 60309'),
  circuit('blue-32a', 'blue industrial socket, 230 V 32 A', 230, 32, 1, 'IEC 60309'),
];

export const findCircuit = (id: string): Circuit => findRow('circuit', circuits, id);
