/** What a dilution is told: limits that were read, none that were not, and the deadly look-alikes of every plant. */
import { describe, expect, it } from 'vitest';
import { dilutionMessages, englishReader, judgeDilution, mostOf, type Use } from '../../../sim/index.ts';
import { botanicals, findBotanical } from '../../../sim/library/index.ts';
import { harvests } from '../../../sim/library/harvests.ts';
import { lookAlikes, neverDistil } from '../../../sim/library/look-alikes.ts';
import { oilLimits, whoAvoids } from '../../../sim/library/use-limits.ts';

const reader = englishReader('metric');
const oil = (botanical: string, share: number) => ({
  botanical,
  share,
  composition: findBotanical(botanical).composition.value.map(({ constituent, massFraction }) => ({
    constituent,
    share: massFraction,
  })),
});
const kindsOf = (use: Use, ...oils: readonly ReturnType<typeof oil>[]) =>
  judgeDilution(oils, use).findings.map(({ kind }) => kind);

/** Oils whose only known figure is one that nobody here has read. */
const UNREAD = ['thyme-thymol', 'oregano', 'sage', 'lemon-balm', 'clove-bud'];

describe('a dilution', () => {
  it('of two per cent lavender on the body passes, and on the face does not', () => {
    expect(kindsOf('body', oil('lavender-true', 0.02))).toEqual([]);
    expect(kindsOf('face', oil('lavender-true', 0.02))).toEqual(['all-over-usual', 'oil-over-limit']);
    expect(kindsOf('cleaning', oil('lavender-true', 0.02))).toEqual(['all-over-usual']);
    expect(kindsOf('bath', oil('lavender-true', 0.02))).toEqual([]);
  });

  it.each(UNREAD)('of %s is sent to look its limit up, and no figure is given for it', (id) => {
    for (const use of ['body', 'face', 'small-area'] as const) {
      const verdict = judgeDilution([oil(id, 0.0001)], use);
      const [finding] = verdict.findings.filter(({ kind }) => kind === 'limit-to-look-up');
      expect(finding?.kind).toBe('limit-to-look-up');
      expect(mostOf(id, use).limit).toBeNull();
      if (finding) expect(dilutionMessages(reader).finding(finding)).not.toMatch(/\d/u);
      expect(dilutionMessages(reader).lead(verdict, use)).toMatch(/^Look up one limit/u);
    }
  });

  it('has a limit for every plant, and no source of one that was not read beside a figure', () => {
    expect(Object.keys(oilLimits).sort()).toEqual(botanicals.map(({ id }) => id).sort());
    for (const [id, { body, face, provenance }] of Object.entries(oilLimits)) {
      expect(body === null, id).toBe(UNREAD.includes(id));
      expect(face === null, id).toBe(UNREAD.includes(id));
      if (body !== null) expect(['common-practice', 'derived'], id).toContain(provenance.kind);
    }
  });

  it('judges constituents over all oils: citronellal of two oils, estragole of fennel by what it usually holds', () => {
    expect(kindsOf('face', oil('fennel-bitter', 0.002))).toContain('constituent-over-limit');
    const [finding] = judgeDilution([oil('fennel-bitter', 0.002)], 'face').findings.filter(
      ({ kind }) => kind === 'constituent-over-limit',
    );
    expect(finding).toMatchObject({ constituent: 'estragole', limit: 0.000062, supposed: true });
    expect(kindsOf('face', oil('fennel-bitter', 0.001))).toEqual([]);
  });

  it('names allergens from a hundred-thousandth on, and oils that are listed themselves', () => {
    const { allergens, listedOils } = judgeDilution([oil('lavender-true', 0.01)], 'body');
    expect(allergens.slice(0, 2).sort()).toEqual(['linalool', 'linalyl_acetate']);
    expect(listedOils).toEqual(['lavender-true']);
    expect(judgeDilution([oil('lavender-true', 1e-6)], 'body').listedOils).toEqual([]);
  });

  it('is always told with the cautions that nobody must miss', () => {
    const said = dilutionMessages(reader).always.join(' ');
    for (const word of ['Never swallow', 'under 12', 'pregnancy', 'epilepsy', 'cats', 'sunlight', 'no claim'])
      expect(said).toContain(word);
    // No share for children and none for a child’s age but the one rule.
    expect(said).not.toMatch(/\d\s?%/u);
  });
});

describe('the plants', () => {
  it('each has a harvest, look-alikes and who should avoid it', () => {
    const ids = botanicals.map(({ id }) => id).sort();
    for (const of of [harvests, lookAlikes, whoAvoids]) expect(Object.keys(of).sort()).toEqual(ids);
  });

  it.each([
    ['rosemary', /yew/u],
    ['peppermint', /pennyroyal/u],
    ['sage', /foxglove/u],
    ['eucalyptus-globulus', /oleander/u],
    ['juniper-berry', /savin/u],
    ['fennel-bitter', /hemlock/u],
    ['caraway', /hemlock/u],
    ['cedarwood-virginia', /yew/u],
    ['geranium-rose', /monkshood/u],
    ['scots-pine', /yew/u],
  ])('%s has its deadly look-alike first', (id, name) => {
    const [first] = lookAlikes[id] ?? [];
    expect(first?.severity).toBe('deadly');
    expect(first?.plant).toMatch(name);
  });

  it('that must never be distilled are told, the deadly ones first', () => {
    expect(neverDistil[0]?.plants).toMatch(/yew.*hemlock.*foxglove/u);
    expect(neverDistil.map(({ plants }) => plants).join(' ')).toMatch(/pennyroyal.*wintergreen.*mustard/su);
  });
});
