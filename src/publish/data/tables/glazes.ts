/** The tables of glazes: where they are, and what they measured alone. */
import type { GlazeRow } from "../rows.ts";
import { listed, numbered, type Part } from "./parts.ts";
import { column, coneColumns, type Table, table } from "./table.ts";

const glazeRef = { refers: "glazes", description: "The id of the glaze." };
const id = (row: { readonly of: GlazeRow }) => row.of.id;

const glazes = table<GlazeRow>({
  name: "glazes",
  row: "one glaze, slip, underglaze, oxide wash or onglaze",
  key: ["id"],
  rows: (data) => data.glazes,
  columns: [
    column("id", "text", "glazes.id", (glaze) => glaze.id),
    column("url", "text", "glazes.url", (glaze) => glaze.url),
    column("name", "text", "glazes.name", (glaze) => glaze.name),
    column("kind", "text", "glazes.kind", (glaze) => glaze.kind),
    column(
      "loss_on_ignition",
      "real",
      "glazes.chemistry.lossOnIgnition",
      ({ chemistry }) => chemistry?.lossOnIgnition ?? null,
      {
        description:
          "Per cent of the raw weight, additions included; null for a bought glaze and where a material is unknown.",
      },
    ),
    column(
      "silica_to_alumina",
      "real",
      "glazes.chemistry.silicaToAlumina",
      ({ chemistry }) => chemistry?.silicaToAlumina ?? null,
    ),
    column(
      "alkali_share",
      "real",
      "glazes.chemistry.alkaliShare",
      ({ chemistry }) => chemistry?.alkaliShare ?? null,
    ),
  ],
});

const glazeTiles = table<Part<GlazeRow, string>>({
  name: "glaze_tiles",
  row: "one glaze on one tile, in whatever layer",
  key: ["glaze", "tile"],
  rows: (data) => listed(data.glazes, (glaze) => glaze.tiles),
  columns: [
    column("glaze", "text", null, id, glazeRef),
    column("tile", "text", "glazes.tiles", ({ part }) => part, {
      refers: "tiles",
      description: "The code of the tile.",
    }),
  ],
});

type Alone = Part<GlazeRow, GlazeRow["alone"][number]>;

const alone = table<Alone>({
  name: "glaze_alone",
  row: "what was measured of one glaze on one tile that has no other glaze",
  key: ["glaze", "tile"],
  rows: (data) => numbered(data.glazes, (glaze) => glaze.alone),
  columns: [
    column("glaze", "text", null, id, glazeRef),
    column("tile", "text", "glazes.alone.tile", ({ part }) => part.tile, { refers: "tiles" }),
    column("clay", "text", "glazes.alone.clay", ({ part }) => part.clay, { refers: "clays" }),
    ...coneColumns<Alone>("cone", "glazes.alone.cone", ({ part }) => part.cone),
    column("atmosphere", "text", "glazes.alone.atmosphere", ({ part }) => part.atmosphere),
    column("coats", "integer", "glazes.alone.coats", ({ part }) => part.coats),
    column("hex", "text", "glazes.alone.hex", ({ part }) => part.hex),
    column("lab_l", "real", "glazes.alone.lab.0", ({ part }) => part.lab[0], {
      description: "L* of CIELAB under D65, from 0 to 100.",
    }),
    column("lab_a", "real", "glazes.alone.lab.1", ({ part }) => part.lab[1], {
      description: "a* of CIELAB under D65.",
    }),
    column("lab_b", "real", "glazes.alone.lab.2", ({ part }) => part.lab[2], {
      description: "b* of CIELAB under D65.",
    }),
    column("colour_name", "text", "glazes.alone.name", ({ part }) => part.name),
  ],
});

const cautions = table<Part<GlazeRow, string>>({
  name: "glaze_cautions",
  row: "one thing to mind with one glaze",
  key: ["glaze", "number"],
  rows: (data) => numbered(data.glazes, (glaze) => glaze.cautions),
  columns: [
    column("glaze", "text", null, id, glazeRef),
    column("number", "integer", null, ({ number }) => number, {
      description: "1 for the first of the glaze: the loud ones come first.",
    }),
    column("caution", "text", "glazes.cautions", ({ part }) => part),
  ],
});

export const glazeTables: readonly Table[] = [glazes, glazeTiles, alone, cautions];
