/** A schedule in one line: `100 %`, or `100 %, from 32 min 60 %, then evenly to 40 % at 1 h 10 min`. */
import {
  type FieldInfo,
  type Schedule,
  formatDuration,
  formatQuantity,
  type UnitSystem,
} from '../../../../sim/index.ts';

/** More knots than this are counted instead of told. */
const MOST_TOLD = 5;

export function scheduleWords(schedule: Schedule, field: Pick<FieldInfo, 'unit' | 'path'>, system: UnitSystem): string {
  const said = (value: number) => formatQuantity(value, field.unit, system, { hint: field.path });
  const [first, ...rest] = schedule;
  if (!first) return 'not set';
  if (rest.length === 0) return `${said(first.value)} throughout`;
  const told = rest
    .slice(0, MOST_TOLD - 1)
    .map((knot) =>
      knot.shape === 'ramp'
        ? `then evenly to ${said(knot.value)} at ${formatDuration(knot.at_s)}`
        : `from ${formatDuration(knot.at_s)} ${said(knot.value)}`,
    );
  const untold = rest.length - told.length;
  return [said(first.value), ...told, ...(untold > 0 ? [`and ${untold} more`] : [])].join(', ');
}
