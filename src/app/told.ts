/** What the page tells the reader in a line, and what can be done about it. */
export interface Told {
  readonly message: string;
  readonly action?: { readonly words: string; readonly act: () => void };
}
