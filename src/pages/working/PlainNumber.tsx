/** A number of a working in plain text. */
import { Show } from 'solid-js';
import { digitsAndPower } from './working-words.ts';

export function PlainNumber(props: { readonly value: number }) {
  const written = () => digitsAndPower(props.value);
  return (
    <>
      {written()[0]}
      <Show when={written()[1]}>
        {(power) => (
          <>
            {' '}
            × 10<sup>{power()}</sup>
          </>
        )}
      </Show>
    </>
  );
}
