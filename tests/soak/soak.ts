/**
 * The long form of what `npm test` samples: `npm run soak`, or `npm run soak -- stills --seed 7 --share 0.1` for parts by
 * name, another seed and a share of the cases. Prints a line a part and the first case that breaks its law.
 */
import { parseArgs } from 'node:util';
import { PARTS } from './parts.ts';

const { values, positionals } = parseArgs({
  options: { seed: { type: 'string', default: '20261' }, share: { type: 'string', default: '1' } },
  allowPositionals: true,
});
const seed = Number(values.seed);
const share = Number(values.share);
const names = PARTS.map(({ name }) => name);
const unknown = positionals.filter((name) => !names.includes(name));
if (unknown.length > 0 || !Number.isInteger(seed) || !(share > 0)) {
  console.error(`npm run soak -- [${names.join(' | ')}]… [--seed whole number] [--share above 0]`);
  process.exit(2);
}

for (const part of PARTS.filter(({ name }) => positionals.length === 0 || positionals.includes(name))) {
  const start = performance.now();
  const found = await part.check({ numRuns: Math.max(1, Math.round(share * part.many)), seed });
  const seconds = ((performance.now() - start) / 1000).toFixed(0);
  console.log(
    `${part.name}: ${found.numRuns} ${part.says}, seed ${seed}, ${seconds} s: ${found.failed ? 'BROKEN' : 'hold'}`,
  );
  if (found.figures !== undefined) console.log(found.figures);
  if (!found.failed) continue;
  process.exitCode = 1;
  console.log(found.errorInstance instanceof Error ? found.errorInstance.message : String(found.errorInstance));
  console.log(JSON.stringify(found.counterexample));
}
