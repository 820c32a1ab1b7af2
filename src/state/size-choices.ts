/** What a length is asked for: the heat and the margin, which the places that size and build share. */
import { createSignal } from 'solid-js';
import { atFullHeat, DEFAULT_MARGIN, type Scenario } from '../../sim/index.ts';

/** The heat plan as it stands, or full heat throughout. */
export type Basis = 'plan' | 'full-heat';

const [basis, setBasis] = createSignal<Basis>('plan');
const [margin, setMargin] = createSignal(DEFAULT_MARGIN);
export { basis, setBasis, margin, setMargin };

/** The still with the heat that its tube is sized for. */
export const sizedFor = (scenario: Scenario): Scenario =>
  basis() === 'full-heat' ? (atFullHeat(scenario) ?? scenario) : scenario;
