/** Files handed to the reader, and their names. */

/** A download has its own hold on the blob once it has begun; a minute is ample. */
const HELD_MS = 60_000;
const LONGEST_NAME = 80;

/** Saves a blob under a name, as a download. */
export function saveBlob(blob: Blob, name: string): void {
  const address = URL.createObjectURL(blob);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(address), HELD_MS);
}

export const saveText = (text: string, type: string, name: string): void =>
  saveBlob(new Blob([text], { type: `${type};charset=utf-8` }), name);

export const saveJson = (value: unknown, name: string): void =>
  saveText(`${JSON.stringify(value, null, 2)}\n`, 'application/json', name);

export const saveCsv = (text: string, name: string): void => saveText(text, 'text/csv', name);

export const saveSvg = (text: string, name: string): void => saveText(text, 'image/svg+xml', name);

/** A name that every file system takes: `Gentle lavender` and `Oil out` give `gentle-lavender-oil-out.csv`. */
export function fileName(extension: string, ...titles: readonly string[]): string {
  const plain = titles
    .join(' ')
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/gu, '-')
    .replace(/^-/u, '')
    .slice(0, LONGEST_NAME)
    .replace(/-$/u, '');
  return `${plain === '' ? 'still' : plain}.${extension}`;
}
