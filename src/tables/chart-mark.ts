/** Path data of one symbol. */
export interface Mark {
  /** Lines. */
  readonly lines: string;
  /** Shapes filled with ink. */
  readonly solid: string;
  /** Shapes filled with paper and outlined, drawn over the lines. */
  readonly over: string;
}
