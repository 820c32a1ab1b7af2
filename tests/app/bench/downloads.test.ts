import { describe, expect, test } from 'vitest';
import { fileName } from '../../../src/state/downloads.ts';

describe('the name of a saved file', () => {
  test('is plain letters, from run and chart', () => {
    expect(fileName('csv', 'Gentle lavender', 'Oil out')).toBe('gentle-lavender-oil-out.csv');
    expect(fileName('svg', 'Crème d’été №5 / try', 'Heat')).toBe('creme-d-ete-no5-try-heat.svg');
    expect(fileName('json', 'Gentle lavender, März 2')).toBe('gentle-lavender-marz-2.json');
  });

  test('is one that every file system takes, whatever the title', () => {
    expect(fileName('csv', '  ../../…  ')).toBe('still.csv');
    expect(fileName('png', '→', '')).toBe('still.png');
    expect(fileName('csv', 'x'.repeat(200))).toBe(`${'x'.repeat(80)}.csv`);
    expect(fileName('csv', `${'x'.repeat(79)} y`)).toBe(`${'x'.repeat(79)}.csv`);
  });
});
