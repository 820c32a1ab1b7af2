/** Small signs, drawn: no font need have them. */
export const CheckMark = () => (
  <svg class="drawn-mark" viewBox="0 0 10 10" aria-hidden="true">
    <path d="M1.5 5.5 4 8.5 8.5 1.5" />
  </svg>
);

export const SortMark = (props: { readonly down: boolean }) => (
  <svg class="drawn-mark is-filled" viewBox="0 0 10 10" aria-hidden="true">
    <path d={props.down ? 'M1 3h8L5 8Z' : 'M1 7h8L5 2Z'} />
  </svg>
);
