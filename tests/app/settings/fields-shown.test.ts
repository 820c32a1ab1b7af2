import { describe, expect, test } from 'vitest';
import { fieldAt, scenarioFields } from '../../../sim/index.ts';
import { choiceWords, PARTS } from '../../../src/pages/bench/settings/part-words.ts';
import { CONDITIONAL_PATHS, isRelevant, isRelevantPart } from '../../../src/pages/bench/settings/relevance.ts';
import { sectionsOf } from '../../../src/pages/bench/settings/sections.ts';
import { still } from './still.ts';

const relevantPaths = (values: Readonly<Record<string, unknown>>): readonly string[] =>
  scenarioFields.map(({ path }) => path).filter((path) => isRelevant(path, still(values)));

describe('every field of a scenario', () => {
  test('stands once under one part', () => {
    const shown = PARTS.flatMap(({ part }) => sectionsOf(part).flatMap(({ fields }) => fields.map(({ path }) => path)));
    expect([...shown].sort()).toEqual(scenarioFields.map(({ path }) => path).sort());
  });

  test('stands under a heading that was chosen for it, not under “More”', () => {
    const more = PARTS.flatMap(({ part }) => sectionsOf(part)).filter(({ title }) => title === 'More');
    expect(more.flatMap(({ fields }) => fields.map(({ path }) => path))).toEqual([]);
  });

  test('has a label, a sentence and a source', () => {
    for (const field of scenarioFields) {
      expect([field.path, field.title.length > 0, field.says.length > 10, field.source.length > 0]).toEqual([
        field.path,
        true,
        true,
        true,
      ]);
    }
  });

  test('that is a choice has words for each option', () => {
    for (const field of scenarioFields) {
      for (const option of field.options ?? []) expect(choiceWords(field.path, option)).toMatch(/^[a-z][a-z ,()-]+$/u);
    }
  });
});

describe('only what matters for the chosen kinds is shown', () => {
  test('every rule is about a field that exists', () => {
    expect(CONDITIONAL_PATHS.filter((path) => fieldAt(path)?.path !== path)).toEqual([]);
  });

  test('every field matters for some still', () => {
    const stills = [
      {},
      { 'condenser.kind': 'jacketed-tube' },
      { 'condenser.kind': 'bundle', 'cooling.jacketSupply': 'barrel' },
      { 'pot.layout': 'steam', 'pot.insulationThickness_m': 0.02 },
      { 'pot.layout': 'water' },
      { 'heat.control': 'hold-rate' },
      { 'cooling.inlet': 'perforated', 'cooling.flow_kg_s': [{ at_s: 0, value: 0.01, shape: 'step' }] },
    ];
    const seen = new Set(stills.flatMap((values) => relevantPaths(values)));
    expect(scenarioFields.map(({ path }) => path).filter((path) => !seen.has(path))).toEqual([]);
  });

  test('a coil has turns and a tub and no jacket', () => {
    const shown = relevantPaths({ 'condenser.kind': 'coil-in-tub' });
    expect(shown).toEqual(expect.arrayContaining(['condenser.coilPitch_m', 'cooling.tubHeight_m', 'cooling.ice']));
    expect(shown).not.toContain('condenser.jacketDiameter_m');
    expect(shown).not.toContain('cooling.jacketSupply');
  });

  test('a tub that water comes into has a hose, or a pipe with holes', () => {
    const flow = [{ at_s: 0, value: 0.01, shape: 'step' }];
    const shown = (inlet: string) => relevantPaths({ 'cooling.inlet': inlet, 'cooling.flow_kg_s': flow });
    expect(shown('top')).toContain('cooling.hoseBore_m');
    expect(shown('top')).not.toContain('cooling.holes');
    expect(shown('top')).not.toContain('factors.jetMixing');
    expect(shown('perforated')).toContain('cooling.holeBore_m');
    expect(shown('perforated')).not.toContain('cooling.hoseBore_m');
    expect(relevantPaths({ 'cooling.flow_kg_s': [{ at_s: 0, value: 0, shape: 'step' }] })).not.toContain(
      'cooling.inlet',
    );
  });

  test('a jacket on the tap has no tub, on a barrel it has one', () => {
    const onTap = relevantPaths({ 'condenser.kind': 'jacketed-tube', 'cooling.jacketSupply': 'tap' });
    expect(onTap).toContain('condenser.jacketDiameter_m');
    expect(onTap).not.toContain('cooling.tubDiameter_m');
    expect(onTap).not.toContain('condenser.tubes');
    expect(relevantPaths({ 'condenser.kind': 'bundle', 'cooling.jacketSupply': 'barrel' })).toEqual(
      expect.arrayContaining(['cooling.tubDiameter_m', 'condenser.tubes']),
    );
  });

  test('a boiler is shown only for steam from one', () => {
    expect(isRelevantPart('boiler', still())).toBe(false);
    expect(isRelevantPart('boiler', still({ 'pot.layout': 'steam' }))).toBe(true);
    expect(relevantPaths({}).filter((path) => path.startsWith('boiler.'))).toEqual([]);
  });

  test('a wood fire has no circuit', () => {
    expect(relevantPaths({ 'heat.kind': 'wood-fire' })).not.toContain('heat.supplyVolts_V');
    expect(relevantPaths({ 'heat.kind': 'induction' })).toContain('heat.supplyVolts_V');
  });
});
