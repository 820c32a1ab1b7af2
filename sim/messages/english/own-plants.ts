/** What is wrong with a plant of the reader's own, in English. */
import { constituentById } from '../../fluids/constituents.ts';
import type { OwnPlantProblem, OwnPlantRange } from '../../scenario/own-plants.ts';
import type { Quantities } from '../quantities.ts';

const RANGES: Readonly<Record<OwnPlantRange, string>> = {
  homeRun_s: 'run at home',
  plants_per_m2: 'plants on an area',
  harvest_kg_m2: 'harvest of a year',
};

const STATE = { fresh: 'fresh', dry: 'dried' } as const;

export const ownPlants = (q: Quantities) => ({
  problem(problem: OwnPlantProblem): string {
    switch (problem.kind) {
      case 'not-a-file-of-plants':
        return 'This file holds no plants.';
      case 'other-version':
        return `This file is of version ${problem.version}, which this build cannot read.`;
      case 'bad-field':
        return `${problem.path === '' ? 'The file' : problem.path} is missing, of another kind, or outside its range.`;
      case 'no-name':
        return 'Give the plant a name.';
      case 'name-taken':
        return `“${problem.name}” is the name of another plant. Choose a name of its own.`;
      case 'not-identified':
        return `${problem.name === '' ? 'Gathered wild' : `${problem.name} is gathered wild`}: write the name of the person who identified it.`;
      case 'never-distil':
        return `“${problem.name}” is not kept: ${problem.plants} must never be distilled. ${problem.why}`;
      case 'no-state':
        return `${problem.name}: give its figures fresh, dried, or both.`;
      case 'yields-out-of-order':
        return `${problem.name}, ${STATE[problem.state]}: the least oil is at most the usual, and the usual at most the most.`;
      case 'range-out-of-order':
        return `${problem.name}: the least comes before the most (${RANGES[problem.field]}).`;
      case 'shares-not-whole':
        return `${problem.name}: the shares of the oil add up to ${q.share(problem.sum)}. They must add up to ${q.share(1)}.`;
      case 'constituent-twice':
        return `${problem.name}: ${constituentById(problem.constituent).name} is listed twice.`;
      case 'packed-too-tight':
        return `${problem.name}, ${STATE[problem.state]}: packed above ${q.of('density', problem.most_kg_m3)} no steam gets through.`;
      case 'too-much-oil':
        return `${problem.name}, ${STATE[problem.state]}: that is more oil than a plant holds. Check yield and moisture.`;
    }
  },
});
