/**
 * Events of a run: each tells its time, its number, a plain sentence and what to do. Conditions are watched every
 * step; an event is told once, except escaping vapour, which is told each time it begins and ends.
 */
import { bedHeight, heatedBaseArea } from '../geometry/pot.ts';
import type { Scenario, ScenarioPart } from '../scenario/scenario.ts';
import type { Still } from '../still/still.ts';
import { soudersBrownVelocity } from '../transfer/boiling.ts';
import { tableLiquidDensity, tableSaturationTemperature, tableVapourDensity } from '../fluids/water-table.ts';
import type { EventKind, RunEvent, Severity } from './result.ts';
import { celsius, kilowatts, litres, litresAnHour, minutes } from './words.ts';

/** Foam and spray carried into the neck above this Souders–Brown factor, m/s (0.03–0.06 without a mesh). */
const FOAM_FACTOR = 0.045;
/** Flux on a base that solids rest on, W/m²; judgement, 60–80 kW/m². */
const SCORCH_FLUX = 70_000;
const PRESSURE_LIMIT = 5_000;
const TUBE_PRESSURE_LIMIT = 2_000;
/** Vapour speed in neck or tube above which it roars and drags liquid along, m/s. */
const FAST_VAPOUR = 30;
/** Time in which the first vapour finds its way through the tube, s. */
const STARTING = 60;
/** Time at full heat after which a rate that is not reached counts as not to be reached, s, and the share that is near enough. */
const AT_FULL_HEAT = 600;
const NEARLY_HELD = 0.95;
const WARM_TUB = 333.15;
/** Distillate that makes the first drop, kg. */
const FIRST_DROP = 0.000_05;
const CAPTURE_LIMIT = 0.9;
const NEAR_NEUTRAL = 15;
/** Difference of density that a receiver's temperature is advised for, kg/m³. */
const PARTS_WELL = 20;
/** Least share of the vapour that counts as escaping. */
export const ESCAPE_SHARE = 0.002;

export class EventWatch {
  readonly events: RunEvent[] = [];
  firstBoil: number | null = null;
  firstDrop: number | null = null;
  private readonly told = new Set<EventKind>();
  private escaping = false;
  private quietSince = 0;
  private readonly bedHeight: number;
  /** Since when the controller has asked for all the heat there is while distillate comes, s. */
  private fullSince = Infinity;
  /** Where water open to the air boils, K. */
  private readonly airBoilingPoint: number;

  private readonly scenario: Scenario;
  private readonly still: Still;

  constructor(scenario: Scenario, still: Still) {
    this.scenario = scenario;
    this.still = still;
    this.bedHeight = bedHeight(scenario);
    this.airBoilingPoint = tableSaturationTemperature(still.airPressure);
    this.checkCircuit();
    this.checkScorch();
  }

  private tell(
    kind: EventKind,
    time: number,
    severity: Severity,
    part: ScenarioPart,
    value: number,
    unit: string,
    sentence: string,
    advice: string,
  ): void {
    this.told.add(kind);
    this.events.push({ kind, time_s: time, severity, part, value, unit, sentence, advice });
  }

  /** Highest setting the run may use: a controller may take all there is. */
  private peakSetting(): number {
    const { heat } = this.scenario;
    return heat.control === 'hold-rate' ? 1 : Math.max(...heat.setting.map((knot) => knot.value));
  }

  private checkCircuit(): void {
    const { heat } = this.scenario;
    if (heat.supplyVolts_V === null || heat.supplyAmps_A === null) return;
    const limit = heat.supplyVolts_V * heat.supplyAmps_A;
    const peak = heat.ratedPower_W * this.peakSetting();
    if (peak > limit)
      this.tell(
        'circuit-overloaded',
        0,
        'alarm',
        'heat',
        peak,
        'W',
        `The source takes ${kilowatts(peak)}, the circuit carries ${kilowatts(limit)}.`,
        'Use a lower setting or a stronger circuit with a residual-current device; ask a licensed electrician.',
      );
  }

