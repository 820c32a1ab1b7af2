import { describe, expect, test } from 'vitest';
import { isShareHash, readShareHash, shareHash } from '../../../src/state/share-link.ts';
import { exampleScenario, examples, readScenario } from '../../../sim/index.ts';

const packed = async (text: string): Promise<string> => {
  const stream = new Blob([text]).stream().pipeThrough(new CompressionStream('deflate-raw'));
  return `#still=1.${Buffer.from(await new Response(stream).arrayBuffer()).toString('base64url')}`;
};

describe('a link', () => {
  test.each(examples.map(({ id }) => id))('brings back %s to the letter', async (id) => {
    const scenario = exampleScenario(id);
    const hash = await shareHash(scenario);
    expect(isShareHash(hash)).toBe(true);
    expect(hash).toMatch(/^#still=1\.[\w-]+$/);
    expect(await readShareHash(hash)).toEqual({ ok: true, json: JSON.parse(JSON.stringify(scenario)) as unknown });
  });

  test('keeps letters of any script in the name and the note', async () => {
    const scenario = {
      ...exampleScenario('gentle-lavender'),
      name: 'Lavendel – ラベンダー',
      note: 'première passe ½ “süß”',
    };
    const read = await readShareHash(await shareHash(scenario));
    expect(read).toMatchObject({ ok: true, json: { name: scenario.name, note: scenario.note } });
  });

  test('stays short enough to send', async () => {
    expect((await shareHash(exampleScenario('gentle-lavender'))).length).toBeLessThan(4000);
  });

  test.each(['#still=1.', '#still=1.%%%', '#still=1.AAAA', '#still=1.abcdefghijklmnop'])(
    'that is damaged (%s) is refused in words',
    async (hash) => {
      expect(await readShareHash(hash)).toEqual({
        ok: false,
        message: 'It is not whole: a letter is missing or has changed on the way.',
      });
    },
  );

  test('cut short is refused', async () => {
    const hash = await shareHash(exampleScenario('gentle-lavender'));
    expect(await readShareHash(hash.slice(0, -40))).toMatchObject({ ok: false });
  });

  test('of another version says so', async () => {
    expect(await readShareHash('#still=9.abc')).toEqual({ ok: false, message: 'It was made by another version.' });
  });

  test('that unpacks to more than any scenario is not read to its end', async () => {
    expect(await readShareHash(await packed(`"${'a'.repeat(5_000_000)}"`))).toMatchObject({ ok: false });
  });

  test('may hold any JSON, which is then checked like a file', async () => {
    const read = await readShareHash(await packed('{"pot":{"diameter_m":-3}}'));
    expect(read).toEqual({ ok: true, json: { pot: { diameter_m: -3 } } });
    expect(readScenario(read.ok ? read.json : null).ok).toBe(false);
  });
});
