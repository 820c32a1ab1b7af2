/** Two sounds made on the device, with a buzz where it can: a soft one for what is due, a hard one for danger. */
export type Ring = 'notice' | 'alarm';

interface Tone {
  readonly at_s: number;
  readonly lasts_s: number;
  readonly pitch_Hz: number;
}

const SOUNDS: Readonly<
  Record<Ring, { readonly tones: readonly Tone[]; readonly shape: OscillatorType; readonly loud: number }>
> = {
  notice: {
    shape: 'sine',
    loud: 0.35,
    tones: [
      { at_s: 0, lasts_s: 0.35, pitch_Hz: 587 },
      { at_s: 0.4, lasts_s: 0.6, pitch_Hz: 784 },
    ],
  },
  alarm: {
    shape: 'square',
    loud: 0.3,
    tones: [0, 0.5, 1].flatMap((at_s) => [
      { at_s, lasts_s: 0.2, pitch_Hz: 1245 },
      { at_s: at_s + 0.22, lasts_s: 0.2, pitch_Hz: 831 },
    ]),
  },
};

const BUZZ_MS: Readonly<Record<Ring, number[]>> = { notice: [200, 120, 200], alarm: [500, 150, 500, 150, 500] };

let context: AudioContext | null = null;

export const canSound = (): boolean => typeof AudioContext !== 'undefined';
export const canBuzz = (): boolean => typeof navigator.vibrate === 'function';

/** A browser lets a page sound only after a press: call it from one. */
export async function readySound(): Promise<boolean> {
  if (!canSound()) return false;
  context ??= new AudioContext();
  await context.resume().catch(() => undefined);
  return context.state === 'running';
}

export function ring(kind: Ring): void {
  if (canBuzz()) navigator.vibrate(BUZZ_MS[kind]);
  if (context?.state !== 'running') return;
  const { tones, shape, loud } = SOUNDS[kind];
  for (const { at_s, lasts_s, pitch_Hz } of tones) {
    const begins = context.currentTime + at_s;
    const tone = context.createOscillator();
    const volume = context.createGain();
    tone.type = shape;
    tone.frequency.value = pitch_Hz;
    // A tone that is cut off clicks.
    volume.gain.setValueAtTime(0, begins);
    volume.gain.linearRampToValueAtTime(loud, begins + 0.02);
    volume.gain.setValueAtTime(loud, begins + lasts_s - 0.05);
    volume.gain.linearRampToValueAtTime(0, begins + lasts_s);
    tone.connect(volume).connect(context.destination);
    tone.start(begins);
    tone.stop(begins + lasts_s);
  }
}
