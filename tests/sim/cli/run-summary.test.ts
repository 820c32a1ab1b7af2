/** `run --summary`: the same facts as the JSON, as readable text in the reader's units. */
import { describe, expect, it } from 'vitest';
import { englishReader, eventMessage, exampleScenario, safetyMessages, simulate } from '../../../sim/index.ts';
import { answerTo } from '../../../sim/cli/answer.ts';
import { answered } from './asking.ts';

/** Oil is in millilitres in both. */
const METRIC_UNIT = /\d\u202f(?:°C|L|kg|g|mm|m|kPa|hPa|km)(?![\w/])/u;
const US_UNIT = /\d\u202f(?:°F|fl oz|oz|qt|gal|lb|in|ft|psi|in Hg)(?![\w/])/u;

describe('run --summary', () => {
  it.each(['metric', 'us'] as const)('says verdict, every event and the safety lines, %s', (units) => {
    const text = answerTo(['run', 'hard-boiled-lavender', '--summary', '--units', units]);
    const reader = englishReader(units);
    expect(text.startsWith(`${exampleScenario('hard-boiled-lavender').name}\n\n`)).toBe(true);
    const { events } = simulate(exampleScenario('hard-boiled-lavender'));
    expect(events.length).toBeGreaterThan(2);
    for (const event of events) expect(text).toContain(eventMessage(event, reader).sentence);
    for (const line of safetyMessages(reader).always) expect(text).toContain(line);
    expect(text).not.toMatch(units === 'us' ? METRIC_UNIT : US_UNIT);
    expect(text).toMatch(units === 'us' ? US_UNIT : METRIC_UNIT);
  });

  it('leaves the JSON the same facts, with verdict and safety', () => {
    const printed = answered('run', 'hard-boiled-lavender', '--units', 'us') as {
      readonly verdict: { readonly lead: { readonly kind: string; readonly sentence: string } };
      readonly safety: readonly string[];
    };
    const { always, hazards } = safetyMessages(englishReader('us'));
    expect(printed.safety.slice(0, always.length)).toEqual(always);
    expect(printed.safety).toContain(hazards['copper-joints']);
    expect(printed.safety.join(' ')).toMatch(/linalyl acetate sensitise skin/);
    expect(printed.verdict.lead.kind).toBe('condenser-fails');
    expect(answerTo(['run', 'hard-boiled-lavender', '--summary', '--units', 'us'])).toContain(
      printed.verdict.lead.sentence,
    );
  });
});
