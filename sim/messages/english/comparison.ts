/** Runs side by side, in English. */
import type { Comparison } from '../../answers/comparison/compare.ts';
import type { Basis, Conclusion, RunValue } from '../../answers/comparison/conclusion.ts';
import type { CompareRow, CompareRowId, CompareRun } from '../../answers/comparison/table.ts';
import { constituentById } from '../../fluids/constituents.ts';
import type { EventKind } from '../../run/result.ts';
import { displayUnit, formatNumber, NO_NUMBER, withUnit, type KindName } from '../../units/index.ts';
import type { Quantities } from '../quantities.ts';
import { wholeMessage, type Message } from '../section.ts';

const ROWS: Readonly<Record<CompareRowId, string>> = {
  oil: 'Oil collected',
  recovery: 'Share of the oil in the charge',
  firstDrop: 'First drop',
  timeTo90: 'To 90 % of its oil',
  end: 'End of the run',
  distillate: 'Water distilled',
  oilPerSteam: 'Oil per water distilled',
  coolantUsed: 'Cooling water',
  energy: 'Energy',
  cost: 'Energy and water cost',
  costPerOil: 'Energy and water cost of a millilitre',
  coilNeeded: 'Longest tube needed to condense',
  distillateWarmest: 'Warmest distillate',
  dissolved: 'Oil lost dissolved',
  haze: 'Oil lost as cloudiness (haze)',
  uncondensed: 'Oil lost as vapour',
  leftInPlant: 'Oil left behind',
};

/** What a run with such an alarm does. */
const ALARMS: Readonly<Partial<Record<EventKind, string>>> = {
  'vapour-escapes': 'lets steam escape',
  'cooling-boils': 'brings the cooling water to the boil',
  'pot-dry': 'runs the pot dry',
  'pot-low': 'runs the pot low',
  'pressure-high': 'builds up pressure',
  'over-pressure': 'builds up more pressure than any lid holds',
  scorch: 'scorches the charge',
  'circuit-overloaded': 'overloads the circuit',
};
const UNKNOWN_ALARM = 'raises an alarm';

/** What a run does that raises alarms, the first two of them. */
export function whatAlarmsDo(events: readonly EventKind[]): string {
  const [first, second] = [...new Set(events.map((kind) => ALARMS[kind] ?? UNKNOWN_ALARM))];
  return `${first}${second === undefined ? '' : ` and ${second}`}`;
}

export function runName({ name, number }: Pick<CompareRun, 'name' | 'number'>): string {
  const known = name === '' ? 'Untitled' : name;
  return number === null ? known : `${known} (${number})`;
}

/** Parts of the larger value below which two are told as the same. */
const SAME = 0.001;

