/** The blend that is made, and the recipes that were saved of others, kept on this device between visits. */
import { createSignal, untrack } from 'solid-js';
import * as z from 'zod/mini';
import {
  constituents,
  SURFACES,
  USES,
  USUAL_DROPS_per_mL,
  USUAL_SURFACES,
  type OilShare,
  type SurfaceKind,
  type Use,
} from '../../sim/index.ts';
import { keptStore } from './browser-store.ts';
import type { Shape } from './kept-shape.ts';

export interface BlendedOil {
  readonly id: string;
  readonly name: string;
  /** Plant of the library. */
  readonly botanical: string;
  readonly composition: readonly OilShare[];
  /** Parts by volume. */
  readonly parts: number;
  /** What a millilitre costs, in the reader's currency. */
  readonly price: number;
}

export interface KeptBlend {
  readonly id: string;
  readonly name: string;
  readonly oils: readonly BlendedOil[];
  /** Share of the product by volume that is oils; the rest is a fixed oil. */
  readonly strength: number;
  /** The film is of the product, fixed oil and all, and not of the neat oils. */
  readonly diluted: boolean;
  readonly product_m3: number;
  readonly dropsPer_mL: number;
  readonly carrierPrice: number;
  readonly use: Use;
  readonly surface: SurfaceKind;
  readonly temperature_K: number;
  readonly coefficient_m_s: number;
  readonly real: boolean;
}

export const MOST_OILS = 8;
export const MOST_PARTS = 100;
/** Share of the oils without a fixed oil. */
export const NEAT = 1;
const USUAL_STRENGTH = 0.02;

export const newBlend = (oils: readonly BlendedOil[]): KeptBlend => ({
  id: 'current',
  name: 'Evening blend',
  oils,
  strength: USUAL_STRENGTH,
  diluted: false,
  product_m3: 30e-6,
  dropsPer_mL: USUAL_DROPS_per_mL,
  carrierPrice: 0,
  use: 'body',
  surface: 'paper',
  temperature_K: USUAL_SURFACES.paper.temperature_K,
  coefficient_m_s: USUAL_SURFACES.paper.coefficient_m_s,
  real: false,
});

const KNOWN: ReadonlySet<string> = new Set(constituents.map(({ id }) => id));
const finite = z.number().check(z.gte(0));

const oil = z.object({
  id: z.string(),
  name: z.string(),
  botanical: z.string(),
  composition: z
    .array(z.object({ constituent: z.string().check(z.refine((id) => KNOWN.has(id))), share: finite }))
    .check(z.minLength(1)),
  parts: finite,
  price: finite,
});

const blend = z.object({
  id: z.string(),
  name: z.string(),
  oils: z.array(oil).check(z.minLength(1), z.maxLength(MOST_OILS)),
  strength: finite.check(z.lte(1)),
  diluted: z.boolean(),
  product_m3: z.number().check(z.gt(0)),
  dropsPer_mL: z.number().check(z.gt(0)),
  carrierPrice: finite,
  use: z.enum(USES),
  surface: z.enum(SURFACES),
  temperature_K: z.number().check(z.gte(278), z.lte(314)),
  coefficient_m_s: z.number().check(z.gt(0)),
  real: z.boolean(),
});

export const blendShape: Shape<KeptBlend> = {
  version: 1,
  read: (value) => {
    const read = blend.safeParse(value);
    return read.success ? read.data : null;
  },
};

const CURRENT = 'blend/current';
const RECIPES = 'blend/recipe/';

const [current, setCurrent] = createSignal<KeptBlend | null>(null);
const [recipes, setRecipes] = createSignal<readonly KeptBlend[]>([]);
export { current as currentBlend, recipes };

let opening: Promise<void> | null = null;

/** Opens what was kept, once. @param first the blend to begin with where nothing was kept */
export function openBlends(first: () => KeptBlend): Promise<void> {
  opening ??= (async () => {
    try {
      const [kept, all] = await Promise.all([
        keptStore().read(CURRENT, blendShape),
        keptStore().readAll(RECIPES, blendShape),
      ]);
      setRecipes([...all.values()].flatMap((each) => (each.kind === 'read' ? [each.value] : [])));
      setCurrent((now) => now ?? (kept.kind === 'read' ? kept.value : first()));
    } catch {
      // A browser that keeps nothing still lets one blend.
      setCurrent((now) => now ?? first());
    }
  })();
  return opening;
}

export function changeBlend(changed: Partial<KeptBlend>): void {
  const before = untrack(current);
  if (before === null) return;
  const after = { ...before, ...changed };
  setCurrent(after);
  keptStore().keep(CURRENT, blendShape, after);
}

export const changeOil = (id: string, changed: Partial<BlendedOil>): void => {
  const before = untrack(current);
  if (before) changeBlend({ oils: before.oils.map((each) => (each.id === id ? { ...each, ...changed } : each)) });
};

export function saveRecipe(name: string): void {
  const now = untrack(current);
  if (now === null) return;
  const id = `${Date.now().toString(36)}`;
  const recipe = { ...now, id, name };
  setRecipes((before) => [...before, recipe]);
  keptStore().keep(RECIPES + id, blendShape, recipe);
}

export function removeRecipe(id: string): void {
  setRecipes((before) => before.filter((each) => each.id !== id));
  keptStore().keep(RECIPES + id, blendShape, undefined);
}

export const openRecipe = (recipe: KeptBlend): void => changeBlend({ ...recipe, id: 'current' });
