/** An oil as it stands in a bottle: its density, its viscosity, and how its constituents leave a film. */
import { STANDARD_ATMOSPHERE } from '../constants.ts';
import { constituentById, liquidDensity, type Constituent } from '../fluids/constituents.ts';
import { canFreeze, freezingTemperature, LEAST_FROZEN_FRACTION } from '../fluids/freezing.ts';
import { moleFractions, oilViscosity } from '../fluids/immiscible.ts';
import { diffusivityInAirFuller, vapourPressureNearRoom } from '../transfer/vapour-in-air.ts';

export interface OilShare {
  readonly constituent: string;
  /** kg per kg of oil. */
  readonly share: number;
}

/** kg/m³ at T, volumes added. */
export const oilDensity = (composition: readonly OilShare[], T: number): number => {
  const mass = composition.reduce((sum, { share }) => sum + share, 0);
  return (
    mass /
    composition.reduce((sum, { constituent, share }) => sum + share / liquidDensity(constituentById(constituent), T), 0)
  );
};

/** Pa s at T. */
export const viscosityOf = (composition: readonly OilShare[], T: number): number =>
  oilViscosity(
    T,
    composition.map(({ share }) => share),
    composition.map(({ constituent }) => constituentById(constituent)),
  );

/** Diffusion volumes of Fuller, Schettler and Giddings. */
const CARBON = 15.9;
const HYDROGEN = 2.31;
const OXYGEN = 6.11;
const BENZENE_RING = -18.3;

/** Those with a benzene ring. */
const WITH_RING: ReadonlySet<string> = new Set([
  'p_cymene',
  'thymol',
  'carvacrol',
  'trans_anethole',
  'eugenol',
  'eugenyl_acetate',
]);

const counted = (formula: string, element: string): number => {
  const found = new RegExp(`${element}(\\d*)`, 'u').exec(formula);
  return found === null ? 0 : found[1] === '' ? 1 : Number(found[1]);
};

/** Sum of the diffusion volumes of a constituent. */
export const diffusionVolume = ({ id, formula }: Pick<Constituent, 'id' | 'formula'>): number =>
  CARBON * counted(formula, 'C') +
  HYDROGEN * counted(formula, 'H') +
  OXYGEN * counted(formula, 'O') +
  (WITH_RING.has(id) ? BENZENE_RING : 0);

/** Diffusivity of its vapour in air, m²/s. */
export const diffusivityOf = (constituent: Constituent, T: number, p = STANDARD_ATMOSPHERE): number =>
  diffusivityInAirFuller(T, p, constituent.molarMass.value, diffusionVolume(constituent));

/** Vapour pressure at the temperatures of rooms and skin, Pa. */
export const roomPressure = ({ roomVapour: { pressure, heat } }: Constituent, T: number): number =>
  vapourPressureNearRoom(pressure, heat, T);

/** How long a constituent lasts in a film, by its pressure at 25 °C. */
export type NoteClass = 'top' | 'middle' | 'base';
export const NOTE_CLASSES: readonly NoteClass[] = ['top', 'middle', 'base'];

/** Bounds of the pressure at 25 °C between the classes, Pa: a pure film of 10 g/m² dries in an hour, in nine. */
const TOP_FROM = 35;
const BASE_TO = 3;

export const noteClassOf = ({ roomVapour }: Constituent): NoteClass =>
  roomVapour.pressure >= TOP_FROM ? 'top' : roomVapour.pressure <= BASE_TO ? 'base' : 'middle';

/** Temperature at which crystals begin to form in an oil, K; `null` where nothing in it is known to freeze. */
export function freezesAt(composition: readonly OilShare[]): number | null {
  const rows = composition.map(({ constituent }) => constituentById(constituent));
  const x = moleFractions(
    composition.map(({ share }) => share),
    rows,
  );
  const found = rows.flatMap((row, i) => {
    const fraction = x[i] as number;
    return canFreeze(row) && fraction >= LEAST_FROZEN_FRACTION ? [freezingTemperature(row, fraction)] : [];
  });
  return found.length === 0 ? null : Math.max(...found);
}
