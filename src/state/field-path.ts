/** Reads and replaces one value deep in a plain object, by its dotted path; everything else is shared, nothing mutated. */

type Node = Record<string, unknown>;

const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null;

export const valueAtPath = (whole: unknown, path: string): unknown =>
  path.split('.').reduce<unknown>((node, key) => (isNode(node) ? node[key] : undefined), whole);

export function withValueAtPath<T extends object>(whole: T, path: string, value: unknown): T {
  const replace = (node: unknown, keys: readonly string[]): unknown => {
    const [key, ...rest] = keys;
    if (key === undefined) return value;
    if (Array.isArray(node))
      return node.map((entry: unknown, index) => (String(index) === key ? replace(entry, rest) : entry));
    if (!isNode(node) || !(key in node)) throw new RangeError(`there is no field ${path}`);
    return { ...node, [key]: replace(node[key], rest) };
  };
  return replace(whole, path.split('.')) as T;
}
