/** What a mixture holds against the limits for its use: facts, of which none forbids anything. */
import {
  allergenLabel,
  constituentLimits,
  listedAllergens,
  listedOils,
  oilLimits,
  traces,
  unknownLimit,
  usualLevels,
  type Use,
} from '../library/use-limits.ts';
import type { Provenance } from '../library/provenance.ts';
import type { OilShare } from './oil.ts';

export interface MixedOil {
  /** Plant of the library. */
  readonly botanical: string;
  readonly composition: readonly OilShare[];
  /** Share of the finished product. */
  readonly share: number;
}

export type DilutionFinding =
  | { readonly kind: 'all-over-usual'; readonly share: number; readonly limit: number; readonly provenance: Provenance }
  | {
      readonly kind: 'oil-over-limit';
      readonly botanical: string;
      readonly share: number;
      readonly limit: number;
      readonly provenance: Provenance;
    }
  | { readonly kind: 'limit-to-look-up'; readonly botanical: string; readonly provenance: Provenance }
  /** An oil that is not in the library. */
  | { readonly kind: 'limit-unknown'; readonly botanical: string; readonly provenance: Provenance }
  | {
      readonly kind: 'constituent-over-limit';
      readonly constituent: string;
      readonly share: number;
      readonly limit: number;
      readonly provenance: Provenance;
      /** Where it is not in the composition but supposed from the plant. */
      readonly supposed: boolean;
    };

export interface DilutionVerdict {
  readonly share: number;
  /** What is over or has to be looked up; the strictest of an oil’s limits is the one that is named. */
  readonly findings: readonly DilutionFinding[];
  /** Most of all oils that is usual for the use; `null` where shares are no measure, as in a bath. */
  readonly usual: readonly [number, number] | null;
  /** Constituents to name on a label of a product that stays on the skin. */
  readonly allergens: readonly string[];
  /** Oils that are on the list of allergens themselves. */
  readonly listedOils: readonly string[];
}

const ON_SKIN: ReadonlySet<Use> = new Set(['body', 'face', 'small-area']);

const levelFor = (use: Use) =>
  use === 'body' || use === 'face' || use === 'small-area' || use === 'cleaning' ? usualLevels[use] : null;

/** More than a limit, but for what rounding adds. */
const exceeds = (share: number, limit: number): boolean => share > limit * (1 + 1e-9);

export function judgeDilution(oils: readonly MixedOil[], use: Use): DilutionVerdict {
  const share = oils.reduce((sum, oil) => sum + oil.share, 0);
  const level = levelFor(use);
  const findings: DilutionFinding[] = [];
  if (level !== null && exceeds(share, level.value[1]))
    findings.push({ kind: 'all-over-usual', share, limit: level.value[1], provenance: level });
  const held = new Map<string, number>();
  const supposed = new Set<string>();
  for (const oil of oils) {
    for (const { constituent, share: of } of oil.composition)
      held.set(constituent, (held.get(constituent) ?? 0) + of * oil.share);
    for (const { constituent, share: of } of traces[oil.botanical] ?? []) {
      held.set(constituent, (held.get(constituent) ?? 0) + of * oil.share);
      supposed.add(constituent);
    }
    if (!ON_SKIN.has(use) || oil.share === 0) continue;
    const known = oilLimits[oil.botanical] ?? unknownLimit;
    const limit = use === 'face' ? known.face : known.body;
    if (limit === null)
      findings.push({
        kind: known === unknownLimit ? 'limit-unknown' : 'limit-to-look-up',
        botanical: oil.botanical,
        provenance: known.provenance,
      });
    else if (exceeds(oil.share, limit))
      findings.push({
        kind: 'oil-over-limit',
        botanical: oil.botanical,
        share: oil.share,
        limit,
        provenance: known.provenance,
      });
  }
  if (ON_SKIN.has(use))
    for (const row of constituentLimits) {
      const limit = use === 'face' ? row.face : use === 'body' ? row.body : row.smallArea;
      const here = held.get(row.constituent) ?? 0;
      if (exceeds(here, limit))
        findings.push({
          kind: 'constituent-over-limit',
          constituent: row.name,
          share: here,
          limit,
          provenance: row.provenance,
          supposed: supposed.has(row.constituent),
        });
    }
  const allergens = [...held]
    .filter(([constituent, of]) => listedAllergens.has(constituent) && of >= allergenLabel.leaveOn)
    .sort(([, a], [, b]) => b - a)
    .map(([constituent]) => constituent);
  return {
    share,
    findings,
    usual: level?.value ?? null,
    allergens,
    listedOils: oils
      .filter((oil) => listedOils.has(oil.botanical) && oil.share >= allergenLabel.leaveOn)
      .map(({ botanical }) => botanical),
  };
}

/** Most of one oil that its limits allow on skin; `null` where it has to be looked up. */
export function mostOf(
  botanical: string,
  use: Use,
): { readonly limit: number | null; readonly provenance: Provenance } {
  const known = oilLimits[botanical] ?? unknownLimit;
  const level = levelFor(use);
  if (!ON_SKIN.has(use)) return { limit: level?.value[1] ?? null, provenance: level ?? known.provenance };
  const own = use === 'face' ? known.face : known.body;
  return { limit: own, provenance: known.provenance };
}
