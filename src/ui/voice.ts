/** Words for a polite voice, spoken once nothing new has come for a moment. */
import { debounce } from '@solid-primitives/scheduled';
import { createSignal, type Accessor } from 'solid-js';

const SPEAK_AFTER_MS = 400;

export function createVoice(): { readonly spoken: Accessor<string>; readonly speak: (words: string) => void } {
  const [spoken, setSpoken] = createSignal('');
  return { spoken, speak: debounce((words: string) => setSpoken(words), SPEAK_AFTER_MS) };
}
