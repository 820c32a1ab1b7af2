/** What is stored of an oil constituent or a plant, each value with how it is known and where from. */
import { createMemo, For } from 'solid-js';
import {
  constituents,
  correlations,
  englishReader,
  formatQuantity,
  libraryText,
  quantities,
  type Botanical,
  type Constituent,
  type Correlation,
  type Provenance,
  type UnitSystem,
} from '../../../sim/index.ts';
import { BotanicalAbout } from '../bench/pickers/BotanicalAbout.tsx';
import '../bench/pickers/pickers.css';
import { provenanceLine } from '../bench/pickers/provenance-words.ts';
import { capital, titleOf } from './titles.ts';

export interface Row {
  readonly says: string;
  readonly value: string;
  readonly provenance: Provenance;
}

const kelvin = (value: number, units: UnitSystem): string => formatQuantity(value, 'K', units);

/** Values that no relation gives; those that one gives stand among the relations. */
export function constituentRows(constituent: Constituent, units: UnitSystem): readonly Row[] {
  const { molarMass, meltingPoint, normalBoilingPoint, criticalTemperature, flashPoint, logP } = constituent;
  const temperature = (says: string, at: typeof meltingPoint): readonly Row[] =>
    at === null ? [] : [{ says, value: kelvin(at.value, units), provenance: at }];
  return [
    {
      says: 'Mass of a mole',
      value: `${Number((1000 * molarMass.value).toPrecision(6))}\u202fg/mol`,
      provenance: molarMass,
    },
    ...temperature('Melts at', meltingPoint),
    ...temperature('Boils alone at', normalBoilingPoint),
    ...temperature('Critical temperature', criticalTemperature),
    ...temperature('Flash point; not safety data', flashPoint),
    {
      says: 'Octanol against water, as a power of ten',
      value: formatQuantity(logP.value, '1', units),
      provenance: logP,
    },
  ];
}

export const relationsOf = ({ id }: Constituent): readonly Correlation[] =>
  correlations
    .filter(({ name }) => name.startsWith('oil-') || name.startsWith('co-boiling-'))
    .filter(({ name }) => name.endsWith(`-${id.replaceAll('_', '-')}`));

const MINUTE = 60;

const nameOf = (id: string): string => constituents.find((each) => each.id === id)?.name ?? id;

/** What a run takes from the library, for the plant as it is usually charged. */
export function plantRows(plant: Botanical, units: UnitSystem): readonly Row[] {
  const q = quantities(englishReader(units));
  const data = plant.states[plant.defaultCharge.state];
  const { home } = plant.distillationMinutes;
  const [shortest, longest] = home.value;
  const rate = (says: string, of: typeof plant.release.oxygenate.heldRate_1_s): Row => ({
    says,
    value: q.range(MINUTE * of.value.low, MINUTE * of.value.high, '1', 'share'),
    provenance: of,
  });
  return [
    ...(data === undefined
      ? []
      : [
          {
            says: 'Oil in the dry plant, by weight',
            value: q.range(data.oilContent.value.low, data.oilContent.value.high, 'kg/kg', 'oilContent'),
            provenance: data.oilContent,
          },
          {
            says: 'Water in the plant as charged',
            value: q.range(data.moisture.value.low, data.moisture.value.high, '1', 'share'),
            provenance: data.moisture,
          },
          {
            says: 'Weight of a filled vessel, loose to packed',
            value: q.range(data.bulkDensity_kg_m3.value.loose, data.bulkDensity_kg_m3.value.packed, 'kg/m³'),
            provenance: data.bulkDensity_kg_m3,
          },
        ]),
    {
      says: 'Oil by weight',
      value: plant.composition.value
        .map(({ constituent, massFraction }) => `${nameOf(constituent)} ${q.share(massFraction, { decimals: 1 })}`)
        .join(', '),
      provenance: plant.composition,
    },
    {
      says: 'Density of the oil',
      value: formatQuantity(plant.oilDensity_kg_m3.value, 'kg/m³', units),
      provenance: plant.oilDensity_kg_m3,
    },
    {
      says: 'Time of a run in a home still',
      value: q.range(MINUTE * shortest, MINUTE * longest, 's'),
      provenance: home,
    },
    rate('Held oil freed in a minute, oxygenated', plant.release.oxygenate.heldRate_1_s),
    rate('The same for hydrocarbons', plant.release.hydrocarbon.heldRate_1_s),
  ];
}

/** Each value with how it is known and where from. */
const Facts = (props: { readonly rows: readonly Row[] }) => (
  <dl class="reference-facts">
    <For each={props.rows}>
      {(row) => (
        <>
          <dt>{row.says}</dt>
          <dd>
            {row.value}{' '}
            <span class="reference-source" data-as-printed>
              {capital(provenanceLine(row.provenance))}.
            </span>
          </dd>
        </>
      )}
    </For>
  </dl>
);

export function ConstituentSheet(props: { readonly constituent: Constituent; readonly units: UnitSystem }) {
  const rows = createMemo(() => constituentRows(props.constituent, props.units));
  return (
    <article class="reference-sheet">
      <h3 tabindex="-1" class="reference-title">
        {capital(props.constituent.name)}
      </h3>
      <p class="answer-quiet">
        {props.constituent.formula}, {props.constituent.family}; CAS {props.constituent.cas}
      </p>
      <Facts rows={rows()} />
      <h4>Its properties over temperature, and with water</h4>
      <ul class="reference-list">
        <For each={relationsOf(props.constituent)}>
          {(entry) => (
            <li>
              <a href={`#reference/${entry.name}`}>{titleOf(entry)}</a>
            </li>
          )}
        </For>
      </ul>
    </article>
  );
}

export function PlantSheet(props: { readonly plant: Botanical; readonly units: UnitSystem }) {
  const rows = createMemo(() => plantRows(props.plant, props.units));
  return (
    <article class="reference-sheet">
      <h3 tabindex="-1" class="reference-title">
        {capital(props.plant.name.value)}
      </h3>
      <p class="answer-quiet">
        <i>{props.plant.latinName.value}</i>
      </p>
      <p class="answer-quiet">
        {capital(libraryText(props.plant.part.value, englishReader(props.units)))}; {props.plant.usualState.value}
      </p>
      <Facts rows={rows()} />
      <BotanicalAbout id={props.plant.id} units={props.units} />
    </article>
  );
}
