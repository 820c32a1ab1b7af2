/** How far a run that takes long has come, as a share, and how long all of it is likely to take, s. */
export interface Progress {
  readonly share: number;
  readonly whole_s: number;
}
