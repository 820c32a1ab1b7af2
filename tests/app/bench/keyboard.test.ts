import { describe, expect, test } from 'vitest';
import { KEYS } from '../../../src/state/key-words.ts';
import { commandFor, type Focus, type KeyPress } from '../../../src/state/keyboard.ts';

const press = (key: string, held: Partial<KeyPress> = {}): KeyPress => ({
  key,
  ctrlKey: false,
  metaKey: false,
  altKey: false,
  shiftKey: false,
  ...held,
});

describe('the keys', () => {
  test.each([
    [press('p'), 'play-or-pause'],
    [press('P'), 'play-or-pause'],
    [press('ArrowLeft'), 'back-10-s'],
    [press('ArrowRight'), 'on-10-s'],
    [press('ArrowLeft', { shiftKey: true }), 'back-60-s'],
    [press('ArrowRight', { shiftKey: true }), 'on-60-s'],
    [press('Home'), 'to-start'],
    [press('End'), 'to-end'],
    [press('N', { shiftKey: true }), 'previous-event'],
    [press('n'), 'next-event'],
    [press('q'), 'faster'],
    [press('s'), 'slower'],
    [press('z', { ctrlKey: true }), 'undo'],
    [press('Z', { ctrlKey: true, shiftKey: true }), 'redo'],
    [press('z', { metaKey: true }), 'undo'],
    [press('j'), 'project'],
    [press('?', { shiftKey: true }), 'show-keys'],
  ] as const)('%j gives %s where nothing has the focus', (key, command) => {
    expect(commandFor(key, 'free')).toBe(command);
  });

  test('every command in the list of keys is listed once', () => {
    const commands = KEYS.map(({ command }) => command);
    expect(new Set(commands).size).toBe(commands.length);
    expect(commands).toHaveLength(16);
  });

  test('none works while one types', () => {
    for (const key of ['p', 'ArrowLeft', 'Home', 'n', 'q', '?']) expect(commandFor(press(key), 'typing')).toBeNull();
    expect(commandFor(press('z', { ctrlKey: true }), 'typing')).toBeNull();
  });

  test.each<[Focus, string, string | null]>([
    ['own-arrows', 'ArrowRight', null],
    ['own-arrows', 'Home', null],
    ['own-arrows', 'n', 'next-event'],
    ['free', ' ', null],
    ['free', '[', null],
    ['free', '+', null],
  ])('with the focus %s, %j gives %s', (focus, key, command) => {
    expect(commandFor(press(key), focus)).toBe(command);
  });

  test('keys held with Alt or unknown with Ctrl are left to the browser', () => {
    expect(commandFor(press('ArrowLeft', { altKey: true }), 'free')).toBeNull();
    expect(commandFor(press('r', { ctrlKey: true }), 'free')).toBeNull();
    expect(commandFor(press('q', { ctrlKey: true }), 'free')).toBeNull();
  });
});
