/** What must be said at any still, whatever the run came to. */
import type { Scenario, ScenarioPart } from '../scenario/scenario.ts';
import { safety } from './english/safety.ts';
import type { Reader } from './language.ts';
import { section } from './section.ts';
import { hazardsOf } from './still-hazards.ts';

export type SafetyMessages = ReturnType<typeof safety>;

export const safetyMessages = section<SafetyMessages>({ en: safety });

/** What must be said of a still's own metal and oil; of one part of it, where a part is given. */
export const hazardMessages = (scenario: Scenario, reader: Reader, part?: ScenarioPart): readonly string[] =>
  hazardsOf(scenario, part).map((hazard) => safetyMessages(reader).hazards[hazard]);
