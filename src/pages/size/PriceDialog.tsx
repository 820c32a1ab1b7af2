/** The reader's own prices: one for each metal by weight, one for each tube as its shop sells it; in and out as a file. */
import { createSignal, For, Show } from 'solid-js';
import {
  DEFAULT_METAL_PRICES,
  LONGEST_PIECE_m,
  MOST_PRICE,
  NO_PRICES,
  priceListCsv,
  priceListMessages,
  quantities,
  readPriceList,
  tubes,
  type OwnPrice,
  type PriceList,
  type Reader,
} from '../../../sim/index.ts';
import { saveCsv } from '../../state/downloads.ts';
import { keepPrices, prices } from '../../state/price-list.ts';
import { Dialog } from '../../ui/Dialog.tsx';
import { QuantityField } from '../../ui/QuantityField.tsx';

export interface PriceDialogProps {
  readonly open: boolean;
  /** The tube whose price is asked for; `null` for none in particular. */
  readonly tube: string | null;
  readonly onTube: (id: string) => void;
  readonly reader: Reader;
  readonly onClose: () => void;
}

const LARGEST_FILE_BYTES = 500_000;
const FIRST_PIECE_m = 10;

const METAL_WORDS: Readonly<Record<string, string>> = {
  copper: 'Copper',
  'stainless-steel': 'Stainless steel',
  'borosilicate-glass': 'Glass',
};