export function comparison(q: Quantities) {
  /** Oil by volume for a litre or a gallon of water. */
  const perWater = (value_mL_kg: number) => {
    const water = displayUnit('kg', q.units, 'water');
    return { amount_mL: value_mL_kg * water.toSI(1), label: water.label };
  };
  const oil = (volume_mL: number): string => q.stored(volume_mL, 'mL', 'oilVolume', { significant: 2 });
  const oilPerWater = ({ value }: RunValue): string => oil(perWater(value).amount_mL);
  const percent = (value: number): string => q.share(value, { decimals: value < 0.1 ? 1 : 0 });

  /** What all runs have in common. */
  const common = (basis: Exclude<Basis, { kind: 'none' }>): string =>
    basis.kind === 'time'
      ? `In the same ${q.time(basis.time_s)},`
      : `For the same ${q.water(basis.water_kg)} of water distilled,`;
  /** The time of a run, where the times are not alike. */
  const within = (basis: Basis, run: number): string =>
    basis.kind === 'none' ? ` in ${q.time(basis.times_s[run])}` : '';
  const lasting = (basis: Basis): string =>
    basis.kind === 'none' ? `, in ${q.time(Math.min(...basis.times_s))} to ${q.time(Math.max(...basis.times_s))}` : '';

  function conclusion(fact: Conclusion, runs: readonly CompareRun[]): Message {
    const named = (run: number): string => `“${runName(runs[run] as CompareRun)}”`;
    const said = (sentence: string, advice: string | null = null): Message => ({ sentence, advice });
    switch (fact.kind) {
      case 'oil-none':
        return said('None of these runs collects any oil.');
      case 'oil-alike':
        return said(
          `${fact.basis.kind === 'none' ? 'All' : `${common(fact.basis)} all`} collect about the same oil, ${oil(fact.oil_mL)}${lasting(fact.basis)}.`,
        );
      case 'oil-differs': {
        const { most, least, basis } = fact;
        const from = basis.kind === 'none' ? '' : `${common(basis)} `;
        return said(
          `${from}${named(most.run)} collects the most oil, ${oil(most.value)}${within(basis, most.run)}; ${named(least.run)} the least, ${oil(least.value)}${within(basis, least.run)}.`,
        );
      }
      case 'time-unknown':
        return said('Fewer than two of these runs collect oil, so there are no times to compare.');
      case 'time-alike':
        return said(`All have 90 % of their oil after about ${q.time(fact.time_s)}.`);
      case 'time-differs':
        return said(
          `${named(fact.soonest.run)} has 90 % of its oil after ${q.time(fact.soonest.value)}, ${named(fact.latest.run)} after ${q.time(fact.latest.value)}.`,
        );
      case 'cost-differs':
        return said(
          `A millilitre costs least in ${named(fact.cheapest)}. In ${named(fact.dearest)} it takes ${q.number(fact.times, { significant: 2 })} times as much money for energy and water.`,
        );
      case 'steam-differs': {
        const measure = q.units === 'us' ? 'gallon' : 'litre';
        return said(
          `A ${measure} of water distilled brings ${oilPerWater(fact.most)} of oil in ${named(fact.most.run)} and ${oilPerWater(fact.least)} in ${named(fact.least.run)}.`,
        );
      }
      case 'make-up-differs':
        return said(
          `The oils differ most in ${constituentById(fact.constituent).name}: ${percent(fact.most.value)} in ${named(fact.most.run)}, ${percent(fact.least.value)} in ${named(fact.least.run)}.`,
        );
      case 'alarms': {
        const told = fact.runs.map(({ run, events }) => `${named(run)} ${whatAlarmsDo(events)}.`);
        const advice = fact.all
          ? 'None of these runs is safe as set.'
          : fact.runs.length === 1
            ? 'Do not run it this way.'
            : 'Do not run them this way.';
        return said(told.join(' '), advice);
      }
    }
  }

  /** A number of a row, or a difference of two with its sign. */
  function value({ id, unit }: Pick<CompareRow, 'id' | 'unit'>, value: number | null, signed = false): string {
    if (value === null || !Number.isFinite(value)) return NO_NUMBER;
    const plus = signed && value > 0 ? '+' : '';
    const measured: KindName = id === 'distillate' || id === 'coolantUsed' ? 'water' : 'oil';
    switch (unit) {
      case '1':
        return id === 'cost' ? plus + q.cost(value) : plus + q.share(value, { decimals: 1 });
      case '1/mL':
        return plus + formatNumber(value, 3);
      case 's':
        return plus + q.time(value);
      case 'mL':
        return q.stored(value, unit, 'oilVolume', { decimals: 1, signed });
      case 'mL/kg': {
        const { amount_mL, label } = perWater(value);
        return `${plus}${withUnit(formatNumber(amount_mL, 1), `mL/${label}`)}`;
      }
      case 'kg':
        return q.stored(value, unit, measured, { signed });
      case '°C':
        return signed ? q.temperatureDifference(value, { signed }) : q.stored(value, unit, undefined, { decimals: 1 });
      case 'm':
        return q.tubeLength(value, { signed });
      default:
        return q.stored(value, unit, undefined, { signed });
    }
  }

  return {
    runName,
    conclusion,

    /** Every conclusion with what to do about it. */
    conclusions: ({ conclusion: facts, runs }: Pick<Comparison, 'conclusion' | 'runs'>): readonly string[] =>
      facts.map((fact) => wholeMessage(conclusion(fact, runs))),

    rowTitle: ({ id, constituent }: Pick<CompareRow, 'id' | 'constituent'>): string =>
      constituent === null ? ROWS[id as CompareRowId] : `${constituentById(constituent).name} in the oil`,

    value,

    /** A difference from the first run; what would be rounded away is told as none. */
    difference(row: CompareRow, run: number): string {
      const [first, own, difference] = [row.values[0] ?? null, row.values[run] ?? null, row.differences[run] ?? null];
      if (first === null || own === null || difference === null) return NO_NUMBER;
      const written = value(row, difference, true);
      const isSame = Math.abs(difference) <= SAME * Math.max(Math.abs(first), Math.abs(own)) || !/[1-9]/u.test(written);
      return isSame ? 'the same' : written;
    },
  };
}
