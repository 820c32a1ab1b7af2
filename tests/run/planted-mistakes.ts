/**
 * Plants small, plausible mistakes one at a time in a copy of the physics, runs the published checks on each, and prints
 * which of them saw it: `npx tsx tests/run/planted-mistakes.ts`. Exits with 1 when a mistake goes unseen. The checks of
 * whole runs take long and are left out; `--whole-runs` takes them in.
 */
import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

interface Mistake {
  readonly what: string;
  readonly file: string;
  readonly right: string;
  readonly wrong: string;
}

export const MISTAKES: readonly Mistake[] = [
  {
    what: 'condensate film with the cube root instead of the fourth',
    file: 'sim/transfer/film-condensation-on-surfaces.ts',
    right: 'Math.sqrt(Math.sqrt(x))',
    wrong: 'Math.cbrt(x)',
  },
  {
    what: 'Chato’s subcooling with the plate’s 0.68 for 0.375',
    file: 'sim/transfer/film-condensation.ts',
    right: 'h_fg + 0.375 * cp_l * dT',
    wrong: 'h_fg + 0.68 * cp_l * dT',
  },
  { what: 'digits of g swapped, 9.80665 as 9.08665', file: 'sim/constants.ts', right: '9.80665', wrong: '9.08665' },
  {
    what: 'degrees Fahrenheit counted from 30',
    file: 'sim/units/scales.ts',
    right: '32 * FAHRENHEIT',
    wrong: '30 * FAHRENHEIT',
  },
  {
    what: 'latent heat of water 2 % low',
    file: 'sim/fluids/water.ts',
    right: "saturatedSteam('latent heat', T).enthalpy - boilingWater('latent heat', T).enthalpy",
    wrong: "0.98 * (saturatedSteam('latent heat', T).enthalpy - boilingWater('latent heat', T).enthalpy)",
  },
  {
    what: 'tube wall with its diameters swapped',
    file: 'sim/transfer/conduction.ts',
    right: 'Math.log(D_o / D_i)',
    wrong: 'Math.log(D_i / D_o)',
  },
  {
    what: 'Antoine with T − C',
    file: 'sim/fluids/vapour-curve.ts',
    right: 'Math.exp(A - B / (T + C))',
    wrong: 'Math.exp(A - B / (T - C))',
  },
  {
    what: 'digits of copper’s density swapped, 8940 as 8490',
    file: 'sim/library/tubes.ts',
    right: 'copper: 8940',
    wrong: 'copper: 8490',
  },
  {
    what: 'area of a circle with the diameter for the radius',
    file: 'sim/geometry/cylinder.ts',
    right: '(Math.PI / 4) * D ** 2',
    wrong: 'Math.PI * D ** 2',
  },
  {
    what: 'radiation dropped',
    file: 'sim/transfer/radiation.ts',
    right: 'radiantCoefficient(emissivity, T_s, T_a) * (T_s - T_a)',
    wrong: '0 * radiantCoefficient(emissivity, T_s, T_a)',
  },
  {
    what: 'bed with the inertial loss taken off',
    file: 'sim/transfer/packed-bed.ts',
    right: '+ (1.75 *',
    wrong: '- (1.75 *',
  },
  {
    what: 'Fanning’s friction factor for Darcy’s',
    file: 'sim/transfer/pressure-drop.ts',
    right: '(f * G * Math.abs(G)) / (2 * rho * D)',
    wrong: '(4 * f * G * Math.abs(G)) / (2 * rho * D)',
  },
  {
    what: 'Stokes with 16 for 18',
    file: 'sim/transfer/settling.ts',
    right: '(g * d * d * drho) / (18 * mu)',
    wrong: '(g * d * d * drho) / (16 * mu)',
  },
  {
    what: 'arithmetic mean for the log mean',
    file: 'sim/transfer/exchanger.ts',
    right: '(a - b) / Math.log1p(relative)',
    wrong: '(a + b) / 2',
  },
  {
    what: 'co-boiling by molecules instead of by mass',
    file: 'sim/fluids/immiscible.ts',
    right: '(oilPressure * molarMass) / (waterPressure * WATER_MOLAR_MASS)',
    wrong: 'oilPressure / waterPressure',
  },
];

interface Report {
  readonly testResults: readonly {
    readonly assertionResults: readonly { readonly status: string; readonly fullName: string }[];
    readonly message: string;
  }[];
}

const root = fileURLToPath(new URL('../..', import.meta.url));
const options = process.argv.slice(2);
const SLOW = 'whole-run-curves.test.ts';
const checks = readdirSync(join(root, 'tests/published'))
  .filter((name) => name.endsWith('.test.ts') && (name !== SLOW || options.includes('--whole-runs')))
  .map((name) => join('tests/published', name));

/** Full names of the published checks that fail in a project, or the reason why none could run. */
function failing(folder: string): readonly string[] {
  const report = join(folder, 'report.json');
  spawnSync(
    process.execPath,
    [
      join(root, 'node_modules/vitest/vitest.mjs'),
      ...['run', '--project', 'unit', ...checks],
      ...['--reporter', 'json', '--outputFile', report],
    ],
    { cwd: folder, stdio: 'ignore' },
  );
  const { testResults } = JSON.parse(readFileSync(report, 'utf8')) as Report;
  return testResults.flatMap(({ assertionResults, message }) =>
    assertionResults.length === 0
      ? [`a file of checks does not load: ${message}`]
      : assertionResults.filter(({ status }) => status === 'failed').map(({ fullName }) => fullName),
  );
}

/** A copy of what the published checks need. */
function copiedProject(): string {
  const folder = mkdtempSync(join(tmpdir(), 'limbeck-planted-'));
  for (const path of ['package.json', 'tsconfig.json', 'vite.config.ts', 'vitest.config.ts', 'sim', 'tests']) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    cpSync(join(root, path), join(folder, path), { recursive: true });
  }
  symlinkSync(join(root, 'node_modules'), join(folder, 'node_modules'), 'junction');
  return folder;
}

const folder = copiedProject();
let unseen = 0;
try {
  const before = failing(folder);
  if (before.length > 0) throw new Error(`without a mistake these fail:\n${before.join('\n')}`);
  for (const { what, file, right, wrong } of MISTAKES) {
    const path = join(folder, file);
    const text = readFileSync(path, 'utf8');
    if (!text.includes(right)) throw new Error(`${what}: ${file} holds no “${right}”`);
    writeFileSync(path, text.replaceAll(right, wrong));
    const seen = failing(folder);
    writeFileSync(path, text);
    if (seen.length === 0) unseen++;
    process.stdout.write(`${what} (${file}): ${seen.length === 0 ? 'UNSEEN' : `seen by ${seen.length}`}\n`);
    for (const name of seen.slice(0, 3)) process.stdout.write(`    ${name}\n`);
  }
} finally {
  rmSync(folder, { recursive: true });
}
process.stdout.write(`${MISTAKES.length - unseen} of ${MISTAKES.length} mistakes seen\n`);
process.exitCode = unseen > 0 ? 1 : 0;
