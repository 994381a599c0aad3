/** A glaze as it is set beside others: lines that are compared by their labels. */
import type { CatalogueGlaze } from "../../../src/catalogue/glazes.ts";
import type { Ingredient } from "../../../src/records/glaze.ts";
import { formatConeRange } from "../../../src/terms/cones.ts";
import { count, spoken } from "../english/numbers.ts";
import { formatMoles } from "../mixing/chemistry.ts";
import { type ComparedTable, comparedTable } from "../tile/beside.ts";
import { glazeKind } from "./glaze.ts";

const movement = { little: "moves little", none: "stays where it is", runs: "runs" } as const;

/** What a glaze is, what it is weighed out of, its formula, and what to mind with it. */
export function tablesOfGlaze(glaze: CatalogueGlaze): readonly ComparedTable[] {
  const { kind, cones, surface, cover, moves, tone, stocked, bought, tiles, alone } = glaze;
  return [
    comparedTable("The glaze", "facts", [
      ["Kind", glazeKind(kind)],
      ["Cones", cones && formatConeRange(cones)],
      ["Surface", surface && spoken(surface)],
      ["Cover", cover && spoken(cover)],
      ["Movement", moves && movement[moves]],
      ["Tone", tone && spoken(tone)],
      ["In stock", stocked ? "yes" : "no"],
      ["Bought from", bought ? [bought.maker, bought.range].filter(Boolean).join(", ") : null],
      ["Tiles", `${count(tiles.length, "tile")}, ${alone.length} of it alone`],
    ]),
    ...recipeTables(glaze),
    ...formulaTables(glaze),
    comparedTable(
      "Take care",
      "notes",
      glaze.hazards.map(({ message }) => [ofIt(message, glaze.name), "yes"] as const),
    ),
  ];
}

/** In the same words for every bought glaze, so that several of them share one line. */
function ofIt(message: string, name: string): string {
  const named = `${name} was bought, `;
  return message.startsWith(named) ? `It was bought, ${message.slice(named.length)}` : message;
}

function recipeTables(glaze: CatalogueGlaze): readonly ComparedTable[] {
  const { ingredients, additions, blend, by } = glaze;
  const blended = blend?.map((part) => ({ material: part.glaze, parts: part.parts })) ?? null;
  const measured = by === "volume" ? "by volume" : "by dry weight";
  return [
    ...(ingredients ? [portions(glaze, "Parts by weight", ingredients)] : []),
    ...(additions.length > 0 ? [portions(glaze, "Added to 100 of these", additions)] : []),
    ...(blended ? [portions(glaze, `Blended, parts ${measured}`, blended)] : []),
  ];
}

/** What is named twice is told as both, as it was written. */
function portions(
  { made }: CatalogueGlaze,
  title: string,
  of: readonly Ingredient[],
): ComparedTable {
  const lines = new Map<string, string>();
  for (const { material, parts } of of) {
    const name = made[material]?.name ?? material;
    const known = lines.get(name);
    lines.set(name, known === undefined ? String(parts) : `${known} and ${parts}`);
  }
  return comparedTable(title, "parts", [...lines]);
}

function formulaTables({ chemistry, whyNoChemistry }: CatalogueGlaze): readonly ComparedTable[] {
  if (!chemistry) {
    const why = whyNoChemistry ?? "Not known of a bought glaze";
    return [comparedTable("Why there is no formula", "notes", [[why, "yes"]])];
  }
  const { unity, silicaToAlumina } = chemistry;
  return [
    comparedTable("Unity formula", "parts", [
      ...Object.entries(unity ?? {}).map(([oxide, moles]) => [oxide, formatMoles(moles)] as const),
      ["Silica to alumina", silicaToAlumina === null ? null : silicaToAlumina.toFixed(1)] as const,
    ]),
  ];
}
