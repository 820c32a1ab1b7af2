/** What must be said where a plant, a tube or a vessel is chosen. */
import { For, Show } from 'solid-js';
import {
  englishReader,
  hazardMessages,
  type Scenario,
  type ScenarioPart,
  type UnitSystem,
} from '../../../../sim/index.ts';
import { BotanicalCautions, DeadlyLookAlikes } from './BotanicalAbout.tsx';

interface CautionsProps {
  readonly scenario: Scenario;
  readonly units: UnitSystem;
}

/** Of the metal that a part is made of, and of what this oil does to it. */
export const MetalCautions = (part: ScenarioPart) =>
  function OfPart(props: CautionsProps) {
    const cautions = () => hazardMessages(props.scenario, englishReader(props.units), part);
    return (
      <Show when={cautions().length > 0}>
        <ul class="plant-cautions" aria-label="Cautions for this material">
          <For each={cautions()}>{(caution) => <li>{caution}</li>}</For>
        </ul>
      </Show>
    );
  };

const OnMetal = MetalCautions('charge');

export function PlantCautions(props: CautionsProps) {
  return (
    <>
      <DeadlyLookAlikes scenario={props.scenario} units={props.units} />
      <BotanicalCautions scenario={props.scenario} units={props.units} />
      <OnMetal scenario={props.scenario} units={props.units} />
    </>
  );
}
