/** Usual cautions, in English. Codes, still law and licensed trades have the last word. */
export const safety = () => ({
  heading: 'Safety, always',
  always: [
    'Stay with a hot still, and keep water, a lid and a way out within reach.',
    'Never close or dip the outlet: the pot must always be able to breathe.',
    'Oil and its vapour burn. Keep every flame away from the receiver.',
    'Gas, wiring, water mains and steam are for licensed trades; your local code has the last word.',
    'Not for spirits: distilling alcohol at home is forbidden or licensed in many places, and this model does not cover it.',
  ] as readonly string[],
  controls: {
    heat: 'Never leave it alone while it is hot, and never close the outlet.',
    tap: 'Know where the warm overflow runs; water and electricity keep apart.',
    coil: 'Bend tube without kinks: a flat spot is a plug.',
    charge: 'Pack loosely enough for steam to pass, and leave room under the lid.',
  },
});
