/** How a command is described: what each `*-line.ts` beside a command gives to the command line. */
import type { Command } from "commander";

/** What a command that runs is given of the whole line, and whom it tells how it ended. */
export interface Line {
  /** Whether `--quiet` was written. */
  readonly isQuiet: () => boolean;
  readonly finish: (code: number) => void;
}

/**
 * Adds a command to the program: its words, its options, and what runs. What runs is imported only
 * then, so that no command waits for what another needs.
 */
export type AddCommand = (program: Command, line: Line) => void;
