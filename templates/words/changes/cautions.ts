/** Cautions and practice notes in a summary: always in full. */
import { type Block, type Line, list, sentence, strong } from "./summary.ts";

interface Told {
  readonly severity: "error" | "warning";
  readonly message: string;
  readonly hint: string;
}

/** Each by itself, the loud ones under another word than practice notes. */
export function cautionList(cautions: readonly Told[]): readonly Block[] {
  return list(cautions.map(cautionLine));
}

function cautionLine({ severity, message, hint }: Told): Line {
  const words = [message, hint].filter(Boolean).map(sentence).join(" ");
  return [strong(severity === "error" ? "Caution" : "Practice"), `: ${words}`];
}
