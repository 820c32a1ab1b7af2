import katex from 'katex';
import { describe, expect, test } from 'vitest';
import { exampleScenario, examples, simulate, workingSheets } from '../../../sim/index.ts';

describe('the working of every example', () => {
  test.each(examples.map(({ id }) => id))('%s is typeset without a complaint', (id) => {
    const sheets = workingSheets(simulate(exampleScenario(id)));
    expect(sheets.length).toBeGreaterThan(5);
    for (const { steps } of sheets) {
      for (const step of steps) {
        for (const tex of [step.tex, step.substituted, step.result.tex, ...step.symbols.map((symbol) => symbol.tex)])
          expect(
            () => katex.renderToString(tex, { throwOnError: true, strict: 'ignore', displayMode: true }),
            tex,
          ).not.toThrow();
      }
    }
  });
});
