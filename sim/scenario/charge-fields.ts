/** Fields of the charge, the run, the multipliers and the advanced settings. */
import * as z from 'zod/mini';
import { between, choice, count, optionalQuantity, quantity, text } from './field.ts';
import { LIVE_RANGES, LONGEST_RUN_S } from './limits.ts';
import { practice } from './material-fields.ts';

const botanical = 'the chosen botanical';

const byGroup = (words: {
  unit: string;
  title: string;
  says: string;
  min: number;
  max: number;
  hydrocarbon: number;
  oxygenate: number;
  sesquiterpene: number;
}) =>
  z.prefault(
    z.strictObject({
      hydrocarbon: quantity({
        ...words,
        title: `${words.title}, hydrocarbons`,
        default: words.hydrocarbon,
        source: botanical,
      }),
      oxygenate: quantity({
        ...words,
        title: `${words.title}, oxygenates`,
        default: words.oxygenate,
        source: botanical,
      }),
      sesquiterpene: quantity({
        ...words,
        title: `${words.title}, sesquiterpenes`,
        default: words.sesquiterpene,
        source: botanical,
      }),
    }),
    {},
  );

export const releaseSchema = z.strictObject({
  readyShare: byGroup({
    unit: '1',
    title: 'Ready share',
    says: 'Share of the oil on the surface or in opened glands at the start.',
    min: 0,
    max: 1,
    hydrocarbon: 0.15,
    oxygenate: 0.15,
    sesquiterpene: 0.08,
  }),
  heldRate_1_s: byGroup({
    unit: '1/s',
    title: 'Release rate',
    says: 'First-order rate at which held oil comes free at the boiling point of water.',
    min: 0,
    max: 1,
    hydrocarbon: 0.0008,
    oxygenate: 0.0008,
    sesquiterpene: 0.0003,
  }),
  activationEnergy_J_mol: quantity({
    unit: 'J/mol',
    title: 'Activation energy',
    says: 'How strongly release depends on temperature (Arrhenius about the boiling point of water).',
    default: 60_000,
    min: 0,
    max: 200_000,
    source: 'estimated',
  }),
  takeUp: byGroup({
    unit: 'SI',
    title: 'Take-up',
    says: 'How readily steam takes up ready oil: transfer units in a bed of unit depth at unit steam flux, in SI units.',
    min: 0,
    max: 1000,
    hydrocarbon: 0.05,
    oxygenate: 0.05,
    sesquiterpene: 0.05,
  }),
  takeUpExponent: quantity({
    unit: '1',
    title: 'Take-up exponent',
    says: 'Exponent m: transfer units fall with steam flux to the power m − 1.',
    default: 0.4,
    min: 0,
    max: 1,
    source: 'film-controlled transfer in packed beds, j-factor',
  }),
  halfCoverage_mol_kg: quantity({
    unit: 'mol/kg',
    title: 'Half coverage',
    says: 'Ready oil on the dry plant at which the surface is half covered; it sets how the last traces leave.',
    default: 0.006,
    min: 0,
    max: 2,
    source: 'estimated',
  }),
});

export const chargeSchema = z.strictObject({
  botanical: text({
    title: 'Plant',
    says: 'Id of the botanical in the library, or “own”, which a name may follow: “own: clary sage”.',
    default: 'lavender-true',
    maxLength: 60,
    source: 'library',
  }),
  state: choice(['fresh', 'dry'], {
    title: 'State',
    says: 'Fresh from the field or dried.',
    default: 'dry',
    source: practice,
  }),
  mass_kg: quantity({
    unit: 'kg',
    title: 'Charge',
    says: 'Weight of the plant material as charged, water included.',
    default: 2,
    ...LIVE_RANGES['charge.mass_kg'],
    source: practice,
  }),
  moisture: quantity({
    unit: '1',
    title: 'Moisture',
    says: 'Water as a share of the charged weight.',
    default: 0.1,
    min: 0,
    max: 0.95,
    source: botanical,
  }),
  oilContent: quantity({
    unit: 'kg/kg',
    title: 'Oil content',
    says: 'Oil in the dry plant, by weight.',
    default: 0.018,
    min: 0,
    max: 0.3,
    source: botanical,
  }),
  bulkDensity_kg_m3: quantity({
    unit: 'kg/m³',
    title: 'Packing density',
    says: 'Weight of charge per volume of bed, as packed.',
    default: 150,
    min: 20,
    max: 900,
    source: botanical,
  }),
  voidShare: quantity({
    unit: '1',
    title: 'Void share',
    says: 'Share of the bed volume open to steam.',
    default: 0.8,
    min: 0.2,
    max: 0.98,
    source: botanical,
  }),
  particleSize_m: quantity({
    unit: 'm',
    title: 'Particle size',
    says: 'Six times volume over surface of the pieces, for the pressure drop.',
    default: 0.002,
    min: 0.000_05,
    max: 0.1,
    source: botanical,
  }),
  heatCapacity_J_kgK: quantity({
    unit: 'J/(kg K)',
    title: 'Heat capacity',
    says: 'Heat capacity of the dry plant.',
    default: 1500,
    min: 800,
    max: 3000,
    source: botanical,
  }),
  holding_kg_kg: quantity({
    unit: 'kg/kg',
    title: 'Water holding',
    says: 'Water that the dry plant holds before it drips, by weight.',
    default: 2,
    min: 0,
    max: 10,
    source: botanical,
  }),
  bypass: quantity({
    unit: '1',
    title: 'Channelling',
    says: 'Share of the steam that slips through channels and meets no plant.',
    default: 0.1,
    min: 0,
    max: 0.95,
    source: 'estimated',
  }),
  release: z.prefault(releaseSchema, {}),
  composition: z
    ._default(
      z
        .array(
          z.strictObject({
            constituent: z
              .string()
              .check(z.maxLength(60), z.meta({ title: 'Constituent', description: 'Id of the oil constituent.' })),
            share: between({ min: 0, max: 1 }).check(
              z.meta({ title: 'Share', description: 'Mass share of the oil.', unit: '1' }),
            ),
          }),
        )
        .check(z.minLength(1), z.maxLength(12)),
      [{ constituent: 'linalool', share: 1 }],
    )
    .check(
      z.meta({
        title: 'Oil composition',
        description: 'Constituents of the oil and their mass shares, which add up to one.',
        unit: '1',
        source: botanical,
      }),
    ),
  hydrolysisImmersed_1_s: quantity({
    unit: '1/s',
    title: 'Ester loss in water',
    says: 'First-order rate at which linalyl acetate turns to linalool in boiling water.',
    default: 0,
    min: 0,
    max: 0.01,
    source: botanical,
  }),
  hydrolysisBed_1_s: quantity({
    unit: '1/s',
    title: 'Ester loss in the bed',
    says: 'The same in the steamed bed.',
    default: 0,
    min: 0,
    max: 0.01,
    source: botanical,
  }),
});

