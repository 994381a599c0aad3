/** What stands at a place of a record: the field's sentence, its choices, and what an id names. */
import type { YamlWord } from "../reader/yaml-cursor.ts";
import { idKey } from "../terms/ids.ts";
import type { KnownName, KnownNames } from "./names.ts";
import type { Shape } from "./shape.ts";
import { shapesAt } from "./shape-at.ts";

export interface Explained {
  /** The field's name; empty for an entry of a list. */
  readonly field: string;
  readonly sentence: string;
  readonly choices: readonly string[];
  /** True where own words are as good as the choices. */
  readonly ownWords: boolean;
  /** What the value names, where it is known. */
  readonly named: KnownName | undefined;
}

/** Undefined where no field is declared. */
export function explain(record: Shape, word: YamlWord, known: KnownNames): Explained | undefined {
  const shapes = shapesAt(record, word.path);
  const described = word.path.findLastIndex((step) => typeof step === "string");
  const around = shapesAt(record, word.path.slice(0, described + 1));
  const sentence = around.find((shape) => shape.sentence !== "")?.sentence ?? "";
  if (shapes.length === 0 || sentence === "") return undefined;
  const forms = shapes.flatMap((shape) => [shape, ...(shape.entries ? [shape.entries] : [])]);
  return {
    field: String(word.path[described] ?? ""),
    sentence,
    choices: [...new Set(forms.flatMap(({ choices }) => choices))],
    ownWords: forms.some(({ isScalar, isClosed }) => isScalar && !isClosed),
    named: word.at === "value" ? findNamed(forms, word.text, known) : undefined,
  };
}

/** A jar's number goes before an id, as in a record; a trade name leads to its material. */
function findNamed(forms: readonly Shape[], text: string, known: KnownNames) {
  const all = forms.flatMap(({ names }) => names).flatMap((name) => known[name]);
  const key = idKey(text.trim());
  return (
    all.find(({ word }) => idKey(word) === key) ??
    all.find(({ also, file }) => file === undefined && also.some((word) => idKey(word) === key))
  );
}
