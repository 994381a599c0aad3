/** What a command says while it works: one line that changes in a terminal, plain lines elsewhere. */
import pc from "picocolors";

export interface Progress {
  /** Begins a stage; the one before it is done. */
  readonly stage: (name: string) => void;
  /** Tells how far the stage is. */
  readonly count: (done: number, total: number) => void;
  /** Says something that stays to be read. */
  readonly tell: (words: string) => void;
  /** Ends the last stage. */
  readonly finish: () => void;
  /** The stages that were gone through, with their milliseconds. */
  readonly times: () => readonly { readonly name: string; readonly ms: number }[];
}

/** Progress on standard error, so that standard output holds results alone. */
export function startProgress(quiet: boolean): Progress {
  const isLive = !quiet && process.stderr.isTTY === true;
  const times: { name: string; ms: number }[] = [];
  let current: { name: string; begun: number } | undefined;
  const end = () => {
    if (current) times.push({ name: current.name, ms: performance.now() - current.begun });
    current = undefined;
  };
  const show = (text: string) => {
    if (isLive) process.stderr.write(`\r\u001b[2K${pc.dim(text)}`);
  };
  return {
    stage(name) {
      end();
      current = { name, begun: performance.now() };
      if (isLive) show(name);
      else if (!quiet) console.error(name);
    },
    count(done, total) {
      show(`${current?.name} ${done} of ${total}`);
    },
    tell(words) {
      show("");
      if (!quiet) console.error(words);
    },
    finish() {
      end();
      show("");
    },
    times: () => times,
  };
}

/** `1.2 s`, `340 ms`. */
export function formatDuration(ms: number): string {
  return ms < 1000 ? `${Math.round(ms)} ms` : `${(ms / 1000).toFixed(1)} s`;
}
