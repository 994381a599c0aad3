/** Something that was done with the numbers and must be said beside them. */
export interface Note {
  readonly code:
    | "analysis-sum"
    | "charges-do-not-balance"
    | "counted-as-loss"
    | "loss-taken-as-rest"
    | "oxide-not-counted"
    | "restated"
    | "theoretical"
    | "typical";
  /** The id of the material that a typical analysis stands for. */
  readonly material?: string;
  /** One sentence for a potter, without its full stop. */
  readonly message: string;
}

/** Per cent in a sentence: one decimal at most, or two where one would say nothing. */
export function formatAmount(amount: number): string {
  return String(Number(amount.toFixed(Math.abs(amount) < 0.1 ? 2 : 1)));
}
