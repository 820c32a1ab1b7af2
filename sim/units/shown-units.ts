/** Typed units that the page itself shows are read by its own factors: for them nothing needs to be fetched. */
import { EVERYDAY_UNITS, KINDS, type Kind, type KindName, type Scale } from './scales.ts';

/** Kinds whose shown units say more than their size: water by its volume, and degrees, which may be a difference. */
const WITH_MEANING: ReadonlySet<string> = new Set<KindName>([
  'water',
  'coolantFlow',
  'distillateFlow',
  'temperature',
  'temperatureDifference',
]);

const scalesOf = ({ metric, us }: Kind): readonly Scale[] => [...metric, ...us];

/** SI value of one of each shown unit, by SI unit and label. */
const SIZES: ReadonlyMap<string, ReadonlyMap<string, number>> = (() => {
  const sizes = new Map<string, Map<string, number>>();
  const add = (si: string, label: string, size: number) => {
    const known = sizes.get(si) ?? new Map<string, number>();
    sizes.set(si, known.set(label, size));
  };
  for (const [name, kind] of Object.entries<Kind>(KINDS))
    if (!WITH_MEANING.has(name)) for (const { label, size } of scalesOf(kind)) add(kind.si, label, size);
  for (const [label, { kind, size, zero }] of Object.entries(EVERYDAY_UNITS))
    if (zero === 0) add(KINDS[kind].si, label, size);
  return sizes;
})();

/** The value in an SI unit; `null` where the page shows no such unit for it. */
export function fromShownUnit(number: number, label: string, si: string): number | null {
  const size = SIZES.get(si)?.get(label);
  return size === undefined ? null : number * size;
}

/** A temperature or a difference of two in kelvin, whichever is asked for. */
export function fromDegrees(number: number, label: string, kind: KindName | null): number | null {
  if (kind !== 'temperature' && kind !== 'temperatureDifference') return null;
  const scale = scalesOf(KINDS[kind]).find((each) => each.label === label);
  return scale === undefined ? null : number * scale.size + scale.zero;
}
