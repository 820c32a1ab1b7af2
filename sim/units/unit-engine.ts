/**
 * The part of mathjs that knows units and how they multiply. It is heavy, so nothing imports this file but the dynamic
 * import in `parse.ts`: a page on which nobody types a unit that it does not show never fetches it.
 */
import { create, createUnitDependencies, unitDependencies, type Unit } from 'mathjs';

const math = create({ ...createUnitDependencies, ...unitDependencies });

math.createUnit('inHg', { definition: '3386.388640341 Pa' });
math.createUnit('inH2O', { definition: '249.08891 Pa' });
math.createUnit('impgal', { definition: '4.54609 L' });
math.createUnit('kgal', { definition: '1000 gal' });

/** A number with its unit; a bare number where the units cancel. */
export type Amount = Unit | number;

const timesNumber = (unit: Unit, number: number): Unit => {
  const scaled = unit.clone();
  scaled.value *= number;
  return scaled;
};

/** So much of a unit; `null` where no such unit is known. */
export function amountOf(number: number, unit: string): Amount | null {
  try {
    const found = math.unit(number, unit);
    if (found.value === null) return null;
    return found.dimensions.every((power) => power === 0) ? found.value : found;
  } catch (error) {
    if (error instanceof SyntaxError) return null;
    throw error;
  }
}

/** `null` where the two are quantities of different kinds. */
export function sumOf(left: Amount, right: Amount): Amount | null {
  if (typeof left === 'number' || typeof right === 'number')
    return typeof left === 'number' && typeof right === 'number' ? left + right : null;
  if (!left.equalBase(right)) return null;
  const sum = left.clone();
  sum.value += right.value;
  return sum;
}

export function productOf(left: Amount, right: Amount): Amount {
  if (typeof left === 'number') return typeof right === 'number' ? left * right : timesNumber(right, left);
  return typeof right === 'number' ? timesNumber(left, right) : left.multiply(right);
}

export function quotientOf(left: Amount, right: Amount): Amount {
  if (typeof right === 'number') return productOf(left, 1 / right);
  return (typeof left === 'number' ? math.unit(left) : left).divide(right);
}

/** An amount said in a unit; absolute temperatures shift their zero. `null` where it is a quantity of another kind. */
export function amountIn(amount: Amount, unit: string): number | null {
  const asked = math.unit(1, unit);
  if (typeof amount === 'number') return asked.dimensions.every((power) => power === 0) ? amount / asked.value : null;
  return amount.equalBase(asked) ? amount.toNumber(unit) : null;
}
