/** The sheet to build a still from, in English. */
import type { CutPiece, SheetMeasures } from '../../answers/building-sheet/measures.ts';
import { NEARLY_ALIKE, RECEIVER_K } from '../../answers/building-sheet/measures.ts';
import type { DimensionName, LabelName, Figure } from '../../answers/building-sheet/figures.ts';
import { isCoil, waterSource } from '../../geometry/condenser-kind.ts';
import { findMaterial } from '../../library/index.ts';
import type { Scenario } from '../../scenario/scenario.ts';
import { LIMITS } from '../../run/limits.ts';
import type { Quantities } from '../quantities.ts';
import type { NamedValue } from './hand-out.ts';

const DIMENSIONS: Readonly<Record<DimensionName, string>> = {
  'tub-diameter': 'Tub',
  'water-height': 'Water',
  'coil-diameter': 'Turn',
  pitch: 'Pitch',
  'coil-height': 'Coil',
  'top-depth': 'First turn',
  'joint-height': 'Joint',
  'outlet-height': 'Outlet',
  spout: 'Spout',
  'jacket-bore': 'Jacket',
  'cooled-length': 'Cooled',
  'jacket-end': 'End',
  'neck-rising': 'Rising',
  'neck-falling': 'Falling',
  'lid-hole': 'Hole in the lid',
  'separator-bore': 'Inside',
  'upper-outlet': 'Outlet',
  'leg-crest': 'Crest',
  interface: 'Oil on water',
  'inlet-depth': 'Inlet',
};

const FIGURES: Readonly<Record<Figure['id'], string>> = {
  coil: 'Coil in its tub, cut through the middle',
  jacket: 'Tube in its jacket',
  neck: 'Swan neck and lid',
  separator: 'Separator, cut through the middle',
};

const PIECES: Readonly<Record<CutPiece['kind'], string>> = {
  inlet: 'Leg from the joint with the neck',
  cooled: 'Cooled length',
  outlet: 'Leg to the outlet',
  cutting: 'Cutting, grip and a spoilt start',
};

