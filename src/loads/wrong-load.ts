/** What tells that a tile does not belong into a load yet, or no more. */
import { listed } from "../../templates/words/english/numbers.ts";
import type { Archive, Firing, Tile } from "../records/archive.ts";
import { idKey } from "../terms/ids.ts";
import { type Caution, warning } from "./caution.ts";
import { glazesAt, glazesOn } from "./unjudged.ts";

/** Cautions about the order of things: bisque first, once is enough, one kiln at a time. */
export function wrongLoad(archive: Archive, tile: Tile, firing: Firing): readonly Caution[] {
  return [
    ...lost(tile),
    ...unbisqued(tile, firing),
    ...glazedForBisque(archive, tile, firing),
    ...alreadyOut(tile, firing),
    ...elsewhere(archive, tile, firing),
  ];
}

function lost({ id, record: { fate } }: Tile): readonly Caution[] {
  if (fate === undefined) return [];
  const message = `The record of ${id} says that it did not come back whole: ${fate}`;
  return [warning("lost-already", message, "Look whether this is the tile you mean.")];
}

/** A once firing takes raw ware on purpose, and raku may. */
function unbisqued({ id, steps }: Tile, firing: Firing): readonly Caution[] {
  const { kind } = firing.record;
  if (kind !== "glaze" && kind !== "onglaze") return [];
  const at = placeIn(steps, firing);
  if (steps.slice(0, at).some(({ step }) => step === "fired")) return [];
  return [
    warning(
      "never-bisqued",
      `Nothing in the record of ${id} says that it was bisqued`,
      "Raw clay bursts where it is heated as fast as a glaze firing. If it was bisqued, write “- fired: bisque” as its first layer; if not, bisque it first.",
    ),
  ];
}

function glazedForBisque(archive: Archive, tile: Tile, firing: Firing): readonly Caution[] {
  if (firing.record.kind !== "bisque") return [];
  const on = glazesBy(archive, tile, firing).filter(({ kind }) => kind === "glaze");
  if (on.length === 0) return [];
  const names = listed(on.map(({ name }) => name));
  return [
    warning(
      "glaze-in-bisque",
      `${names} ${on.length === 1 ? "is" : "are"} on ${tile.id}, and this is a bisque`,
      "Glaze that melts sticks to whatever touches it, and bisque is stacked. Keep it out, or write “- fired: bisque” above the layers if it was bisqued before.",
    ),
  ];
}

/**
 * A load list takes the place of the first bisque that names no firing, which lies beneath the glaze: so
 * what is on a tile when the kiln is lit is told by its days, where there are any.
 */
function glazesBy(archive: Archive, tile: Tile, { id, record: { on } }: Firing) {
  const { glazed } = tile.record;
  const isGlazed = on === undefined || (glazed !== undefined && glazed <= on);
  return isGlazed ? glazesOn(archive, tile.steps) : glazesAt(archive, tile, id);
}

/** A second firing is no slip, but whoever meant another code is glad to be told. */
function alreadyOut({ id, record, steps }: Tile, firing: Firing): readonly Caution[] {
  const at = placeIn(steps, firing);
  const isNew = steps.slice(0, at).findLast(({ step }) => step !== "fired");
  const before = steps.slice(isNew ? steps.indexOf(isNew) : 0, at);
  const isOut = before.some((step) => step.step === "fired" && step.kind !== "bisque");
  if (record.result === undefined || !isOut) return [];
  return [
    warning(
      "fired-already",
      `${id} has been through a glaze firing and has a result, and nothing was put on it since`,
      "If you do fire it again, its result needs one more entry, with “after:”. Else look whether this is the tile you mean.",
    ),
  ];
}

function elsewhere({ firings }: Archive, { id }: Tile, firing: Firing): readonly Caution[] {
  if (firing.record.on !== undefined) return [];
  const others = [...firings.values()].filter(
    (other) =>
      other.record.on === undefined &&
      idKey(other.id) !== idKey(firing.id) &&
      other.load.some(({ tile }) => idKey(tile) === idKey(id)),
  );
  if (others.length === 0) return [];
  const names = listed(others.map((other) => other.id));
  return [
    warning(
      "listed-elsewhere",
      `${id} is on the list of ${names} too, and that is still to come`,
      "Take it off one of them.",
    ),
  ];
}

function placeIn(steps: Tile["steps"], { id }: Firing): number {
  const at = steps.findIndex(
    (step) => step.step === "fired" && step.firing !== null && idKey(step.firing) === idKey(id),
  );
  return at < 0 ? steps.length : at;
}
