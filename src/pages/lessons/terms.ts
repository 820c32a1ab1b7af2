/** Finds the words of the trade in a text. */
import type { GlossaryEntry } from '../../../sim/index.ts';

export interface TextPart {
  readonly words: string;
  readonly entry: GlossaryEntry | null;
}

const isLetter = (letter: string | undefined): boolean => letter !== undefined && /\p{L}/u.test(letter);

/** A text in parts: each word of the trade at its first place, and what stands between. */
export function termsIn(text: string, glossary: readonly GlossaryEntry[]): readonly TextPart[] {
  const lower = text.toLowerCase();
  const found = glossary
    .flatMap((entry) => entry.forms.map((form) => ({ entry, form })))
    .sort((a, b) => b.form.length - a.form.length)
    .reduce<readonly { readonly at: number; readonly end: number; readonly entry: GlossaryEntry }[]>(
      (taken, { entry, form }) => {
        if (taken.some((each) => each.entry === entry)) return taken;
        for (let at = lower.indexOf(form); at >= 0; at = lower.indexOf(form, at + 1)) {
          const end = at + form.length;
          const isWord = !isLetter(lower[at - 1]) && !isLetter(lower[end]);
          if (isWord && taken.every((each) => end <= each.at || at >= each.end)) return [...taken, { at, end, entry }];
        }
        return taken;
      },
      [],
    );
  const parts: TextPart[] = [];
  let done = 0;
  for (const { at, end, entry } of [...found].sort((a, b) => a.at - b.at)) {
    if (at > done) parts.push({ words: text.slice(done, at), entry: null });
    parts.push({ words: text.slice(at, end), entry });
    done = end;
  }
  if (done < text.length) parts.push({ words: text.slice(done), entry: null });
  return parts;
}

/** The entries whose words stand in any of some texts, in the order of the glossary. */
export const termsOf = (texts: readonly string[], glossary: readonly GlossaryEntry[]): readonly GlossaryEntry[] => {
  const used = new Set(texts.flatMap((text) => termsIn(text, glossary).map(({ entry }) => entry)));
  return glossary.filter((entry) => used.has(entry));
};
