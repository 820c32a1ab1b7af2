/**
 * Checks the types of the three projects, each file once, in one process: `npx tsx tests/run/check-types.ts`. What two
 * projects share is read once and checked in the first, whose world is the narrower; `tsc -p` would do both anew.
 */
import { join, relative } from 'node:path';
import ts from 'typescript';

/** In this order a file that several projects hold is checked in the one that allows it least. */
const PROJECTS = ['sim', '.', 'tests'];

const root = process.cwd();
const read = new Map<string, ts.SourceFile | undefined>();
const checked = new Set<string>();

/** Source files are the same for all three, which differ in libraries and not in how a file is read. */
function createHost(options: ts.CompilerOptions): ts.CompilerHost {
  const host = ts.createCompilerHost(options);
  const readAnew = host.getSourceFile.bind(host);
  return {
    ...host,
    getSourceFile: (name, how, onError) => {
      const key = typeof how === 'object' ? `${name} ${how.impliedNodeFormat ?? ''}` : name;
      if (!read.has(key)) read.set(key, readAnew(name, how, onError));
      return read.get(key);
    },
  };
}

function faultsOf(project: string): readonly ts.Diagnostic[] {
  const file = join(root, project, 'tsconfig.json');
  const given: { config?: unknown; error?: ts.Diagnostic } = ts.readConfigFile(file, (path) => ts.sys.readFile(path));
  if (given.error) return [given.error];
  const { fileNames, options, errors } = ts.parseJsonConfigFileContent(
    given.config,
    ts.sys,
    join(root, project),
    undefined,
    file,
  );
  const program = ts.createProgram(fileNames, options, createHost(options));
  const faults = [
    ...errors,
    ...program.getOptionsDiagnostics(),
    ...program.getSyntacticDiagnostics(),
    ...program.getGlobalDiagnostics(),
  ];
  for (const source of program.getSourceFiles()) {
    if (checked.has(source.fileName)) continue;
    checked.add(source.fileName);
    faults.push(...program.getSemanticDiagnostics(source));
  }
  return faults;
}

const format: ts.FormatDiagnosticsHost = {
  getCanonicalFileName: (name) => name,
  getCurrentDirectory: () => root,
  getNewLine: () => '\n',
};
let failed = false;
for (const project of PROJECTS) {
  const faults = ts.sortAndDeduplicateDiagnostics(faultsOf(project));
  if (faults.length === 0) continue;
  failed = true;
  process.stdout.write(ts.formatDiagnostics(faults, format));
  const where = relative(root, join(root, project, 'tsconfig.json'));
  process.stdout.write(`${faults.length} faults by ${where}\n`);
}
process.exitCode = failed ? 2 : 0;
