/**
 * The numbers at which a run raises an event, each named once: what lies beyond it, in SI, and where it comes from.
 * Whoever draws, sizes or judges by one of them reads it here.
 */
import type { Sourced } from '../library/provenance.ts';

export interface Limit extends Sourced<number> {
  readonly unit: string;
  /** What happens beyond it, in plain words. */
  readonly says: string;
}

const limit = (value: number, unit: string, kind: Limit['kind'], says: string, source: string): Limit => ({
  value,
  unit,
  kind,
  says,
  source,
});

export const LIMITS = {
  potGauge: limit(
    5_000,
    'Pa',
    'estimated',
    'a loose lid can lift or spray',
    'on a lid of 300 mm it lifts with 350 N, the weight of 36 kg, more than its own weight and a few clips hold',
  ),
  burstGauge: limit(
    50_000,
    'Pa',
    'memory',
    'pressure-vessel law begins; the run stops',
    'Directive 2014/68/EU (pressure equipment), article 1: maximum allowable pressure over 0.5 bar',
  ),
  tubeDrop: limit(
    2_000,
    'Pa',
    'estimated',
    'the tube alone holds back a good part of what a lid withstands',
    'two fifths of the limit of the pot, so that bed, neck and scale have the rest',
  ),
  vapourSpeed: limit(
    30,
    'm/s',
    'common-practice',
    'vapour roars and drags liquid along',
    'speeds of 25 to 40 m/s for which mains of saturated steam are laid out',
  ),
  foamFactor: limit(
    0.045,
    'm/s',
    'estimated',
    'rising steam carries spray and foam into the neck (Souders–Brown factor)',
    'middle of the 0.03 to 0.06 m/s of vessels without a mesh; Souders and Brown, Ind. Eng. Chem. 26 (1934) 98',
  ),
  scorchFlux: limit(
    70_000,
    'W/m²',
    'estimated',
    'plant that lies on the heated base scorches',
    'judged, 60 to 80 kW/m²; the critical heat flux of water, 1.1 MW/m², is far off',
  ),
  scaldingWater: limit(
    333.15,
    'K',
    'memory',
    'water scalds within seconds',
    'Moritz and Henriques, Am. J. Pathology 23 (1947) 695–720: about 5 s at 60 °C for a deep burn',
  ),
  /** Below the boil of water that is open to the air. */
  coolingBelowBoil: limit(
    1.5,
    'K',
    'estimated',
    'the cooling water is about to boil',
    'layers and segments of the model are warmer and colder than their mean by about as much',
  ),
  captureShare: limit(
    0.9,
    '1',
    'estimated',
    'the separator loses more than a tenth of the drops that reach it',
    'judged: the water is then visibly cloudy and worth returning',
  ),
  nearNeutral: limit(
    15,
    'kg/m³',
    'estimated',
    'oil and water are so nearly of one weight that the oil separates badly',
    'by Stokes’ law drops rise at a tenth of the speed of an oil that is 150 kg/m³ lighter',
  ),
  separatesWell: limit(
    20,
    'kg/m³',
    'estimated',
    'oil separates well enough for a receiver to be run at that temperature',
    'a third more than the difference that counts as too small',
  ),
  escapeShare: limit(
    0.002,
    '1',
    'estimated',
    'vapour leaves the outlet uncondensed',
    'at 2 kg/h of steam it is 4 g/h, a whiff that is just seen; less is within the model’s rounding',
  ),
  firstDrop: limit(
    0.000_05,
    'kg',
    'memory',
    'the first drop has fallen',
    'Ph. Eur. 2.1.1: twenty drops of water weigh a gram',
  ),
  dryDepth: limit(
    0.000_8,
    'm',
    'estimated',
    'the pot counts as dry; the run stops',
    'a film that no longer covers a base which is not quite level',
  ),
  rateReached: limit(
    0.95,
    '1',
    'estimated',
    'below it, at full heat, a distillate rate asked for counts as out of reach',
    'judged: nearer than a rate is set or read',
  ),
} as const satisfies Readonly<Record<string, Limit>>;
