/** Standing until the water has left the oil. */
import { For } from 'solid-js';
import { dryingSheet, standingSheet, WATER_DROPS_m } from '../../../sim/index.ts';
import { Source } from '../parts/Source.tsx';
import { SheetButton } from '../working/SheetButton.tsx';
import { spanOrTime, type BottlingPartProps } from './bottling-plan.ts';
import { Amount } from './fields.tsx';

export function Settling(props: BottlingPartProps) {
  return (
    <section aria-labelledby="settle-title">
      <h3 id="settle-title">Let it settle</h3>
      <div class="form-rows">
        <Amount
          of="height_m"
          label="Height of the oil"
          units={props.plan.units()}
          unit="m"
          hint="size"
          min={0.005}
          max={0.5}
        />
        <Amount
          of="standing_K"
          label="Temperature while it stands"
          units={props.plan.units()}
          unit="K"
          hint="temperature"
          min={278.15}
          max={313.15}
        />
      </div>
      <div class="answer-table" role="region" aria-label="Time in which water drops leave the oil" tabindex="0">
        <table>
          <caption class="visually-hidden">Time in which water drops leave the oil</caption>
          <thead>
            <tr>
              <th scope="col" class="is-words">
                Drops of water
              </th>
              <th scope="col">Gone after</th>
              <th scope="col" class="is-words">
                Working
              </th>
            </tr>
          </thead>
          <tbody>
            <For each={WATER_DROPS_m}>
              {(drop, at) => (
                <tr>
                  <th scope="row" class="is-words">
                    {props.plan.q().drop(drop)}
                  </th>
                  <td>{spanOrTime(props.plan.settled().times_s[at()] as number, props.plan.q().time)}</td>
                  <td class="is-words">
                    <SheetButton
                      sheet={() => standingSheet(props.oil.composition, props.now.standing_K, props.now.height_m, drop)}
                      units={props.plan.units()}
                      of={`the time for drops of ${props.plan.q().drop(drop)}`}
                    />
                  </td>
                </tr>
              )}
            </For>
          </tbody>
        </table>
      </div>
      <ul class="rules">
        <li>
          The water gathers{' '}
          {props.plan.settled().waterSinks
            ? 'at the bottom: draw it off from below'
            : 'on top: this oil sinks. Draw the oil off from below'}
          . Stand overnight in a tall, narrow vessel, then 2–7 days closed, then pour off the clear oil.{' '}
          <Source of={{ kind: 'common-practice', source: 'trade practice' }} />
        </li>
        <li>
          This oil holds about {props.plan.q().mass(props.plan.dried().water_kg)} of water that no standing removes,
          half or twice that. It clouds in the cold.{' '}
          <SheetButton
            sheet={() => dryingSheet(props.oil.composition, props.oil.oil_m3, props.now.standing_K)}
            units={props.plan.units()}
            of="the water that the oil holds"
          />{' '}
          <Source of={{ kind: 'estimated', source: 'group contribution, good to a factor of two; never measured' }} />
        </li>
        <li>
          Thick oils: warm to {props.plan.q().range(308.15, 313.15, 'K', 'temperature')}. No open flame.{' '}
          <Source of={{ kind: 'common-practice', source: 'trade practice' }} />
        </li>
      </ul>
    </section>
  );
}
