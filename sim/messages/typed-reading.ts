/** Any typed quantity, read and answered in words; a file of its own, because few fields ever need it. */
import type { AskedQuantity } from '../units/index.ts';
import { readQuantity } from '../units/read-quantity.ts';
import { typedReading } from './english/typed-reading.ts';
import type { Reader } from './language.ts';
import { section } from './section.ts';
import { refusedNumber, typedMessages, type Entry } from './typed.ts';

export { fetchUnits } from '../units/read-quantity.ts';

const readingMessages = section<ReturnType<typeof typedReading>>({ en: typedReading });

/** `null` where that needs the units, which are not fetched yet. */
export function readTyped(text: string, asked: AskedQuantity, reader: Reader): Entry | null {
  const read = readQuantity(text, asked, reader.units);
  if (read === null) return null;
  const messages = readingMessages(reader);
  if (read.ok) return { ok: true, value: read.value, note: read.asWater ? messages.asWater : null };
  const { fault } = read;
  switch (fault.kind) {
    case 'unit-unknown':
    case 'other-quantity':
    case 'unreadable':
      return { ok: false, message: typedMessages(reader).sentence(messages.because(fault, asked), asked) };
    default:
      return refusedNumber(fault, asked, reader);
  }
}
