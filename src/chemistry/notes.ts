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
  /** One sentence for a potter, without its full stop. */
  readonly message: string;
}

/** A number in a sentence: two decimals at most, none where they say nothing. */
export function formatAmount(amount: number): string {
  return String(Number(amount.toFixed(2)));
}
