/** Messages on a run that is under way: how it will end, and readings that speak against the model. */
import type { Forecast } from '../answers/forecast/forecast.ts';
import { forecast } from './english/forecast.ts';
import type { Reader } from './language.ts';
import { section } from './section.ts';

export type { ForecastLine } from './english/forecast.ts';

export const forecastMessages = section<ReturnType<typeof forecast>>({ en: forecast });

/** A forecast with its words, as it is printed. */
export function toldForecast(facts: Forecast, reader: Reader) {
  const messages = forecastMessages(reader);
  return {
    sentence: messages.lead(facts),
    lines: messages.lines(facts),
    dangers: messages.dangers(facts),
    ...facts,
    readings: facts.readings.map((reading) => ({ ...reading, ...messages.doubted(reading) })),
  };
}
