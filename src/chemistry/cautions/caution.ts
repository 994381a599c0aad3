import type { Source } from "./statement.ts";

/** What to mind with a glaze or a material. It never says that anything may be used. */
export interface Caution {
  readonly code:
    | "chromium-in-oxidation"
    | "dust"
    | "heavy-load"
    | "kiln-fumes"
    | "not-for-food"
    | "not-known"
    | "only-tests-tell"
    | "own-caution"
    | "poison"
    | "raw-material"
    | "silica-dust"
    | "trace";
  /** What it is about: a substance, a dust, a gas, a label, a record. */
  readonly about: string;
  /** Shown always, and before anything else. */
  readonly isLoud: boolean;
  /** What a list says beside the glaze's name, such as “holds lead”. */
  readonly inShort: string;
  /** A sentence or two without the last full stop. */
  readonly message: string;
  /** Empty where the message says what to do. */
  readonly hint: string;
  readonly sources: readonly Source[];
}

/** Each message once, the loud ones first, otherwise in the order given. */
export function inOrder(cautions: readonly Caution[]): readonly Caution[] {
  const firstOfEach = [...new Map(cautions.map((caution) => [caution.message, caution])).values()];
  return [
    ...firstOfEach.filter(({ isLoud }) => isLoud),
    ...firstOfEach.filter(({ isLoud }) => !isLoud),
  ];
}

/** What stops fine dust; the class that a task asks for is told by the safety sheet. */
export const filterClasses: Source = {
  source:
    "FFP3 after EN 149 (University of Warwick, Protection against dusts), P100 after 42 CFR 84 (NIOSH publication 96-101)",
  tag: "checked",
};
