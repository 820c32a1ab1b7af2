/** The fields of a scenario as a flat list, read off its schema: what forms, messages and the desk reference show. */
import * as z from 'zod/mini';
import { scenarioSchema, type ScenarioPart } from './scenario.ts';

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

/** What a field's schema is made of, wrapper by wrapper from the outside in. */
interface Peeled {
  readonly core: z.core.$ZodTypes;
  readonly words: z.core.GlobalMeta;
  readonly default: unknown;
  readonly nullable: boolean;
}

function peel(schema: z.core.$ZodType): Peeled {
  const words = { ...z.globalRegistry.get(schema) };
  const node = schema as z.core.$ZodTypes;
  const { def } = node._zod;
  if (def.type === 'default' || def.type === 'prefault') {
    const inner = peel(def.innerType);
    return { ...inner, words: { ...inner.words, ...words }, default: def.defaultValue };
  }
  if (def.type === 'nullable') {
    const inner = peel(def.innerType);
    return { ...inner, words: { ...inner.words, ...words }, nullable: true };
  }
  return { core: node, words, default: undefined, nullable: false };
}

/** The closed range of a number, and whether it is a whole one. */
function numberChecks({ _zod: { def } }: z.core.$ZodTypes): { min?: number; max?: number; isWhole: boolean } {
  const found: { min?: number; max?: number; isWhole: boolean } = { isWhole: false };
  if (def.type !== 'number') return found;
  for (const { _zod } of def.checks ?? []) {
    const { check, value } = _zod.def as z.core.$ZodCheckDef & { readonly value?: unknown };
    if (check === 'greater_than') found.min = Number(value);
    if (check === 'less_than') found.max = Number(value);
    if (check === 'number_format') found.isWhole = true;
  }
  return found;
}

const kindOf = ({ core, words }: Peeled): FieldInfo['kind'] => {
  if (words['schedule'] === true) return 'schedule';
  const { type } = core._zod.def;
  if (type === 'array') return 'list';
  if (type === 'enum') return 'choice';
  if (type === 'number') return numberChecks(core).isWhole ? 'integer' : 'number';
  return 'text';
};

const asText = (value: unknown, otherwise: string): string => (typeof value === 'string' ? value : otherwise);

function describe(path: string, peeled: Peeled): FieldInfo {
  const { core, words } = peeled;
  const { def } = core._zod;
  const top = path.split('.')[0] as string;
  const { min, max } =
    words['schedule'] === true
      ? { min: Number(words['minimumValue']), max: Number(words['maximumValue']) }
      : numberChecks(core);
  return {
    path,
    part: path.includes('.') ? (top as ScenarioPart) : null,
    kind: kindOf(peeled),
    title: words.title ?? path,
    says: words.description ?? '',
    unit: asText(words['unit'], '1'),
    source: asText(words['source'], ''),
    default: peeled.default,
    nullable: peeled.nullable,
    ...(min === undefined ? {} : { min }),
    ...(max === undefined ? {} : { max }),
    ...(def.type === 'enum' ? { options: Object.values(def.entries).map(String) } : {}),
  };
}

function walk(path: string, schema: z.core.$ZodType, found: FieldInfo[]): void {
  const peeled = peel(schema);
  const { def } = peeled.core._zod;
  if (def.type === 'object') {
    for (const [key, child] of Object.entries(def.shape)) walk(path ? `${path}.${key}` : key, child, found);
  } else if (path !== 'version') {
    found.push(describe(path, peeled));
  }
}

const collect = (): readonly FieldInfo[] => {
  const found: FieldInfo[] = [];
  walk('', scenarioSchema, found);
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
