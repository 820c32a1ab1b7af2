/** What each command takes and gives, with units. */
import {
  FILL_RANGE,
  FILTER_KINDS,
  SURFACES,
  USES,
  USUAL_CHAMBER_FILL,
  USUAL_DROPS_per_mL,
  USUAL_FILL,
  USUAL_LOSS,
  FIT_NAMES,
  FORECAST_MEMBERS,
  FORECAST_SEED,
  MOST_COMPARED,
  MOST_DRAWS,
  MOST_FACTORS,
  MOST_MEMBERS,
  MOST_SEED,
  STOP_RULES,
  USUAL_DRAWS,
  USUAL_FIT,
  USUAL_MEMBERS,
  USUAL_SEED,
} from '../index.ts';
import { DEFAULT_MARGIN } from '../answers/condenser-size/tubes.ts';

type Rule = (typeof STOP_RULES)[keyof typeof STOP_RULES];
const numbers = ({ min, max, usual }: Rule): string => `${min} to ${max}; ${usual} when left out`;

const scenario = `  <scenario>            id of an example (“list examples”), path of a JSON file, or - for standard input
  --with path=value     change a field before it is checked (“schema” lists paths, units, ranges): a number in SI units,
                        or with a unit, sums and products too, as in "condenser.length_m=3/8 in + 2 mm";
                        may be given again; a bare number for a schedule holds from start to end;
                        an entry with after=first-boil or first-drop counts its time from that event;
                        another charge.botanical or charge.state brings its own plant data`;

const units = `  --units metric|us     units of sentences and tables, metric when left out; numbers in JSON stay in SI`;

const footer = 'Bad input: one line a problem on standard error, nothing on standard output, exit code 2.';
const runFooter = `${footer}
A run whose calculation breaks off: one line on standard error, nothing on standard output, exit code 3.`;

