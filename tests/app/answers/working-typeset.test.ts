import katex from 'katex';
import { describe, expect, test } from 'vitest';
import { exampleScenario, examples, simulate, workingSheets } from '../../../sim/index.ts';

/** Most signs and equations come again in every example, and are as good the second time. */
const typeset = new Set<string>();

describe('the working of every example', () => {
  test.each(examples.map(({ id }) => id))('%s is typeset without a complaint', (id) => {
    const sheets = workingSheets(simulate(exampleScenario(id)));
    expect(sheets.length).toBeGreaterThan(5);
    const shown = sheets.flatMap(({ steps }) =>
      steps.flatMap((step) => [
        step.tex,
        step.substituted,
        step.result.tex,
        ...step.symbols.map((symbol) => symbol.tex),
      ]),
    );
    for (const tex of shown) {
      if (typeset.has(tex)) continue;
      expect(
        () => katex.renderToString(tex, { throwOnError: true, strict: 'ignore', displayMode: true }),
        tex,
      ).not.toThrow();
      typeset.add(tex);
    }
  });
});
