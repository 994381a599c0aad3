/** The control tile of a set, whose twin goes into every load but a bisque. */
import { likenessKey } from "../likeness/alike.ts";
import { firingFactsOf } from "../likeness/firing-facts.ts";
import { asGlazed, makeUpOf } from "../likeness/make-up.ts";
import { type Archive, type Firing, findById } from "../records/archive.ts";
import { compareIds, idKey } from "../terms/ids.ts";
import { type Caution, warning } from "./caution.ts";

/** Told for each set that has tiles in the load and a control of which no twin is there. */
export function controlAbsent(
  archive: Archive,
  firing: Firing,
  codes: readonly string[],
): readonly Caution[] {
  if (firing.record.kind === "bisque") return [];
  const tiles = codes.flatMap((code) => findById(archive.tiles, code) ?? []);
  const sets = new Map(
    tiles.flatMap(({ set }) => (set === null ? [] : [[idKey(set), set] as const])),
  );
  return [...sets.values()].sort(compareIds).flatMap((id) => {
    const set = findById(archive.sets, id);
    const control = set?.record.control;
    if (!set || control === undefined || isThere(archive, control, codes)) return [];
    return [
      warning(
        "control-absent",
        `Neither ${control}, the control tile of ${set.record.name}, nor a twin of it is in this load`,
        "Without it nobody can tell later whether the kiln or the glaze was different. Put one in, if there is one.",
      ),
    ];
  });
}

/** The control tile itself, or a tile made as it was up to its glaze firing. */
function isThere(archive: Archive, control: string, codes: readonly string[]): boolean {
  if (codes.some((code) => idKey(code) === idKey(control))) return true;
  const factsOf = firingFactsOf(archive, new Map());
  const keyOf = (code: string) => {
    const tile = findById(archive.tiles, code);
    return tile && likenessKey(asGlazed(makeUpOf(tile, factsOf)), { unwritten: "together" });
  };
  const wanted = keyOf(control);
  return wanted !== undefined && codes.some((code) => keyOf(code) === wanted);
}
