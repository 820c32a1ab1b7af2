/** A line across the page that the reader should see, and may put away. */
import { Show } from 'solid-js';

export interface NoticeProps {
  readonly message: string | null;
  readonly action?: { readonly words: string; readonly act: () => void } | undefined;
  readonly onDismiss?: () => void;
}

export function Notice(props: NoticeProps) {
  return (
    <div role="status" class="notice-place">
      <Show when={props.message}>
        {(message) => (
          <div class="notice screen-only">
            <p>{message()}</p>
            <Show when={props.action}>
              {(action) => (
                <button type="button" onClick={() => action().act()}>
                  {action().words}
                </button>
              )}
            </Show>
            <Show when={props.onDismiss}>
              {(dismiss) => (
                <button type="button" onClick={() => dismiss()()}>
                  Put away
                </button>
              )}
            </Show>
          </div>
        )}
      </Show>
    </div>
  );
}
