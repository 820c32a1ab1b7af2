/** `limbeck schema` and `limbeck example`: what a scenario file may hold, and complete ones to start from. */
import { examples, exampleScenario, ownPlantsJsonSchema, scenarioJsonSchema } from '../index.ts';
import { closestWords } from '../reference/closest-words.ts';
import { BadInput } from './bad-input.ts';
import { onlyWord, readWords } from './options.ts';
import { toJson } from './print.ts';

interface Node {
  readonly properties?: Readonly<Record<string, Node>>;
  readonly items?: Node;
  readonly unit?: string;
  readonly source?: string;
}

const FORM = 'form of the scenario file';

/**
 * Gives unit and source to the fields that state none of their own: names, shapes and times are pure form, and the
 * entries of a list come from where the list comes from.
 */
function complete(node: Node, source: string): Node {
  const own = node.source ?? source;
  if (node.properties) {
    const properties = Object.fromEntries(
      Object.entries(node.properties).map(([key, child]) => [key, complete(child, own)]),
    );
    return { ...node, properties };
  }
  const field = { ...node, unit: node.unit ?? '1', source: own };
  return node.items ? { ...field, items: complete(node.items, own) } : field;
}

export function schemaCommand(args: readonly string[]): string {
  const { positionals } = readWords(args, {});
  if (positionals.length === 1 && positionals[0] === 'plants') return toJson(ownPlantsJsonSchema());
  if (positionals.length > 0)
    throw new BadInput(`schema takes no word but “plants”; “${positionals.join(' ')}” is another.`);
  return toJson(complete(scenarioJsonSchema(), FORM));
}

export function exampleCommand(args: readonly string[]): string {
  const id = onlyWord(readWords(args, {}), 'id of an example');
  const ids = examples.map((entry) => entry.id);
  if (!ids.includes(id))
    throw new BadInput(
      `“${id}” is not an example; did you mean ${closestWords(id, ids, 1).join()}? There are ${ids.join(', ')}.`,
    );
  return toJson(exampleScenario(id));
}
