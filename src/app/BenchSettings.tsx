/** The settings of the selected part, wired to the bench. */
import type { ScenarioPart } from '../../sim/index.ts';
import { SettingsPanel } from '../panels/settings/SettingsPanel.tsx';
import { useBench } from './bench.ts';

export function BenchSettings(props: { readonly part: ScenarioPart }) {
  const bench = useBench();
  return <SettingsPanel part={props.part} scenario={bench.scenario()} onChange={bench.change} />;
}
