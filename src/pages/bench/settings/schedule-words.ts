/** A schedule in one line: `100 %`, or `100 %, from the first drop 60 %, then evenly to 40 % at 1 h after the first drop`. */
import {
  type FieldInfo,
  type Schedule,
  englishReader,
  formatQuantity,
  scheduleMessages,
  type UnitSystem,
} from '../../../../sim/index.ts';

/** More knots than this are counted instead of told. */
const MOST_TOLD = 5;

export function scheduleWords(schedule: Schedule, field: Pick<FieldInfo, 'unit' | 'path'>, system: UnitSystem): string {
  const said = (value: number) => formatQuantity(value, field.unit, system, { hint: field.path });
  const { moment } = scheduleMessages(englishReader(system));
  const [first, ...rest] = schedule;
  if (!first) return 'not set';
  if (rest.length === 0) return `${said(first.value)} throughout`;
  const told = rest
    .slice(0, MOST_TOLD - 1)
    .map((knot) =>
      knot.shape === 'ramp'
        ? `then evenly to ${said(knot.value)} at ${moment(knot.at_s, knot.after)}`
        : `from ${moment(knot.at_s, knot.after)} ${said(knot.value)}`,
    );
  const untold = rest.length - told.length;
  return [said(first.value), ...told, ...(untold > 0 ? [`and ${untold} more`] : [])].join(', ');
}
