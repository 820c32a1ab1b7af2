/** What a language must provide to read quantities out. */
import type { DurationPart, UnitLabel } from '../../units/index.ts';

/** Each unit after the number one, and after any other number. */
export type SpokenUnits = Readonly<Record<UnitLabel | DurationPart['unit'], readonly [one: string, many: string]>>;