  private checkScorch(): void {
    const { pot, heat, charge } = this.scenario;
    if (pot.layout !== 'water' || charge.mass_kg === 0) return;
    const peak = (heat.ratedPower_W * heat.shareToPot * this.peakSetting()) / heatedBaseArea(this.scenario);
    if (peak > SCORCH_FLUX)
      this.tell(
        'scorch',
        0,
        'alarm',
        'heat',
        peak,
        'W/m²',
        `The base carries ${(peak / 1000).toFixed(0)} kW/m² with plant lying on it; above about ${SCORCH_FLUX / 1000} it scorches.`,
        'Lower the heat, spread it over a wider base or put the plant on a grid.',
      );
  }

  /** Looks at the still after a step; `warmestOutlet` is the summary's warmest distillate so far, K. */
  watch(time: number, dt: number, warmestOutlet: number): void {
    this.watchHeat(time, dt);
    this.watchPot(time, dt);
    this.watchBed(time);
    this.watchCondenser(time, dt, warmestOutlet);
    this.watchTube(time, dt);
    this.watchCooling(time);
    this.watchSeparator(time);
  }

  private watchHeat(time: number, dt: number): void {
    const { heat } = this.scenario;
    const { source, condenser } = this.still;
    if (heat.control !== 'hold-rate' || this.told.has('rate-not-held')) return;
    if (this.firstDrop === null || source.setting < 1) this.fullSince = Infinity;
    else this.fullSince = Math.min(this.fullSince, time);
    if (!(time - this.fullSince > AT_FULL_HEAT)) return;
    const rate = (condenser.condensate.water + condenser.condensate.oilTotal()) / dt;
    if (rate < NEARLY_HELD * heat.targetRate_kg_s)
      this.tell(
        'rate-not-held',
        time,
        'care',
        'heat',
        rate,
        'kg/s',
        `At full heat the still brings ${litresAnHour(rate)} at ${minutes(time)}, not the ${litresAnHour(heat.targetRate_kg_s)} that it is to hold.`,
        'A stronger source or a better lagged pot would bring it; or ask for less.',
      );
  }

  private watchPot(time: number, dt: number): void {
    const { still, scenario, told } = this;
    const { pot } = still;
    if (this.firstBoil === null && pot.out.water > 0) {
      this.firstBoil = time;
      this.tell(
        'first-boil',
        time,
        'note',
        'pot',
        pot.boilingTemperature,
        'K',
        `The pot boils at ${minutes(time)}, at ${celsius(pot.boilingTemperature)}.`,
        'Turn the heat to the running setting before the condenser is hot; stay with the still.',
      );
    }
    const gauge = still.gauge();
    if (!told.has('pressure-high') && gauge > PRESSURE_LIMIT)
      this.tell(
        'pressure-high',
        time,
        'alarm',
        'pot',
        gauge,
        'Pa',
        `The pot stands at ${(gauge / 1000).toFixed(1)} kPa above the air at ${minutes(time)}; a lid can lift or spray.`,
        'Turn the heat down and open the way out: wider tube, wider neck, looser bed. Never close or narrow the outlet.',
      );
    if (!told.has('pot-low') && pot.depth() - pot.geometry.submergedVolume / pot.section < scenario.pot.minimumDepth_m)
      this.tell(
        'pot-low',
        time,
        'alarm',
        'pot',
        pot.water,
        'kg',
        `Only ${litres(pot.water)} of water is left at ${minutes(time)}; the base or element is about to run dry.`,
        'Turn the heat off now. Add hot water only when the pot has cooled below the boil.',
      );
    if (!told.has('foam-carry-over') && pot.out.water > 0) {
      const density = tableVapourDensity(pot.out.temperature);
      const speed = pot.out.water / (dt * density * pot.section);
      const vessel = scenario.pot.layout === 'steam' ? 'boiler' : 'pot';
      const limit = soudersBrownVelocity(FOAM_FACTOR, tableLiquidDensity(pot.out.temperature), density);
      if (speed > limit)
        this.tell(
          'foam-carry-over',
          time,
          'care',
          'pot',
          speed,
          'm/s',
          `Steam rises at ${speed.toFixed(1)} m/s in the ${vessel} and carries spray off.`,
          `Boil more gently or use a wider ${vessel}.`,
        );
    }
  }

