import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { chargeFromBotanical, oilMoles } from '../../../sim/scenario/presets.ts';
import { readScenario } from '../../../sim/scenario/read-scenario.ts';
import { SCENARIO_VERSION } from '../../../sim/scenario/scenario.ts';

/** A charge as version 1 wrote it: two groups, half coverage as a share of the first oil. */
const first = {
  version: 1,
  name: 'Old still',
  charge: {
    botanical: 'lavender-true',
    state: 'dry',
    oilContent: 0.02,
    composition: [
      { constituent: 'linalool', share: 0.5 },
      { constituent: 'limonene', share: 0.5 },
    ],
    release: {
      readyShare: { hydrocarbon: 0.4, oxygenate: 0.5 },
      heldRate_1_s: { hydrocarbon: 0.0007, oxygenate: 0.0009 },
      activationEnergy_J_mol: 60_000,
      takeUp: { hydrocarbon: 0.05, oxygenate: 0.06 },
      takeUpExponent: 0.4,
      halfCoverage: 0.1,
    },
  },
};

describe('a scenario of version 1', () => {
  it('opens with its own numbers, its half coverage as moles on a kilogram, and the plant’s sesquiterpenes', () => {
    const read = readScenario(first);
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    const { version, charge } = read.scenario;
    expect(version).toBe(SCENARIO_VERSION);
    expect(charge.release.readyShare.hydrocarbon).toBe(0.4);
    expect(charge.release.takeUp.oxygenate).toBe(0.06);
    expect(charge.release.halfCoverage_mol_kg).toBeCloseTo(0.1 * oilMoles(0.02, first.charge.composition), 15);
    expect(charge.release.heldRate_1_s.sesquiterpene).toBe(
      chargeFromBotanical('lavender-true', 'dry').release?.heldRate_1_s.sesquiterpene,
    );
  });

  it('takes the plant’s half coverage where its own cannot be worked out', () => {
    const read = readScenario({ version: 1, charge: { release: { halfCoverage: 0.1 } } });
    expect(read.ok && read.scenario.charge.release.halfCoverage_mol_kg).toBe(
      chargeFromBotanical('lavender-true').release?.halfCoverage_mol_kg,
    );
  });
});

describe('a scenario of version 2', () => {
  const stirred = (stir_m_s: number, version: number): number => {
    const read = readScenario({ version, cooling: { stir_m_s } });
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    return read.scenario.cooling.stir_m_s;
  };

  it('keeps a tub mixed through that any stirring mixed, and one that stood still', () => {
    expect(stirred(0.01, 2)).toBe(0.05);
    expect(stirred(0.01, 1)).toBe(0.05);
    expect(stirred(0.2, 2)).toBe(0.2);
    expect(stirred(0, 2)).toBe(0);
    expect(stirred(0.01, SCENARIO_VERSION)).toBe(0.01);
  });

  it('takes its cold water from a hose laid on the bottom', () => {
    const read = readScenario({ version: 2 });
    expect(read.ok && [read.scenario.cooling.inlet, read.scenario.cooling.hoseBore_m]).toEqual(['laid', 0.012]);
  });
});

describe('a file saved by version', () => {
  const versions = Array.from({ length: SCENARIO_VERSION }, (_, before) => before + 1);

  it.each(versions)('%i opens with its own numbers', (version) => {
    const path = join(import.meta.dirname, 'old-files', `version-${String(version)}.json`);
    const kept = JSON.parse(readFileSync(path, 'utf8')) as { charge: { release: Record<string, unknown> } };
    const read = readScenario(kept);
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    const release = Object.fromEntries(Object.entries(kept.charge.release).filter(([name]) => name !== 'halfCoverage'));
    expect(read.scenario).toMatchObject({ ...kept, version: SCENARIO_VERSION, charge: { ...kept.charge, release } });
  });
});
