/** What the device lends beside a hot pot: a screen that stays on, and notices outside the page. */
import { createSignal } from 'solid-js';

const [awake, setAwake] = createSignal(false);
const [mayNotify, setMayNotify] = createSignal(
  typeof Notification !== 'undefined' && Notification.permission === 'granted',
);
export { awake, mayNotify };

export const canStayAwake = (): boolean => 'wakeLock' in navigator;
export const canNotify = (): boolean => typeof Notification !== 'undefined';

let lock: WakeLockSentinel | null = null;

/** The browser lets go of the screen whenever the page is hidden, so it is asked again each time it is seen. */
export async function stayAwake(): Promise<void> {
  if (!canStayAwake() || document.visibilityState !== 'visible' || (lock !== null && !lock.released)) return;
  try {
    lock = await navigator.wakeLock.request('screen');
    setAwake(true);
    lock.addEventListener('release', () => setAwake(false));
  } catch {
    setAwake(false);
  }
}

export async function mayRest(): Promise<void> {
  await lock?.release().catch(() => undefined);
  lock = null;
  setAwake(false);
}

export async function askToNotify(): Promise<void> {
  if (canNotify()) setMayNotify((await Notification.requestPermission()) === 'granted');
}

export async function notify(title: string, body: string): Promise<void> {
  if (!canNotify() || Notification.permission !== 'granted') return;
  const options = { body, tag: 'limbeck-still', renotify: true };
  try {
    const worker = await navigator.serviceWorker?.getRegistration();
    if (worker) await worker.showNotification(title, options);
    else new Notification(title, options);
  } catch {
    // A page that may not notify still sounds and shows.
  }
}
