import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { energyLedger, type EnergyLedger } from '../../../src/charts/model/energy-ledger.ts';
import { energyDiagram } from '../../../src/charts/sankey/energy-diagram.ts';
import { handMadeRun } from './hand-made-run.ts';

const END_s = 540;
const SIZE = { left: 0, right: 700, top: 40, height: 240, textScale: 1 };
const flow = (ledger: EnergyLedger, from: string, to: string): number | undefined =>
  ledger.flows.find((candidate) => candidate.from === from && candidate.to === to)?.energy_J;

describe('the energy ledger at a moment', () => {
  it('divides the fuel as the columns say', () => {
    const ledger = energyLedger(handMadeRun().record, END_s);
    expect(ledger.fuel_J).toBe(1_000_000);
    expect(flow(ledger, 'fuel', 'missed')).toBe(250_000);
    expect(flow(ledger, 'fuel', 'still')).toBe(750_000);
    expect(flow(ledger, 'still', 'condenser')).toBe(400_000);
    expect(flow(ledger, 'still', 'losses')).toBe(90_000);
    expect(flow(ledger, 'still', 'stored')).toBe(240_000);
    expect(flow(ledger, 'still', 'escape')).toBe(undefined);
    expect(ledger.residual_J).toBe(0);
  });

  it('reads between rows', () => {
    expect(energyLedger(handMadeRun().record, 270).fuel_J).toBeCloseTo(500_000, 6);
  });

  it('is empty before anything has flowed', () => {
    expect(energyLedger(handMadeRun().record, 0).flows).toEqual([]);
  });

  it('lets a still that was filled hot give up heat instead of storing less than nothing', () => {
    const run = handMadeRun({ storedEnergy_J: [0, -60_000], dutyEnergy_J: [0, 700_000] });
    const ledger = energyLedger(run.record, END_s);
    expect(flow(ledger, 'drawn', 'still')).toBe(60_000);
    const sum = (end: 'from' | 'to') =>
      ledger.flows.filter((each) => each[end] === 'still').reduce((total, { energy_J }) => total + energy_J, 0);
    expect(sum('to')).toBeCloseTo(sum('from'), 6);
  });

  it('shows what the columns leave unexplained instead of hiding it', () => {
    const ledger = energyLedger(handMadeRun({ lossEnergy_J: [0, 70_000] }).record, END_s);
    expect(flow(ledger, 'still', 'open')).toBe(20_000);
    expect(ledger.residual_J).toBe(20_000);
  });
});

describe('the energy diagram', () => {
  it('draws bands as wide as their energy, filling each bar exactly on both sides, for any division of the fuel', () => {
    const energy = fc.integer({ min: 0, max: 1_000_000 });
    fc.assert(
      fc.property(
        energy,
        energy,
        energy,
        energy,
        energy,
        fc.integer({ min: -500_000, max: 1_000_000 }),
        (missed, duty, loss, product, escape, stored) => {
          const fuel = missed + duty + loss + product + escape + stored;
          fc.pre(fuel - missed > 0);
          const run = handMadeRun({
            fuelEnergy_J: [0, fuel],
            sourceLossEnergy_J: [0, missed],
            dutyEnergy_J: [0, duty],
            lossEnergy_J: [0, loss],
            productEnergy_J: [0, product],
            escapeEnergy_J: [0, escape],
            storedEnergy_J: [0, stored],
          });
          const { places, flows } = energyDiagram(energyLedger(run.record, END_s), SIZE);
          const perJoule = (flows[0]?.width ?? 0) / (flows[0]?.energy_J ?? 1);
          for (const { width, energy_J } of flows) expect(width).toBeCloseTo(perJoule * energy_J, 6);
          const still = places.find(({ place }) => place === 'still');
          const into = flows.filter(({ to }) => to === 'still').reduce((sum, { width }) => sum + width, 0);
          const outOf = flows.filter(({ from }) => from === 'still').reduce((sum, { width }) => sum + width, 0);
          expect(into).toBeCloseTo(outOf, 6);
          expect(still?.height).toBeCloseTo(into, 6);
          for (const { top, height } of places) {
            expect(top).toBeGreaterThanOrEqual(SIZE.top - 1e-6);
            expect(top + height).toBeLessThanOrEqual(SIZE.top + SIZE.height + 1e-6);
          }
        },
      ),
    );
  });

  it('has nothing to draw before anything has flowed', () => {
    expect(energyDiagram(energyLedger(handMadeRun().record, 0), SIZE)).toEqual({ places: [], flows: [] });
  });
});
