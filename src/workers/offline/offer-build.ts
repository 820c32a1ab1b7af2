/** Offers a newer build once it is there whole and waits. */
import { setWaitingBuild } from '../../state/waiting-build.ts';

/** A page that stays open for days looks for a newer build when the reader comes back to it. */
const LOOK_AGAIN_MS = 3_600_000;

export function offerNewer(registration: ServiceWorkerRegistration): void {
  const container = navigator.serviceWorker;
  const take = () => {
    container.addEventListener('controllerchange', () => location.reload(), { once: true });
    registration.waiting?.postMessage('take over');
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
