/**
 * A scenario: everything a run depends on, as plain versioned JSON in SI units. The schema is the one place where
 * a field's unit, default, allowed range and sentence are written.
 */
import { z } from 'zod';
import { text } from './field.ts';
import {
  boilerSchema,
  condenserSchema,
  coolingSchema,
  heatSchema,
  neckSchema,
  potSchema,
  separatorSchema,
  siteSchema,
} from './apparatus-fields.ts';
import { advancedSchema, chargeSchema, factorsSchema, runSchema } from './charge-fields.ts';

// Schemas are interpreted, not compiled: the page's content policy forbids generated code.
z.config({ jitless: true });

export const SCENARIO_VERSION = 1;

export const scenarioSchema = z.strictObject({
  version: z
    .literal(SCENARIO_VERSION)
    .default(SCENARIO_VERSION)
    .meta({ title: 'Version', description: 'Version of this file format.' }),
  name: text({
    title: 'Name',
    says: 'What this still or run is called.',
    default: 'Untitled still',
    maxLength: 120,
    source: 'free text',
  }),
  note: text({ title: 'Note', says: 'Anything worth remembering.', default: '', maxLength: 2000, source: 'free text' }),
  site: siteSchema.prefault({}).meta({ title: 'Place and air' }),
  heat: heatSchema.prefault({}).meta({ title: 'Heat' }),
  pot: potSchema.prefault({}).meta({ title: 'Pot' }),
  boiler: boilerSchema.prefault({}).meta({ title: 'Separate boiler' }),
  charge: chargeSchema.prefault({}).meta({ title: 'Charge' }),
  neck: neckSchema.prefault({}).meta({ title: 'Swan neck' }),
  condenser: condenserSchema.prefault({}).meta({ title: 'Condenser' }),
  cooling: coolingSchema.prefault({}).meta({ title: 'Cooling water' }),
  separator: separatorSchema.prefault({}).meta({ title: 'Separator' }),
  run: runSchema.prefault({}).meta({ title: 'Run' }),
  factors: factorsSchema.prefault({}).meta({ title: 'Correction factors' }),
  advanced: advancedSchema.prefault({}).meta({ title: 'Advanced' }),
});

/** A complete, valid scenario. */
export type Scenario = z.output<typeof scenarioSchema>;
/** What a file may hold: any field may be left out. */
export type ScenarioInput = z.input<typeof scenarioSchema>;

export type ScenarioPart = Exclude<keyof Scenario, 'version' | 'name' | 'note'>;

/** The JSON Schema (draft 2020-12) of a scenario file, with `unit` and `source` on every field. */
export const scenarioJsonSchema = (): Record<string, unknown> => z.toJSONSchema(scenarioSchema, { io: 'input' });
