/** Every standard tube as this still's condenser: how much, how heavy, what it costs, and whether it goes in. */
import { createMemo, Show } from 'solid-js';
import {
  controlSafetyMessages,
  isCoil,
  LIMITS,
  priceListMessages,
  quantities,
  sizingMessages,
  tubes,
  type Reader,
  type Scenario,
  displayUnit,
  formatNumber,
  formatQuantity,
  type UnitSystem,
} from '../../../sim/index.ts';
import { AnswerTable, type TableColumn } from '../parts/AnswerTable.tsx';
import { prices } from '../../state/price-list.ts';
import { Progress } from '../parts/Progress.tsx';
import { SaveBar } from '../parts/SaveBar.tsx';
import { TubeFilters } from './TubeFilters.tsx';
import { bendRadius, costOfRow, isGood, isOwnTube, wanted, type TubeFilter, type TubeRow } from './tube-rows.ts';
import { bendWords, tubesTable, turnRadius } from './tubes-table.ts';
import type { TubeSession } from './tube-session.ts';
import type { NotUsed, TubeUse } from './tube-use.ts';

export interface TubeTableProps {
  readonly session: TubeSession;
  readonly scenario: Scenario;
  readonly units: UnitSystem;
  readonly reader: Reader;
  readonly filter: TubeFilter;
  readonly onFilter: (filter: TubeFilter) => void;
  readonly onStart: () => void;
  /** Asks for the reader's own price of a tube, or of none in particular. */
  readonly onPrices: (id: string | null) => void;
  /** Puts a tube with its length, margin included, on the still. */
  readonly use: TubeUse;
}

const missing = '–';
/** Pressure drops of tubes are of this size, Pa: it chooses the unit of their column. */
const USUAL_DROP = 100;

