import type { Archive, Tile } from "../../records/archive.ts";
import type { Finding, TileRule } from "../check.ts";
import { type DatedEvent, timelineOf } from "../timeline.ts";

export const datesBackwards: TileRule = {
  of: "tile",
  name: "dates-backwards",
  severity: "error",
  explains:
    "A tile is formed, then glazed and fired in the order of its layers, then looked at: its days follow that order.",
  find: (archive, tile) => [...findBackwards(archive, tile), ...findEarlyLooks(archive, tile)],
};

function findBackwards(archive: Archive, tile: Tile): readonly Finding[] {
  const events = timelineOf(archive, tile);
  return events.flatMap((first, i) => {
    const then = events[i + 1];
    if (!then || first.on <= then.on) return [];
    return {
      ...placeOf(first, then),
      message: `${tile.id} was ${first.what} on ${first.on} and after that ${then.what} on ${then.on}: the days run backwards`,
      hint: hintFor(first, then),
    };
  });
}

/** The later of two events in the tile's own file; a load list only where both stand in one. */
function placeOf(first: DatedEvent, then: DatedEvent): DatedEvent["place"] {
  return then.place.file !== undefined && first.place.file === undefined ? first.place : then.place;
}

function hintFor(first: DatedEvent, then: DatedEvent): string {
  const kind = then.addedByLoad ?? first.addedByLoad;
  const mend = "end the day that is mistyped";
  return kind === null
    ? `M${mend}, or put the layers into the order in which they were done.`
    : `If only the place of the firing is wrong, write “- fired: ${kind}” where it belongs among the layers; otherwise m${mend}, or take the tile out of the load list.`;
}

function findEarlyLooks(archive: Archive, tile: Tile): readonly Finding[] {
  const { later = [] } = tile.record;
  if (later.length === 0) return [];
  const firings = timelineOf(archive, tile).filter(({ what }) => what.startsWith("fired"));
  const last = firings.reduce<DatedEvent | undefined>(
    (best, next) => (best && best.on >= next.on ? best : next),
    undefined,
  );
  if (!last) return [];
  return later.flatMap(({ on }, i) =>
    on >= last.on
      ? []
      : {
          path: ["later", i, "on"],
          message: `${tile.id} was looked at again on ${on}, before it was ${last.what} on ${last.on}`,
          hint: "Mend the day that is mistyped; what was seen before the last firing belongs in a result with “after:”.",
        },
  );
}
