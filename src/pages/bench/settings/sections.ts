/** The fields of each part under a few headings; every field of the schema lands under one, listed here or not. */
import { scenarioFields, type FieldInfo, type ScenarioPart } from '../../../../sim/index.ts';

export interface Section {
  /** Empty where the fields need no heading: at the start of a part, and for a list that carries its own name. */
  readonly title: string;
  readonly fields: readonly FieldInfo[];
  /** Closed until asked for: details that most people leave alone. */
  readonly folded: boolean;
}

interface SectionPlan {
  readonly title: string;
  readonly folded?: boolean;
  /** Paths or beginnings of paths. */
  readonly paths: readonly string[];
}

const PLANS: Readonly<Partial<Record<ScenarioPart, readonly SectionPlan[]>>> = {
  heat: [
    { title: '', paths: ['heat.kind', 'heat.ratedPower_W', 'heat.control', 'heat.setting', 'heat.targetRate_kg_s'] },
    { title: 'How it behaves', paths: ['heat.shareToPot', 'heat.lag_s', 'heat.heatedDiameter_m'] },
    { title: 'Circuit and cost', paths: ['heat.supplyVolts_V', 'heat.supplyAmps_A', 'heat.energyPrice_J'] },
  ],
  pot: [
    {
      title: '',
      paths: ['pot.layout', 'pot.water_kg', 'pot.waterTemperature_K', 'pot.gridHeight_m', 'pot.minimumDepth_m'],
    },
    {
      title: 'Vessel',
      paths: ['pot.diameter_m', 'pot.height_m', 'pot.wallThickness_m', 'pot.material', 'pot.emissivity'],
    },
    { title: 'Insulation', paths: ['pot.insulation'] },
  ],
  charge: [
    {
      title: '',
      paths: ['charge.botanical', 'charge.state', 'charge.mass_kg', 'charge.moisture', 'charge.oilContent'],
    },
    {
      title: 'Packing',
      paths: ['charge.bulkDensity_kg_m3', 'charge.voidShare', 'charge.bypass', 'charge.particleSize_m'],
    },
    { title: '', paths: ['charge.composition'] },
    { title: 'Giving up the oil', folded: true, paths: ['charge.release', 'charge.hydrolysis'] },
    {
      title: 'Heat and water of the plant',
      folded: true,
      paths: ['charge.heatCapacity_J_kgK', 'charge.holding_kg_kg'],
    },
  ],
  condenser: [
    { title: '', paths: ['condenser.kind', 'condenser.length_m', 'condenser.tubes', 'condenser.outletLimit_K'] },
    {
      title: 'Tube',
      paths: [
        'condenser.insideDiameter_m',
        'condenser.outsideDiameter_m',
        'condenser.material',
        'condenser.tubePrice_m',
      ],
    },
    { title: 'Coil', paths: ['condenser.coil'] },
    {
      title: 'Jacket',
      paths: ['condenser.jacketDiameter_m', 'condenser.flow', 'condenser.orientation', 'condenser.slope_rad'],
    },
    { title: 'Judgement', folded: true, paths: ['condenser.fouling_m2K_W', 'condenser.oilFilmFactor'] },
  ],
  cooling: [
    {
      title: '',
      paths: ['cooling.jacketSupply', 'cooling.flow_kg_s', 'cooling.tapTemperature_K', 'cooling.waterPrice_m3'],
    },
    { title: 'How the water comes in', paths: ['cooling.inlet', 'cooling.ho', 'cooling.stir_m_s'] },
    { title: 'Tub or barrel', paths: ['cooling.tub', 'cooling.startTemperature_K'] },
    { title: '', paths: ['cooling.ice'] },
  ],
  separator: [
    { title: '', paths: ['separator.bore_m', 'separator.height_m', 'separator.inletDepth_m', 'separator.returnShare'] },
    {
      title: 'Drops',
      folded: true,
      paths: ['separator.drop', 'separator.turbulenceFactor', 'separator.interfaceMobility'],
    },
  ],
  run: [
    { title: '', paths: ['name', 'note'] },
    { title: 'When it ends', paths: ['run.'] },
  ],
};

const OTHERS = 'More';

/** Fields that belong to no part stand with the run. */
const partOf = (field: FieldInfo): ScenarioPart => field.part ?? 'run';

export function sectionsOf(part: ScenarioPart): readonly Section[] {
  const left = new Set(scenarioFields.filter((field) => partOf(field) === part));
  const take = (paths: readonly string[]): FieldInfo[] => {
    const taken = paths.flatMap((path) =>
      [...left].filter((field) => field.path === path || field.path.startsWith(path)),
    );
    const once = [...new Set(taken)];
    once.forEach((field) => left.delete(field));
    return once;
  };
  const plans: readonly SectionPlan[] = PLANS[part] ?? [{ title: '', paths: [`${part}.`] }];
  const planned = plans.map(({ title, folded = false, paths }) => ({ title, folded, fields: take(paths) }));
  return [...planned, { title: OTHERS, folded: false, fields: [...left] }].filter(({ fields }) => fields.length > 0);
}
