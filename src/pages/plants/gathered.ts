/** Plants gathered wild: who identified one, and how the still, its labels and its log come to say so. */
import type { Scenario } from '../../../sim/index.ts';
import { identifierOf, wild } from '../../state/gathered-store.ts';
import { ownPlantOf } from '../../state/own-plants-store.ts';
import { withName } from '../bench/settings/named-after.ts';

type Values = Readonly<Record<string, unknown>>;

/** An own plant says itself whether it is gathered wild; of those of the library the reader says so. */
export const isWild = (plant: string): boolean => ownPlantOf(plant)?.wild ?? wild();

/** A plant from the wild goes into the still only once somebody has put a name to it. */
export const isIdentified = (plant: string): boolean => !isWild(plant) || identifiedBy(plant) !== '';

/** Name of the person who identified it; empty where nobody has. */
export const identifiedBy = (plant: string): string => (ownPlantOf(plant)?.identifiedBy ?? identifierOf(plant)).trim();

const words = (name: string): string => (name === '' ? '' : `gathered wild, identified by ${name}`);

/** What a label says of it; empty for a plant that is grown. */
export const gatheredWords = (plant: string): string => (isWild(plant) ? words(identifiedBy(plant)) : '');

/** The line of a still's note, which goes with its file, its link and its runs. */
const NOTED = /^Gathered wild, identified by (?<name>.+)\.$/mu;
const LONGEST_NOTE = 2000;

/** The same of a still as its note has it, which its owner may have got as a link or a file. */
export const gatheredOf = ({ note }: Scenario): string => words(NOTED.exec(note)?.groups?.['name'] ?? '');

/** What puts a plant into a still, with the still's name and note; or why it is not put in. */
export function withGathering(values: Values, still: Scenario): Values | string {
  const plant = values['charge.botanical'];
  if (typeof plant !== 'string') return values;
  if (!isIdentified(plant))
    return 'Gathered wild: open this plant under Plants and write who identified it. Or say there that it is not gathered.';
  const named = withName(values, still);
  const before = typeof named['note'] === 'string' ? named['note'] : still.note;
  const rest = before.replace(NOTED, '').trim();
  const said = gatheredWords(plant);
  const line = said === '' ? '' : `${said.charAt(0).toUpperCase()}${said.slice(1)}.`;
  const note = [line, rest].filter((part) => part !== '').join('\n');
  return note === before || note.length > LONGEST_NOTE ? named : { ...named, note };
}
