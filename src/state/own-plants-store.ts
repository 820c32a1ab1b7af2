/** The reader's own plants, kept on this device, and beside them those of the library. */
import { createSignal, untrack } from 'solid-js';
import {
  botanicalOfOwn,
  botanicals,
  OWN_PLANTS_VERSION,
  ownPlantId,
  ownPlantProblems,
  readOwnPlants,
  type Botanical,
  type OwnPlant,
  type OwnPlantProblem,
} from '../../sim/index.ts';
import { keptStore } from './browser-store.ts';
import type { Shape } from './kept-shape.ts';

const KEY = 'own-plants';

interface KeptPlants {
  readonly plants: readonly OwnPlant[];
  /** Whether some of the list could not be read. */
  readonly someUnread: boolean;
}

/** What cannot be read of the list is left out of it. */
export const ownPlantsShape: Shape<KeptPlants> = {
  version: OWN_PLANTS_VERSION,
  read: (value) => {
    if (!Array.isArray(value)) return null;
    const plants = (value as readonly unknown[]).flatMap((plant) => {
      const read = readOwnPlants({ version: OWN_PLANTS_VERSION, plants: [plant] });
      return read.ok ? read.plants : [];
    });
    return { plants, someUnread: plants.length < value.length };
  },
};

const [ownPlants, setOwnPlants] = createSignal<readonly OwnPlant[]>([]);
export { ownPlants };

let made: { readonly of: readonly OwnPlant[]; readonly plants: readonly Botanical[] } = { of: [], plants: botanicals };

/** All plants that there are, the reader's own last. */
export function allPlants(): readonly Botanical[] {
  const own = ownPlants();
  if (made.of !== own) made = { of: own, plants: [...botanicals, ...own.map(botanicalOfOwn)] };
  return made.plants;
}

export const ownPlantOf = (id: string): OwnPlant | undefined => ownPlants().find(({ name }) => ownPlantId(name) === id);

let opening: Promise<void> | null = null;

export function openOwnPlants(): Promise<void> {
  opening ??= (async () => {
    try {
      const kept = await keptStore().read(KEY, ownPlantsShape);
      if (kept.kind !== 'read') return;
      // The whole list is put aside before one without them takes its place.
      if (kept.value.someUnread) keptStore().protect(KEY);
      setOwnPlants((now) => (now.length === 0 ? kept.value.plants : now));
    } catch {
      // A browser that keeps nothing lets plants be typed until the page is left.
    }
  })();
  return opening;
}

function keep(plants: readonly OwnPlant[]): void {
  setOwnPlants(plants);
  keptStore().keep(KEY, ownPlantsShape, plants);
}

const plainName = ({ name }: OwnPlant): string => name.trim().toLowerCase();

/** Keeps a plant, in the place of one that is edited; or says what is wrong with it. */
export function keepOwnPlant(plant: OwnPlant, edited: string | null): readonly OwnPlantProblem[] {
  const others = untrack(ownPlants).filter(({ name }) => name !== edited);
  const named = { ...plant, name: plant.name.trim() };
  const taken = others.some((other) => plainName(other) === plainName(named));
  const problems = [...ownPlantProblems(named), ...(taken ? [{ kind: 'name-taken', name: named.name } as const] : [])];
  if (problems.length === 0) keep([...others, named]);
  return problems;
}

export const removeOwnPlant = (name: string): void => keep(untrack(ownPlants).filter((plant) => plant.name !== name));

/** Plants of a file come in the place of those of the same name. */
export function addOwnPlants(plants: readonly OwnPlant[]): void {
  const names = new Set(plants.map(plainName));
  keep([...untrack(ownPlants).filter((plant) => !names.has(plainName(plant))), ...plants]);
}

export const writtenOwnPlants = () => ({ version: OWN_PLANTS_VERSION, plants: untrack(ownPlants) });
