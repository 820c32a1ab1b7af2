/** Which library belongs to which part, its columns, and what a pick of it writes. */
import type { Scenario, ScenarioPart, UnitSystem } from '../../../../sim/index.ts';
import type { Component } from 'solid-js';
import { isElectric, isRelevant } from '../settings/relevance.ts';
import { BotanicalAbout } from './BotanicalAbout.tsx';
import { MetalCautions, PlantCautions } from './Cautions.tsx';
import { botanicalRows } from './botanical-rows.ts';
import { circuitRows, heatSourceRows, separatorRows, tubeRows, tubRows, vesselRows } from './library-rows.ts';
import { withGathering } from '../../plants/gathered.ts';
import type { Values } from './make-it-fit.ts';
import type { PickerId } from './own-entries.ts';
import type { PickerRow } from './picker-row.ts';

export interface PartPicker {
  readonly id: PickerId;
  readonly part: ScenarioPart;
  /** What one row is, as in `Choose a tube`. */
  readonly what: string;
  readonly columns: readonly string[];
  /** Label of the filter, or `null` when rows are few. */
  readonly groups: string | null;
  /** Whether the part has any use for it. */
  readonly isUseful: (scenario: Scenario) => boolean;
  /** Paths that tell whether a row is in use, where not all that it writes; figures may be changed afterwards. */
  readonly knownBy: readonly string[] | null;
  readonly rows: (units: UnitSystem) => readonly PickerRow[];
  /** More to read of a row, fetched when it is opened. */
  readonly about?: Component<{ readonly id: string; readonly units: UnitSystem }>;
  /** What goes along with a pick; or why it cannot be taken. */
  readonly prepare?: (values: Values, scenario: Scenario) => Values | string;
  /** What must be said of the row that is in use. */
  readonly cautions?: Component<{ readonly scenario: Scenario; readonly units: UnitSystem }>;
}

const always = (): boolean => true;

export const PART_PICKERS: readonly PartPicker[] = [
  {
    id: 'botanical',
    part: 'charge',
    what: 'plant',
    columns: ['Oil in the dry plant', 'In water', 'At home', 'Oil figure is'],
    groups: 'Part of the plant',
    isUseful: always,
    knownBy: ['charge.botanical'],
    rows: botanicalRows,
    about: BotanicalAbout,
    prepare: withGathering,
    cautions: PlantCautions,
  },
  {
    id: 'tube',
    part: 'condenser',
    what: 'tube',
    columns: ['Outside × wall', 'Bore', 'Weight', 'Least bend radius'],
    groups: 'Standard',
    isUseful: always,
    knownBy: null,
    rows: tubeRows,
    cautions: MetalCautions('condenser'),
  },
  {
    id: 'vessel',
    part: 'pot',
    what: 'vessel',
    columns: ['Holds', 'Inside, across × high', 'Wall', 'Made of'],
    groups: 'Kind',
    isUseful: always,
    knownBy: null,
    rows: vesselRows,
    cautions: MetalCautions('pot'),
  },
  {
    id: 'heat-source',
    part: 'heat',
    what: 'heat source',
    columns: ['Power', 'Share into the pot', 'Lag'],
    groups: null,
    isUseful: always,
    knownBy: ['heat.kind', 'heat.ratedPower_W', 'heat.shareToPot', 'heat.lag_s'],
    rows: heatSourceRows,
  },
  {
    id: 'circuit',
    part: 'heat',
    what: 'circuit',
    columns: ['Voltage', 'Rating', 'Most', 'For hours'],
    groups: null,
    isUseful: isElectric,
    knownBy: null,
    rows: circuitRows,
  },
  {
    id: 'separator',
    part: 'separator',
    what: 'separator',
    columns: ['Bore × height', 'Holds', 'For', 'Made of'],
    groups: null,
    isUseful: always,
    knownBy: null,
    rows: separatorRows,
  },
  {
    id: 'tub',
    part: 'cooling',
    what: 'tub or barrel',
    columns: ['Holds', 'Inside, across × high', 'Wall', 'Made of'],
    groups: null,
    isUseful: (scenario) => isRelevant('cooling.tubDiameter_m', scenario),
    knownBy: null,
    rows: tubRows,
  },
];
