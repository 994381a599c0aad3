/** The codes of tiles, as load lists and sets name them. */
import type { Filed } from "../../records/archive.ts";
import type { FiringRecord } from "../../records/firing.ts";
import type { Problem } from "../../records/problem.ts";
import { idKey } from "../../terms/ids.ts";
import { mostProblemsOfFile } from "../../terms/limits.ts";
import { problemOfFile } from "../problem-of-file.ts";
import { type Known, type Mention, unknownName } from "./look-up.ts";
import { tileLookup } from "./lookups.ts";

/** What a load list may name. */
export interface TileCodes {
  readonly ids: Known;
  /** Keys of the codes that sets reserve: their tiles may be yet to come. */
  readonly reserved: ReadonlySet<string>;
  /** True where a set could not be read: any code may be one that it reserves. */
  readonly reservedUnknown: boolean;
  /** The present code of tiles that were published under another one, by that one's key. */
  readonly formerly: Known;
}

/** Finds the codes of a load list that are no tile's and that no set reserves. */
export function findUnknownCodes(
  { file, record }: Filed<FiringRecord>,
  codes: TileCodes,
): readonly Problem[] {
  if (codes.reservedUnknown) return [];
  let told = 0;
  return Object.entries(record.tiles ?? {}).flatMap(([shelf, entries]) =>
    entries.flatMap((entry, i) => {
      const unknown = entry.filter((code) => !isKnown(code, codes));
      const renamed = unknown.filter((code) => codes.formerly.has(idKey(code)));
      const missing = unknown.filter((code) => !codes.formerly.has(idKey(code)));
      const mention = (written: string) => ({ file, path: ["tiles", shelf, i], written });
      told += unknown.length;
      return [
        ...renamed.map((code) => renamedTile(mention(code), codes)),
        // Nobody reads so many guesses, and each is looked for among all tiles.
        ...missingTiles(missing.map(mention), told > mostProblemsOfFile ? noGuess : codes),
      ];
    }),
  );
}

const noGuess = { ids: new Map<string, string>() };

/** Whether a code is a tile's, or one that a set reserves. */
export function isKnown(code: string, { ids, reserved }: TileCodes): boolean {
  return ids.has(idKey(code)) || reserved.has(idKey(code));
}

/** Tells of a code that a tile was published under before, what that tile is called now. */
export function renamedTile({ file, path, written }: Mention, { formerly }: TileCodes): Problem {
  const fault = {
    code: tileLookup.code,
    message: `There is no tile “${written}” any more`,
    hint: `That tile is now called “${formerly.get(idKey(written))}”.`,
  };
  return problemOfFile(file, fault, path);
}

/** One problem for all that a range of codes names in vain. */
function missingTiles(mentions: readonly Mention[], { ids }: Pick<TileCodes, "ids">): Problem[] {
  const [first, second, ...more] = mentions;
  if (!first) return [];
  if (!second) return [unknownName(first, ids, tileLookup)];
  const last = more.at(-1)?.written;
  const between = more.length > 1 ? ` and ${more.length - 1} more` : "";
  const message =
    last === undefined
      ? `There are no tiles “${first.written}” and “${second.written}”`
      : `There are no tiles “${first.written}”, “${second.written}”${between} up to “${last}”`;
  const fault = { code: tileLookup.code, message, hint: tileLookup.otherwise };
  return [problemOfFile(first.file, fault, first.path)];
}
