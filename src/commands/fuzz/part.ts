/** What every part of the fuzz command is given and hands back. */

export interface FuzzOptions {
  readonly seed: number;
  /** Lines through the terminal's answer function. */
  readonly lines: number;
  /** The script of the terminal, for whole processes. */
  readonly calc: string;
}

export interface Found {
  /** What was run and what came of it, one line each. */
  readonly counts: readonly string[];
  /** One sentence for each thing that must not happen, with the input that makes it happen. */
  readonly faults: readonly string[];
}
