/** What each command takes and gives, with units. */
import { DEFAULT_MARGIN } from '../answers/size-tubes.ts';

const scenario = `  <scenario>            id of an example (“list examples”), path of a JSON file, or - for standard input
  --set path=value      change a field before it is checked, in SI units (“schema” lists paths, units, ranges);
                        may be given again; a bare number for a schedule holds from start to end;
                        another charge.botanical or charge.state brings its own plant data`;

const footer = 'Bad input: one line a problem on standard error, nothing on standard output, exit code 2.';

export const commandHelp = {
  run: `limbeck run <scenario> [--set path=value]… [--series | --csv]

Runs a still from heat on to the end and prints JSON:
  summary               headline numbers; keys end in their unit (s, kg, mL, m, J, W, Pa, C for °C), null when never reached
  events[]              kind, time_s, severity, part, value, unit, sentence, advice
  balance               water_kg, energy_J, constituents_kg: start + in − out − end against throughput
  failure               null, or the state that stopped being a number

${scenario}
  --series              also units, series (one list a column), grids (rows of cells), constituents
  --csv                 the columns as a table instead; headings end in the unit, those without are pure numbers

${footer}`,
  size: `limbeck size <scenario> [flags]

The shortest condenser that, over the whole run with the tub or barrel warming, lets no vapour out and keeps the
distillate at or below the outlet limit: for the scenario's own tube and for every tube of the library.

${scenario}
  --outlet-limit C      warmest distillate in °C, 5 to 90; the scenario's own limit when left out
  --margin share        added to the shortest length, 0 to 5; ${DEFAULT_MARGIN} when left out
  --tube id             only this tube of the library beside the own one; may be given again
  --own                 the own tube only
  --confirm             check library tubes at the scenario's own step too (slow); without, they are good to some
                        3 %. The own tube is always checked: its length holds, 97 % of it does not
  --hardest-boil        instead: the largest constant heat setting (share of rated power) that the condenser holds
  --least-water         instead: the smallest constant cooling-water flow (kg/s) with which it holds
  --json | --table      form of the answer; a table when left out
  Lengths and heights in m, mass in kg, pressure drop in Pa, price in the currency of condenser.tubePrice_m.

Start-up does not count: escape and temperature are looked at after the first minute of vapour, the temperature as a
flow-weighted mean over half a minute. A tube that holds back more than 5 kPa is refused.

${footer}`,
  'look-up': `limbeck look-up <name> symbol=value… [--json]
limbeck look-up --list [--json]
limbeck look-up --search words [--json]

Evaluates a fluid property or a relation of the model and prints value, unit, range, source and equation.
Values are in SI units (kg, m, s, K, Pa, W, mol); temperatures may be written T=100C. Differences of temperature can't.
  --list                name, arguments, units and ranges of every entry
  --search words        only entries that speak of all these words
  Outside its range a fluid property is refused; a relation is evaluated and says so.

${footer}`,
  list: `limbeck list examples|botanicals|tubes|vessels|heat-sources|materials|constituents|separators|tubs|circuits [--json]

What the library holds, as a table with units in the headings, or with --json every value with its source (SI units).

${footer}`,
  schema: `limbeck schema

JSON Schema of a scenario file, with unit, source, default and allowed range of every field (SI units).

${footer}`,
  example: `limbeck example <id>

A complete scenario as JSON (SI units), to change and give to “run” or “size”. “list examples” shows the ids.

${footer}`,
} as const;

export type CommandName = keyof typeof commandHelp;

export const generalHelp = `limbeck <command> … (npm run -s limbeck -- <command> …)

  run       run a still and print what comes of it
  size      how much condenser it needs, the hardest boil it holds, the least water it needs
  look-up   any property or relation of the model
  list      what the library holds
  schema    what a scenario file may hold
  example   a complete scenario to start from

“limbeck <command> --help” tells more, with units. Limbeck is for aromatic plants and water; not for spirits.`;
