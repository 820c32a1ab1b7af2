/** Asks the browser to keep the app for times without a network, as soon as the first view stands. */
export function keepOffline(): void {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return;
  navigator.serviceWorker
    .register(new URL('offline-worker.js', document.baseURI), { updateViaCache: 'none' })
    .then(async (registration) => {
      // A page that no build has been kept for has nothing newer to wait for.
      if (registration.active) (await import('./offer-build.ts')).offerNewer(registration);
    })
    // Where it is refused (a private window, a full disk) everything else goes on as before.
    .catch(() => undefined);
}
