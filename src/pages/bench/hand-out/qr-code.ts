/** A text as a code to photograph, drawn as one path of unit squares. */
import qrcode from 'qrcode-generator';

export interface Code {
  /** Squares along a side, the quiet zone included. */
  readonly size: number;
  readonly path: string;
}

/** Squares that must stay white around a code. */
const QUIET = 4;
/** Finds the smallest version that holds the text. */
const ANY_VERSION = 0;

export function qrCode(text: string): Code {
  const code = qrcode(ANY_VERSION, 'M');
  code.addData(text, 'Byte');
  code.make();
  const count = code.getModuleCount();
  const squares: string[] = [];
  for (let row = 0; row < count; row++)
    for (let column = 0; column < count; column++)
      if (code.isDark(row, column)) squares.push(`M${column + QUIET},${row + QUIET}h1v1h-1z`);
  return { size: count + 2 * QUIET, path: squares.join('') };
}
