/** The energy flow as a picture and as a table. */
import { formatQuantity } from '../../../sim/index.ts';
import type { EnergyLedger } from '../model/energy-ledger.ts';
import { shownUnit, type UnitSystem } from '../model/measure.ts';
import type { Palette } from '../model/palette.ts';
import { energyDiagram, PLACE_WORDS } from '../sankey/energy-diagram.ts';
import type { DataTable } from './data-table.ts';
import { element, picture, words } from './svg-markup.ts';

const WIDTH = 960;
const HEIGHT = 300;
const TOP = 40;

export function energyPicture(ledger: EnergyLedger, palette: Palette, system: UnitSystem, subtitle: string): string {
  const { places, flows } = energyDiagram(ledger, {
    left: 0,
    right: WIDTH - 180,
    top: TOP,
    height: HEIGHT,
    textScale: 1,
  });
  const bands = flows.map(({ path, width, tint }) =>
    element('path', { d: path, fill: 'none', stroke: palette[tint], 'stroke-width': width, 'stroke-opacity': 0.45 }),
  );
  const bars = places.map(({ place, energy_J, x, top, width, height, label }) => {
    const { ink, label: name } = PLACE_WORDS[place];
    const share = ledger.fuel_J > 0 ? ` · ${Math.round((energy_J / ledger.fuel_J) * 100)}\u202f%` : '';
    return (
      element('rect', { x, y: top, width, height, fill: palette[ink] }) +
      (label.y === null
        ? ''
        : element('text', { x: label.x, y: label.y - 2, 'text-anchor': label.anchor }, words(name)) +
          element(
            'text',
            { x: label.x, y: label.y + 13, 'text-anchor': label.anchor },
            words(`${formatQuantity(energy_J, 'J', system)}${share}`),
          ))
    );
  });
  const says = 'Where the energy has gone, bands as wide as the energy they carry.';
  return picture(
    { width: WIDTH, height: HEIGHT + 2 * TOP, title: 'Energy', says, subtitle },
    palette,
    [...bands, ...bars].join(''),
  );
}

export function energyTable(ledger: EnergyLedger, system: UnitSystem): DataTable {
  const unit = shownUnit('energy', system);
  const { flows, fuel_J } = ledger;
  const share = (energy_J: number): number => (fuel_J > 0 ? (100 * energy_J) / fuel_J : NaN);
  return {
    caption: 'Energy',
    rows: flows.length,
    columns: [
      {
        title: 'From',
        unit: '',
        says: 'where the energy comes from',
        decimals: 0,
        values: flows.map(({ from }) => PLACE_WORDS[from].label),
      },
      {
        title: 'To',
        unit: '',
        says: 'where it goes',
        decimals: 0,
        values: flows.map(({ to }) => PLACE_WORDS[to].label),
      },
      {
        title: 'Energy',
        unit: unit.label,
        says: 'energy so far',
        decimals: unit.decimals,
        values: flows.map(({ energy_J }) => unit.fromSI(energy_J)),
      },
      {
        title: 'Share of the fuel',
        unit: '%',
        says: 'as a share of what the source took',
        decimals: 1,
        values: flows.map(({ energy_J }) => share(energy_J)),
      },
    ],
  };
}
