/**
 * Show the working: for every headline number of a run a sheet with its derivation. The sheets call the functions and
 * desk-reference entries that the run itself calls, on the state of the run at the moment they speak of.
 */
import type { RunResult } from '../run/result.ts';
import { heatLoss, steamRate, timeToBoil } from './boiling.ts';
import { condensingLength, outletTemperature, pressureDrop } from './condenser.ts';
import { coolingRise, tubWarming } from './cooling.ts';
import { energyAndWaterCost, recovery, timeToNinety } from './ledger.ts';
import { surveyRun, visitMoments, type Moment, type Peak, type Survey } from './moment.ts';
import { capturedShare, legDifference, oilInSaturatedVapour, separatorCut } from './separator.ts';
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

type Visit = { readonly step: number; readonly visit: (moment: Moment) => void };

/**
 * The sheets of a run; one is left out where the run never got so far.
 * @param at_s moment to show; without it, each sheet shows the moment of its headline number, such as the longest
 * condensing length
 */
export function workingSheets(result: RunResult, at_s: number | null = null): readonly WorkingSheet[] {
  const { scenario } = result;
  const survey = surveyRun(scenario);
  const sheets: WorkingSheet[] = [];
  const add = (sheet: WorkingSheet | null): void => {
    if (sheet !== null) sheets.push(sheet);
  };
  visitMoments(scenario, at_s === null ? visitsToPeaks(survey, add) : visitsAt(survey, at_s, add));
  add(timeToBoil(survey, result));
  add(oilInSaturatedVapour(result));
  add(recovery(result));
  add(timeToNinety(result));
  add(energyAndWaterCost(result));
  return sheets.sort((a, b) => WORKING_IDS.indexOf(a.id as WorkingId) - WORKING_IDS.indexOf(b.id as WorkingId));

  function visitsToPeaks(
    { steam, length, gauge, outlet, warmestCoolant, coarsestCut, times }: Survey,
    take: typeof add,
  ): Visit[] {
    const at = (peak: Peak | null, visit: Visit['visit']): Visit[] =>
      peak === null ? [] : [{ step: peak.step, visit }];
    return [
      ...at(steam, (moment) => {
        take(steamRate(moment, steam));
        take(heatLoss(moment));
      }),
      ...at(length, (moment) => take(condensingLength(moment, length))),
      ...at(outlet?.flow ?? null, (moment) => take(outletTemperature(moment, outlet))),
      ...at(gauge, (moment) => take(pressureDrop(moment))),
      { step: warmestCoolant, visit: (moment) => take(coolingRise(moment)) },
      ...at(length, (moment) => take(tubWarming(moment))),
      ...(coarsestCut === null
        ? []
        : [
            {
              step: coarsestCut,
              visit: (moment: Moment) => {
                take(separatorCut(moment));
                take(capturedShare(moment));
              },
            },
          ]),
      { step: times.length, visit: (moment) => take(legDifference(moment)) },
    ];
  }

  function visitsAt({ times, cuts }: Survey, time: number, take: typeof add): Visit[] {
    const from = times.findIndex((end) => end >= time - 1e-9);
    const step = from < 0 ? times.length : from + 1;
    const cut = cuts.filter((place) => place <= step).at(-1);
    return [
      {
        step,
        visit: (moment) => {
          for (const sheet of [
            steamRate(moment, null),
            heatLoss(moment),
            condensingLength(moment, null),
            outletTemperature(moment, null),
            pressureDrop(moment),
            coolingRise(moment),
            tubWarming(moment),
            legDifference(moment),
          ])
            take(sheet);
        },
      },
      ...(cut === undefined
        ? []
        : [
            {
              step: cut,
              visit: (moment: Moment) => {
                take(separatorCut(moment));
                take(capturedShare(moment));
              },
            },
          ]),
    ];
  }
}
