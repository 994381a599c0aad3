/** What a clay looks like fired: dark, buff or white. */
import type { Shade } from "../terms/choices.ts";
import { wordPattern } from "../terms/words.ts";
import type { ClayRecord } from "./clay.ts";

/** Words of a colour that say one of the three, and no other. */
const shadeOfWord: ReadonlyMap<string, Shade> = new Map([
  ...(["white", "porcelain", "ivory"] as const).map((word) => [word, "white"] as const),
  ...(["buff", "tan", "sand", "sandy", "straw", "fawn", "beige"] as const).map(
    (word) => [word, "buff"] as const,
  ),
  ...(["dark", "black", "brown", "chocolate", "red", "terracotta", "rust"] as const).map(
    (word) => [word, "dark"] as const,
  ),
]);

/** Words that make a dark colour a light one. */
const paling: ReadonlySet<string> = new Set(["light", "pale"]);

/** A shade, and what says so: a field of its own, or the words of the colour. */
export interface ShadeSaid {
  readonly shade: Shade;
  readonly by: "shade" | "colour";
}

/**
 * The shade of a clay: as its record says, or as the words of its colour do where all of those that are
 * known say the same one.
 *
 * @returns null where nobody says, or the words say two
 */
export function shadeOf({ shade, colour }: Pick<ClayRecord, "shade" | "colour">): ShadeSaid | null {
  if (shade !== undefined) return { shade, by: "shade" };
  const words = (colour ?? "").toLowerCase().match(wordPattern) ?? [];
  const said = new Set(
    words.flatMap((word) => word.split("-")).flatMap((word) => shadeOfWord.get(word) ?? []),
  );
  const [only] = said;
  if (only === undefined || said.size > 1) return null;
  return only === "dark" && words.some((word) => paling.has(word))
    ? null
    : { shade: only, by: "colour" };
}
