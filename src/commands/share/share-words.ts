/** What `tilebook share` says of what it hands on, and of where the set is otherwise. */
import { count, listed } from "../../../templates/words/english/numbers.ts";
import { leftOutForFamilies, shownSentence } from "../../../templates/words/site/alone.ts";
import { setUrl, withSlash } from "../../catalogue/addresses.ts";
import { sharedAddress, tilesOfSet } from "../../catalogue/shared.ts";
import type { Catalogue } from "../../catalogue/types.ts";
import { othersNamed } from "./share-others.ts";
import type { SharePlan } from "./share-plan.ts";

/** Says what is handed on: tiles, names, and words that speak of what is not there. */
export function tellPlan({ archive, part, set, whom, catalogue }: SharePlan): readonly string[] {
  const { tiles } = catalogue;
  const pictures = tiles.flatMap((tile) => tile.pictures).length;
  const shown = shownSentence(tiles.length, tilesOfSet(archive, set.id).length);
  return [
    `${set.record.name}: ${count(tiles.length, "tile")} with ${count(pictures, "photograph")}, and what they use.`,
    ...(shown === null ? [] : [shown]),
    ...(whom === "families" ? [leftOutForFamilies] : []),
    tellNames(catalogue),
    ...othersNamed(archive, part).map(
      ({ file, names }) =>
        `  left as it is: ${file} speaks of ${listed(names)}, which is not in what you share`,
    ),
  ];
}

function tellNames({ tiles, sets }: Catalogue): string {
  const names = [...tiles.map(({ maker }) => maker), ...sets.map(({ teacher }) => teacher)];
  const shown = [...new Set(names.flatMap((name) => name?.name ?? []))].sort();
  return shown.length === 0
    ? "Nobody is named in it."
    : `Named in it: ${shown.join(", ").replace(/\.$/u, "")}.`;
}

/** Says where the set is on the studio's site, which whoever gets the folder is not told. */
export function tellWhereItIs({ archive, set, whom }: SharePlan): readonly string[] {
  const { id, record } = set;
  const root = sharedAddress(archive.studio.address, record);
  if (root === null)
    return ["Its address is not known: studio.yaml gives no address for the site."];
  const all = whom === "families" ? " That page shows the whole set." : "";
  if (record.listed === false)
    return [`${record.name} is not listed; it is reached by its link alone: ${root}${all}`];
  const url = withSlash(root) + setUrl(id);
  return [`${record.name} is listed, for everyone to find: ${url}${all}`];
}
