/** Prints the fit of every published curve: `npx tsx sim/library/fit-release.ts`. */
import { publishedCurves } from './published-curves.ts';
import { fitCurve } from './two-pool-release.ts';

declare const console: { log(line: string): void };

const perMinute = (rate: number | null): string => (rate === null ? '–' : (rate * 60).toPrecision(4));

console.log(['curve', 'final', 'ready share', 'fast 1/min', 'held 1/min', 'residual'].join('\t'));
for (const fit of publishedCurves.map(fitCurve)) {
  console.log(
    [
      fit.curve,
      fit.finalYield.toPrecision(4),
      fit.readyShare.toFixed(4),
      perMinute(fit.fastRate_1_s),
      perMinute(fit.heldRate_1_s),
      `${(100 * fit.residual).toFixed(2)} %`,
    ].join('\t'),
  );
}
