/** Cautions of the controls that one turns, in English; apart from the others, which the first view does not say. */
export const controlSafety = () => ({
  heat: 'Never leave it alone while it is hot, and never close the outlet.',
  tap: 'Know where the warm overflow runs; water and electricity keep apart.',
  coil: 'Bend tube without kinks. A kink blocks the steam.',
  charge: 'Pack loosely enough for steam to pass, and leave room under the lid.',
});
