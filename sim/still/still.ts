/**
 * The whole still: the parts built from a scenario and passed through once a step, from the fire to the receiver.
 * What leaves one part enters the next in the same step; the only things carried over from the last step are pressure
 * drops and film coefficients.
 */
import { isCoil } from '../geometry/condenser-kind.ts';
import { standardPressure } from '../fluids/atmosphere.ts';
import { tableLiquidEnthalpy, tableVapourDensity, tableVapourViscosity } from '../fluids/water-table.ts';
import { circleArea } from '../geometry/cylinder.ts';
import type { Scenario } from '../scenario/scenario.ts';
import { ergunGradient } from '../transfer/packed-bed.ts';
import { frictionGradient } from '../transfer/pressure-drop.ts';
import { Bed } from './charge.ts';
import { CoilTub } from './coil-tub.ts';
import { Condenser } from './condenser.ts';
import type { Coolant } from './coolant.ts';
import { HeatSource } from './heat-source.ts';
import { Jacket } from './jacket.ts';
import { Oil } from './oil.ts';
import { HIGHEST_GAUGE, Pot, PRESSURE_MEMORY } from './pot.ts';
import { Release } from './release.ts';
import { RunBack } from './run-back.ts';
import { Separator } from './separator.ts';
import { LiquidStream, VapourStream } from './stream.ts';
import { buildBody, type StillBody } from './still-body.ts';
import { VapourSpace } from './vapour-space.ts';
import type { WallCell } from './wall-cell.ts';

/** Distance from the boil from which steam is about to come, K. */
const NEAR_BOIL = 1;

export class Still {
  readonly oil: Oil;
  readonly source: HeatSource;
  readonly pot: Pot;
  readonly release: Release;
  readonly bed: Bed | null;
  readonly head: WallCell;
  readonly neck: WallCell;
  readonly vapourSpace: VapourSpace;
  readonly condenser: Condenser;
  readonly coolant: Coolant;
  readonly separator: Separator;
  readonly airPressure: number;
  bedDrop = 0;
  neckDrop = 0;
  neckSpeed = 0;
  bedSpeed = 0;
  /** Vapour reaching the condenser in the last step, kg. */
  arrivingWater = 0;
  arrivingOil = 0;
  lidTemperature: number;
  /** Totals so far: lost to the air by pot, bed, lid and neck, J; drained to waste, kg and J; oil lost, kg. */
  lossEnergy = 0;
  wasteWater = 0;
  wasteEnthalpy = 0;
  fuelEnergy = 0;
  potEnergy = 0;
  missedEnergy = 0;
  dutyEnergy = 0;
  escapeEnergy = 0;
  /** Heat carried into the separator by the condensate, J. */
  condensateEnergy = 0;
  escapedWater = 0;
  keptWater = 0;
  returnedWater = 0;
  readonly escapedOil: Float64Array;
  /** Share of the back pressure that the bed causes, following with the lag of the pressure itself. */
  private bedShare = 0;
  private readonly body: StillBody;
  private readonly stream: VapourStream;
  private readonly headDrip: LiquidStream;
  private readonly neckDrip: LiquidStream;
  private readonly neckRun: LiquidStream;
  private readonly drained: LiquidStream;
  private readonly returned: LiquidStream;
  /** Under way back to the bed from lid and neck, and back to the pot. */
  private readonly toBed: RunBack;
  private readonly toPot: RunBack;

  readonly scenario: Scenario;

  constructor(scenario: Scenario) {
    this.scenario = scenario;
    const { site, charge, pot, advanced } = scenario;
    this.airPressure = site.barometer_Pa ?? standardPressure(site.altitude_m);
    this.oil = new Oil(charge.composition);
    const submerged = pot.layout === 'water';
    const layered = !submerged && charge.mass_kg > 0;
    this.release = new Release(scenario, this.oil, layered ? advanced.bedLayers : 1);
    this.body = buildBody(scenario, this.airPressure, this.oil);
    const { body } = this;
    const water = pot.water_kg + (submerged ? charge.mass_kg * charge.moisture : 0);
    this.pot = new Pot(
      body.potGeometry,
      this.oil,
      submerged && charge.mass_kg > 0 ? this.release : null,
      body.potLoss,
      water,
      pot.waterTemperature_K,
    );
    this.bed = layered ? new Bed(scenario, this.oil, this.release, body.bedLoss, body.wallCapacityPerMetre) : null;
    this.head = body.head;
    this.neck = body.neck;
    this.source = new HeatSource(scenario.heat);
    this.condenser = new Condenser(scenario, this.oil);
    this.coolant = isCoil(scenario.condenser)
      ? new CoilTub(scenario, this.airPressure)
      : new Jacket(scenario, this.airPressure);
    this.separator = new Separator(scenario, this.oil, body.separatorLoss);
    this.vapourSpace = new VapourSpace(
      body.freeVolume + this.condenser.boreVolume(),
      this.airPressure,
      this.oil.molarMass,
    );
    this.lidTemperature = site.airTemperature_K;
    const stream = () => new LiquidStream(this.oil.count);
    this.stream = new VapourStream(this.oil.count);
    this.headDrip = stream();
    this.neckDrip = stream();
    this.neckRun = stream();
    this.drained = stream();
    this.returned = stream();
    this.toBed = new RunBack(this.oil.count);
    this.toPot = new RunBack(this.oil.count);
    this.escapedOil = new Float64Array(this.oil.count);
  }

