/** Usual cautions, in English. Codes, still law and licensed trades have the last word. */
export const safety = () => ({
  heading: 'Safety, always',
  always: [
    'Stay with a hot still. Keep a fire blanket or extinguisher and a clear exit within reach.',
    'Never block the outlet or put its end under water: the pot must always be able to breathe.',
    'Oil and its vapour burn. Keep every flame away from the receiver. Never put water on burning oil.',
    'Gas, wiring, water mains and steam are for licensed trades; your local code has the last word.',
    'Not for spirits: distilling alcohol at home is forbidden or licensed in many places, and this model does not cover it.',
  ] as readonly string[],
  licence:
    'Owning a still may need a licence, even for water and plants. Ask the authority where you live before you build or buy.',
  controls: {
    heat: 'Never leave it alone while it is hot, and never close the outlet.',
    tap: 'Know where the warm overflow runs; water and electricity keep apart.',
    coil: 'Bend tube without kinks. A kink blocks the steam.',
    charge: 'Pack loosely enough for steam to pass, and leave room under the lid.',
  },
});
