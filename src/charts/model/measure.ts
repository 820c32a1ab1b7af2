/** What the charts measure, and the unit in which each is shown: one unit an axis, whatever the size of the numbers. */
import { displayUnit, formatNumber, THIN_SPACE, type DisplayUnit, type UnitSystem } from '../../../sim/index.ts';

export type { DisplayUnit, UnitSystem };

/** Stored unit and kind of every measure. */
const MEASURES = {
  temperature: ['K', 'temperature'],
  rise: ['K', 'temperatureDifference'],
  power: ['W', 'power'],
  energy: ['J', 'energy'],
  steamRate: ['kg/s', 'steamFlow'],
  coolantFlow: ['kg/s', 'coolantFlow'],
  oil: ['kg', 'oil'],
  oilVolume: ['m³', 'oilVolume'],
  oilVolumeRate: ['m³/s', 'oilVolumeFlow'],
  distillate: ['kg', 'water'],
  share: ['1', 'share'],
  height: ['m', 'size'],
  tubeLength: ['m', 'run'],
  heatPerLength: ['W/m', 'heatPerLength'],
  dropSize: ['m', 'drop'],
  number: ['1', 'number'],
} as const;

export type Measure = keyof typeof MEASURES;

export const shownUnit = (measure: Measure, system: UnitSystem): DisplayUnit =>
  displayUnit(MEASURES[measure][0], system, MEASURES[measure][1]);

/** A number in its shown unit, joined by a thin space. */
export const shownWords = (shown: number, decimals: number, label: string): string =>
  label === '' || !Number.isFinite(shown)
    ? formatNumber(shown, decimals)
    : `${formatNumber(shown, decimals)}${THIN_SPACE}${label}`;
