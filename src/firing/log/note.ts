/** What is to be said about a log: why it cannot be used, or what was made of it. */

export type LogSeverity = "error" | "warning" | "note";

export interface LogNote {
  /** Errors: nothing was read. Warnings change what can be relied on. Notes are for the record. */
  readonly severity: LogSeverity;
  readonly code: LogCode;
  /** The line of the file, from 1, where one line is meant. */
  readonly line?: number;
  readonly message: string;
  /** How to put it right, where something can be put right. */
  readonly hint?: string;
}

export type LogCode =
  | "log-broken-quotes"
  | "log-columns-differ"
  | "log-dropouts"
  | "log-gap"
  | "log-maybe-fahrenheit"
  | "log-no-temperature"
  | "log-no-time"
  | "log-not-text"
  | "log-one-column"
  | "log-repeats"
  | "log-reversed"
  | "log-several-temperatures"
  | "log-sudden-change"
  | "log-time-runs-back"
  | "log-time-unit-unknown"
  | "log-too-few-readings"
  | "log-too-large"
  | "log-unit-contradicted"
  | "log-unit-unknown"
  | "log-unreadable-rows";

/** Thrown by the steps of reading a log where there is no going on; caught where they are joined. */
export class LogFault extends Error {
  readonly note: LogNote;

  constructor(code: LogCode, message: string, hint: string, line?: number) {
    super(message);
    this.note = { severity: "error", code, message, hint, ...(line ? { line } : {}) };
  }
}

/** `1 reading`, `3 readings`, `100,000 readings`. */
export function countOf(count: number, one: string, many = `${one}s`): string {
  return `${count.toLocaleString("en-GB")} ${count === 1 ? one : many}`;
}
