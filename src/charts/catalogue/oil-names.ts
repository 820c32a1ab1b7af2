import type { OilName } from './oil.ts';

const GREEK: Readonly<Record<string, string>> = { alpha: 'α', beta: 'β', gamma: 'γ', delta: 'δ' };

/** `alpha_pinene` to `α-pinene`, `linalyl_acetate` to `linalyl acetate`. */
export function constituentWords(id: string): string {
  const [first = '', ...rest] = id.split('_');
  const greek = GREEK[first];
  return greek ? `${greek}-${rest.join(' ')}` : [first, ...rest].join(' ');
}

export const oilNames = (ids: readonly string[]): readonly OilName[] => ids.map((id) => ({ id, name: constituentWords(id) }));
