import type { StillHazard } from '../still-hazards.ts';

const HAZARDS: Readonly<Record<StillHazard, string>> = {
  'copper-joints': 'Solder copper only with lead-free solder and flux made for drinking water.',
  brass:
    'Brass can give lead and zinc into the distillate. Use copper, stainless steel or glass where steam and oil go.',
  zinc: 'Never use a galvanised vessel: zinc dissolves in hot water, and heated dry it gives off poisonous fumes.',
  'phenols-on-copper':
    'This oil is rich in phenols, which attack copper and darken. Use stainless steel or glass for condenser and receiver.',
};

/** Usual cautions, in English. Codes, still law and licensed trades have the last word. */
export const safety = () => ({
  heading: 'Safety, always',
  always: [
    'Stay with a hot still. Keep a fire blanket or extinguisher and a clear exit within reach.',
    'Never block the outlet or put its end under water: the pot must always be able to breathe.',
    'Oil and its vapour burn. Keep every flame away from the receiver. Never put water on burning oil.',
    'Neat oil irritates and burns: wear gloves and goggles. Keep children and pets away from the receiver; many oils poison cats.',
    'Gas, wiring, water mains and steam are for licensed trades; your local code has the last word.',
    'Not for spirits: distilling alcohol at home is forbidden or licensed in many places, and this model does not cover it.',
  ] as readonly string[],
  hazards: HAZARDS,
  licence:
    'Owning a still may need a licence, even for water and plants. Ask the authority where you live before you build or buy.',
});
