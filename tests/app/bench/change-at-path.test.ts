import { expect, test } from 'vitest';
import { valueAtPath, withValueAtPath } from '../../../src/state/field-path.ts';

const whole = { name: 'a', pot: { size: { d: 1, h: 2 } }, list: [{ at: 0 }, { at: 5 }] };

test('a value deep inside is replaced and what lies beside it is shared', () => {
  const changed = withValueAtPath(whole, 'pot.size.d', 9);
  expect(changed.pot.size).toEqual({ d: 9, h: 2 });
  expect(changed.list).toBe(whole.list);
  expect(whole.pot.size.d).toBe(1);
});

test('an entry of a list is replaced by its place', () => {
  expect(withValueAtPath(whole, 'list.1.at', 7).list).toEqual([{ at: 0 }, { at: 7 }]);
});

test('a path that leads nowhere is refused by name', () => {
  expect(() => withValueAtPath(whole, 'pot.colour', 1)).toThrow('there is no field pot.colour');
  expect(valueAtPath(whole, 'pot.colour.shade')).toBeUndefined();
});
