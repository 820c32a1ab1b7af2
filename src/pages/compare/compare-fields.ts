/** The few settings in which runs usually differ, as fields to type in: heat, tap, tube and charge. */
import { isCoil, scheduleMessages, type Reader, type Scenario } from '../../../sim/index.ts';

export interface CompareField {
  readonly path: string;
  readonly label: string;
  readonly value: number;
  readonly unit: string;
  readonly hint: string;
}

/** More knots than this are a programme, not a setting: they are changed on the bench. */
const MOST_KNOTS = 4;

function scheduleFields(
  knots: Scenario['heat']['setting'],
  path: string,
  label: string,
  reader: Reader,
  rest: Pick<CompareField, 'unit' | 'hint'>,
): readonly CompareField[] {
  if (knots.length > MOST_KNOTS) return [];
  const { moment } = scheduleMessages(reader);
  return knots.map(({ at_s, after, value, shape }, index) => ({
    path: `${path}.${index}.value`,
    label: index === 0 ? label : `${label} ${shape === 'ramp' ? 'by' : 'from'} ${moment(at_s, after)}`,
    value,
    ...rest,
  }));
}

export function compareFields({ heat, cooling, condenser, charge }: Scenario, reader: Reader): readonly CompareField[] {
  const heatFields: readonly CompareField[] =
    heat.control === 'hold-rate'
      ? [
          {
            path: 'heat.targetRate_kg_s',
            label: 'Distillate rate',
            value: heat.targetRate_kg_s,
            unit: 'kg/s',
            hint: 'heat.targetRate_kg_s',
          },
        ]
      : scheduleFields(heat.setting, 'heat.setting', 'Heat', reader, { unit: '1', hint: 'heat.setting' });
  const tube = isCoil(condenser) ? 'Coil' : 'Tube';
  return [
    ...heatFields,
    ...scheduleFields(cooling.flow_kg_s, 'cooling.flow_kg_s', 'Tap', reader, {
      unit: 'kg/s',
      hint: 'cooling.flow_kg_s',
    }),
    { path: 'condenser.length_m', label: tube, value: condenser.length_m, unit: 'm', hint: 'condenser.length_m' },
    { path: 'charge.mass_kg', label: 'Charge', value: charge.mass_kg, unit: 'kg', hint: 'charge.mass_kg' },
  ];
}