export const commandHelp = {
  run: `limbeck run <scenario> [--with path=value]… [--units metric|us] [--summary | --series | --csv | --table]

Runs a still from heat on to the end and prints JSON:
  summary               headline numbers; keys end in their unit (s, kg, mL, m, J, W, Pa, C for °C), null when never reached
  verdict               lead, briefs, paragraphs, warnings: kind, part, time_s, severity, sentence, advice
  events[]              kind, time_s, severity, part, values (SI), sentence, advice
  balance               water_kg, energy_J, constituents_kg: start + in − out − end against throughput
  safety[]              what holds at any still

${scenario}
${units}
  --summary             verdict, events and safety as text instead
  --series              also units, series (one list a column), grids (rows of cells), constituents
  --csv                 the columns as a table instead, for programs: headings end in the SI unit, those without are pure
                        numbers
  --table               the columns as a table instead, for people: headings say what stands there, in the units of --units

${runFooter}`,
  plan: `limbeck plan [flags]

From a few answers to a still: whether it works, its weakest part, and what to buy next and why. Every question may be
left out; what was assumed is listed. The tube is sized for full heat in nine runs of ten.

  --plant id            of “list botanicals”
  --plant-kg kg         plant to distil at once, as charged
  --pot-L litres        volume of the pot, taken as high as wide
  --heat id             of “list heat-sources”
  --heat-kW kW          its full power
  --tub-L litres        water in the tub
  --tap-C °C            tap water
  --running-water | --no-running-water
  --hose where          laid, pointing-up, perforated or top
  --altitude-m m        height above the sea
  --tube id             of “list tubes”, one that can be wound
  --units metric|us     units of the sentences, metric when left out
  --json                sentences, answers used (SI), questions assumed, size of the tube, scenario to give to the others

${runFooter}`,
  size: `limbeck size <scenario> [flags]

The shortest condenser that, over the whole run with the tub or barrel warming, lets no vapour out and keeps the
distillate at or below the outlet limit in nine runs of ten, with what is not known for sure drawn anew for each: for the
scenario's own tube at its heat plan and at full heat, and for every tube of the library. With it what its ends and
cutting take, what the whole pieces to buy cost, and which separator, tub and source of heat go with it.

${scenario}
${units}
  --outlet-limit C      warmest distillate in °C, 5 to 90; the scenario's own limit when left out
  --full-heat           for full heat throughout instead of the heat plan
  --confidence share    of the runs for which the length must be enough, 0.5 to 0.95; 0.9 when left out
  --prices file         own prices as CSV with the headings tube, price, sold by, length (m): an id of “list tubes” sold by
                        metre or by piece (of that length), or an id of a material sold by kg; - for standard input
  --sheet file          writes the drawings to build from as SVG, to scale: coil in its tub, swan neck, separator
  --margin share        added to that length, 0 to 5; ${DEFAULT_MARGIN} when left out
  --tube id             only this tube of the library beside the own one; may be given again
  --own                 the own tube only
  --confirm             check library tubes at the scenario's own step too (slow); without, they are good to some
                        3 %. What the own tube needs as planned is always checked: it is enough, 97 % of it is not
  --hardest-boil        instead: the largest constant heat setting (share of rated power) that the condenser can handle
  --least-water         instead: the smallest constant cooling-water flow (kg/s) that it needs
  --json | --table      form of the answer; a table when left out. JSON has every number in SI, with sentence and advice
  Costs are in the currency of the prices. Without a price of your own a tube costs a default price by its weight of
  metal, or condenser.tubePrice_m by the metre where the scenario changes it.

Start-up does not count: escape and temperature are looked at after the first minute of vapour, the temperature as a
flow-weighted mean over half a minute. A tube that holds back more than 5 kPa is refused.

${runFooter}`,
  predict: `limbeck predict <scenario> [--rule kind[=number]] [--runs N] [--seed N] [--fit file] [--with path=value]…
  [--units metric|us]

How long to run: the still is run on past its planned end until almost no more oil comes. Prints JSON:
  length                sentence, the oil that can come (kg, mL) and, for 50, 80, 90, 95, 99 % of it, time_s, oil,
                        distillate_L, coolantUsed_L, potWaterLeft_kg, energy_J and cost; null where never reached
  advice                when the rule says stop, what is collected by then, the oil of the ten minutes before, the price of the
                        next mL; potLasts and coolingLasts: whether pot water and cooling last until then, else from when (s)
                        not; sentence, and dangers
  likely                of many runs with the uncertain values picked at random: headline numbers and oil over time as p10, p50,
                        p90; mattersMost: the value that moves each number most; influences: all of them, most moving first,
                        with the number at the value's 10th and 90th percentile and its rank correlation; doubts: how wide each
                        range is and why; failed: runs that broke off and count in nothing

${scenario}
${units}
  --rule kind[=number]  when to stop; share when left out:
    share               so much of the oil that can come is collected: ${numbers(STOP_RULES.share)}
    oil-in-ten-minutes  ten minutes bring less than so many mL: ${numbers(STOP_RULES['oil-in-ten-minutes'])}
    cost-of-next        the next mL costs more, in the currency of heat.energyPrice_J: ${numbers(STOP_RULES['cost-of-next'])}
  --runs N              draws, 0 to ${MOST_MEMBERS}; ${USUAL_MEMBERS} when left out, 0 for none
  --seed N              whole number, 0 to ${MOST_SEED}; ${USUAL_SEED} when left out; the same seed gives the same numbers
  --fit file            what “fit” printed: takes its factors, and varies them within its 90 % intervals

${runFooter}`,
  compare: `limbeck compare <scenario> <scenario> [<scenario> [<scenario>]] [--with [N:]path=value]… [--draws N] [--seed N]
limbeck compare <scenario> --gentle-against-hard [--with path=value]… [--draws N] [--seed N]

Runs 2 to ${MOST_COMPARED} stills side by side, or one boiled gently and hard until as much distillate has come over as its own
run gives. Prints JSON:
  conclusion[]          two to five facts with sentence and advice; run is a place in runs[], from 0
  runs[]                name, number where several bear one name, worst severity, cautions (alarms first)
  rows[]                id, title, unit, better (more, less, neither), values (one a run), differences (from the first run):
                        oil, times, distillate, cooling water, energy, cost, tube needed to condense, oil lost in the
                        separator and elsewhere, share of each constituent in the oil; null where a run never got so far
  recommendation        which run to take: choice, runs that are unsafe, sentences (dangers first), draws and seed. Each draw
                        gives all that is uncertain a value at random, the same for every run; null with no draws
  scenarios             gentle and hard, complete, to run again
${scenario}
                        here it changes every scenario; with N: in front only the Nth, as in 2:condenser.length_m=4
${units}
  --draws N             0 to ${MOST_DRAWS}; ${USUAL_DRAWS} when left out, 0 for no recommendation
  --seed N              whole number, 0 to ${MOST_SEED}; ${USUAL_SEED} when left out; the same seed gives the same draws

${runFooter}`,
  fit: `limbeck fit <scenario> [<scenario>…] --log <file> [--log <file>…] [--factors name,name] [--with path=value]…

Fits correction factors of the model to the log of a real run, by weighted least squares; with several logs one set
of factors for all, each at its own scenario or all at the one that is named. Prints JSON:
  sentence              what the fit comes to
  factors[]             name, start, value, low and high (90 % interval), held when the log does not show it; pure numbers
  cannotTellApart[]     pairs of factors that the log cannot tell apart, with their correlation
  notes[]               what to know of the result, each a fact with its sentence
  columnsPassedOver[]   headings of the log that name no reading
  residuals[]           log (its place, from 0), kind (ends in its unit), time_s, value, sigma, predicted, scaled (difference over sigma)
  fitted                scenario with the factors, to run again, and bands, the ranges they leave, for “predict --fit”
  chiSquare, degreesOfFreedom, reducedChiSquare, correlation, converged, runs

${scenario}
${units}
  --log file            columns with a line of headings, such as “time (min), oil (mL), outlet °C, tub °C, distillate L”, then a
                        line a reading; - for standard input. Oil also by weight (g); cells may be empty; other columns
                        are left out; without headings two columns are minutes and mL of oil. Times count from heat on
  --factors names       one to ${MOST_FACTORS} of ${FIT_NAMES.join(', ')};
                        ${USUAL_FIT.join(',')} when left out

${runFooter}`,
  forecast: `limbeck forecast <scenario> --log <file> [--at time] [--first-drop time] [--turned what=value@time]…
  [--rule kind[=number]] [--draws N] [--seed N] [--with path=value]… [--units metric|us]

How a run that is under way will end: likely runs of its plan, weighed by what was read. Prints JSON:
  sentence              how it stands beside the plan, and when 90 % of the oil is collected
  lines[]               first drop, oil by the end of the plan, 90 % of the oil, stop by the rule, water in the pot, tub: value
                        and the range in which 8 of 10 likely runs lie
  dangers[]             what can go wrong before the end
  oilNow_mL, plannedNow_mL, oilAtEnd_mL, … low, middle and high, SI; t90_s, stop_s, potLow_s: share of the likely runs
                        that come to it, and when
  readings[]            each with sigma, predicted and fits: yes, odd (the others speak against it), impossible (left out)
  times_s, bands, planned
                        oil, outlet, tub, distillate and pot water over time as p10, p50, p90, and as planned
  members, effective    likely runs, and how many equal ones they are worth

${scenario}
${units}
  --log file            as for “fit”; times count from heat on; readings after --at are left out
  --at time             now, as 45min; the last reading when left out
  --first-drop time     when the first drop fell
  --turned what=value@time
                        heat or tap turned by hand, as heat=60%@40min or tap=2L/min@1h05; may be given again
  --rule kind[=number]  when to stop, as for “predict”; share when left out
  --draws N             likely runs, 20 to 5000; ${FORECAST_MEMBERS} when left out
  --seed N              whole number, 0 to ${MOST_SEED}; ${FORECAST_SEED} when left out; the same seed gives the same numbers

${footer}`,
  plant: `limbeck plant <plant> [--units metric|us]

What is known of a plant. Prints JSON: lookAlikes first, the deadly ones leading, then who should avoid its oil, part, stage,
season, hour, wilting, cutting, oil_mL_kg of fresh and dry plant (low, typical, high), homeRun_min, freezes_C, flash_C,
a garden's harvest, cautions, and how else its oil is won. “list botanicals” gives the plants.

${units}

${footer}`,
  quantity: `limbeck quantity <plant> (--oil mL | --harvest kg) [flags]

From wanted oil to plant, batches, days and garden, or back from a harvest. Prints JSON in SI, each with low, typical, high.

  --oil mL              oil that is wanted
  --harvest kg          plant that there is
  --state fresh|dry     as it is charged; what is usual for the plant when left out
  --chamber L           room for the charge, 0.1 to 10000; 20 when left out
  --fill share          of it that is filled, 0.1 to 1; ${USUAL_CHAMBER_FILL} when left out
  --loss share          of the oil lost in settling and filling, 0 to 0.5; ${USUAL_LOSS} when left out
  --batches-a-day N     1 to 24; 2 when left out

${footer}`,
  bottle: `limbeck bottle <plant> [--oil mL] [flags]

From the receiver to the bottle. Prints JSON in SI: what filter and salt keep, bottles with the most peroxide that their air can make, the time in which
water drops leave the oil, drying, how long oil and hydrosol keep.

  --oil mL              0.1 to 100000; 30 when left out
  --bottle mL           1 to 5000; 10 when left out
  --fill share          0.25 to ${FILL_RANGE[1]}; ${USUAL_FILL} when left out
  --height mm           of the oil while it stands, 5 to 500; 50 when left out
  --kept-at C           −18 to 40 °C; 15 when left out
  --opened-often        halves how long it keeps
  --filter name         ${FILTER_KINDS.join(', ')}; none when left out
  --dried               with sodium sulfate, which keeps some oil

${footer}`,
  dilute: `limbeck dilute --oil plant=parts… [flags]

Percent to drops, millilitres and grams, and what exceeds which limit. Prints JSON. A limit of which nobody here has read the
source is named without a figure.

  --oil plant=parts     may be given again; parts by volume, 1 when left out
  --strength %          oils in the product by volume, 0.01 to 100; 2 when left out
  --product mL          1 to 5000; 30 when left out
  --use name            ${USES.join(', ')}; body when left out
  --drops N             drops in a millilitre; ${USUAL_DROPS_per_mL} when left out
${units}

${footer}`,
  blend: `limbeck blend --oil plant=parts… [flags]

How a film of a blend fades. Prints JSON in SI: half_s, nineTenths_s, dry_s (null where something stays), classes by weight, and
for times evenly spread on a logarithmic axis the share left and what leaves of each constituent.

  --oil plant=parts     may be given again; parts by volume, 1 when left out
  --carrier %           fixed oil by volume, 0 to 99.99; 0 when left out
  --surface name        ${SURFACES.join(', ')}; paper when left out
  --temperature C       5 to 40 °C; what is usual for the surface when left out
  --coefficient m/s     transfer coefficient of limonene, 0.0001 to 0.02; 0.0015 when left out
  --real                activity coefficients of a real mixture, for a blend without fixed oil
  --until s             last time, 60 to 1e8; when all but a trace has left, where left out

${footer}`,
  'look-up': `limbeck look-up <name> symbol=value… [--json]
limbeck look-up --list [--json]
limbeck look-up --search words [--json]

Evaluates a fluid property or a relation of the model and prints value, unit, range, source and equation.
Values are in SI units (kg, m, s, K, Pa, W, mol); temperatures may be written T=100C. Differences of temperature can't.
  --list                name, arguments, units and ranges of every entry
  --search words        entries that answer these plain words, best first
  Outside its range a fluid property is refused; a relation is evaluated and says so.

${footer}`,
  list: `limbeck list examples|botanicals|tubes|vessels|heat-sources|materials|constituents|separators|tubs|circuits [--json]

What the library holds, as a table with units in the headings, or with --json every value with its source (SI units).

${footer}`,
  schema: `limbeck schema [plants]

JSON Schema of a scenario file, with unit, source, default and allowed range of every field (SI units); with “plants”
that of a file of your own plants.

${footer}`,
  example: `limbeck example <id>

A complete scenario as JSON (SI units), to change and give to “run”, “size” and the others. “list examples” shows the ids.

${footer}`,
} as const;

export type CommandName = keyof typeof commandHelp;

export const generalHelp = `limbeck <command> … (npm run -s limbeck -- <command> …)

  run       run a still and print what comes of it
  plan      from a few answers to a still: does it work, what is weakest, what to buy
  size      how much condenser it needs, the hardest boil it can handle, the least water it needs
  predict   how long to run, when to stop, how sure that is
  compare   two to four stills side by side, or one boiled gently and hard
  fit       factors of the model from the log of a real run
  forecast  how a run that is under way will end, from what was read of it
  plant     what is known of a plant, its deadly look-alikes first
  quantity  plant, batches, days and garden for an amount of oil, or back from a harvest
  bottle    standing, bottles, how long oil and hydrosol keep
  dilute    percent to drops, and what exceeds which limit
  blend     how a film of mixed oils fades
  look-up   any property or relation of the model
  list      what the library holds
  schema    what a scenario file may hold
  example   a complete scenario to start from

“limbeck <command> --help” tells more, with units. Limbeck is for aromatic plants and water; not for spirits.`;