export const buildingSheet = (q: Quantities) => {
  const across = (value: number): string => q.size(value);
  /** The narrowest separator that is enough, beside the own one. */
  const separatorBore = ({ separator: { bore_m, leastBore_m } }: Pick<SheetMeasures, 'separator'>): string => {
    if (leastBore_m === null)
      return 'Separator: none keeps nearly all drops of this oil at this rate. Let the distillate stand.';
    const keeps = `to keep ${q.share(LIMITS.captureShare)} of the oil drops in nine runs of ten; yours has ${q.size(bore_m)}.`;
    return bore_m < leastBore_m
      ? `Separator: at the highest rate it needs ${q.size(leastBore_m)} inside ${keeps}`
      : `Separator: at the highest rate ${q.size(leastBore_m)} inside is enough ${keeps}`;
  };
  return {
    title: 'Building sheet',
    headings: {
      cut: 'What to cut',
      buy: 'What to buy',
      tools: 'Tools',
      touch: 'What may touch steam, oil and water',
      test: 'Test before the first charge',
      watch: 'Watch in the first run',
      safety: 'Safety',
      assumed: 'What was assumed',
      doubts: 'What is not known for sure',
    },
    dimension: (name: DimensionName, value_m: number): string => `${DIMENSIONS[name]} ${across(value_m)}`,
    figure: (id: Figure['id']): string => FIGURES[id],
    scale: (scale: number): string => `1 : ${scale}`,
    label: (name: LabelName, { cooling }: Pick<Scenario, 'cooling'>): string => {
      const labels: Readonly<Record<LabelName, string>> = {
        overflow: 'overflow',
        hose: cooling.inlet === 'top' ? 'hose ends at the top' : 'hose ends at the bottom',
        lid: 'lid',
        oil: 'oil out',
        water: 'water out',
        inlet: 'distillate in',
      };
      return labels[name];
    },
    cutting({ cutting, toBuy_m, tubes }: SheetMeasures): readonly NamedValue[] {
      const each = cutting.map(({ kind, length_m }) => ({ name: PIECES[kind], value: q.tubeLength(length_m) }));
      return [
        ...each,
        { name: tubes > 1 ? `In all, for each of ${tubes} tubes` : 'In all', value: q.tubeLength(toBuy_m) },
      ];
    },
    wound({ coil, neck }: SheetMeasures): readonly string[] {
      const winding =
        coil === null
          ? []
          : [
              `Wind ${q.number(coil.turns, { decimals: 1 })} turns, evenly falling: no turn may rise, or water gathers and blocks the steam.`,
              `Former ${across(coil.former_m)} across: the coil opens a little when let go. Wind a trial turn first.`,
            ];
      return [
        ...winding,
        `Swan neck: ${q.tubeLength(neck.rising_m + neck.falling_m)} of tube with ${q.bore(neck.bore_m)} inside. The first ${q.tubeLength(neck.rising_m)} slope back to the pot, the rest falls to the condenser.`,
      ];
    },
    fittings(scenario: Scenario, tubeName: string): readonly string[] {
      const { condenser, neck, cooling } = scenario;
      const outside = q.tubeOutside(condenser.outsideDiameter_m, { significant: 3 });
      const neckOutside = q.tubeOutside(neck.bore_m + 2 * neck.wallThickness_m, { significant: 3 });
      const coil = isCoil(condenser);
      return [
        `1 reducer from the neck (${neckOutside} outside) to the condenser tube (${outside} outside), with a joint that opens for cleaning.`,
        ...(coil
          ? [
              `1 tank connector for a tube of ${outside} outside, with a silicone washer on each side. Drill the tub for the connector, not for the tube.`,
            ]
          : [`2 end seals for a tube of ${outside} in a jacket of ${q.bore(condenser.jacketDiameter_m)}.`]),
        ...(waterSource(scenario) === 'tub' || waterSource(scenario) === 'barrel'
          ? [
              `1 overflow pipe at ${across(cooling.tubHeight_m)} over the base, wider than the hose, led to a drain that takes hot water.`,
            ]
          : []),
        `Hose for the cooling water, ${q.bore(cooling.hoseBore_m)} inside, with a check valve or an air gap at the tap.`,
        `Fittings must be made for this standard of tube: ${tubeName}.`,
        'Lid seal: dough of flour and water, or a loose silicone ring held by the weight of the lid. It must let go long before pressure builds up. Never clamp the lid.',
      ];
    },
    tools(scenario: Scenario): readonly string[] {
      return [
        'Tube cutter and deburrer. Take off every burr: it holds back oil.',
        ...(isCoil(scenario.condenser)
          ? [
              'A former; fine dry salt or sand to fill the tube, or a bending spring, against kinks. Rinse all of it out.',
            ]
          : []),
        'Step drill for the hole in the lid, file, level, measuring jug, watch, thermometer.',
      ];
    },
    touch(scenario: Scenario): readonly string[] {
      return [
        `Good: copper, stainless steel, glass, PTFE tape, silicone made for food. Your tube is ${findMaterial(scenario.condenser.material).name}.`,
        'Not: solder with lead, brass that is not free of lead, zinc and galvanised parts, bare aluminium, PVC, rubber, garden hose on the product side.',
      ];
    },
    tests(scenario: Scenario): readonly string[] {
      return [
        'Blow through the whole way from pot to outlet: air must pass freely.',
        ...(isCoil(scenario.condenser)
          ? ['Fill the tub to its overflow and wait half an hour: no drop at the outlet hole.']
          : []),
        'Run it with water alone and the outlet open, gently, until distillate comes. Look for steam at every joint, and lift the lid: it must come free by itself.',
        'Then a cleaning run: water and a handful of plants that you throw away, with all that comes over. Do not use that water or oil.',
        `Measure the distillate: it must stay below ${q.temperature(scenario.condenser.outletLimit_K)}. If not, stop and use less heat.`,
      ];
    },
    watch: [
      'Stay with it. Steam or vapour at the outlet means: heat off.',
      'Write down first drop, tub and distillate temperature every ten minutes. The run book fits the model to your still.',
    ] as readonly string[],
    separatorBore,
    separator(measures: SheetMeasures): readonly string[] {
      const { separator } = measures;
      const { crest_m, upper_m, sinks, oilDensity_kg_m3, waterDensity_kg_m3 } = separator;
      const [upper, leg] = sinks ? ['water', 'oil'] : ['oil', 'water'];
      const legs = `Separator: the ${leg} leg crests ${q.size(upper_m - crest_m)} below the ${upper} outlet. Both columns then weigh the same at ${q.temperature(RECEIVER_K)}.`;
      const alike =
        Math.abs(waterDensity_kg_m3 - oilDensity_kg_m3) < NEARLY_ALIKE
          ? [
              'This oil is almost as heavy as water: heights alone do not hold it apart. Let it stand and draw it off by hand.',
            ]
          : [];
      return [
        legs,
        separatorBore(measures),
        ...alike,
        'Make the crest of the leg adjustable: slide it until oil and water meet where the drawing shows it.',
      ];
    },
    assumed({ ends }: SheetMeasures): readonly string[] {
      return [
        `The joint stands ${across(ends.inlet_m)} over the first turn, and the outlet leg is ${across(ends.outlet_m)} long. Measure your own tub before you cut.`,
        'Drawings are to scale when printed at 100 %. Turns are measured from middle to middle of the tube. Bends are drawn as corners.',
        'This sheet is a calculation. It does not replace your own judgement, the local code or a licensed trade.',
      ];
    },
    noSheet: 'There is no length to build: mend that first.',
  };
};
