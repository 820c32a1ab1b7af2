/** What must hold of any finished run, each as a list of what is wrong: empty when nothing is. */
import { COLUMN_NAMES, GRID_NAMES, type ColumnName, type GridName, type RunResult } from '../../sim/index.ts';

/** Largest residual of a balance over what passed through. */
export const BALANCE_LIMIT = 1e-9;

/** Rounding of sums and differences of numbers of size one. */
const ROUNDING = 1e-12;

/** Totals that only grow; heat passed to colder or warmer surroundings may have either sign and is not among them. */
const GROWING = [
  'time_s',
  'coolantUsed_kg',
  'evaporated_kg',
  'oilCollected_kg',
  'hydrosol_kg',
  'oilDissolved_kg',
  'oilHaze_kg',
  'oilUncondensed_kg',
  'waterUncondensed_kg',
  'returned_kg',
  'fuelEnergy_J',
  'sourceLossEnergy_J',
  'potEnergy_J',
  'escapeEnergy_J',
  'productEnergy_J',
] as const satisfies readonly ColumnName[];

/** Heat between the still and what is around it: its sign says which way it flows. */
const EITHER_SIGN = new Set<string>([
  'lossPower_W',
  'lossEnergy_J',
  'storedEnergy_J',
  'duty_W',
  'dutyEnergy_J',
  'condenserHeat_W_m',
]);

const SHARES = new Set<string>(['heatSetting', 'captureShare', 'condenserVapourShare']);

/** Water is neither frozen solid nor past the steam tables; the glass and metal of a winter shed may be at −20 °C. */
const COLDEST = 253;
const HOTTEST = 403.15;

export function openBalances({ balance }: RunResult): string[] {
  const closures = { water: balance.water_kg, energy: balance.energy_J, ...balance.constituents_kg };
  return Object.entries(closures)
    .filter(([, closure]) => !(closure.relative <= BALANCE_LIMIT))
    .map(
      ([name, { residual, throughput, relative }]) => `${name}: residual ${residual} of ${throughput} (${relative})`,
    );
}

const faultOf = (name: string, value: number): string | null => {
  if (!Number.isFinite(value)) return 'is not a number';
  if (!EITHER_SIGN.has(name) && value < -ROUNDING) return 'is negative';
  if (SHARES.has(name) && value > 1 + ROUNDING) return 'is more than one';
  if (name.endsWith('_K') && (value < COLDEST || value > HOTTEST)) return 'is no temperature of a still';
  return null;
};

const firstFault = (name: ColumnName | GridName, values: Float64Array): string[] => {
  for (let at = 0; at < values.length; at++) {
    const fault = faultOf(name, values[at] as number);
    if (fault !== null) return [`${name}[${at}] = ${values[at]} ${fault}`];
  }
  return [];
};

export const unsoundNumbers = ({ record }: RunResult): string[] => [
  ...COLUMN_NAMES.flatMap((name) => firstFault(name, record.columns[name])),
  ...GRID_NAMES.flatMap((name) => firstFault(name, record.grids[name].data)),
];

export const fallingTotals = ({ record }: RunResult): string[] =>
  GROWING.flatMap((name) => {
    const column = record.columns[name];
    for (let row = 1; row < column.length; row++) {
      const before = column[row - 1] as number;
      const now = column[row] as number;
      if (now < before - ROUNDING * Math.abs(before)) return [`${name} falls from ${before} to ${now} in row ${row}`];
    }
    return [];
  });

/** Whether the reason for which a run says it ended agrees with its scenario, its events and its last numbers. */
export function wrongEnding({ scenario, summary, events, failure, record }: RunResult): string[] {
  const { run, advanced } = scenario;
  const wrong: string[] = [];
  const told = (kind: string) => events.some((event) => event.kind === kind && event.time_s === summary.end_s);
  const expectThat = (holds: boolean, words: string) => {
    if (!holds) wrong.push(`${summary.endReason}: ${words}`);
  };
  const lastRow = record.columns.time_s[record.rows - 1] as number;
  expectThat(record.rows === record.columns.time_s.length, 'columns are cut to the rows taken');
  expectThat(
    failure === null,
    `no state may turn non-finite, but ${failure?.variable ?? ''} did at ${failure?.time_s ?? ''} s`,
  );
  expectThat(lastRow === summary.end_s, `the last row stands at ${lastRow} s, the end at ${summary.end_s} s`);
  expectThat(summary.end_s <= run.duration_s + advanced.step_s, 'the run ends by its length');
  const kept = summary.hydrosol_kg + (record.columns.returned_kg[record.rows - 1] as number);
  switch (summary.endReason) {
    case 'duration':
      expectThat(summary.end_s >= run.duration_s - 1e-6, `ended at ${summary.end_s} s before ${run.duration_s} s`);
      expectThat(told('run-ends'), 'the end is told');
      break;
    case 'pot-dry':
      expectThat(told('pot-dry'), 'the dry pot is told');
      break;
    case 'over-pressure':
      expectThat(told('over-pressure'), 'the pressure is told');
      break;
    case 'stop-share':
      expectThat(
        run.stopAtShare !== null && (summary.recovery ?? 0) >= run.stopAtShare - 1e-9,
        `recovery ${summary.recovery} against ${run.stopAtShare}`,
      );
      expectThat(told('stop-rule'), 'the rule is told');
      break;
    case 'stop-distillate':
      expectThat(
        run.stopAtDistillate_kg !== null && kept >= run.stopAtDistillate_kg - 1e-9,
        `distillate ${kept} against ${run.stopAtDistillate_kg}`,
      );
      expectThat(told('stop-rule'), 'the rule is told');
      break;
    case 'stop-oil-rate':
      expectThat(run.stopAtOilRate_kg_s !== null, 'a rule is set');
      expectThat(told('stop-rule') && told('oil-rate-low'), 'the rule is told');
      break;
    case 'non-finite':
      expectThat(false, 'no valid scenario may end so');
      break;
  }
  return wrong;
}
