/**
 * Show the working: for every headline number of a run a sheet with its derivation. The sheets read the terms that the
 * run reports of its own steps, and the desk-reference entries of the relations that it calls.
 */
import type { RunResult } from '../run/result.ts';
import { steamRate, timeToBoil } from './boiling.ts';
import { condensingLength, outletTemperature, pressureDrop } from './condenser.ts';
import { coolingRise, tubWarming } from './cooling.ts';
import { heatLoss } from './heat-loss.ts';
import { energyAndWaterCost, recovery, timeToNinety } from './ledger.ts';
import { surveyRun, visitMoments, type Moment } from './moment.ts';
import { capturedShare, legDifference, oilInSaturatedVapour, separatorCut } from './oil.ts';
import type { WorkingSheet } from './sheet.ts';

/** Every sheet there can be, in the order in which they are given. */
export const WORKING_IDS = [
  'time-to-boil',
  'steam-rate',
  'heat-loss',
  'oil-in-vapour',
  'condensing-length',
  'outlet-temperature',
  'coil-pressure-drop',
  'cooling-rise',
  'tub-warming',
  'separator-cut',
  'captured-share',
  'leg-difference',
  'recovery',
  'time-to-90',
  'cost',
] as const;
export type WorkingId = (typeof WORKING_IDS)[number];

type SheetAt = (moment: Moment) => WorkingSheet | null;

/**
 * The sheets of a run; one is left out where the run never got so far, all where its calculation failed.
 * @param at_s moment to show; without it, each sheet shows the moment of its headline number, such as the longest
 * condensing length
 */
export function workingSheets(result: RunResult, at_s: number | null = null): readonly WorkingSheet[] {
  if (result.failure !== null) return [];
  const { scenario } = result;
  const { beforeBoil, steam, length, outlet, gauge, warmestCoolant, coarsestCut } = surveyRun(scenario);
  const headlines: readonly (readonly [at_s: number | null, sheets: readonly SheetAt[]])[] = [
    [steam.at_s, [steamRate, heatLoss]],
    [length.at_s, [condensingLength, tubWarming]],
    [outlet.at_s, [outletTemperature]],
    [gauge.at_s, [pressureDrop]],
    [warmestCoolant.at_s, [coolingRise]],
    [coarsestCut.at_s, [separatorCut, capturedShare]],
    [Infinity, [legDifference]],
  ];
  const found = [oilInSaturatedVapour(result), recovery(result), timeToNinety(result), energyAndWaterCost(result)];
  const visits = headlines.map(([headline, sheets]) => ({
    at_s: headline === null ? null : (at_s ?? headline),
    visit: (moment: Moment) => found.push(...sheets.map((sheetAt) => sheetAt(moment))),
  }));
  visits.push({ at_s: beforeBoil, visit: (moment) => found.push(timeToBoil(moment, result)) });
  visitMoments(scenario, at_s === null, visits);
  const order = (sheet: WorkingSheet): number => WORKING_IDS.indexOf(sheet.id as WorkingId);
  return found.filter((sheet) => sheet !== null).sort((a, b) => order(a) - order(b));
}
