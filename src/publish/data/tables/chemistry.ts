/** The tables of what mixed glazes are made of, once fired. */
import type { GlazeRow } from "../rows.ts";
import { listed, numbered, type Part } from "./parts.ts";
import { column, type Table, table } from "./table.ts";

const glazeRef = { refers: "glazes", description: "The id of the glaze." };
const id = (row: { readonly of: GlazeRow }) => row.of.id;

interface OxideOfGlaze {
  readonly oxide: string;
  readonly weightPercent: number | null;
  readonly molePercent: number | null;
  readonly unity: number | null;
}

/** Every oxide that any of the three analyses names. */
function oxidesOf({ chemistry }: GlazeRow): readonly OxideOfGlaze[] {
  if (chemistry === null) return [];
  const { weightPercent, molePercent } = chemistry;
  const unity = chemistry.unity ?? {};
  const oxides = new Set([weightPercent, molePercent, unity].flatMap((each) => Object.keys(each)));
  return [...oxides].map((oxide) => ({
    oxide,
    weightPercent: weightPercent[oxide] ?? null,
    molePercent: molePercent[oxide] ?? null,
    unity: unity[oxide] ?? null,
  }));
}

const chemistry = table<Part<GlazeRow, OxideOfGlaze>>({
  name: "glaze_chemistry",
  row: "one oxide of one fired glaze; a bought glaze, and one with an unknown material, has none",
  key: ["glaze", "oxide"],
  rows: (data) => numbered(data.glazes, oxidesOf),
  columns: [
    column("glaze", "text", null, id, glazeRef),
    column("oxide", "text", "glazes.chemistry.weightPercent.key", ({ part }) => part.oxide, {
      description: "Its formula: `SiO2`. Iron is reckoned as Fe2O3, cobalt as CoO.",
      nullable: false,
    }),
    column(
      "weight_percent",
      "real",
      "glazes.chemistry.weightPercent.value",
      ({ part }) => part.weightPercent,
      { description: "Per cent by weight: those of a glaze add to 100." },
    ),
    column(
      "mole_percent",
      "real",
      "glazes.chemistry.molePercent.value",
      ({ part }) => part.molePercent,
      { description: "Per cent by moles: those of a glaze add to 100." },
    ),
    column("unity", "real", "glazes.chemistry.unity.value", ({ part }) => part.unity, {
      description: "Moles for one mole of fluxes; null without fluxes.",
    }),
  ],
});

type Expansion = NonNullable<GlazeRow["chemistry"]>["expansion"][number];
type ExpansionOfGlaze = Part<GlazeRow, Expansion>;

const model = "glazes.chemistry.expansion.model";

const expansion = table<ExpansionOfGlaze>({
  name: "glaze_expansion",
  row: "one figure for how much one glaze grows with heat, reckoned with one set of factors and not measured",
  key: ["glaze", "model"],
  rows: (data) => numbered(data.glazes, (glaze) => glaze.chemistry?.expansion ?? []),
  columns: [
    column("glaze", "text", null, id, glazeRef),
    column("model", "text", model, ({ part }) => part.model, { nullable: false }),
    column(
      "per_kelvin",
      "real",
      "glazes.chemistry.expansion.perKelvin",
      ({ part }) => part.perKelvin,
    ),
    column("doubt", "real", "glazes.chemistry.expansion.doubt", ({ part }) => part.doubt),
    column(
      "from_celsius",
      "real",
      "glazes.chemistry.expansion.between.0",
      ({ part }) => part.between?.[0] ?? null,
      { description: "The factors hold from here, in °C." },
    ),
    column(
      "to_celsius",
      "real",
      "glazes.chemistry.expansion.between.1",
      ({ part }) => part.between?.[1] ?? null,
      { description: "The factors hold up to here, in °C." },
    ),
  ],
});

const outside = table<Part<ExpansionOfGlaze, string>>({
  name: "glaze_expansion_outside",
  row: "one oxide for which one set of factors does not hold in one glaze",
  key: ["glaze", "model", "oxide"],
  rows: (data) =>
    listed(
      numbered(data.glazes, (glaze) => glaze.chemistry?.expansion ?? []),
      ({ part }) => part.outside,
    ),
  columns: [
    column("glaze", "text", null, ({ of }) => of.of.id, glazeRef),
    column("model", "text", null, ({ of }) => of.part.model, {
      description: "Whose factors they are.",
    }),
    column("oxide", "text", "glazes.chemistry.expansion.outside", ({ part }) => part, {
      description: "It is outside the set's limits, or without a factor.",
      nullable: false,
    }),
  ],
});

const typical = table<Part<GlazeRow, string>>({
  name: "glaze_typical",
  row: "one material of one glaze whose figures are a typical analysis, not that of the bag: the chemistry rests on it",
  key: ["glaze", "material"],
  rows: (data) => listed(data.glazes, (glaze) => glaze.chemistry?.typical ?? []),
  columns: [
    column("glaze", "text", null, id, glazeRef),
    column("material", "text", "glazes.chemistry.typical", ({ part }) => part, {
      refers: "materials",
      description: "The id of the material.",
      nullable: false,
    }),
  ],
});

export const chemistryTables: readonly Table[] = [chemistry, expansion, outside, typical];