  private watchBed(time: number): void {
    const { still, scenario, told } = this;
    if (!still.bed) return;
    if (!told.has('front-through') && still.bed.out.water > 0)
      this.tell(
        'front-through',
        time,
        'note',
        'charge',
        still.bed.height,
        'm',
        `Steam is through the charge at ${minutes(time)}.`,
        'Oil begins now; have the receiver ready.',
      );
    if (!told.has('bed-lifts') && still.bedDrop > scenario.charge.bulkDensity_kg_m3 * 9.81 * this.bedHeight)
      this.tell(
        'bed-lifts',
        time,
        'care',
        'charge',
        still.bedDrop,
        'Pa',
        `The steam lifts the charge at ${minutes(time)} and will blow channels.`,
        'Boil more gently, pack looser or spread the charge over a wider grid.',
      );
  }

  private watchCondenser(time: number, dt: number, outlet: number): void {
    const { still, scenario, told } = this;
    if (this.firstDrop === null && still.keptWater + still.returnedWater >= FIRST_DROP) {
      this.firstDrop = time;
      this.tell(
        'first-drop',
        time,
        'note',
        'separator',
        time,
        's',
        `First drops at ${minutes(time)}.`,
        'Keep the outlet open to the air.',
      );
    }
    this.watchEscape(time, dt);
    if (!told.has('outlet-warm') && outlet > scenario.condenser.outletLimit_K)
      this.tell(
        'outlet-warm',
        time,
        'care',
        'condenser',
        outlet,
        'K',
        `The distillate leaves at ${celsius(outlet)} at ${minutes(time)}, above your limit of ${celsius(scenario.condenser.outletLimit_K)}.`,
        'More cooling water, a longer tube or a gentler boil; warm distillate loses oil.',
      );
    if (!told.has('neck-fast') && still.neckSpeed > FAST_VAPOUR)
      this.tell(
        'neck-fast',
        time,
        'care',
        'neck',
        still.neckSpeed,
        'm/s',
        `Vapour rushes through the neck at ${still.neckSpeed.toFixed(0)} m/s.`,
        'Use a wider neck or boil more gently.',
      );
  }

  /** A narrow tube: what it holds back, or how fast the vapour rushes in. */
  private watchTube(time: number, dt: number): void {
    const { condenser, arrivingWater } = this.still;
    if (this.told.has('tube-hazard')) return;
    const advice = 'Choose a wider tube, several tubes side by side, or a gentler boil.';
    if (condenser.drop > TUBE_PRESSURE_LIMIT) {
      this.tell(
        'tube-hazard',
        time,
        'care',
        'condenser',
        condenser.drop,
        'Pa',
        `The condenser tube alone holds back ${(condenser.drop / 1000).toFixed(1)} kPa: it is narrow for this boil.`,
        advice,
      );
      return;
    }
    // A tube that will hold back too much says so in its first minute.
    if (this.firstDrop === null || time < this.firstDrop + STARTING) return;
    const speed = condenser.inletSpeed(arrivingWater / dt);
    if (speed > FAST_VAPOUR)
      this.tell(
        'tube-hazard',
        time,
        'care',
        'condenser',
        speed,
        'm/s',
        `Vapour rushes into the condenser tube at ${speed.toFixed(0)} m/s, and the tube holds back ${(condenser.drop / 1000).toFixed(1)} kPa: it is narrow for this boil.`,
        advice,
      );
  }

  private watchEscape(time: number, dt: number): void {
    const { condenser, arrivingWater } = this.still;
    const escaping = arrivingWater > 0 && condenser.escaped.water > ESCAPE_SHARE * arrivingWater;
    if (escaping) this.quietSince = time;
    if (escaping && !this.escaping) {
      this.escaping = true;
      const share = condenser.escaped.water / arrivingWater;
      this.tell(
        'vapour-escapes',
        time,
        'alarm',
        'condenser',
        condenser.escaped.water / dt,
        'kg/s',
        `Vapour leaves the outlet uncondensed from ${minutes(time)}${share > 0.01 ? ` (${(100 * share).toFixed(0)} % of it at first)` : ''}: oil is lost and steam scalds.`,
        'Turn the heat down or the water up at once; keep flames and faces away from the outlet.',
      );
    } else if (this.escaping && time - this.quietSince > 30) {
      this.escaping = false;
      this.tell(
        'vapour-held-again',
        time,
        'note',
        'condenser',
        condenser.condensingLength,
        'm',
        `From ${minutes(time)} the condenser holds all the vapour again.`,
        'Watch that it stays so.',
      );
    }
  }

