/** Why something cannot be worked out, in words for the page of a glaze and for `check`. */
export interface Reason {
  readonly code:
    | "analysis-unreadable"
    | "blend-of-itself"
    | "blended-by-volume"
    | "bought"
    | "formula-unreadable"
    | "material-not-analysed"
    | "no-flux"
    | "no-such-glaze"
    | "no-such-material"
    | "not-a-recipe"
    | "nothing-left";
  /** One sentence without its full stop; it names the material or the glaze. */
  readonly message: string;
  /** What would bring the chemistry. */
  readonly hint: string;
}

/** Something worked out, or every reason why it cannot be. */
export type Worked<T> =
  | ({ readonly ok: true } & T)
  | { readonly ok: false; readonly reasons: readonly [Reason, ...Reason[]] };

export function notWorked(code: Reason["code"], message: string, hint: string) {
  return { ok: false, reasons: [{ code, message, hint }] } as const satisfies Worked<object>;
}

/** All reasons as running text. */
export function tellReasons(reasons: readonly Reason[]): string {
  return [...new Set(reasons.map((reason) => `${reason.message}.`))].join(" ");
}
