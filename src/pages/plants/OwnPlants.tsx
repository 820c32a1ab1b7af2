/** The reader's own plants: added, kept in a file, taken from one. */
import { createSignal, Show } from 'solid-js';
import { ownPlantMessages, readOwnPlants } from '../../../sim/index.ts';
import { addOwnPlants, ownPlants, writtenOwnPlants } from '../../state/own-plants-store.ts';
import { fileName, saveJson } from '../../state/downloads.ts';
import { readScenarioFile } from '../../state/files.ts';
import type { AnalysisContext } from '../parts/analysis-context.ts';

export const NEW_PLANT = 'new';

export function OwnPlants(props: { readonly context: AnalysisContext }) {
  let picker: HTMLInputElement | undefined;
  const [told, setTold] = createSignal<string | null>(null);
  const open = async (file: File) => {
    const parsed = await readScenarioFile(file);
    if (!parsed.ok) {
      setTold(parsed.message);
      return;
    }
    const read = readOwnPlants(parsed.json);
    const messages = ownPlantMessages(props.context.reader());
    if (read.ok) addOwnPlants(read.plants);
    setTold(
      read.ok
        ? `Taken from “${file.name}”: ${read.plants.map(({ name }) => name).join(', ')}.`
        : `Nothing was taken from “${file.name}”. ${read.problems.map(messages.problem).join(' ')}`,
    );
  };
  return (
    <div class="own-plants">
      <div class="answer-tools">
        <button type="button" onClick={() => (location.hash = `plants/${NEW_PLANT}`)}>
          Add a plant of your own
        </button>
        <button type="button" onClick={() => picker?.click()}>
          Open a file of plants
        </button>
        <input
          ref={picker}
          type="file"
          hidden
          accept=".json,application/json"
          aria-label="File of plants"
          onChange={(event) => {
            const file = event.currentTarget.files?.[0];
            event.currentTarget.value = '';
            if (file) void open(file);
          }}
        />
        <Show when={ownPlants().length > 0}>
          <button type="button" onClick={() => saveJson(writtenOwnPlants(), fileName('json', 'own plants'))}>
            Save your plants as a file
          </button>
        </Show>
      </div>
      <Show when={told()}>{(words) => <p role="status">{words()}</p>}</Show>
    </div>
  );
}
