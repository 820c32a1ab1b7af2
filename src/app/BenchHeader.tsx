/** The head of the page, wired to the bench. */
import { formatQuantity } from '../units/index.ts';
import { useBench } from './bench.ts';
import type { BenchFiles } from './bench-files.ts';
import { Header } from './Header.tsx';

export interface BenchHeaderProps {
  readonly files: BenchFiles;
  readonly onStart: () => void;
  readonly onKeys: () => void;
}

export function BenchHeader(props: BenchHeaderProps) {
  const bench = useBench();
  const say = (value: number, unit: string, hint: string) => formatQuantity(value, unit, bench.units(), { hint });
  const subtitle = () => {
    const { charge, heat, site } = bench.scenario();
    return [
      `${say(charge.mass_kg, 'kg', 'charge.mass_kg')} ${charge.state}`,
      `${formatQuantity(heat.ratedPower_W, 'W', bench.units(), { hint: 'power' })} at the source`,
      `${say(site.altitude_m, 'm', 'site.altitude_m')} up`,
    ].join(' · ');
  };
  return (
    <Header
      title={bench.scenario().name}
      subtitle={subtitle()}
      units={bench.units()}
      theme={bench.theme()}
      canUndo={bench.canUndo()}
      canRedo={bench.canRedo()}
      onRename={(title) => bench.change('name', title)}
      onStart={() => props.onStart()}
      onOpenFile={() => props.files.pick()}
      onSaveScenario={() => props.files.saveScenario()}
      onSaveTable={() => props.files.saveTable()}
      onPrint={() => print()}
      onUndo={() => bench.undo()}
      onRedo={() => bench.redo()}
      onUnits={(units) => bench.setUnits(units)}
      onTheme={(theme) => bench.setTheme(theme)}
      onKeys={() => props.onKeys()}
    />
  );
}
