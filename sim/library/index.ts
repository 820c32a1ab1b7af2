/** The library's public face: rows with their provenance, and finders that name the known ids when one is wrong. */
export { botanicals, findBotanical } from './botanicals.ts';
export { circuits, findCircuit } from './circuits.ts';
export { defaultEnergyPrice, defaultPrices, soldByWeight, type DefaultPrice } from './energy-prices.ts';
export { findHeatSource, heatSources } from './heat-sources.ts';
export { findMaterial, materials } from './materials.ts';
export { publishedCurves, publishedRates, type PublishedCurve, type ReleaseLaw } from './published-curves.ts';
export { fittedRelease } from './fitted-release.ts';
export { findSeparator, separators } from './separators.ts';
export { findTub, tubs } from './tubs.ts';
export { findTube, tubes } from './tubes.ts';
export { findVessel, vessels } from './vessels.ts';
export type { Band, Provenance, ProvenanceKind, Sourced } from './provenance.ts';
export type * from './types.ts';
