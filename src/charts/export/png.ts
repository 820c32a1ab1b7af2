/** A picture in pixels, drawn from an SVG. */

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
