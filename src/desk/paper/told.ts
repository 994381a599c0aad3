/** What was understood of a line of layers, in the words of the site. */
import { stepWords } from "../../../templates/words/tile/steps.ts";
import type { ShortStep } from "../../reader/short-form/read-short-form.ts";
import { type Archive, findById } from "../../records/archive.ts";

/** Each layer as a phrase, the lowest first: `Tidewrack: 2 coats, dipped`. */
export function tellSteps({ glazes }: Archive, steps: readonly ShortStep[]): readonly string[] {
  const nameOf = (id: string) => findById(glazes, id)?.record.name ?? id;
  return steps.map(({ meant }) => stepWords(meant, nameOf));
}
