/**
 * A scenario: everything a run depends on, as plain versioned JSON in SI units. The schema is the one place where
 * a field's unit, default, allowed range and sentence are written.
 */
import * as z from 'zod/mini';
import { text } from './field.ts';
import { condenserSchema, coolingSchema } from './condenser-fields.ts';
import { heatSchema, siteSchema } from './heat-fields.ts';
import { separatorSchema } from './separator-fields.ts';
import { boilerSchema, neckSchema, potSchema } from './vessel-fields.ts';
import { advancedSchema, chargeSchema, factorsSchema, runSchema } from './charge-fields.ts';

// Schemas are interpreted, not compiled: the page's content policy forbids generated code.
z.config({ jitless: true });

/** Raised with every change that older files must be carried over: see `migrate.ts`. */
export const SCENARIO_VERSION = 3;

/** A part of the file, which may be left out whole. */
const part = <T extends z.ZodMiniObject>(schema: T, title: string) =>
  z.prefault(schema, {} as z.input<T>).check(z.meta({ title }));

export const scenarioSchema = z.strictObject({
  version: z
    ._default(z.literal(SCENARIO_VERSION), SCENARIO_VERSION)
    .check(z.meta({ title: 'Version', description: 'Version of this file format.' })),
  name: text({
    title: 'Name',
    says: 'What this still or run is called.',
    default: 'Untitled still',
    maxLength: 120,
    source: 'free text',
  }),
  note: text({ title: 'Note', says: 'Anything worth remembering.', default: '', maxLength: 2000, source: 'free text' }),
  site: part(siteSchema, 'Place and air'),
  heat: part(heatSchema, 'Heat'),
  pot: part(potSchema, 'Pot'),
  boiler: part(boilerSchema, 'Separate boiler'),
  charge: part(chargeSchema, 'Charge'),
  neck: part(neckSchema, 'Swan neck'),
  condenser: part(condenserSchema, 'Condenser'),
  cooling: part(coolingSchema, 'Cooling water'),
  separator: part(separatorSchema, 'Separator'),
  run: part(runSchema, 'Run'),
  factors: part(factorsSchema, 'Correction factors'),
  advanced: part(advancedSchema, 'Advanced'),
});

/** A complete, valid scenario. */
export type Scenario = z.output<typeof scenarioSchema>;
/** What a file may hold: any field may be left out. */
export type ScenarioInput = z.input<typeof scenarioSchema>;

export type ScenarioPart = Exclude<keyof Scenario, 'version' | 'name' | 'note'>;

/** The JSON Schema (draft 2020-12) of a scenario file, with `unit` and `source` on every field. */
export const scenarioJsonSchema = (): Record<string, unknown> => z.toJSONSchema(scenarioSchema, { io: 'input' });