  private watchCooling(time: number): void {
    const { still, told, scenario } = this;
    const { coolant } = still;
    if (!told.has('tub-warm') && coolant.outletTemperature >= WARM_TUB)
      this.tell(
        'tub-warm',
        time,
        'care',
        'cooling',
        coolant.outletTemperature,
        'K',
        `The cooling water reaches ${celsius(coolant.outletTemperature)} at the top at ${minutes(time)}: it scalds.`,
        'Keep hands and children away; let in more cold water or add ice.',
      );
    if (!told.has('cooling-boils') && coolant.outletTemperature > this.airBoilingPoint - 1.5)
      this.tell(
        'cooling-boils',
        time,
        'alarm',
        'cooling',
        coolant.outletTemperature,
        'K',
        `The cooling water is about to boil at ${minutes(time)}.`,
        'Turn the heat off, then let cold water in slowly; stand clear of the steam.',
      );
    if (!told.has('coil-uncovered') && coolant.uncovered > 0 && coolant.depth() < scenario.cooling.tubHeight_m)
      this.tell(
        'coil-uncovered',
        time,
        'care',
        'cooling',
        coolant.depth(),
        'm',
        `The upper turns stand out of the water at ${minutes(time)}.`,
        'Top the tub up.',
      );
  }

  private watchSeparator(time: number): void {
    const { told } = this;
    const { separator } = this.still;
    if (Number.isNaN(separator.densityDifference)) return;
    if (!told.has('separator-overrun') && separator.captureShare < CAPTURE_LIMIT)
      this.tell(
        'separator-overrun',
        time,
        'care',
        'separator',
        separator.captureShare,
        '1',
        `The separator catches ${(100 * separator.captureShare).toFixed(0)} % of the oil drops at ${minutes(time)}; finer ones leave as haze.`,
        'A wider separator, a gentler boil, or let the water stand and return it.',
      );
    if (!told.has('near-neutral-oil') && Math.abs(separator.densityDifference) < NEAR_NEUTRAL && separator.dropsCame())
      this.tellNearNeutral(time);
    if (!told.has('oil-at-inlet') && separator.layer() > this.inletLayer()) this.tellThickLayer(time);
  }

  /** Oil layer that reaches the inlet, m: floating oil grows down to it, sinking oil up. */
  private inletLayer(): number {
    const { inletDepth_m, height_m } = this.scenario.separator;
    return this.still.separator.densityDifference > 0 ? inletDepth_m : height_m - inletDepth_m;
  }

  private tellNearNeutral(time: number): void {
    const { separator } = this.still;
    const floats = separator.densityDifference > 0;
    const T = separator.temperatureForDifference(PARTS_WELL);
    const there = Math.abs(separator.differenceAt(T)).toFixed(0);
    const why = floats ? 'the oil grows lighter faster than water' : 'the oil grows heavier faster than water';
    this.tell(
      'near-neutral-oil',
      time,
      'care',
      'separator',
      separator.densityDifference,
      'kg/m³',
      `Oil and water differ by only ${Math.abs(separator.densityDifference).toFixed(0)} kg/m³ at ${celsius(separator.temperature)}, so they hardly part.`,
      `Run the receiver ${floats ? 'warmer' : 'cooler'}, at about ${celsius(T)}, where they differ by ${there} kg/m³: ${why}. Let it stand.`,
    );
  }

  private tellThickLayer(time: number): void {
    const { separator } = this.still;
    this.tell(
      'oil-at-inlet',
      time,
      'care',
      'separator',
      separator.layer(),
      'm',
      `The oil in the separator is ${(1000 * separator.layer()).toFixed(0)} mm thick at ${minutes(time)} and has reached the inlet, where new distillate stirs it up.`,
      'Draw oil off, or let it run over by its spout, before it gets so thick.',
    );
  }

  /** Told by the run itself. */
  add(
    kind: EventKind,
    time: number,
    severity: Severity,
    part: ScenarioPart,
    value: number,
    unit: string,
    sentence: string,
    advice: string,
  ): void {
    this.tell(kind, time, severity, part, value, unit, sentence, advice);
  }

  has(kind: EventKind): boolean {
    return this.told.has(kind);
  }
}
