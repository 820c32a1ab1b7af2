/** Asks the browser to keep the app for times without a network, once the first view has had its time. */

const AFTER_MS = 5000;

export function keepOffline(): void {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return;
  setTimeout(() => {
    // Where it is refused (a private window, a full disk) everything else goes on as before.
    navigator.serviceWorker.register(new URL('offline-worker.js', document.baseURI)).catch(() => undefined);
  }, AFTER_MS);
}
