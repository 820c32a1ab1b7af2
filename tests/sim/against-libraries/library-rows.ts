/** Checks against values that an open library gives for the same relation. */
import { expect, it } from 'vitest';

/** An open library with the version that was run. */
export interface Library {
  readonly name: string;
  readonly version: string;
}

export const ht: Library = { name: 'python ht', version: '1.0.7' };
export const fluids: Library = { name: 'python fluids', version: '1.1.0' };
export const iapws: Library = { name: 'python iapws', version: '1.5.5' };
/** `math` of the standard library. */
export const pythonMath: Library = { name: 'python math', version: '3.11' };

/** What is compared, our value, the library's value, the largest relative departure. */
export type LibraryRow = readonly [what: string, ours: () => number, theirs: number, within: number];

/** Makes a test of every row. */
export function checkAgainst({ name, version }: Library, rows: readonly LibraryRow[]): void {
  for (const [what, ours, theirs, within] of rows)
    it(`${what}: as ${name} ${version}`, () => {
      const found = ours();
      expect(Math.abs(found / theirs - 1), `${found} against ${theirs}`).toBeLessThanOrEqual(within);
    });
}
