/** Size of plant pieces as the Ergun equation wants it: six times volume over surface. */

/** Lengths in metres; `share` is the part of the charge's volume that has this shape. */
export type Piece = { readonly share: number } & (
  | { readonly shape: 'leaf'; readonly thickness_m: number }
  | { readonly shape: 'stick'; readonly diameter_m: number; readonly length_m: number }
  | { readonly shape: 'grain'; readonly diameter_m: number }
  | { readonly shape: 'block'; readonly sides_m: readonly [number, number, number] }
);

/**
 * d = 6 V/S of one piece, m. A leaf is a sheet whose edge does not count: V/S = t/2. A stick is a cylinder with its
 * ends, a grain a sphere, a block a cuboid.
 */
export const pieceDiameter = (piece: Piece): number => {
  switch (piece.shape) {
    case 'leaf':
      return 3 * piece.thickness_m;
    case 'stick':
      return (1.5 * piece.diameter_m) / (1 + piece.diameter_m / (2 * piece.length_m));
    case 'grain':
      return piece.diameter_m;
    case 'block': {
      const [a, b, c] = piece.sides_m;
      return 3 / (1 / a + 1 / b + 1 / c);
    }
  }
};

/** d = 6 V/S of the mixture, m: surfaces add, so 1/d = Σ share/d. Sauter's mean. */
export const sauterDiameter = (pieces: readonly Piece[]): number =>
  1 / pieces.reduce((sum, piece) => sum + piece.share / pieceDiameter(piece), 0);

const millimetres = (length: number): string => `${Number((length * 1000).toPrecision(3))}`;

/** e.g. `leaf 0.3 mm thick (60 %) and stick 4 × 20 mm (40 %)`. */
export const describePieces = (pieces: readonly Piece[]): string =>
  pieces
    .map((piece) => {
      const share = pieces.length > 1 ? ` (${Math.round(piece.share * 100)} % by volume)` : '';
      switch (piece.shape) {
        case 'leaf':
          return `leaf ${millimetres(piece.thickness_m)} mm thick${share}`;
        case 'stick':
          return `stick ${millimetres(piece.diameter_m)} × ${millimetres(piece.length_m)} mm${share}`;
        case 'grain':
          return `grain ${millimetres(piece.diameter_m)} mm across${share}`;
        case 'block':
          return `block ${piece.sides_m.map(millimetres).join(' × ')} mm${share}`;
      }
    })
    .join(' and ');
