/** Reading scenarios: what is complete reads back as it is; no JSON at all makes the reader throw. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { englishReader, problemMessage, readScenario, scenarioFields } from '../../sim/index.ts';
import { fileProblemMessage } from '../../sim/messages/problems.ts';
import { anyScenario } from './random-scenario.ts';

const scenario = fc.oneof(anyScenario({ reach: 'ordinary', steps: 60 }), anyScenario({ reach: 'corner', steps: 60 }));

/** Paths and values that a hand edit could leave in a file. */
const anyEdit = fc.tuple(
  fc.constantFrom(
    ...scenarioFields.map((field) => field.path),
    'charge.composition.0.share',
    'cooling.ice.0',
    'pot',
    'colour',
    'version',
  ),
  fc.jsonValue({ maxDepth: 3 }),
);

function edited(base: unknown, path: string, value: unknown): unknown {
  const copy = JSON.parse(JSON.stringify(base)) as Record<string, unknown>;
  const keys = path.split('.');
  const last = keys.pop() as string;
  let node: Record<string, unknown> = copy;
  for (const key of keys) {
    const next = node[key];
    if (typeof next !== 'object' || next === null) return copy;
    node = next as Record<string, unknown>;
  }
  node[last] = value;
  return copy;
}

describe('readScenario', () => {
  it('reads a complete scenario back equal, through JSON and again', () => {
    fc.assert(
      fc.property(scenario, (complete) => {
        expect(readScenario(JSON.parse(JSON.stringify(complete)))).toEqual({ ok: true, scenario: complete });
      }),
      { numRuns: 150 },
    );
  });

  it('answers every JSON value with a scenario or with problems, and never throws', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.jsonValue(),
          fc.anything({
            withBigInt: true,
            withDate: true,
            withMap: true,
            withNullPrototype: true,
            withSparseArray: true,
            withTypedArray: true,
          }),
        ),
        (value) => {
          const read = readScenario(value);
          if (!read.ok) expect(read.problems.length).toBeGreaterThan(0);
        },
      ),
      { numRuns: 1500 },
    );
  });

  it('answers a scenario with any one value replaced by any JSON, and keeps what it was given as it was', () => {
    fc.assert(
      fc.property(scenario, anyEdit, (complete, [path, value]) => {
        const file = edited(complete, path, value);
        const before = JSON.stringify(file);
        const read = readScenario(file);
        expect(JSON.stringify(file)).toBe(before);
        if (read.ok) {
          expect(readScenario(read.scenario)).toEqual(read);
          return;
        }
        for (const problem of read.problems) {
          for (const said of [
            problemMessage(problem, englishReader('metric')),
            problemMessage(problem, englishReader('us')),
            fileProblemMessage(problem, englishReader('metric')),
          ])
            expect(said).toMatch(/^.+: .+ is not possible; .+\.$/su);
          expect(
            problem.path === path ||
              problem.path.startsWith(`${path}.`) ||
              path.startsWith(problem.path) ||
              problem.path.startsWith('charge') ||
              crossField(problem.path),
          ).toBe(true);
        }
      }),
      { numRuns: 600 },
    );
  });
});

/** Fields that a rule joining several fields may name when another of them changes. */
function crossField(path: string): boolean {
  return [
    'pot.water_kg',
    'pot.gridHeight_m',
    'condenser.insideDiameter_m',
    'condenser.jacketDiameter_m',
    'condenser.coilPitch_m',
    'condenser.coilDiameter_m',
    'neck.risingLength_m',
    'separator.inletDepth_m',
  ].includes(path);
}
