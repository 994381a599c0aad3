/** The tables of kiln loads. */
import type { FiringRow } from "../rows.ts";
import { listed, numbered, type Part } from "./parts.ts";
import { type ColumnOf, column, coneColumns, type Table, table } from "./table.ts";

const firingRef = { refers: "firings", description: "The id of the firing." };
const id = (row: { readonly of: FiringRow }) => row.of.id;

type Heat = NonNullable<FiringRow["heat"]>;
type Reached = Heat["equivalentCone"];

/** Where heat work lies between two cones: the one that is down, the next, and how far towards it. */
function reachedColumns(
  name: string,
  says: string,
  meaning: string,
  find: (heat: Heat) => Reached | null,
): readonly ColumnOf<FiringRow>[] {
  const reached = ({ heat }: FiringRow) => (heat && find(heat)) ?? null;
  return [
    ...coneColumns<FiringRow>(
      `${name}_cone`,
      `${says}.cone`,
      (firing) => reached(firing)?.cone ?? null,
      `${meaning}: the hottest cone that is down; null where not even the coolest is, and where nothing is known.`,
    ),
    ...coneColumns<FiringRow>(
      `${name}_next`,
      `${says}.next`,
      (firing) => reached(firing)?.next ?? null,
      `${meaning}: the next hotter cone; null above the hottest, and where nothing is known.`,
    ),
    column(
      `${name}_fraction`,
      "real",
      `${says}.fraction`,
      (firing) => reached(firing)?.fraction ?? null,
      {
        description: `${meaning}: how far towards the next cone, from 0 to 1; null where nothing is known.`,
      },
    ),
  ];
}

const ofHeat = (name: keyof Omit<Heat, "equivalentCone" | "equivalentConeRange">) => {
  return (firing: FiringRow) => firing.heat?.[name] ?? null;
};

const firings = table<FiringRow>({
  name: "firings",
  row: "one kiln load",
  key: ["id"],
  rows: (data) => data.firings,
  columns: [
    column("id", "text", "firings.id", (firing) => firing.id),
    column("url", "text", "firings.url", (firing) => firing.url),
    column("lit_on", "date", "firings.on", (firing) => firing.on),
    column("kind", "text", "firings.kind", (firing) => firing.kind),
    column("kiln", "text", "firings.kiln", (firing) => firing.kiln),
    ...coneColumns<FiringRow>("cone", "firings.cone", (firing) => firing.cone),
    column("atmosphere", "text", "firings.atmosphere", (firing) => firing.atmosphere),
    ...reachedColumns(
      "heat",
      "firings.heat.equivalentCone",
      "The heat work by the model, from the log or, without one, from the schedule",
      (heat) => heat.equivalentCone,
    ),
    ...reachedColumns(
      "heat_low",
      "firings.heat.equivalentConeRange.low",
      "The least that the heat work may have been",
      (heat) => heat.equivalentConeRange.low,
    ),
    ...reachedColumns(
      "heat_high",
      "firings.heat.equivalentConeRange.high",
      "The most that the heat work may have been, null where that end is open",
      (heat) => heat.equivalentConeRange.high,
    ),
    column("peak", "real", "firings.heat.peak", ofHeat("peak")),
    column("last_rate", "real", "firings.heat.lastRate", ofHeat("lastRate")),
    column("hold", "real", "firings.heat.hold", ofHeat("hold")),
    column("cooling_rate", "real", "firings.heat.coolingRate", ofHeat("coolingRate")),
    column("agreement", "text", "firings.heat.agreement", ofHeat("agreement")),
  ],
});

const firingTiles = table<Part<FiringRow, string>>({
  name: "firing_tiles",
  row: "one tile in one kiln load; on which shelf is told in `layers`",
  key: ["firing", "tile"],
  rows: (data) => listed(data.firings, (firing) => firing.tiles),
  columns: [
    column("firing", "text", null, id, firingRef),
    column("tile", "text", "firings.tiles", ({ part }) => part, {
      refers: "tiles",
      description: "The code of the tile.",
    }),
  ],
});

type Witnessed = Part<FiringRow, readonly [shelf: string, cone: string | null]>;

const witness = table<Witnessed>({
  name: "firing_witness",
  row: "what the witness cones showed on one shelf of one kiln load",
  key: ["firing", "shelf"],
  rows: (data) => numbered(data.firings, (firing) => Object.entries(firing.witness)),
  columns: [
    column("firing", "text", null, id, firingRef),
    column("shelf", "text", "firings.witness.key", ({ part: [shelf] }) => shelf, {
      description: "The shelf, in the studio's words.",
    }),
    ...coneColumns<Witnessed>(
      "cone",
      "firings.witness.value",
      ({ part: [, cone] }) => cone,
      "The cone that was reached there; null where the cones show none.",
    ),
  ],
});

export const firingTables: readonly Table[] = [firings, firingTiles, witness];
