/** The library's tubes, vessels, sources, circuits, separators and tubs as rows to pick from. */
import {
  circuits,
  condenserFromTube,
  findMaterial,
  heatFromSource,
  heatSources,
  potFromVessel,
  separatorFromVessel,
  separators,
  tubFrom,
  tubes,
  tubs,
  vessels,
  englishReader,
  libraryText,
  type Band,
  formatDuration,
  formatQuantity,
  type UnitSystem,
} from '../../../../sim/index.ts';
import { underPart, type PickerRow } from './picker-row.ts';

const SUITS = { floating: 'oils that float', sinking: 'oils that sink', both: 'either' } as const;

const size = (value: number, units: UnitSystem) => formatQuantity(value, 'm', units, { hint: 'size' });
const thin = (value: number, units: UnitSystem) => formatQuantity(value, 'm', units, { hint: 'wall' });
const volume = (value: number, units: UnitSystem) => formatQuantity(value, 'm³', units);
const number = (value: number, unit: string, units: UnitSystem, hint: string) =>
  formatQuantity(value, unit, units, { hint, bare: true });

const band = (values: Band, unit: string, units: UnitSystem, hint: string): string =>
  `${number(values.low, unit, units, hint)}–${formatQuantity(values.high, unit, units, { hint })}`;

const materialName = (id: string): string => findMaterial(id).name;

const bendWords = (least: number | null, units: UnitSystem): string =>
  least === null ? 'can’t be bent' : size(least, units);

/** Tubes that can be wound come first. */
const coilableFirst = [...tubes].sort((a, b) => Number(b.coilable) - Number(a.coilable));

export const tubeRows = (units: UnitSystem): readonly PickerRow[] =>
  coilableFirst.map((tube) => ({
    id: tube.id,
    name: tube.name,
    aside: `${tube.standard}${tube.coilable ? '' : ', straight only'}`,
    group: tube.standard,
    facts: [
      `${number(tube.outsideDiameter_m, 'm', units, 'wall')} × ${thin(tube.wall_m, units)}`,
      thin(tube.insideDiameter_m, units),
      formatQuantity(tube.massPerLength_kg_m, 'kg/m', units),
      bendWords(tube.minimumBendRadius_m.byHand ?? tube.minimumBendRadius_m.withTool, units),
    ],
    line: '',
    origins: [
      { what: 'Sizes', provenance: tube.provenance },
      { what: 'Bending', provenance: tube.bendProvenance },
    ],
    values: underPart('condenser', condenserFromTube(tube.id)),
  }));

export const vesselRows = (units: UnitSystem): readonly PickerRow[] =>
  vessels.map((vessel) => ({
    id: vessel.id,
    name: libraryText(vessel.name, englishReader(units)),
    aside: '',
    group: vessel.kind.replace(/-/gu, ' '),
    facts: [
      volume(vessel.volume_m3, units),
      `${number(vessel.insideDiameter_m, 'm', units, 'size')} × ${size(vessel.height_m, units)}`,
      thin(vessel.wall_m, units),
      materialName(vessel.material),
    ],
    line: '',
    origins: [{ what: 'Sizes', provenance: vessel.provenance }],
    values: underPart('pot', potFromVessel(vessel.id)),
  }));

export const heatSourceRows = (units: UnitSystem): readonly PickerRow[] =>
  heatSources.map((source) => ({
    id: source.id,
    name: source.name,
    aside: '',
    group: source.carrier.replace(/-/gu, ' '),
    facts: [
      band(source.ratedPower_W.value, 'W', units, 'ratedPower'),
      band(source.efficiency.value, '1', units, 'share'),
      formatDuration(source.lag_s.value.typical),
    ],
    line: '',
    origins: [
      { what: 'Power', provenance: source.ratedPower_W },
      { what: 'Share into the pot', provenance: source.efficiency },
      { what: 'Lag', provenance: source.lag_s },
    ],
    values: underPart('heat', heatFromSource(source.id)),
  }));

export const circuitRows = (units: UnitSystem): readonly PickerRow[] =>
  circuits.map((circuit) => ({
    id: circuit.id,
    name: circuit.name,
    aside: '',
    group: '',
    facts: [
      formatQuantity(circuit.voltage_V, 'V', units),
      formatQuantity(circuit.current_A, 'A', units),
      formatQuantity(circuit.maximumPower_W, 'W', units),
      formatQuantity(circuit.continuousPower_W, 'W', units),
    ],
    line: '',
    origins: [{ what: 'Rating', provenance: circuit.provenance }],
    values: { 'heat.supplyVolts_V': circuit.voltage_V, 'heat.supplyAmps_A': circuit.current_A },
  }));

export const separatorRows = (units: UnitSystem): readonly PickerRow[] =>
  separators.map((separator) => ({
    id: separator.id,
    name: libraryText(separator.name, englishReader(units)),
    aside: '',
    group: SUITS[separator.suits],
    facts: [
      `${number(separator.bore_m, 'm', units, 'size')} × ${size(separator.height_m, units)}`,
      volume(separator.holdUp_m3, units),
      SUITS[separator.suits],
      materialName(separator.material),
    ],
    line: '',
    origins: [{ what: 'Sizes', provenance: separator.provenance }],
    values: underPart('separator', separatorFromVessel(separator.id)),
  }));

export const tubRows = (units: UnitSystem): readonly PickerRow[] =>
  tubs.map((tub) => ({
    id: tub.id,
    name: libraryText(tub.name, englishReader(units)),
    aside: '',
    group: tub.open ? 'open' : 'closed',
    facts: [
      volume(tub.volume_m3, units),
      `${number(tub.insideDiameter_m, 'm', units, 'size')} × ${size(tub.height_m, units)}`,
      thin(tub.wall_m, units),
      materialName(tub.material),
    ],
    line: '',
    origins: [{ what: 'Sizes', provenance: tub.provenance }],
    values: underPart('cooling', tubFrom(tub.id)),
  }));