export function TubeTable(props: TubeTableProps) {
  const reader = () => props.reader;
  const messages = () => sizingMessages(reader());
  const coiled = () => isCoil(props.scenario.condenser);
  // A row stays the same object until its own size comes, so that who stands in it with the keyboard keeps standing there.
  const rows = createMemo<readonly TubeRow[]>((before) => {
    const sizes = props.session.sizes();
    return tubes.map((tube, index) => {
      const size = sizes.get(tube.id) ?? null;
      const row = before?.[index];
      return row?.size === size ? row : { tube, size };
    });
  });
  const size = (value: number | null | undefined) =>
    formatQuantity(value, 'm', props.units, { hint: 'size', bare: true });
  const bore = (value: number) => formatQuantity(value, 'm', props.units, { hint: 'bore', bare: true });
  const unit = (si: string, hint: string) => displayUnit(si, props.units, hint).label;
  const mass = () => displayUnit('kg', props.units, 'mass');
  const drop = () => displayUnit('Pa', props.units, 'pressure', USUAL_DROP);
  const isOwn = (row: TubeRow) => isOwnTube(row, props.scenario);
  const seen = (row: TubeRow, filter: TubeFilter) => wanted(row, filter, prices());
  // One's own tube stays for comparison, even where it is not one to buy.
  const shown = createMemo(() =>
    rows().filter(
      (row) =>
        seen(row, props.filter) || (isOwn(row) && seen(row, { ...props.filter, onlyGood: false, onlyPriced: false })),
    ),
  );
  const length = ({ size: found }: TubeRow) => {
    if (!found) return '…';
    return found.lengthWithMargin_m === null
      ? messages().verdict(found.verdict)
      : formatQuantity(found.lengthWithMargin_m, 'm', props.units, { hint: 'run', bare: true });
  };
  const cost = (row: TubeRow) => costOfRow(row, props.scenario, prices());
  const amount = (row: TubeRow) => cost(row)?.amount ?? null;

  const bend = (row: TubeRow) => bendWords(row, reader());

  const whyNot = (told: NotUsed) =>
    'verdict' in told
      ? `${told.tube.name} stays off the bench. Sized for itself in nine runs of ten: ${messages().verdict(told.verdict)}.`
      : `${told.tube.name} could not be sized: ${told.problem}`;

  const noneLeft = () =>
    props.filter.onlyGood && rows().some((row) => seen(row, { ...props.filter, onlyGood: false }))
      ? `No tube of these choices works for the whole run${coiled() ? ' and fits the tub' : ''}. Untick “only what works and fits” to see why each fails. A gentler boil, more or colder water or a warmer limit leaves more tubes.`
      : 'No tube matches these choices.';

  const coilColumns = (): readonly TableColumn<TubeRow>[] => [
    {
      id: 'turns',
      title: 'Turns',
      cell: ({ size: found }) =>
        found?.turns === null || found?.turns === undefined ? missing : formatNumber(found.turns, 1),
      sortBy: ({ size: found }) => found?.turns ?? null,
    },
    {
      id: 'height',
      title: 'Coil height',
      unit: unit('m', 'size'),
      cell: ({ size: found }) => size(found?.coilHeight_m),
      sortBy: ({ size: found }) => found?.coilHeight_m ?? null,
    },
    {
      id: 'fits',
      title: 'In the tub',
      isWords: true,
      cell: (row) =>
        row.size?.fitsTub === true ? (
          'fits'
        ) : row.size?.fitsTub === false ? (
          <span class="is-bad">too tall</span>
        ) : (
          missing
        ),
      sortBy: ({ size: found }) =>
        found?.fitsTub === null || found?.fitsTub === undefined ? null : found.fitsTub ? 0 : 1,
    },
    {
      id: 'bend',
      title: 'Bends to',
      unit: unit('m', 'size'),
      isWords: true,
      cell: (row) => (
        <>
          {size(bendRadius(row))}{' '}
          <span
            classList={{ 'answer-quiet': row.size?.bend !== 'too-tight', 'is-bad': row.size?.bend === 'too-tight' }}
          >
            {bend(row)}
          </span>
        </>
      ),
      sortBy: bendRadius,
    },
  ];
  const columns = createMemo<readonly TableColumn<TubeRow>[]>(() => [
    {
      id: 'name',
      title: 'Tube',
      isWords: true,
      cell: (row) => (
        <>
          <span class="tube-name">{row.tube.name}</span>
          <span class="tube-standard">
            {row.tube.standard}
            {isOwn(row) ? ', yours' : ''}
          </span>
        </>
      ),
      sortBy: ({ tube }) => tube.name,
    },
    {
      id: 'bore',
      title: 'Bore',
      unit: unit('m', 'bore'),
      cell: ({ tube }) => bore(tube.insideDiameter_m),
      sortBy: ({ tube }) => tube.insideDiameter_m,
    },
    {
      id: 'outside',
      title: 'Outside',
      unit: unit('m', 'bore'),
      cell: ({ tube }) => bore(tube.outsideDiameter_m),
      sortBy: ({ tube }) => tube.outsideDiameter_m,
    },
    {
      id: 'length',
      title: 'Length',
      unit: unit('m', 'run'),
      cell: length,
      sortBy: ({ size: found }) => found?.lengthWithMargin_m ?? null,
    },
    {
      id: 'cost',
      title: 'Cost',
      unit: 'with ends',
      cell: (row) => (
        <Show when={cost(row)} fallback={missing}>
          {(known) => (
            <button
              type="button"
              class="word"
              aria-label={`Cost of ${row.tube.name}: ${quantities(reader()).cost(known().amount)}, ${known().basis === 'own' ? 'at your price' : 'at a default price'}. Change the price`}
              classList={{ 'is-default': known().basis === 'default' }}
              onClick={() => props.onPrices(row.tube.id)}
            >
              {quantities(reader()).cost(known().amount)}
            </button>
          )}
        </Show>
      ),
      sortBy: amount,
    },
    {
      id: 'packs',
      title: 'To buy',
      isWords: true,
      cell: (row) => (
        <Show when={cost(row)} fallback={missing}>
          {(known) => <>{messages().toBuy(known())}</>}
        </Show>
      ),
      sortBy: (row) => cost(row)?.bought_m ?? null,
    },
    {
      id: 'use',
      title: 'Choose',
      cell: (row) => (
        <Show when={row.size !== null && row.size.lengthWithMargin_m !== null}>
          <button type="button" class="word" onClick={() => props.use.use(row.tube)}>
            Use it<span class="visually-hidden"> {row.tube.name}</span>
          </button>
        </Show>
      ),
    },
    ...(coiled() ? coilColumns() : []),
    {
      id: 'mass',
      title: 'Metal',
      unit: mass().label,
      cell: ({ size: found }) => formatNumber(mass().fromSI(found?.mass_kg ?? Number.NaN), 2),
      sortBy: ({ size: found }) => found?.mass_kg ?? null,
    },
    {
      id: 'wall',
      title: 'Wall',
      unit: unit('m', 'wall'),
      cell: ({ tube }) => formatQuantity(tube.wall_m, 'm', props.units, { hint: 'wall', bare: true }),
      sortBy: ({ tube }) => tube.wall_m,
    },
    {
      id: 'speed',
      title: 'Steam speed',
      unit: unit('m/s', 'speed'),
      cell: (row) => (
        <Show when={row.size?.steamSpeed_m_s ?? null} fallback={missing}>
          {(speed) => (
            <span classList={{ 'is-bad': speed() > LIMITS.vapourSpeed_m_s }}>
              {formatQuantity(speed(), 'm/s', props.units, { hint: 'speed', bare: true })}
              {speed() > LIMITS.vapourSpeed_m_s ? ' fast' : ''}
            </span>
          )}
        </Show>
      ),
      sortBy: ({ size: found }) => found?.steamSpeed_m_s ?? null,
    },
    {
      id: 'drop',
      title: 'Pressure drop',
      unit: drop().label,
      cell: ({ size: found }) =>
        found?.peakDrop_Pa === null || found?.peakDrop_Pa === undefined
          ? missing
          : formatNumber(drop().fromSI(found.peakDrop_Pa), drop().decimals),
      sortBy: ({ size: found }) => found?.peakDrop_Pa ?? null,
    },
    {
      id: 'food',
      title: 'Food contact',
      isWords: true,
      cell: ({ tube }) => messages().foodContact(tube.material),
      sortBy: ({ tube }) => tube.material,
    },
  ]);

  return (
    <section class="tubes" aria-labelledby="tubes-title">
      <h3 id="tubes-title">Which tube</h3>
      <p class="answer-quiet">
        {coiled() ? `${messages().turns(turnRadius(props.scenario))} ` : ''}Each with the length that it needs to be as
        sure as your own, margin included. The cost is that of the whole pieces to buy. {messages().otherTubes}
        {coiled() ? ` ${controlSafetyMessages(reader()).coil}` : ''}
      </p>
      <p class="answer-quiet">
        {priceListMessages(reader()).defaults}{' '}
        <button type="button" onClick={() => props.onPrices(null)}>
          Your prices
        </button>
      </p>
      <TubeFilters filter={props.filter} onFilter={props.onFilter} units={props.units}>
        <Show when={props.session.total() > 0}>
          <Progress
            words="tubes tried"
            done={props.session.sizes().size}
            of={props.session.total()}
            running={props.session.running()}
            onCancel={() => props.session.stop()}
          />
        </Show>
        <Show when={!props.session.running() && props.session.sizes().size < tubes.length}>
          <button type="button" onClick={() => props.onStart()}>
            Try every tube
          </button>
        </Show>
      </TubeFilters>
      <p class="tubes-state answer-quiet" role="status">
        <Show when={props.use.sizing()}>
          {(tube) => <>Sizing {tube().name} for itself; then it is on the bench…</>}
        </Show>
      </p>
      <Show when={props.use.notUsed()}>
        {(told) => (
          <p class="answer-problem" role="alert">
            {whyNot(told())}
          </p>
        )}
      </Show>
      <Show when={props.session.problem()}>
        {(told) => (
          <p class="answer-problem" role="alert">
            The tubes could not all be tried: {told()}
          </p>
        )}
      </Show>
      <Show when={shown().length > 0} fallback={<p class="answer-quiet">{noneLeft()}</p>}>
        <AnswerTable
          class="tube-table"
          caption="Standard tubes as the condenser of this still"
          columns={columns()}
          rows={shown()}
          rowClass={(row) =>
            `${isOwn(row) ? 'is-own' : ''} ${row.size === null ? 'is-untried' : ''} ${row.size !== null && !isGood(row) ? 'is-out' : ''}`
          }
          firstSort={{ id: 'cost', down: false }}
        />
      </Show>
      <SaveBar
        of="the tubes"
        runName={props.scenario.name}
        table={() => tubesTable(shown(), props.scenario, reader(), prices())}
        json={() => shown()}
      />
    </section>
  );
}