export function PriceDialog(props: PriceDialogProps) {
  const [told, setTold] = createSignal<readonly string[]>([]);
  const messages = () => priceListMessages(props.reader);
  const own = (): OwnPrice | undefined => (props.tube === null ? undefined : prices().tubes[props.tube]);
  const keep = (change: Partial<PriceList>) => keepPrices({ ...prices(), ...change });
  const keepTube = (id: string, price: OwnPrice | undefined) =>
    keep({
      tubes: Object.fromEntries(
        [...Object.entries(prices().tubes).filter(([other]) => other !== id), [id, price] as const].filter(
          (entry): entry is [string, OwnPrice] => entry[1] !== undefined,
        ),
      ),
    });
  const rename = (soldBy: OwnPrice['soldBy']) => {
    const id = props.tube;
    const price = own();
    if (id === null || price === undefined) return;
    keepTube(
      id,
      soldBy === 'metre'
        ? { soldBy, price: price.price }
        : {
            soldBy,
            price: price.price,
            length_m: tubes.find((tube) => tube.id === id)?.coilLengths_m[0] ?? FIRST_PIECE_m,
          },
    );
  };
  const open = () => {
    const field = document.createElement('input');
    field.type = 'file';
    field.accept = '.csv,text/csv,text/plain';
    field.addEventListener('change', () => {
      const file = field.files?.[0];
      if (file) void read(file);
    });
    field.click();
  };
  const read = async (file: File) => {
    if (file.size > LARGEST_FILE_BYTES) return setTold([`“${file.name}” is too large to be a price list.`]);
    const { list, problems } = readPriceList(await file.text());
    const found = Object.keys(list.metals).length + Object.keys(list.tubes).length;
    if (found > 0)
      keep({ metals: { ...prices().metals, ...list.metals }, tubes: { ...prices().tubes, ...list.tubes } });
    return setTold([
      `${found} ${found === 1 ? 'price' : 'prices'} read.`,
      ...problems.map((each) => messages().problem(each)),
    ]);
  };
  /** What a metre of a tube costs by its weight. */
  const byWeight = (id: string): string | null => {
    const tube = tubes.find((row) => row.id === id);
    if (!tube) return null;
    const perKilogram = prices().metals[tube.material] ?? DEFAULT_METAL_PRICES[tube.material];
    return perKilogram === undefined ? null : quantities(props.reader).cost(perKilogram * tube.massPerLength_kg_m);
  };
  const nameOf = (id: string) => tubes.find((tube) => tube.id === id)?.name ?? id;

  return (
    <Dialog open={props.open} title="Your prices" onClose={() => props.onClose()}>
      <div class="prices">
        <p>{messages().defaults}</p>
        <h3>By weight of metal</h3>
        <div class="prices-fields">
          <For each={Object.keys(DEFAULT_METAL_PRICES)}>
            {(id) => (
              <QuantityField
                label={METAL_WORDS[id] ?? id}
                value={prices().metals[id] ?? DEFAULT_METAL_PRICES[id] ?? 0}
                unit="1/kg"
                system={props.reader.units}
                currency={props.reader.currency ?? null}
                min={0.01}
                max={MOST_PRICE}
                onCommit={(value) => keep({ metals: { ...prices().metals, [id]: value } })}
              />
            )}
          </For>
        </div>
        <h3>By tube</h3>
        <label class="answer-choice">
          <span>Tube</span>
          <select onChange={(event) => props.onTube(event.currentTarget.value)}>
            <option value="" disabled selected={props.tube === null}>
              choose a tube
            </option>
            <For each={tubes}>
              {(tube) => (
                <option value={tube.id} selected={tube.id === props.tube}>
                  {tube.name} ({tube.standard})
                </option>
              )}
            </For>
          </select>
        </label>
        <Show when={props.tube}>
          {(id) => (
            <div class="prices-fields">
              <QuantityField
                label={own()?.soldBy === 'piece' ? 'Price of a piece' : 'Price'}
                value={own()?.price ?? null}
                unit={own()?.soldBy === 'piece' ? '1' : '1/m'}
                system={props.reader.units}
                currency={props.reader.currency ?? null}
                min={0.01}
                max={MOST_PRICE}
                onClear={() => keepTube(id(), undefined)}
                onCommit={(value) => keepTube(id(), { ...(own() ?? { soldBy: 'metre' as const }), price: value })}
              />
              <Show when={own() ? null : byWeight(id())}>
                {(price) => <p class="answer-quiet">Left open, its weight of metal counts: {price()} for a metre.</p>}
              </Show>
              <Show when={own()}>
                {(price) => (
                  <>
                    <fieldset class="choice-radios">
                      <legend class="visually-hidden">Sold</legend>
                      <label class="choice-radio">
                        <input
                          type="radio"
                          name="sold-by"
                          checked={price().soldBy === 'metre'}
                          onChange={() => rename('metre')}
                        />{' '}
                        cut to length
                      </label>
                      <label class="choice-radio">
                        <input
                          type="radio"
                          name="sold-by"
                          checked={price().soldBy === 'piece'}
                          onChange={() => rename('piece')}
                        />{' '}
                        in whole pieces
                      </label>
                    </fieldset>
                    <Show when={pieceOf(price())}>
                      {(piece) => (
                        <QuantityField
                          label="Length of a piece"
                          value={piece().length_m}
                          unit="m"
                          hint="run"
                          system={props.reader.units}
                          min={0.1}
                          max={LONGEST_PIECE_m}
                          onCommit={(length_m) => keepTube(id(), { ...piece(), length_m })}
                        />
                      )}
                    </Show>
                  </>
                )}
              </Show>
            </div>
          )}
        </Show>
        <Show when={Object.keys(prices().tubes).length > 0}>
          <ul class="prices-list">
            <For each={Object.keys(prices().tubes)}>
              {(id) => (
                <li>
                  {nameOf(id)}{' '}
                  <button type="button" class="word" onClick={() => keepTube(id, undefined)}>
                    Delete<span class="visually-hidden"> the price of {nameOf(id)}</span>
                  </button>
                </li>
              )}
            </For>
          </ul>
        </Show>
        <div class="answer-tools">
          <button type="button" onClick={open}>
            Open a price list (CSV)
          </button>
          <button type="button" onClick={() => saveCsv(priceListCsv(prices()), 'tube-prices.csv')}>
            Save your prices (CSV)
          </button>
          <button
            type="button"
            onClick={() => {
              keepPrices(NO_PRICES);
              setTold([]);
            }}
          >
            Default prices again
          </button>
        </div>
        <div role="status">
          <For each={told()}>{(line) => <p>{line}</p>}</For>
        </div>
      </div>
    </Dialog>
  );
}

const pieceOf = (price: OwnPrice) => (price.soldBy === 'piece' ? price : null);
