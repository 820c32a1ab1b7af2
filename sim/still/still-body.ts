/** Sizes, wall heat capacities and heat losses of the still's vessels, worked out once from a scenario. */
import { circleArea, cylinderVolume } from '../geometry/cylinder.ts';
import { bedBottom, bedHeight, boilingVessel } from '../geometry/pot.ts';
import { findMaterial } from '../library/materials.ts';
import type { Scenario } from '../scenario/scenario.ts';
import type { Oil } from './oil.ts';
import type { PotGeometry } from './pot.ts';
import { LossTable, type LossSurface } from './surface-loss.ts';
import { startTemperature } from './stream.ts';
import { WallCell } from './wall-cell.ts';

/** Density of dry plant substance without its pores, kg/m³; about 1400–1500 for cell walls, from memory. */
const PLANT_SUBSTANCE = 1450;
/** Emissivity of a glass or wet metal separator, from memory. */
const SEPARATOR_EMISSIVITY = 0.9;

export interface StillBody {
  readonly potSection: number;
  readonly potGeometry: PotGeometry;
  readonly wallCapacityPerMetre: number;
  /** Of the pot's wall below bed or lid; with a separate boiler, of the boiler's whole side and then its lid. */
  readonly potLoss: LossTable;
  /** Per square metre of side. */
  readonly bedLoss: LossTable;
  readonly separatorLoss: LossTable;
  readonly head: WallCell;
  readonly neck: WallCell;
  /** Free volume of vessels, bed and neck, m³. */
  readonly freeVolume: number;
}

/** Heat capacity of a wall per square metre, J/m²K. */
const wallCapacity = (material: string, thickness: number): number => {
  const row = findMaterial(material);
  return row.density_kg_m3.value * row.heatCapacity_J_kgK.value * thickness;
};

export function buildBody(scenario: Scenario, airPressure: number, oil: Oil): StillBody {
  const { pot, boiler, charge, neck, separator, site, factors } = scenario;
  const steam = pot.layout === 'steam';
  const submerged = pot.layout === 'water';
  const section = circleArea(pot.diameter_m);
  const perArea = wallCapacity(pot.material, pot.wallThickness_m);
  const perimeter = Math.PI * pot.diameter_m;
  const insulationConductivity = pot.insulationConductivity_W_mK;
  const side = (length: number, area: number, insulation: number, radius: number): LossSurface => ({
    facing: 'side',
    length,
    area,
    emissivity: pot.emissivity,
    insulation,
    insulationConductivity,
    radius,
  });
  const lid = (diameter: number, insulation: number): LossSurface => ({
    facing: 'up',
    length: diameter / 4,
    area: circleArea(diameter),
    emissivity: pot.emissivity,
    insulation,
    insulationConductivity,
    radius: null,
  });
  const table = (surfaces: readonly LossSurface[]) =>
    new LossTable(surfaces, site.airTemperature_K, airPressure, factors.heatLoss);

  const body = boilingVessel(scenario);
  const bodySection = circleArea(body.diameter_m);
  const dry = charge.mass_kg * (1 - charge.moisture);
  const submergedVolume = submerged ? dry / PLANT_SUBSTANCE : 0;
  const waterVolume = (pot.water_kg + (submerged ? charge.mass_kg * charge.moisture : 0)) / 998 + submergedVolume;
  const wettedHeight = Math.min(body.height_m, waterVolume / bodySection);
  // Steam stands on the wall between water and grid, and in the whole of a separate boiler: it is as hot as the water.
  const warmHeight = steam
    ? body.height_m
    : submerged
      ? wettedHeight
      : Math.max(wettedHeight, Math.min(pot.height_m, pot.gridHeight_m));
  const bodySide = side(
    body.height_m,
    Math.PI * body.diameter_m * warmHeight,
    steam ? boiler.insulationThickness_m : pot.insulationThickness_m,
    body.diameter_m / 2,
  );
  const potSurfaces = steam ? [bodySide, lid(boiler.diameter_m, boiler.insulationThickness_m)] : [bodySide];
  const potGeometry: PotGeometry = {
    diameter: body.diameter_m,
    height: body.height_m,
    warmHeight,
    wallCapacity: perArea * ((steam ? 2 : 1) * bodySection + Math.PI * body.diameter_m * warmHeight),
    submergedVolume,
    plantCapacity: submerged ? dry * charge.heatCapacity_J_kgK : 0,
  };

  const bed = bedHeight(scenario);
  const headBottom = submerged ? wettedHeight : steam ? bed : Math.max(wettedHeight, bedBottom(pot) + bed);
  const headHeight = Math.max(0.005, pot.height_m - headBottom);
  const headSurfaces: LossSurface[] = [
    side(pot.height_m, perimeter * headHeight, pot.insulationThickness_m, pot.diameter_m / 2),
    lid(pot.diameter_m, pot.insulationThickness_m),
  ];
  const neckOutside = neck.bore_m + 2 * neck.wallThickness_m;
  const neckSurface: LossSurface = {
    facing: 'tube',
    length: neckOutside,
    area: Math.PI * neckOutside * neck.length_m,
    emissivity: neck.emissivity,
    insulation: neck.insulationThickness_m,
    insulationConductivity: pot.insulationConductivity_W_mK,
    radius: neckOutside / 2,
  };
  const separatorSurfaces: LossSurface[] = [
    {
      facing: 'side',
      length: separator.height_m,
      area: Math.PI * separator.bore_m * separator.height_m,
      emissivity: SEPARATOR_EMISSIVITY,
      insulation: 0,
      insulationConductivity: 1,
      radius: null,
    },
    {
      facing: 'up',
      length: separator.bore_m / 4,
      area: circleArea(separator.bore_m),
      emissivity: SEPARATOR_EMISSIVITY,
      insulation: 0,
      insulationConductivity: 1,
      radius: null,
    },
  ];
  const boilerSpace = steam ? Math.max(0, bodySection * boiler.height_m - waterVolume) : 0;
  const potSpace = Math.max(0, section * (pot.height_m - bed) - (steam ? 0 : waterVolume));
  return {
    potSection: section,
    potGeometry,
    wallCapacityPerMetre: perArea * perimeter,
    potLoss: table(potSurfaces),
    bedLoss: table([side(pot.height_m, 1, pot.insulationThickness_m, pot.diameter_m / 2)]),
    separatorLoss: table(separatorSurfaces),
    head: new WallCell(
      perArea * (perimeter * headHeight + section),
      table(headSurfaces),
      oil,
      startTemperature(site.airTemperature_K),
    ),
    neck: new WallCell(
      wallCapacity(neck.material, neck.wallThickness_m) * Math.PI * neckOutside * neck.length_m,
      table([neckSurface]),
      oil,
      startTemperature(site.airTemperature_K),
    ),
    freeVolume: boilerSpace + potSpace + charge.voidShare * bed * section + cylinderVolume(neck.bore_m, neck.length_m),
  };
}
