/** The tables of what a studio has: clays, materials, and sets of tiles. */
import type { ClayRow, MaterialRow, SetRow } from "../rows.ts";
import { listed, numbered, type Part } from "./parts.ts";
import { column, coneColumns, type Table, table } from "./table.ts";

const clays = table<ClayRow>({
  name: "clays",
  row: "one clay",
  key: ["id"],
  rows: (data) => data.clays,
  columns: [
    column("id", "text", "clays.id", (clay) => clay.id),
    column("url", "text", "clays.url", (clay) => clay.url),
    column("name", "text", "clays.name", (clay) => clay.name),
    ...coneColumns<ClayRow>("from_cone", "clays.cones.from", ({ cones }) => cones?.from ?? null),
    ...coneColumns<ClayRow>("to_cone", "clays.cones.to", ({ cones }) => cones?.to ?? null),
    column("colour", "text", "clays.colour", (clay) => clay.colour),
    column("expansion", "real", "clays.expansion", (clay) => clay.expansion),
    column("from_celsius", "real", "clays.between.0", ({ between }) => between?.[0] ?? null, {
      description: "The expansion was measured from here, in °C.",
    }),
    column("to_celsius", "real", "clays.between.1", ({ between }) => between?.[1] ?? null, {
      description: "The expansion was measured up to here, in °C.",
    }),
    column("absorption", "real", "clays.absorption", (clay) => clay.absorption),
    column("reclaim", "yes-no", "clays.reclaim", (clay) => clay.reclaim),
  ],
});

const materialRef = { refers: "materials", description: "The id of the material." };
const material = (row: { readonly of: MaterialRow }) => row.of.id;

const materials = table<MaterialRow>({
  name: "materials",
  row: "one raw material",
  key: ["id"],
  rows: (data) => data.materials,
  columns: [
    column("id", "text", "materials.id", (row) => row.id),
    column("url", "text", "materials.url", (row) => row.url),
    column("name", "text", "materials.name", (row) => row.name),
    column("formula", "text", "materials.formula", (row) => row.formula),
    column("built_in", "yes-no", "materials.builtIn", (row) => row.builtIn),
    column("basis", "text", "materials.basis", (row) => row.basis),
  ],
});

type Analysed = Part<MaterialRow, readonly [oxide: string, percent: number]>;

const analysis = table<Analysed>({
  name: "material_analysis",
  row: "one oxide in the analysis that the studio wrote down of one raw material",
  key: ["material", "oxide"],
  rows: (data) => numbered(data.materials, (row) => Object.entries(row.analysis ?? {})),
  columns: [
    column("material", "text", null, material, materialRef),
    column("oxide", "text", "materials.analysis.key", ({ part: [oxide] }) => oxide, {
      description: "Its formula: `SiO2`; or `loss`, what goes off in the fire.",
      nullable: false,
    }),
    column("weight_percent", "real", "materials.analysis.value", ({ part: [, much] }) => much, {
      description: "Per cent of the raw weight.",
      nullable: false,
    }),
  ],
});

const glazeMaterials = table<Part<MaterialRow, string>>({
  name: "glaze_materials",
  row: "one raw material that one glaze is mixed of",
  key: ["glaze", "material"],
  rows: (data) => listed(data.materials, (row) => row.glazes),
  columns: [
    column("glaze", "text", "materials.glazes", ({ part }) => part, {
      refers: "glazes",
      description: "The id of the glaze.",
    }),
    column("material", "text", null, material, materialRef),
  ],
});

const cautions = table<Part<MaterialRow, string>>({
  name: "material_cautions",
  row: "one thing to mind with one raw material",
  key: ["material", "number"],
  rows: (data) => numbered(data.materials, (row) => row.cautions),
  columns: [
    column("material", "text", null, material, materialRef),
    column("number", "integer", null, ({ number }) => number, {
      description: "1 for the first of the material: what the studio wrote comes first.",
    }),
    column("caution", "text", "materials.cautions", ({ part }) => part),
  ],
});

const sets = table<SetRow>({
  name: "sets",
  row: "one set of tiles: a class, a term, a series",
  key: ["id"],
  rows: (data) => data.sets,
  columns: [
    column("id", "text", "sets.id", (set) => set.id),
    column("url", "text", "sets.url", (set) => set.url),
    column("name", "text", "sets.name", (set) => set.name),
    column("kind", "text", "sets.kind", (set) => set.kind),
    column("begins", "date", "sets.begins", (set) => set.begins),
    column("ends", "date", "sets.ends", (set) => set.ends),
    column("control", "text", "sets.control", (set) => set.control, { refers: "tiles" }),
  ],
});

export const studioTables: readonly Table[] = [
  clays,
  materials,
  analysis,
  glazeMaterials,
  cautions,
  sets,
];
