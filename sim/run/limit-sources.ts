/** Where the limits of a run come from, and what happens beyond each, in plain words. */
import type { Provenance } from '../library/provenance.ts';
import type { LimitName } from './limits.ts';

export interface LimitSource extends Provenance {
  readonly unit: string;
  readonly says: string;
}

export const limitSources: Readonly<Record<LimitName, LimitSource>> = {
  potGauge_Pa: {
    kind: 'estimated',
    unit: 'Pa',
    says: 'a loose lid can lift or spray',
    source:
      'on a lid of 300 mm it lifts with 350 N, the weight of 36 kg, more than its own weight and a few clips hold',
  },
  burstGauge_Pa: {
    kind: 'memory',
    unit: 'Pa',
    says: 'pressure-vessel law begins; the run stops',
    source: 'Directive 2014/68/EU (pressure equipment), article 1: maximum allowable pressure over 0.5 bar',
  },
  jarDepth_m: {
    kind: 'common-practice',
    unit: 'm',
    says: 'clearing takes longer, in proportion to the depth',
    source: 'common practice, no source: a jar of two litres or so',
  },
  tubeDrop_Pa: {
    kind: 'estimated',
    unit: 'Pa',
    says: 'the tube alone holds back a good part of what a lid withstands',
    source: 'two fifths of the limit of the pot, so that bed, neck and scale have the rest',
  },
  vapourSpeed_m_s: {
    kind: 'common-practice',
    unit: 'm/s',
    says: 'vapour roars and drags liquid along',
    source: 'speeds of 25 to 40 m/s for which mains of saturated steam are laid out',
  },
  foamFactor_m_s: {
    kind: 'estimated',
    unit: 'm/s',
    says: 'rising steam carries spray and foam into the neck (Souders–Brown factor)',
    source: 'middle of the 0.03 to 0.06 m/s of vessels without a mesh; Souders and Brown, Ind. Eng. Chem. 26 (1934) 98',
  },
  scorchFlux_W_m2: {
    kind: 'estimated',
    unit: 'W/m²',
    says: 'plant that lies on the heated base scorches',
    source: 'judged, 60 to 80 kW/m²; the critical heat flux of water, 1.1 MW/m², is far off',
  },
  scaldingWater_K: {
    kind: 'memory',
    unit: 'K',
    says: 'water scalds within seconds',
    source: 'Moritz and Henriques, Am. J. Pathology 23 (1947) 695–720: about 5 s at 60 °C for a deep burn',
  },
  hotWater_K: {
    kind: 'memory',
    unit: 'K',
    says: 'water scalds within minutes, a child sooner',
    source: 'Moritz and Henriques, Am. J. Pathology 23 (1947) 695–720: some minutes at 50 °C for a deep burn',
  },
  coolingBelowBoil_K: {
    kind: 'estimated',
    unit: 'K',
    says: 'the cooling water is about to boil',
    source: 'judged: on the hottest turn the boil begins before the mean of the layer is there',
  },
  captureShare: {
    kind: 'estimated',
    unit: '1',
    says: 'the separator loses more than a tenth of the drops that reach it',
    source: 'judged: the water is then visibly cloudy and worth returning',
  },
  solidOilShare: {
    kind: 'estimated',
    unit: '1',
    says: 'the oil is a slush of crystals that can clog the tube',
    source: 'judged: thin slurries of organic crystals are pumped up to some 20 to 30 % solids',
  },
  nearNeutral_kg_m3: {
    kind: 'estimated',
    unit: 'kg/m³',
    says: 'oil and water are so nearly of one weight that the oil separates badly',
    source: 'by Stokes’ law drops rise at a tenth of the speed of an oil that is 150 kg/m³ lighter',
  },
  separatesWell_kg_m3: {
    kind: 'estimated',
    unit: 'kg/m³',
    says: 'oil separates well enough for a receiver to be run at that temperature',
    source: 'a third more than the difference that counts as too small',
  },
  escapeShare: {
    kind: 'estimated',
    unit: '1',
    says: 'vapour leaves the outlet uncondensed',
    source: 'at 2 kg/h of steam it is 4 g/h, a whiff that is just seen; less is within the model’s rounding',
  },
  firstDrop_kg: {
    kind: 'memory',
    unit: 'kg',
    says: 'the first drop has fallen',
    source: 'Ph. Eur. 2.1.1: twenty drops of water weigh a gram',
  },
  dryDepth_m: {
    kind: 'estimated',
    unit: 'm',
    says: 'the pot counts as dry; the run stops',
    source: 'a film that no longer covers a base which is not quite level',
  },
  rateReached: {
    kind: 'estimated',
    unit: '1',
    says: 'below it, at full heat, a distillate rate asked for counts as out of reach',
    source: 'judged: nearer than a rate is set or read',
  },
};