  /** Pressure in the pot above the air, Pa. */
  gauge(): number {
    return this.pot.gauge;
  }

  /** Heat lost to the air in the last step by pot, bed, lid and neck, J. */
  lossInStep(): number {
    return this.pot.loss + (this.bed?.loss ?? 0) + this.head.loss + this.neck.loss;
  }

  /** Whether the pot is about to boil, or boils. */
  nearBoil(): boolean {
    return this.pot.temperature > this.pot.boilingTemperature - NEAR_BOIL;
  }

  /** Pressure drop of bed, neck and condenser at the last step's rates, Pa. */
  private downstreamDrop(): number {
    return Math.min(HIGHEST_GAUGE, this.bedDrop + this.neckDrop + this.condenser.drop);
  }

  step(time: number, dt: number): void {
    const { source, pot, bed, stream, scenario } = this;
    source.step(dt);
    this.fuelEnergy += source.taken;
    this.potEnergy += source.toPot;
    this.missedEnergy += source.missed;
    const drop = this.downstreamDrop();
    if (drop > 0)
      this.bedShare += -Math.expm1(-dt / PRESSURE_MEMORY) * (Math.min(this.bedDrop, drop) / drop - this.bedShare);
    pot.setBackPressure(drop);
    pot.receive(this.toPot.give(dt));
    pot.step(source.toPot, this.airPressure, bed ? bed.hotCapacity() : 0, dt);
    this.lossEnergy += pot.loss;
    stream.copyFrom(pot.out);
    this.drained.clear();
    if (scenario.pot.layout === 'steam' && stream.water > 0) this.carryOver();
    if (bed) {
      bed.receive(this.toBed.give(dt));
      this.passBed(bed, dt);
    }
    const headPressure = this.airPressure + pot.gauge * (1 - this.bedShare);
    this.head.step(stream, headPressure, this.headDrip, dt);
    this.lossEnergy += this.head.loss;
    this.lidTemperature = stream.water > 0 ? stream.temperature : this.head.temperature;
    this.vapourSpace.pass(stream);
    this.passNeck(headPressure, dt);
    this.returnDrips();
    this.arrivingWater = stream.water;
    this.arrivingOil = stream.oilTotal();
    this.condenser.step(stream, this.neckRun, this.airPressure, this.coolant, dt);
    this.dutyEnergy += this.condenser.duty;
    this.coolant.step(time, dt);
    this.takeProducts(dt);
  }

  private passBed(bed: Bed, dt: number): void {
    const { stream, scenario } = this;
    bed.step(stream, this.airPressure + this.pot.gauge, this.bedShare * this.pot.gauge, dt);
    stream.copyFrom(bed.out);
    this.lossEnergy += bed.loss;
    const { voidShare, particleSize_m } = scenario.charge;
    const passing = stream.water > 0 ? stream.water : 0;
    const density = tableVapourDensity(bed.out.temperature);
    this.bedSpeed = passing / (dt * density * this.body.potSection);
    this.bedDrop =
      passing > 0
        ? bed.height *
          ergunGradient(this.bedSpeed, particleSize_m, voidShare, density, tableVapourViscosity(bed.out.temperature))
        : 0;
  }

  /** Wet steam from a separate boiler: its water falls into the lowest layer, or runs off where no plant lies. */
  private carryOver(): void {
    const { pot, bed, scenario, stream, drained } = this;
    const { dryness } = scenario.boiler;
    const water = Math.min((stream.water * (1 - dryness)) / dryness, 0.5 * pot.water);
    const heat = water * tableLiquidEnthalpy(pot.boilingTemperature);
    pot.water -= water;
    pot.enthalpy -= heat;
    if (!bed) {
      drained.water = water;
      drained.enthalpy = heat;
      return;
    }
    bed.water[0] = (bed.water[0] as number) + water;
    bed.enthalpy[0] = (bed.enthalpy[0] as number) + heat;
  }

