/** From the oil that is wanted to plant, batches, days and garden, and back from a harvest; and what a millilitre costs. */

export interface Spread {
  readonly low: number;
  readonly typical: number;
  readonly high: number;
}

export interface QuantityQuestion {
  /** Oil per kilogram of plant as charged, m³/kg. */
  readonly yield_m3_kg: Spread;
  /** Share of the oil lost after the separator. */
  readonly loss: number;
  /** Packing of the plant, kg/m³, and what of the chamber it fills, m³. */
  readonly packing_kg_m3: number;
  readonly chamber_m3: number;
  readonly fill: number;
  readonly batchesADay: number;
  /** Harvest of a garden in a year, kg/m²; `null` where it is no garden crop. */
  readonly harvest_kg_m2: Spread | null;
  /** Plants on a square metre. */
  readonly plantsPer_m2: Spread | null;
}

export interface QuantityAnswer {
  readonly oil_m3: Spread;
  readonly plant_kg: Spread;
  readonly perBatch_kg: number;
  readonly batches: Spread;
  readonly days: Spread;
  readonly area_m2: Spread | null;
  readonly plants: Spread | null;
}

export const USUAL_LOSS = 0.03;
export const USUAL_CHAMBER_FILL = 0.9;

const overSpread = ({ low, typical, high }: Spread, change: (value: number) => number): Spread => ({
  low: change(low),
  typical: change(typical),
  high: change(high),
});

/** Low where the other is high. */
const against = ({ low, typical, high }: Spread, change: (value: number) => number): Spread => ({
  low: change(high),
  typical: change(typical),
  high: change(low),
});

/** Whole batches: a rest counts as one, but for what rounding leaves. */
const whole = (count: number): number => Math.ceil(count - 1e-9);

function fromPlant(question: QuantityQuestion, oil_m3: Spread, plant_kg: Spread): QuantityAnswer {
  const perBatch_kg = question.packing_kg_m3 * question.chamber_m3 * question.fill;
  const batches = overSpread(plant_kg, (mass) => whole(mass / perBatch_kg));
  const { harvest_kg_m2: harvest, plantsPer_m2 } = question;
  const area_m2 =
    harvest === null
      ? null
      : {
          low: plant_kg.low / harvest.high,
          typical: plant_kg.typical / harvest.typical,
          high: plant_kg.high / harvest.low,
        };
  return {
    oil_m3,
    plant_kg,
    perBatch_kg,
    batches,
    days: overSpread(batches, (count) => whole(count / question.batchesADay)),
    area_m2,
    plants:
      area_m2 === null || plantsPer_m2 === null
        ? null
        : {
            low: area_m2.low * plantsPer_m2.low,
            typical: area_m2.typical * plantsPer_m2.typical,
            high: area_m2.high * plantsPer_m2.high,
          },
  };
}

/** What a wanted amount of oil takes. */
export function plantFor(oil_m3: number, question: QuantityQuestion): QuantityAnswer {
  const plant_kg = against(question.yield_m3_kg, (each) => oil_m3 / (each * (1 - question.loss)));
  return fromPlant(question, { low: oil_m3, typical: oil_m3, high: oil_m3 }, plant_kg);
}

/** What a harvest gives. */
export function oilFrom(plant_kg: number, question: QuantityQuestion): QuantityAnswer {
  const oil_m3 = overSpread(question.yield_m3_kg, (each) => plant_kg * each * (1 - question.loss));
  return fromPlant(question, oil_m3, { low: plant_kg, typical: plant_kg, high: plant_kg });
}

/** Share of water in a plant from a weighing before and after drying it through. */
export const moistureFromWeighings = (before_kg: number, after_kg: number): number => 1 - after_kg / before_kg;

/** Mass of a plant after it has lost water. */
export const massAfterDrying = (mass_kg: number, from: number, to: number): number => (mass_kg * (1 - from)) / (1 - to);

/** Costs of one batch, each in the reader's own currency. */
export interface BatchCosts {
  readonly plant: number;
  readonly energy: number;
  readonly water: number;
  readonly work: number;
  readonly still: number;
  readonly bottles: number;
  readonly other: number;
}
export const COST_KINDS = [
  'plant',
  'energy',
  'water',
  'work',
  'still',
  'bottles',
  'other',
] as const satisfies readonly (keyof BatchCosts)[];

export interface CostAnswer {
  readonly batch: number;
  readonly perMillilitre: number;
  /** Share of the batch by cause. */
  readonly shares: Readonly<Record<keyof BatchCosts, number>>;
  /** Cost of a millilitre where the yield is 30 % lower or higher. */
  readonly yieldLow: number;
  readonly yieldHigh: number;
  /** What the plant of a batch may cost so that a millilitre costs no more than a price; `null` without one. */
  readonly plantAtPrice: number | null;
}

export const YIELD_DOUBT = 0.3;

export function costs(batch: BatchCosts, oil_mL: number, loss: number, price: number | null): CostAnswer {
  const sum = COST_KINDS.reduce((total, kind) => total + batch[kind], 0);
  const sold = oil_mL * (1 - loss);
  return {
    batch: sum,
    perMillilitre: sum / sold,
    shares: Object.fromEntries(COST_KINDS.map((kind) => [kind, sum > 0 ? batch[kind] / sum : 0])) as Record<
      keyof BatchCosts,
      number
    >,
    yieldLow: sum / (sold * (1 - YIELD_DOUBT)),
    yieldHigh: sum / (sold * (1 + YIELD_DOUBT)),
    plantAtPrice: price === null ? null : price * sold - (sum - batch.plant),
  };
}
