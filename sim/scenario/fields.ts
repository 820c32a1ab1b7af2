/** The fields of a scenario as a flat list, read off its schema: what forms, messages and the desk reference show. */
import { scenarioJsonSchema, type ScenarioPart } from './scenario.ts';

export interface FieldInfo {
  /** Dotted path, e.g. `pot.diameter_m`. */
  readonly path: string;
  readonly part: ScenarioPart | null;
  readonly kind: 'number' | 'integer' | 'choice' | 'text' | 'schedule' | 'list';
  readonly title: string;
  readonly says: string;
  readonly unit: string;
  readonly source: string;
  readonly default: unknown;
  readonly min?: number;
  readonly max?: number;
  readonly options?: readonly string[];
  /** Whether the field may be left open (`null`). */
  readonly nullable: boolean;
}

interface SchemaNode {
  readonly type?: string;
  readonly anyOf?: readonly SchemaNode[];
  readonly properties?: Readonly<Record<string, SchemaNode>>;
  readonly items?: SchemaNode;
  readonly enum?: readonly string[];
  readonly minimum?: number;
  readonly maximum?: number;
  readonly minimumValue?: number;
  readonly maximumValue?: number;
  readonly schedule?: boolean;
  readonly title?: string;
  readonly description?: string;
  readonly unit?: string;
  readonly source?: string;
  readonly default?: unknown;
}

const kindOf = (node: SchemaNode, core: SchemaNode): FieldInfo['kind'] => {
  if (node.schedule) return 'schedule';
  if (core.type === 'array') return 'list';
  if (core.enum) return 'choice';
  if (core.type === 'integer') return 'integer';
  return core.type === 'number' ? 'number' : 'text';
};

function describe(path: string, node: SchemaNode): FieldInfo {
  const core = node.anyOf?.find((option) => option.type !== 'null') ?? node;
  const top = path.split('.')[0] as string;
  const min = node.minimumValue ?? core.minimum;
  const max = node.maximumValue ?? core.maximum;
  return {
    path,
    part: path.includes('.') ? (top as ScenarioPart) : null,
    kind: kindOf(node, core),
    title: node.title ?? core.title ?? path,
    says: node.description ?? core.description ?? '',
    unit: node.unit ?? core.unit ?? '1',
    source: node.source ?? core.source ?? '',
    default: node.default,
    nullable: node.anyOf?.some((option) => option.type === 'null') ?? false,
    ...(min === undefined ? {} : { min }),
    ...(max === undefined ? {} : { max }),
    ...(core.enum ? { options: core.enum } : {}),
  };
}

function walk(path: string, node: SchemaNode, found: FieldInfo[]): void {
  if (node.properties && node.type === 'object') {
    for (const [key, child] of Object.entries(node.properties)) walk(path ? `${path}.${key}` : key, child, found);
  } else if (path !== 'version') {
    found.push(describe(path, node));
  }
}

const collect = (): readonly FieldInfo[] => {
  const found: FieldInfo[] = [];
  walk('', scenarioJsonSchema(), found);
  return found;
};

export const scenarioFields: readonly FieldInfo[] = collect();

const byPath = new Map(scenarioFields.map((field) => [field.path, field]));

/** Limits of the number at a path, as far as it has any. */
export function rangeAt(path: string): { readonly min?: number; readonly max?: number } {
  const { min, max } = fieldAt(path) ?? {};
  return { ...(min === undefined ? {} : { min }), ...(max === undefined ? {} : { max }) };
}

/** The field at a path; a path into a schedule or list gives the schedule or list. */
export function fieldAt(path: string): FieldInfo | undefined {
  const exact = byPath.get(path);
  if (exact) return exact;
  const cut = path.lastIndexOf('.');
  return cut < 0 ? undefined : fieldAt(path.slice(0, cut));
}
