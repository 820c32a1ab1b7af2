/** Library rows turned into parts of a scenario: what picking a plant, tube, vessel, source, separator or tub writes. */
import {
  defaultEnergyPrice,
  findBotanical,
  findHeatSource,
  findMaterial,
  findSeparator,
  findTub,
  findTube,
  findVessel,
} from '../library/index.ts';
import { constituentById } from '../fluids/constituents.ts';
import type { Botanical, GroupRelease } from '../library/types.ts';
import type { Scenario } from './scenario.ts';

/** Moles of oil on a kilogram of dry plant. */
export const oilMoles = (
  oilContent: number,
  composition: readonly { readonly constituent: string; readonly share: number }[],
): number =>
  composition.reduce(
    (sum, { constituent, share }) => sum + (oilContent * share) / constituentById(constituent).molarMass.value,
    0,
  );

type Part<P extends keyof Scenario> = Partial<Scenario[P]>;

/** Fields of the charge that come from a botanical in a state; the charged mass stays the user's. */
export const chargeFromBotanical = (id: string, state?: Scenario['charge']['state']): Part<'charge'> =>
  chargeFromPlant(findBotanical(id), state);

/** The same from a plant that is at hand, the library's or the reader's own. */
export function chargeFromPlant(row: Botanical, state?: Scenario['charge']['state']): Part<'charge'> {
  const chosen = state && row.states[state] ? state : row.defaultCharge.state;
  const data = row.states[chosen];
  if (!data) throw new RangeError(`${row.id} has no data for the state ${chosen}`);
  const packing = row.defaultCharge.packing;
  const { activationEnergy_J_mol, takeUpExponent, halfCoverage } = row.release;
  const byGroup = (value: (group: GroupRelease) => number) => ({
    hydrocarbon: value(row.release.hydrocarbon),
    oxygenate: value(row.release.oxygenate),
    sesquiterpene: value(row.release.sesquiterpene),
  });
  const composition = row.composition.value.map(({ constituent, massFraction }) => ({
    constituent,
    share: massFraction,
  }));
  const oilContent = data.oilContent.value.typical;
  const ester = row.hydrolysis.find((entry) => entry.ester === 'linalyl_acetate');
  return {
    botanical: row.id,
    state: chosen,
    moisture: data.moisture.value.typical,
    oilContent,
    bulkDensity_kg_m3: data.bulkDensity_kg_m3.value[packing],
    voidShare: data.voidFraction.value[packing],
    particleSize_m: data.particleSize_m.value,
    heatCapacity_J_kgK: data.dryHeatCapacity_J_kgK.value,
    holding_kg_kg: data.waterHolding.value,
    composition,
    release: {
      readyShare: byGroup((group) => group.readyShare.value.typical),
      heldRate_1_s: byGroup((group) => group.heldRate_1_s.value.typical),
      activationEnergy_J_mol: activationEnergy_J_mol.value,
      takeUp: byGroup((group) => group.takeUp.value.typical),
      takeUpExponent: takeUpExponent.value,
      halfCoverage_mol_kg: halfCoverage.value * oilMoles(oilContent, composition),
    },
    hydrolysisImmersed_1_s: ester?.rateInWater_1_s.value.typical ?? 0,
    hydrolysisBed_1_s: ester?.rateInBed_1_s.value.typical ?? 0,
  };
}

/** Bore, outside and material of a standard tube. */
export function condenserFromTube(id: string): Part<'condenser'> {
  const row = findTube(id);
  return {
    insideDiameter_m: row.insideDiameter_m,
    outsideDiameter_m: row.outsideDiameter_m,
    material: row.material as Scenario['condenser']['material'],
  };
}

/** Size and material of a vessel, with the usual emissivity of its material. */
export function potFromVessel(id: string): Part<'pot'> {
  const row = findVessel(id);
  return {
    diameter_m: row.insideDiameter_m,
    height_m: row.height_m,
    wallThickness_m: row.wall_m,
    material: row.material as Scenario['pot']['material'],
    emissivity: findMaterial(row.material).emissivity.value,
  };
}

/** Kind, power, share into the pot and lag of a heat source, and the default price of what it burns or takes. */
export function heatFromSource(id: string): Part<'heat'> {
  const row = findHeatSource(id);
  return {
    kind: row.kind,
    ratedPower_W: row.ratedPower_W.value.typical,
    shareToPot: row.efficiency.value.typical,
    lag_s: row.lag_s.value.typical,
    energyPrice_J: defaultEnergyPrice(row),
  };
}

/** Bore, height and inlet depth of a separator. */
export function separatorFromVessel(id: string): Part<'separator'> {
  const row = findSeparator(id);
  const top = Math.max(row.oilOutletHeight_m, row.waterOutletHeight_m);
  return { bore_m: row.bore_m, height_m: top, inletDepth_m: Math.max(0, top - row.inletHeight_m) };
}

/** Diameter and water height of a tub or barrel. */
export function tubFrom(id: string): Part<'cooling'> {
  const row = findTub(id);
  return { tubDiameter_m: row.insideDiameter_m, tubHeight_m: row.height_m };
}