export const runSchema = z.strictObject({
  duration_s: quantity({
    unit: 's',
    title: 'Run length',
    says: 'Time from switching on the heat to the end of the run.',
    default: 10_800,
    min: 60,
    max: LONGEST_RUN_S,
    source: practice,
  }),
  stopAtShare: optionalQuantity({
    unit: '1',
    title: 'Stop at share of oil',
    says: 'Stop when this share of the oil in the charge has been collected; leave open to run on.',
    min: 0.01,
    max: 0.999,
    source: 'left open',
  }),
  stopAtOilRate_kg_s: optionalQuantity({
    unit: 'kg/s',
    title: 'Stop at oil rate',
    says: 'Stop when the oil of the last ten minutes comes slower than this; leave open to run on.',
    min: 1e-10,
    max: 0.01,
    source: 'left open',
  }),
  stopAtDistillate_kg: optionalQuantity({
    unit: 'kg',
    title: 'Stop at distillate',
    says: 'Stop when this much distillate has come over; leave open to run on.',
    min: 0.01,
    max: 2000,
    source: 'left open',
  }),
});

const factor = (title: string, says: string, min: number) =>
  quantity({ unit: '1', title, says, default: 1, min, max: 10, source: 'model as it stands' });

export const factorsSchema = z.strictObject({
  heatLoss: factor('Heat loss factor', 'Multiplies every heat loss to the air; zero is the ideal still.', 0),
  condensingFilm: factor('Condensing film factor', 'Multiplies the film coefficient inside the condenser tube.', 0.05),
  coolantFilm: factor('Coolant film factor', 'Multiplies the film coefficient on the water side.', 0.05),
  curvature: quantity({
    unit: '1',
    title: 'Coil bend factor',
    says: 'Share of the worked-out effect of a coil’s bend on the cooling of its condensate that counts; none in a straight tube.',
    default: 0.7,
    min: 0,
    max: 1.2,
    source: 'judgement: 0 to 1.1 is possible, nobody has measured a rivulet in a coil',
  }),
  rivulet: factor(
    'Condensate factor',
    'Multiplies the heat that the condensate gives to the wall after the last vapour.',
    0.05,
  ),
  jetMixing: factor(
    'Jet mixing factor',
    'Multiplies the share of the incoming water’s power that mixes the tub; no effect on a hose from the top.',
    0,
  ),
  evaporation: factor('Evaporation factor', 'Multiplies the evaporation from the open tub or barrel.', 0),
  fouling: factor('Fouling factor', 'Multiplies the fouling resistance.', 0),
  release: factor('Release factor', 'Multiplies the rates at which the plant gives up oil.', 0),
  oilContent: factor('Oil content factor', 'Multiplies the oil content of the charge.', 0),
  dropSize: factor('Drop size factor', 'Multiplies the median drop size.', 0.05),
});

export const advancedSchema = z.strictObject({
  step_s: quantity({
    unit: 's',
    title: 'Time step',
    says: 'Step of the model; quiet stretches take up to five at once. A tenth of it moves the examples’ results by half a percent at most.',
    default: 1,
    min: 0.05,
    max: 10,
    source: 'step study in the tests',
  }),
  recordEvery_s: quantity({
    unit: 's',
    title: 'Record every',
    says: 'Time between kept points of the record. One of more than ten million values keeps every second point, every third, and so on.',
    default: 10,
    min: 0.05,
    max: 600,
    source: practice,
  }),
  bedLayers: count({
    unit: '1',
    title: 'Bed layers',
    says: 'Layers the charge is divided into.',
    default: 10,
    min: 1,
    max: 40,
    source: practice,
  }),
  tubLayers: count({
    unit: '1',
    title: 'Tub layers',
    says: 'Layers the tub is divided into; one is a tub that is mixed through. A tub without flow takes thinner ones.',
    default: 24,
    min: 1,
    max: 100,
    source: 'layer study in the tests',
  }),
  segments: count({
    unit: '1',
    title: 'Condenser segments',
    says: 'Pieces the condenser tube is divided into.',
    default: 60,
    min: 5,
    max: 200,
    source: practice,
  }),
});
