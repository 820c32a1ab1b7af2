/** What a field makes of a typed text: the number in SI, or the sentence that says why there is none. */
import type { AskedQuantity, NumberFault } from '../units/index.ts';
import { typed } from './english/typed.ts';
import type { Reader } from './language.ts';
import { section } from './section.ts';

export const typedMessages = section<ReturnType<typeof typed>>({ en: typed });

export type Entry =
  | {
      readonly ok: true;
      readonly value: number | null;
      /** What was made of it, where that is not plain from the number. */
      readonly note: string | null;
    }
  | { readonly ok: false; readonly message: string };

export function refusedNumber(fault: NumberFault, asked: AskedQuantity, reader: Reader): Entry {
  const { because, sentence } = typedMessages(reader);
  return { ok: false, message: sentence(because(fault, asked), asked) };
}
