import { describe, expect, it } from 'vitest';
import { fieldAt, readScenario, scenarioFields, scenarioJsonSchema } from '../../../sim/index.ts';

interface Node {
  readonly type?: string;
  readonly properties?: Readonly<Record<string, Node>>;
  readonly items?: Node;
  readonly anyOf?: readonly Node[];
  readonly title?: string;
  readonly description?: string;
  readonly unit?: string;
  readonly source?: string;
  readonly default?: unknown;
  readonly additionalProperties?: unknown;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly enum?: readonly unknown[];
}

const schema = scenarioJsonSchema() as Node;

/** Fields of the file: every leaf of the tree of parts; a list or schedule is one field. */
function leaves(node: Node, path: string): readonly (readonly [string, Node])[] {
  if (node.properties)
    return Object.entries(node.properties).flatMap(([key, child]) => leaves(child, path ? `${path}.${key}` : key));
  return [[path, node]];
}

const fields = leaves(schema, '').filter(([path]) => path !== 'version');

const valueAt = (tree: unknown, path: string): unknown =>
  path.split('.').reduce<unknown>((node, key) => (node as Record<string, unknown>)[key], tree);

describe('the JSON Schema of a scenario', () => {
  it('is draft 2020-12 and closed: no part takes a key that it does not name', () => {
    expect((schema as Record<string, unknown>)['$schema']).toBe('https://json-schema.org/draft/2020-12/schema');
    const open = (node: Node, path: string): string[] =>
      node.properties
        ? [
            ...(node.additionalProperties === false ? [] : [path]),
            ...Object.entries(node.properties).flatMap(([key, child]) => open(child, `${path}.${key}`)),
          ]
        : [];
    expect(open(schema, '$')).toEqual([]);
  });

  it.each(fields)('gives unit, default, title, sentence and source for %s', (_, node) => {
    expect(node.unit).toMatch(/^\S.*$/);
    expect(node.title).toMatch(/^\S.+$/);
    expect(node.description).toMatch(/^[A-Z“].+[.]$/);
    expect(node.source).toMatch(/\S/);
    expect(Object.hasOwn(node, 'default')).toBe(true);
  });

  it('gives every number its range and every choice its options', () => {
    for (const field of scenarioFields) {
      if (field.kind === 'number' || field.kind === 'integer' || field.kind === 'schedule') {
        expect(field.min, field.path).toBeLessThan(field.max as number);
        if (typeof field.default === 'number') {
          expect(field.default, field.path).toBeGreaterThanOrEqual(field.min as number);
          expect(field.default, field.path).toBeLessThanOrEqual(field.max as number);
        }
      }
      if (field.kind === 'choice') expect(field.options, field.path).toContain(field.default);
    }
  });

  it('is the list of fields: the same paths, words, defaults, ranges and options', () => {
    expect(scenarioFields.map((field) => field.path)).toEqual(fields.map(([path]) => path));
    for (const [path, node] of fields) {
      const core = node.anyOf?.find(({ type }) => type !== 'null') ?? node;
      const field = fieldAt(path);
      expect(field?.title, path).toBe(node.title);
      expect(field?.says, path).toBe(node.description);
      expect([field?.unit, field?.source], path).toEqual([node.unit, node.source]);
      expect(field?.default, path).toEqual(node.default);
      if (field?.kind !== 'schedule') expect([field?.min, field?.max], path).toEqual([core.minimum, core.maximum]);
      expect(field?.options, path).toEqual(core.enum);
      expect(field?.nullable, path).toBe(node.anyOf !== undefined);
      expect(field?.kind === 'integer', path).toBe(core.type === 'integer');
    }
  });

  it('prints the defaults that an empty file is read with, except where the plant gives its own', () => {
    const read = readScenario({});
    if (!read.ok) throw new Error('an empty file is refused');
    for (const field of scenarioFields)
      if (!field.path.startsWith('charge.'))
        expect(valueAt(read.scenario, field.path), field.path).toEqual(field.default);
  });

  it('finds the field of a path that leads into a schedule or list', () => {
    expect(fieldAt('heat.setting.3.value')?.path).toBe('heat.setting');
    expect(fieldAt('cooling.ice.0.mass_kg')?.path).toBe('cooling.ice');
    expect(fieldAt('pot.colour')).toBe(undefined);
  });
});
