/** What every row of the settings works with: the scenario, the units, and the checked way to change it. */
import {
  englishReader,
  problemMessage,
  type Currency,
  type Problem,
  type Scenario,
  type UnitSystem,
} from '../../../../sim/index.ts';
import { changeMany as edited } from '../../../state/edit.ts';
import { withName } from './named-after.ts';

export interface SettingsContext {
  readonly scenario: Scenario;
  /** The scenario as it was put on the bench, to tell what has been changed. */
  readonly loaded: Scenario;
  readonly units: UnitSystem;
  readonly currency: Currency | null;
  readonly problems: readonly Problem[];
  /** Hands on a change if it is possible; otherwise changes nothing and says why. */
  edit(path: string, value: unknown, gesture?: string): string | null;
  editMany(values: Readonly<Record<string, unknown>>, gesture?: string): string | null;
  editSchedule(path: string): void;
}

export interface SettingsContextProps {
  readonly scenario: Scenario;
  readonly loaded?: Scenario;
  readonly units: UnitSystem;
  readonly currency?: Currency | null;
  readonly problems: readonly Problem[];
  /** Changes fields; changes that share a gesture are undone together. */
  readonly changeMany: (values: Readonly<Record<string, unknown>>, gesture?: string) => void;
  readonly onEditSchedule: (path: string) => void;
}

export function createSettingsContext(props: SettingsContextProps): SettingsContext {
  const refusal = (values: Readonly<Record<string, unknown>>): string | null => {
    const edit = edited(props.scenario, values);
    return edit.ok
      ? null
      : edit.problems.map((problem) => problemMessage(problem, englishReader(props.units))).join(' ');
  };
  const editMany = (values: Readonly<Record<string, unknown>>, gesture?: string): string | null => {
    const all = withName(values, props.scenario);
    const refused = refusal(all);
    if (refused === null) props.changeMany(all, gesture);
    return refused;
  };
  return {
    get scenario() {
      return props.scenario;
    },
    get loaded() {
      return props.loaded ?? props.scenario;
    },
    get units() {
      return props.units;
    },
    get currency() {
      return props.currency ?? null;
    },
    get problems() {
      return props.problems;
    },
    edit: (path, value, gesture) => editMany({ [path]: value }, gesture),
    editMany,
    editSchedule: (path) => props.onEditSchedule(path),
  };
}
