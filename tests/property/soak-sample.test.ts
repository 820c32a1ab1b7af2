/** A few cases of each law of which `npm run soak` tries many. */
import { describe, expect, it } from 'vitest';
import { PARTS } from '../soak/parts.ts';

describe.each(PARTS.filter(({ few }) => few > 0))('$name', (part) => {
  it(`hold their law: ${part.says}`, async () => {
    const found = await part.check({
      numRuns: part.few,
      seed: Number(process.env['LIMBECK_SEED'] ?? 20_261),
      interruptAfterTimeLimit: 5000,
      markInterruptAsFailure: false,
    });
    expect(found.failed ? `${String(found.errorInstance)} ${JSON.stringify(found.counterexample)}` : '').toBe('');
  });
});
