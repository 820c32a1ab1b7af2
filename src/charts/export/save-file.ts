/** Hands a file to the reader: as text, or as a picture in pixels drawn from an SVG. */

/** Saves a blob under a name, as a download. */
export function saveBlob(blob: Blob, name: string): void {
  const address = URL.createObjectURL(blob);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  document.body.append(link);
  link.click();
  link.remove();
  // The download has its own hold on the blob once it has begun; a minute is ample.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

export const saveText = (text: string, type: string, name: string): void =>
  saveBlob(new Blob([text], { type: `${type};charset=utf-8` }), name);

/** Pixels per CSS pixel, so that a picture survives print. */
const SCALE = 2;

/** Draws an SVG into a PNG. Rejects when the browser cannot draw it. */
export async function pngOf(svg: string): Promise<Blob> {
  const address = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
  try {
    const image = new Image();
    image.src = address;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = image.naturalWidth * SCALE;
    canvas.height = image.naturalHeight * SCALE;
    const context = canvas.getContext('2d');
    if (!context) throw new Error('This browser offers no canvas to draw on.');
    context.drawImage(image, 0, 0, canvas.width, canvas.height);
    return await new Promise<Blob>((resolve, reject) =>
      canvas.toBlob(
        (blob) => (blob ? resolve(blob) : reject(new Error('The picture could not be made.'))),
        'image/png',
      ),
    );
  } finally {
    URL.revokeObjectURL(address);
  }
}

/** `Gentle lavender` and `oil` to `gentle-lavender-oil.csv`. */
export function fileName(run: string, chart: string, extension: string): string {
  const slug = `${run} ${chart}`
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/gu, '-')
    .slice(0, 80)
    .replace(/^-|-$/gu, '');
  return `${slug === '' ? 'chart' : slug}.${extension}`;
}
