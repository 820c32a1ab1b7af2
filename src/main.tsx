import { render } from 'solid-js/web';
import { App } from './app/App.tsx';
import { openBench } from './state/opening.ts';
import { keptStore } from './state/browser-store.ts';
import { REDUCED_MOTION } from './ui/reduced-motion.ts';
import { keepOffline } from './workers/offline/keep-offline.ts';
import { createRunClient } from './workers/run-client.ts';
import { workerPool } from './workers/start-pool.ts';
import './styles/fonts.css';
import './styles/tokens.css';
import './styles/base.css';
import './styles/touch.css';
import './styles/print.css';

const root = document.getElementById('app');
if (!root) throw new Error('index.html has no element with the id "app"');

const store = keptStore();
const client = createRunClient(workerPool());
const wantsCalm = matchMedia(REDUCED_MOTION).matches;

/** No top-level await: whatever is fetched late would wait for this file to end, and this file for it. */
async function start(root: HTMLElement): Promise<void> {
  const opened = await openBench(store, client);
  root.replaceChildren();
  if (opened.ok) {
    const { opening } = opened;
    render(
      () => (
        <App
          initialOpening={opening}
          initialClient={client}
          initialStore={store}
          initialTrouble={opening.trouble}
          initiallyKept={opening.isKept}
          startingPoints={() => client.examples()}
          setsOff={opening.firstVisit && !wantsCalm}
        />
      ),
      root,
    );
    keepOffline();
  } else {
    const message = document.createElement('p');
    message.textContent = `Limbeck could not start: ${opened.message}`;
    root.append(message);
  }
}

void start(root);
