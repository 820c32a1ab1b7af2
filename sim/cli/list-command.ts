/** `limbeck list`: what the library holds. */
import {
  botanicals,
  circuits,
  constituents,
  examples,
  heatSources,
  materials,
  separators,
  tubes,
  tubs,
  vessels,
} from '../index.ts';
import { botanicalTexts } from '../library-texts.ts';
import { englishReader } from '../messages/language.ts';
import { libraryText } from '../messages/library-text.ts';
import { closestWords } from '../reference/closest-words.ts';
import { BadInput } from './bad-input.ts';
import { isSet, onlyWord, readWords } from './options.ts';
import { cell, toJson, toTable } from './print.ts';

/** The library's own words, in metric units as everything that is listed. */
const written = (text: string): string => libraryText(text, englishReader('metric'));

const writtenThrough = (value: unknown): unknown =>
  JSON.parse(JSON.stringify(value), (_, each: unknown) => (typeof each === 'string' ? written(each) : each)) as unknown;

interface Listing {
  readonly rows: readonly object[];
  readonly headings: readonly string[];
  readonly cells: readonly (readonly string[])[];
}

const listing = <Row extends object>(
  rows: readonly Row[],
  columns: Readonly<Record<string, (row: Row) => number | string | boolean | null>>,
): Listing => ({
  rows,
  headings: Object.keys(columns),
  cells: rows.map((row) => Object.values(columns).map((read) => written(cell(read(row))))),
});

const listings = {
  examples: () => listing(examples, { id: (row) => row.id, title: (row) => row.title, says: (row) => row.says }),
  botanicals: () =>
    listing(
      botanicals.map((row) => ({ ...row, ...botanicalTexts[row.id] })),
      {
        id: (row) => row.id,
        name: (row) => row.name.value,
        'latin name': (row) => row.latinName.value,
        part: (row) => row.part.value,
        state: (row) => row.defaultCharge.state,
        'oil kg/kg dry': (row) => row.states[row.defaultCharge.state]?.oilContent.value.typical ?? null,
        'density kg/m³': (row) => row.oilDensity_kg_m3.value,
        oil: (row) => row.floats.value,
      },
    ),
  tubes: () =>
    listing(tubes, {
      id: (row) => row.id,
      name: (row) => row.name,
      standard: (row) => row.standard,
      material: (row) => row.material,
      'outside m': (row) => row.outsideDiameter_m,
      'bore m': (row) => row.insideDiameter_m,
      'kg/m': (row) => row.massPerLength_kg_m,
      'can be coiled': (row) => row.coilable,
    }),
  vessels: () =>
    listing(vessels, {
      id: (row) => row.id,
      name: (row) => row.name,
      material: (row) => row.material,
      'diameter m': (row) => row.insideDiameter_m,
      'height m': (row) => row.height_m,
      'volume m³': (row) => row.volume_m3,
      'empty kg': (row) => row.emptyMass_kg,
    }),
  'heat-sources': () =>
    listing(heatSources, {
      id: (row) => row.id,
      name: (row) => row.name,
      carrier: (row) => row.carrier,
      'power W': (row) => row.ratedPower_W.value.typical,
      'share into the pot': (row) => row.efficiency.value.typical,
      'lag s': (row) => row.lag_s.value.typical,
    }),
  materials: () =>
    listing(materials, {
      id: (row) => row.id,
      name: (row) => row.name,
      'conductivity W/(m K)': (row) => row.conductivity_W_mK.value,
      'density kg/m³': (row) => row.density_kg_m3.value,
      'heat capacity J/(kg K)': (row) => row.heatCapacity_J_kgK.value,
      emissivity: (row) => row.emissivity.value,
    }),
  constituents: () =>
    listing(constituents, {
      id: (row) => row.id,
      name: (row) => row.name,
      group: (row) => row.group,
      formula: (row) => row.formula,
      'molar mass kg/mol': (row) => row.molarMass.value,
      'boils K': (row) => row.normalBoilingPoint.value,
      'density kg/m³': (row) => row.liquidDensity.value,
      'in water kg/m³': (row) => row.waterSolubility.value,
    }),
  separators: () =>
    listing(separators, {
      id: (row) => row.id,
      name: (row) => row.name,
      suits: (row) => row.suits,
      'bore m': (row) => row.bore_m,
      'height m': (row) => row.height_m,
      'content m³': (row) => row.holdUp_m3,
    }),
  tubs: () =>
    listing(tubs, {
      id: (row) => row.id,
      name: (row) => row.name,
      material: (row) => row.material,
      'diameter m': (row) => row.insideDiameter_m,
      'height m': (row) => row.height_m,
      'volume m³': (row) => row.volume_m3,
    }),
  circuits: () =>
    listing(circuits, {
      id: (row) => row.id,
      name: (row) => row.name,
      'voltage V': (row) => row.voltage_V,
      'current A': (row) => row.current_A,
      'power W': (row) => row.maximumPower_W,
      'for hours W': (row) => row.continuousPower_W,
    }),
} as const satisfies Record<string, () => Listing>;

export const listingNames = Object.keys(listings) as readonly (keyof typeof listings)[];

export function listCommand(args: readonly string[]): string {
  const words = readWords(args, {});
  const wanted = onlyWord(words, `one of ${listingNames.join(', ')}`);
  const name = listingNames.find((known) => known === wanted);
  if (!name)
    throw new BadInput(
      `“${wanted}” is no list; did you mean ${closestWords(wanted, listingNames, 1).join()}? There are ${listingNames.join(', ')}.`,
    );
  const { rows, headings, cells } = listings[name]();
  return isSet(words, 'json') ? toJson(writtenThrough(rows)) : toTable(headings, cells);
}
