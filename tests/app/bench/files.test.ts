import { describe, expect, test } from 'vitest';
import { parseScenarioText, readScenarioFile } from '../../../src/state/files.ts';

describe('a file to open', () => {
  test('is parsed as JSON', () => {
    expect(parseScenarioText('{"name":"a"}')).toEqual({ ok: true, json: { name: 'a' } });
  });

  test.each(['', 'name: a', '{"name":', '\u0000'])('that holds %j is refused with the reason', (text) => {
    const parsed = parseScenarioText(text);
    expect(parsed.ok ? '' : parsed.message).toMatch(/^This file is not JSON, so it holds no scenario \(.+\)\.$/);
  });

  test('is not even read when it is far too large', async () => {
    const large = { size: 3_000_000, text: () => Promise.reject(new Error('was read')) } as unknown as Blob;
    expect(await readScenarioFile(large)).toEqual({
      ok: false,
      message: 'This file is larger than two megabytes, so it is not a scenario.',
    });
  });

  test('that the disk will not give is told of', async () => {
    const gone = { size: 10, text: () => Promise.reject(new Error('gone')) } as unknown as Blob;
    expect(await readScenarioFile(gone)).toEqual({ ok: false, message: 'This file could not be read from the disk.' });
  });
});
