/** The library's plants as rows to pick from. */
import {
  chargeFromPlant,
  type Botanical,
  type ChargeState,
  englishReader,
  formatQuantity,
  isOwnPlant,
  libraryText,
  type UnitSystem,
} from '../../../../sim/index.ts';
import { allPlants } from '../../../state/own-plants-store.ts';
import { deadlyLookAlikes } from './look-alikes-of.ts';
import { underPart, type Origin, type PickerRow } from './picker-row.ts';
import { provenanceShort } from './provenance-words.ts';

const oilContentWords = (plant: Botanical, state: ChargeState, units: UnitSystem): string => {
  const data = plant.states[state];
  if (data === undefined) return '';
  const { low, high } = data.oilContent.value;
  return `${formatQuantity(low, 'kg/kg', units, { hint: 'oilContent', bare: true })}–${formatQuantity(high, 'kg/kg', units, { hint: 'oilContent' })}`;
};

const minutesWords = ([low, high]: readonly [number, number]): string => `${low}–${high}\u202fmin`;

const originsOf = (plant: Botanical, state: ChargeState): readonly Origin[] => {
  const data = plant.states[state];
  return [
    ...(data === undefined
      ? []
      : [
          { what: 'Oil content', provenance: data.oilContent },
          { what: 'Moisture', provenance: data.moisture },
          { what: 'Packing density', provenance: data.bulkDensity_kg_m3 },
        ]),
    { what: 'Composition', provenance: plant.composition },
    { what: 'Minutes', provenance: plant.distillationMinutes.home },
    { what: 'Release, oxygenates', provenance: plant.release.oxygenate.heldRate_1_s },
    { what: 'Release, hydrocarbons', provenance: plant.release.hydrocarbon.heldRate_1_s },
  ];
};

const sentence = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const warningOf = ({ id }: Botanical): string => {
  const deadly = deadlyLookAlikes(id);
  return deadly.length === 0 ? '' : `Deadly look-alikes: ${deadly.map(({ plant }) => plant).join('; ')}`;
};

/** Each plant, the reader’s own last, in the state in which it is usually charged. */
export const botanicalRows = (units: UnitSystem): readonly PickerRow[] =>
  allPlants().map((plant) => {
    const { state } = plant.defaultCharge;
    const data = plant.states[state];
    return {
      id: plant.id,
      name: sentence(plant.name.value),
      aside: [plant.latinName.value, isOwnPlant(plant.id) ? 'your own plant' : '']
        .filter((each) => each !== '')
        .join(', '),
      group: plant.kind,
      facts: [
        oilContentWords(plant, state, units),
        plant.floats.value,
        minutesWords(plant.distillationMinutes.home.value),
        data === undefined ? '' : provenanceShort(data.oilContent.kind),
      ],
      warning: warningOf(plant),
      line: sentence(
        `${[libraryText(plant.part.value, englishReader(units)), plant.usualState.value].filter((each) => each !== '').join('; ')}.`,
      ),
      origins: originsOf(plant, state),
      values: underPart('charge', chargeFromPlant(plant, state)),
    };
  });
