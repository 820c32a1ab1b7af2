/**
 * The part of mathjs that knows units. It is heavy, so nothing imports this file but the dynamic import in
 * `parse.ts`: a page on which nobody types a unit never fetches it.
 */
import { create, createUnitDependencies, unitDependencies } from 'mathjs';

const math = create({ ...createUnitDependencies, ...unitDependencies });

math.createUnit('inHg', { definition: '3386.388640341 Pa' });
math.createUnit('inH2O', { definition: '249.08891 Pa' });
math.createUnit('impgal', { definition: '4.54609 L' });
math.createUnit('kgal', { definition: '1000 gal' });

/** What came of asking for a typed unit in another: a number, a unit of another quantity, or no unit at all. */
export type Conversion =
  | { readonly is: 'number'; readonly value: number }
  | { readonly is: 'other-quantity' }
  | { readonly is: 'unknown-unit' };

const known = (unit: string): boolean => {
  try {
    return math.unit(1, unit).value !== null;
  } catch (error) {
    if (error instanceof SyntaxError) return false;
    throw error;
  }
};

/** `value` in `from`, said in `to`; absolute temperatures shift their zero, compounds of temperature do not. */
export function convert(value: number, from: string, to: string): Conversion {
  if (!known(from)) return { is: 'unknown-unit' };
  const typed = math.unit(value, from);
  return typed.equalBase(math.unit(1, to)) ? { is: 'number', value: typed.toNumber(to) } : { is: 'other-quantity' };
}
