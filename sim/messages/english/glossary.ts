/** Words of the trade in a line each, in English. */

export interface GlossaryEntry {
  readonly term: string;
  /** How it is written in sentences, in small letters. */
  readonly forms: readonly string[];
  readonly means: string;
}

const entry = (term: string, means: string, ...others: readonly string[]): GlossaryEntry => ({
  term,
  forms: [term.toLowerCase(), ...others],
  means,
});

export const glossary = (): readonly GlossaryEntry[] => [
  entry('bore', 'the inside diameter of a tube.'),
  entry('charge', 'the plant in the still for one run.'),
  entry('coil', 'the tube, wound round and round, in which steam turns back to water.'),
  entry('cohobation', 'sending the water from the separator back to the pot.'),
  entry('condenser', 'the part that cools steam until it is water again.'),
  entry('distillate', 'all that drips out of the condenser: water and oil.'),
  entry('essential oil', 'the scented oil that steam carries out of a plant.'),
  entry('first drop', 'the moment the distillate begins to drip.'),
  entry('grid', 'the sieve that holds the plant above the water.'),
  entry('haze', 'oil drops so fine that they make the water cloudy.', 'cloudy'),
  entry('hydrosol', 'the scented water that comes over with the oil.'),
  entry('linalyl acetate', 'a part of lavender oil that smells fresh and fruity.'),
  entry('outlet', 'the open end of the condenser. It must never be closed.'),
  entry('pot', 'the vessel whose water boils.'),
  entry('pressure', 'how hard something pushes on each piece of a wall.', 'presses', 'press'),
  entry('receiver', 'the vessel that catches what drips.'),
  entry('separator', 'the jar in which oil and water part by their weight.'),
  entry('steam', 'water as a gas. You cannot see it; the white cloud is fine drops.'),
  entry('still', 'pot, swan neck, condenser and separator together.', 'stills'),
  entry('swan neck', 'the tube from the lid of the pot to the condenser.'),
  entry('tap', 'where cooling water comes from, or where oil is drawn off.'),
  entry('tub', 'the vessel of cold water around the coil.'),
];