  private passNeck(pressure: number, dt: number): void {
    const { stream, scenario, neckDrip, neckRun } = this;
    const section = circleArea(scenario.neck.bore_m);
    if (stream.water > 0) {
      const density = tableVapourDensity(stream.temperature);
      const G = stream.water / (dt * section);
      this.neckSpeed = G / density;
      this.neckDrop =
        scenario.neck.length_m *
          frictionGradient(G, scenario.neck.bore_m, density, tableVapourViscosity(stream.temperature), 0) +
        0.5 * G * this.neckSpeed;
    } else {
      this.neckSpeed = 0;
      this.neckDrop = 0;
    }
    this.neck.step(stream, pressure, neckDrip, dt);
    this.lossEnergy += this.neck.loss;
    const onward = 1 - scenario.neck.risingLength_m / scenario.neck.length_m;
    neckRun.water = onward * neckDrip.water;
    neckRun.enthalpy = onward * neckDrip.enthalpy;
    neckDrip.water -= neckRun.water;
    neckDrip.enthalpy -= neckRun.enthalpy;
    for (let i = 0; i < this.oil.count; i++) {
      neckRun.oil[i] = onward * (neckDrip.oil[i] as number);
      neckDrip.oil[i] = (neckDrip.oil[i] as number) - (neckRun.oil[i] as number);
    }
  }

  private returnDrips(): void {
    const { bed, drained, scenario } = this;
    if (bed) {
      this.toBed.add(this.headDrip);
      this.toBed.add(this.neckDrip);
      bed.drain(drained);
    } else {
      drained.add(this.headDrip);
      drained.add(this.neckDrip);
    }
    if (scenario.pot.layout === 'steam' && scenario.boiler.drain === 'waste') {
      this.wasteWater += drained.water;
      this.wasteEnthalpy += drained.enthalpy;
    } else {
      this.toPot.add(drained);
    }
  }

  private takeProducts(dt: number): void {
    const { condenser, separator, returned } = this;
    const { escaped } = condenser;
    this.escapedWater += escaped.water;
    this.escapeEnergy += escaped.enthalpy;
    for (let i = 0; i < this.oil.count; i++)
      this.escapedOil[i] = (this.escapedOil[i] as number) + (escaped.oil[i] as number);
    this.condensateEnergy += condenser.condensate.enthalpy;
    separator.step(condenser.condensate, dt);
    const back = this.scenario.separator.returnShare;
    separator.keep(1 - back);
    this.keptWater += (1 - back) * separator.out.water;
    if (back === 0) return;
    this.returnedWater += back * separator.out.water;
    returned.water = back * separator.out.water;
    returned.enthalpy = back * separator.out.enthalpy;
    for (let i = 0; i < this.oil.count; i++) returned.oil[i] = back * (separator.out.oil[i] as number);
    this.toPot.add(returned);
  }

  /** Energy stored in source, pot, bed, lid, neck, vapour space and liquid on its way back, J. */
  storedEnergy(): number {
    let sum = this.source.stored + this.pot.enthalpy + this.head.heat() + this.neck.heat() + this.vapourSpace.enthalpy;
    if (this.bed) for (let j = 0; j < this.bed.layers; j++) sum += this.bed.enthalpy[j] as number;
    return sum + this.toBed.held.enthalpy + this.toPot.held.enthalpy;
  }

  /** Water in pot, bed and vapour space and on its way back, kg. */
  storedWater(): number {
    let sum = this.pot.water + this.vapourSpace.water;
    if (this.bed) for (let j = 0; j < this.bed.layers; j++) sum += this.bed.water[j] as number;
    return sum + this.toBed.held.water + this.toPot.held.water;
  }

  /** Constituent i in the plant, in the pot's water, in the vapour space and on its way back, kg. */
  storedOil(i: number): number {
    let sum =
      (this.pot.oil[i] as number) +
      (this.vapourSpace.oil[i] as number) +
      (this.toBed.held.oil[i] as number) +
      (this.toPot.held.oil[i] as number);
    for (let j = 0; j < this.release.cells; j++)
      sum +=
        (this.release.ready[j * this.oil.count + i] as number) + (this.release.held[j * this.oil.count + i] as number);
    return sum;
  }
}
