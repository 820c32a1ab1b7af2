import { createHash } from 'node:crypto';
import { crc32 as crc32OfNode } from 'node:zlib';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { crc32 } from '../../../src/state/crc32.ts';
import { isShareHash } from '../../../src/state/route.ts';
import { readShareHash, shareHash } from '../../../src/state/share-link.ts';
import { patchBetween, patched } from '../../../src/state/scenario-patch.ts';
import bases from '../../../src/state/link-bases.json';
import checkedLink from './old-links/checked.json';
import plainLink from './old-links/plain.json';
import packedDifference from './old-links/packed-difference.json';
import packedWhole from './old-links/packed-whole.json';
import { exampleScenario, examples, readScenario } from '../../../sim/index.ts';

/** SHA-256 of the stills from which links tell a difference, as the first such links knew them. */
const FIRST_BASES = 'b89995ce19c568628608777fed5b15b1dc68b87ccf7e80311c20cd38f77fcec3';

const packed = async (text: string): Promise<string> => {
  const stream = new Blob([text]).stream().pipeThrough(new CompressionStream('deflate-raw'));
  return `#still=1.${Buffer.from(await new Response(stream).arrayBuffer()).toString('base64url')}`;
};

afterEach(() => {
  vi.unstubAllGlobals();
});

describe('a link', () => {
  test.each(examples.map(({ id }) => id))('brings back %s to the letter', async (id) => {
    const scenario = exampleScenario(id);
    const hash = await shareHash(scenario);
    expect(isShareHash(hash)).toBe(true);
    expect(hash).toMatch(/^#still=3\.[\w-]+$/);
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

  test('keeps what a plan waits for', async () => {
    const lavender = exampleScenario('gentle-lavender');
    const read = readScenario({
      ...lavender,
      heat: {
        ...lavender.heat,
        setting: [
          { at_s: 0, value: 1 },
          { at_s: 0, after: 'first-boil', value: 0.8 },
          { at_s: 600, after: 'first-drop', value: 0.4, shape: 'ramp' },
        ],
      },
    });
    if (!read.ok) throw new Error('the plan was refused');
    const opened = await readShareHash(await shareHash(read.scenario));
    expect(opened).toEqual({ ok: true, json: JSON.parse(JSON.stringify(read.scenario)) as unknown });
    expect(opened.ok && readScenario(opened.json)).toEqual(read);
  });

  test('is as short as what differs from an example', async () => {
    const lavender = exampleScenario('gentle-lavender');
    expect((await shareHash(lavender)).length).toBeLessThan(40);
    const longer = { ...lavender, name: 'My lavender', condenser: { ...lavender.condenser, length_m: 2.35 } };
    expect((await shareHash(longer)).length).toBeLessThan(120);
  });

  test('of the first kind, which held the whole still, opens as it did', async () => {
    expect(await readShareHash(packedWhole.hash)).toEqual({ ok: true, json: packedWhole.holds });
    expect(readScenario(packedWhole.holds).ok).toBe(true);
  });

  test('of the second kind, which had no check value, opens as it did', async () => {
    expect(await readShareHash(packedDifference.hash)).toEqual({ ok: true, json: packedDifference.holds });
  });

  test.each([
    ['third', checkedLink],
    ['fourth', plainLink],
  ])('of the %s kind opens as it did', async (_, { hash, holds }) => {
    expect(await readShareHash(hash)).toEqual({ ok: true, json: holds });
  });

  test('that has one letter changed, anywhere, is noticed', async () => {
    const lavender = exampleScenario('gentle-lavender');
    const changed = { ...lavender, name: 'My lavender', condenser: { ...lavender.condenser, length_m: 2.35 } };
    const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_.=#%';
    for (const compresses of [true, false]) {
      if (!compresses) vi.stubGlobal('CompressionStream', undefined);
      const hash = await shareHash(changed);
      expect(await readShareHash(hash)).toMatchObject({ ok: true, json: { name: 'My lavender' } });
      const opened: string[] = [];
      for (const place of Array.from(hash).keys())
        for (const letter of letters) {
          const other = hash.slice(0, place) + letter + hash.slice(place + 1);
          if (place === 0 || other === hash) continue;
          if (!isShareHash(other) || (await readShareHash(other)).ok) opened.push(other);
        }
      expect(opened).toEqual([]);
    }
  });

  test('is plain where a browser cannot compress, and opens there and elsewhere', async () => {
    const lavender = { ...exampleScenario('gentle-lavender'), name: 'Süß' };
    const packedHash = await shareHash(lavender);
    vi.stubGlobal('CompressionStream', undefined);
    vi.stubGlobal('DecompressionStream', undefined);
    const hash = await shareHash(lavender);
    expect(hash).toMatch(/^#still=4\./);
    expect(await readShareHash(hash)).toMatchObject({ ok: true, json: { name: 'Süß' } });
    expect(await readShareHash(packedHash)).toMatchObject({
      ok: false,
      message: expect.stringMatching(/too old/) as string,
    });
    vi.unstubAllGlobals();
    expect(await readShareHash(hash)).toMatchObject({ ok: true, json: { name: 'Süß' } });
  });

  test.each(['', 'a', 'Gentle lavender', '123456789'])('has the check value that others count for %j', (text) => {
    expect(crc32(new TextEncoder().encode(text))).toBe(crc32OfNode(text));
  });

  test('counts on stills that never change', () => {
    const known = bases.slice(0, 11).map((base) => JSON.stringify(base));
    expect(
      createHash('sha256')
        .update(`[${known.join(',')}]`)
        .digest('hex'),
    ).toBe(FIRST_BASES);
  });

  test('can tell of what a still no longer has, and of nothing at all', () => {
    const from = { a: 1, b: { c: null, d: [1, 2] } };
    for (const to of [
      from,
      {},
      { b: { c: 0 } },
      { a: null, b: { c: null, d: [2] }, e: { f: 1 } },
      { a: { b: 1 }, b: 1 },
    ])
      expect(patched(from, patchBetween(from, to))).toEqual(to);
  });

  test.each(['#still=1.', '#still=2.', '#still=2.AAAA', '#still=1.%%%', '#still=1.AAAA', '#still=1.abcdefghijklmnop'])(
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
    expect(await readShareHash(hash.slice(0, -4))).toMatchObject({ ok: false });
  });

  test('of another version says so', async () => {
    expect(await readShareHash('#still=9.abc')).toEqual({ ok: false, message: 'It was made by another version.' });
  });

  test('that unpacks to more than any scenario is not read to its end', async () => {
    expect(await readShareHash(await packed(`"${'a'.repeat(5_000_000)}"`))).toMatchObject({ ok: false });
  });

  test.each(['[99,{}]', '[0]', '{}', '[0,{},[[1]]]', '[0,{},7]', '[-1,{}]'])(
    'that tells no difference from a known still (%s) is refused',
    async (text) => {
      const hash = (await packed(text)).replace('#still=1.', '#still=2.');
      expect(await readShareHash(hash)).toMatchObject({ ok: false });
    },
  );

  test('may hold any JSON, which is then checked like a file', async () => {
    const read = await readShareHash(await packed('{"pot":{"diameter_m":-3}}'));
    expect(read).toEqual({ ok: true, json: { pot: { diameter_m: -3 } } });
    expect(readScenario(read.ok ? read.json : null).ok).toBe(false);
  });
});
