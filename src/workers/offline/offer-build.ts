/** Offers a newer build once it is there whole and waits. */
import { setWaitingBuild } from '../../state/waiting-build.ts';

/** A page that stays open for days looks for a newer build when the reader comes back to it. */
const LOOK_AGAIN_MS = 3_600_000;
/** So long after the press the page opens anew in any case. */
const LONGEST_WAIT_MS = 5000;

export function offerNewer(registration: ServiceWorkerRegistration): void {
  const container = navigator.serviceWorker;
  const take = () => {
    const openAnew = () => location.reload();
    // It may have taken over by itself since it was offered.
    if (!registration.waiting) return openAnew();
    container.addEventListener('controllerchange', openAnew, { once: true });
    registration.waiting.postMessage('take over');
    // The older build goes on while this page waits for answers from it, which opening it anew puts an end to.
    setTimeout(openAnew, LONGEST_WAIT_MS);
  };
  const look = () => {
    if (registration.waiting) setWaitingBuild(() => take);
  };
  const follow = () => registration.installing?.addEventListener('statechange', look);
  registration.addEventListener('updatefound', follow);
  follow();
  look();
  let looked = Date.now();
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState !== 'visible' || Date.now() - looked < LOOK_AGAIN_MS) return;
    looked = Date.now();
    // Without a network there is nothing newer to be had.
    registration.update().catch(() => undefined);
  });
}
