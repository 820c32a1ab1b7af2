/**
 * What a redraw of a blend of five oils computes: the film, 110 moments of its fading, the times to half and nine tenths,
 * and which notes are smelled when. Best times recorded on a shared two-core machine: 0.11, 0.20, 2.1 and 0.3 ms.
 */
import { bench, describe } from 'vitest';
import {
  blendFilm,
  botanicals,
  fade,
  fadeOfRealMixture,
  fadeSummary,
  logTimes,
  odourSpans,
  USUAL_SURFACES,
} from '../../sim/index.ts';

const oils = ['lavender-true', 'orange-peel', 'clove-bud', 'rosemary', 'geranium-rose'].map((id, at) => ({
  composition: (botanicals.find((plant) => plant.id === id)?.composition.value ?? []).map(
    ({ constituent, massFraction }) => ({ constituent, share: massFraction }),
  ),
  share: 0.1 + 0.05 * at,
}));
const times = logTimes(10, 36_000, 110);

describe('a blend of five oils', () => {
  bench('film and its summary', () => void fadeSummary(blendFilm(oils, 0, USUAL_SURFACES.paper)));
  const film = blendFilm(oils, 0, USUAL_SURFACES.paper);
  bench('110 moments of it', () => void fade(film, times));
  bench('110 moments of a real mixture', () => void fadeOfRealMixture(film, times));
  const faded = fade(film, times);
  bench('which notes are smelled when', () => void odourSpans(film, faded));
});
