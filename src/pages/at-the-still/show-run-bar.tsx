/** Puts the line of the run under way above whatever place is open, once. */
import type { Accessor } from 'solid-js';
import { render } from 'solid-js/web';
import type { Reader } from '../../../sim/index.ts';
import { createPlace } from '../../state/route.ts';
import { RunBar } from './RunBar.tsx';

let isShown = false;

function PlacedRunBar(props: { readonly reader: Reader }) {
  const place = createPlace();
  return <RunBar reader={props.reader} isElsewhere={place() !== 'at-the-still'} />;
}

export function showRunBar(reader: Accessor<Reader>): void {
  const main = document.querySelector('main');
  if (isShown || !main) return;
  isShown = true;
  const home = document.createElement('div');
  main.before(home);
  render(() => <PlacedRunBar reader={reader()} />, home);
}
