/** The run's own numbers behind the sheets of a working, read off summary and still without the working's help. */
import { ZERO_CELSIUS } from '../../../sim/constants.ts';
import { standardPressure } from '../../../sim/fluids/atmosphere.ts';
import { constituentById } from '../../../sim/fluids/constituents.ts';
import { coBoilingTemperature, moleFractions, saturationOilPerSteam } from '../../../sim/fluids/immiscible.ts';
import { tableLiquidDensity } from '../../../sim/fluids/water-table.ts';
import { Run, type RunResult, type Scenario, type WorkingId, type WorkingSheet } from '../../../sim/index.ts';
import { legOffset } from '../../../sim/transfer/decanter.ts';

type Numbers = Partial<Record<WorkingId, number>>;

function saturatedOil({ charge, site }: Scenario): number {
  const rows = charge.composition.map(({ constituent }) => constituentById(constituent));
  const shares = charge.composition.map(({ share }) => share);
  const x = moleFractions(shares, rows);
  return saturationOilPerSteam(
    coBoilingTemperature(site.barometer_Pa ?? standardPressure(site.altitude_m), x, rows),
    x,
    rows,
  );
}

/** Numbers that belong to the run as a whole. */
const ofWhole = ({ summary, scenario }: RunResult): Numbers => ({
  'time-to-boil': summary.firstBoil_s ?? NaN,
  'oil-in-vapour': saturatedOil(scenario),
  recovery: summary.recovery ?? NaN,
  'time-to-90': summary.t90_s ?? NaN,
  cost: summary.energyCost + summary.waterCost,
});

/** Peaks of the summary, which a sheet at its headline moment ends in. */
const ofSummary = ({ summary }: RunResult): Numbers => ({
  'steam-rate': summary.peakSteam_kg_s,
  'condensing-length': summary.condensingLengthPeak_m,
});

function ofStill({ still, stepLength: dt, scenario }: Run, mixedBefore: number, mixedAtStart: number): Numbers {
  const { pot, condenser, coolant, separator, oil } = still;
  const onTap = scenario.condenser.kind !== 'coil-in-tub' && scenario.cooling.jacketSupply === 'tap';
  const mixed = coolant.mixedTemperature();
  const water = tableLiquidDensity(separator.temperature);
  const density = oil.mixtureDensity(separator.collected, separator.temperature);
  const light = density > water ? scenario.separator.height_m - separator.layer() : separator.layer();
  return {
    'steam-rate': pot.out.water / dt,
    'heat-loss': still.lossInStep() / dt,
    'condensing-length': condenser.condensingLength,
    'outlet-temperature': condenser.condensateTemperature,
    'coil-pressure-drop': condenser.drop,
    'cooling-rise': onTap ? coolant.outletTemperature - coolant.inletTemperature : mixed - mixedAtStart,
    'tub-warming': (mixed - mixedBefore) / dt,
    'separator-cut': separator.cutSize,
    'captured-share': separator.captureShare,
    'leg-difference': legOffset(light, Math.abs(water - density), Math.max(water, density)),
  };
}

/** What of the sheets differs from the run's number in a single bit; `headline` when they show the summary's peaks. */
export function differences(result: RunResult, sheets: readonly WorkingSheet[], headline: boolean): string[] {
  const run = new Run(result.scenario);
  const atStart = run.still.coolant.mixedTemperature();
  const whole = ofWhole(result);
  const summary = headline ? ofSummary(result) : {};
  const wrong: string[] = [];
  const check = ({ id, result: { value } }: WorkingSheet, wanted: number | undefined) => {
    if (!Object.is(value, wanted)) wrong.push(`${id}: ${value} is shown, the run has ${wanted}`);
  };
  const warmest = sheets.find(({ id }) => id === 'outlet-temperature');
  if (headline && warmest)
    check(
      { ...warmest, result: { ...warmest.result, value: warmest.result.value - ZERO_CELSIUS } },
      result.summary.condensatePeak_C ?? undefined,
    );
  const open = sheets.filter((sheet) => !(headline && sheet === warmest));
  for (const sheet of open) {
    const known = { ...whole, ...summary }[sheet.id as WorkingId];
    if (known !== undefined) check(sheet, known);
  }
  const momentary = open.filter(({ id }) => !(id in whole) && !(id in summary));
  while (!run.ended) {
    const before = run.still.coolant.mixedTemperature();
    run.takeStep();
    const now = momentary.filter(({ time_s }) => time_s === run.time());
    if (now.length === 0) continue;
    const numbers = ofStill(run, before, atStart);
    for (const sheet of now) check(sheet, numbers[sheet.id as WorkingId]);
  }
  return wrong;
}
