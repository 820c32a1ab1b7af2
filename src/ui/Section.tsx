/** A part of the page that, should it fail, fails alone and says so. */
import { ErrorBoundary, type JSX } from 'solid-js';
import { errorMessage } from '../workers/errors.ts';

export interface SectionProps {
  readonly name: string;
  readonly children: JSX.Element;
}

export function Section(props: SectionProps) {
  return (
    <ErrorBoundary
      fallback={(error: unknown, again) => (
        <div class="notice" role="alert">
          <p>
            {props.name} can’t be shown: {errorMessage(error)}.
          </p>
          <button type="button" onClick={again}>
            Try again
          </button>
        </div>
      )}
    >
      {props.children}
    </ErrorBoundary>
  );
}
