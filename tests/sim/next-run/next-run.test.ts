import { describe, expect, it } from 'vitest';
import { englishReader, exampleScenario, nextRun, nextRunMessages, type LoggedPoint } from '../../../sim/index.ts';

const still = exampleScenario('gentle-lavender');
const CELSIUS = 273.15;
const oil = (minutes: number): LoggedPoint => ({ time_s: 60 * minutes, oil_mL: 20 });

describe('what a run says for the next', () => {
  it('says when it went on for longer than 90 % of the oil needs, and when it stopped early', () => {
    const [long] = nextRun(still, [oil(40), oil(125)]).facts;
    expect(long?.kind).toBe('ran-long');
    if (long?.kind === 'ran-long') {
      expect(long.saved_J).toBeGreaterThan(0);
      expect(long.forgone_mL).toBeGreaterThan(0);
    }
    const [early] = nextRun(still, [oil(40)]).facts;
    expect(early?.kind).toBe('stopped-early');
    if (early?.kind === 'stopped-early') expect(early.gained_mL).toBeGreaterThan(5);
    expect(nextRun(still, []).facts).toEqual([]);
  });

  it('names more cooling water only where the model then stays below the limit', () => {
    const warm: LoggedPoint = { time_s: 4800, outlet_K: still.condenser.outletLimit_K + 8 };
    const [fact] = nextRun(still, [warm]).facts;
    expect(fact).toMatchObject({ kind: 'outlet-warm', read_K: warm.outlet_K });
    if (fact?.kind === 'outlet-warm' && fact.more) expect(fact.more.outlet_K).toBeLessThanOrEqual(fact.limit_K);
    const short = { ...still, condenser: { ...still.condenser, length_m: 0.2 } };
    expect(nextRun(short, [{ time_s: 4800, outlet_K: 90 + CELSIUS }]).facts).toMatchObject([{ more: null }]);
  });

  it('speaks to readers of either units', () => {
    for (const fact of nextRun(still, [oil(125), { time_s: 4800, outlet_K: 60 + CELSIUS }]).facts)
      expect(nextRunMessages(englishReader('us')).fact(fact)).not.toMatch(/°C|\bkg\b/u);
  });
});
