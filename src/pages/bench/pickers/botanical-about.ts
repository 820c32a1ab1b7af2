/** Numbers of a plant's texts in words. */
import {
  formatQuantity,
  type BotanicalText,
  type Provenance,
  type PublishedRange,
  type UnitSystem,
} from '../../../../sim/index.ts';

const percent = (share: number): string => String(Number((100 * share).toPrecision(3)));

const shareWords = ({ low, high }: PublishedRange): string =>
  low === high
    ? `${percent(low)}\u202f%`
    : low === 0
      ? `up to ${percent(high)}\u202f%`
      : `${percent(low)}–${percent(high)}\u202f%`;

export interface RangesOfSource {
  /** `linalool 20–45 % (Ph. Eur.)`, one a constituent. */
  readonly shares: readonly string[];
  readonly source: Provenance;
}

/** Published shares of the oil, those of one source together; what is to be borne in mind stays with its share. */
export function rangesBySource(ranges: readonly PublishedRange[]): readonly RangesOfSource[] {
  const groups = new Map<string, { readonly shares: string[]; readonly source: Provenance }>();
  for (const range of ranges) {
    const { kind, source, note } = range.provenance;
    const key = `${kind} ${source}`;
    const group = groups.get(key) ?? { shares: [], source: { kind, source } };
    group.shares.push(`${range.constituent} ${shareWords(range)}${note === undefined ? '' : ` (${note})`}`);
    groups.set(key, group);
  }
  return [...groups.values()];
}

/** Pharmacopoeias compare oil and water at this temperature. */
const MEASURED_AT_K = 293.15;

/** `0.878–0.892 times water`. */
export const relativeDensityWords = (
  { low, high }: BotanicalText['relativeDensity']['value'],
  units: UnitSystem,
): string =>
  `${low}–${high} times as heavy as water, both at ${formatQuantity(MEASURED_AT_K, 'K', units, { decimals: 0 })}`;
