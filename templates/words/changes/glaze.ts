/** A glaze of a request: its recipe and its chemistry before and after, and whom that concerns. */
import type { GlazeChange, GlazeSide } from "../../../src/changes/types.ts";
import type { Caution } from "../../../src/chemistry/cautions/cautions.ts";
import { expansionSets } from "../../../src/chemistry/expansion/expansion.ts";
import { presentOxides, toUnicodeSubscripts } from "../../../src/terms/oxides.ts";
import { count, listed } from "../english/numbers.ts";
import { fixed, formatMoles, perMillion } from "../mixing/chemistry.ts";
import { cautionList } from "./cautions.ts";
import { type Block, type Item, type Line, list, paragraph, sentence, strong } from "./summary.ts";
import { allCodes, fieldLine } from "./values.ts";

export function glazeItem(change: GlazeChange): Item {
  const { what, was, now, fields, isOtherRecipe, through } = change;
  const { name } = now.record;
  const least = cautionBlocks(change);
  const why = through.length > 0 ? `It is mixed from what changed: ${listed(through)}.` : "";
  return {
    name,
    heading: `${name} (${what === "added" ? "new glaze" : "changed"})`,
    least,
    blocks: [
      ...(why === "" ? [] : [paragraph(why)]),
      ...list(was ? fields.filter(({ field }) => !ofRecipe.has(field)).map(fieldLine) : []),
      ...recipeBlocks(was, now, isOtherRecipe),
      ...chemistryBlocks(was, now),
      ...least,
      ...tileBlocks(change),
    ],
  };
}

const ofRecipe: ReadonlySet<string> = new Set([
  "additions",
  "blend",
  "bought",
  "by",
  "ingredients",
]);

type Portions = ReadonlyMap<string, string>;

function recipeBlocks(was: GlazeSide | null, now: GlazeSide, isOther: boolean): readonly Block[] {
  const after = portionsOf(now);
  if (was === null || !isOther)
    return after.size === 0 || (was && !isOther)
      ? []
      : [{ is: "table", head: ["Made of", "Parts"], rows: [...after] }];
  const before = portionsOf(was);
  const names = [...new Set([...after.keys(), ...before.keys()])];
  const rows = names.map((name) => [name, before.get(name) ?? "–", after.get(name) ?? "–"]);
  return [
    paragraph(strong("Another recipe")),
    { is: "table", head: ["Made of", "Before", "Now"], rows },
  ];
}

/** What it is weighed out of or blended from, a jar's maker where it is bought; parts as written. */
function portionsOf({ record }: GlazeSide): Portions {
  const { bought, ingredients = [], additions = [], blend = [], by } = record;
  const portions: [string, string][] = [
    ...(bought
      ? [
          [`bought: ${Object.values(bought).filter(Boolean).join(", ")}`, "as it is"] as [
            string,
            string,
          ],
        ]
      : []),
    ...ingredients.map(({ material, parts }): [string, string] => [material, String(parts)]),
    ...additions.map(({ material, parts }): [string, string] => [
      `added: ${material}`,
      String(parts),
    ]),
    ...blend.map(({ glaze, parts }): [string, string] => [
      `${glaze} (by ${by === "volume" ? "volume" : "dry weight"})`,
      String(parts),
    ]),
  ];
  return sumUp(portions);
}

/** What is named twice is told twice: a sum would be another recipe. */
function sumUp(portions: readonly [string, string][]): Portions {
  const found = new Map<string, string>();
  for (const [name, parts] of portions)
    found.set(name, found.has(name) ? `${found.get(name)} and ${parts}` : parts);
  return found;
}

function chemistryBlocks(was: GlazeSide | null, now: GlazeSide): readonly Block[] {
  const lines = [ratioLine(was, now), ...expansionLines(was, now)].flatMap((line) => line ?? []);
  const why = [
    was?.whyNot && !now.whyNot && `It had no chemistry before: ${was.whyNot}`,
    now.whyNot && `It has no chemistry${was?.chemistry ? " any more" : ""}: ${now.whyNot}`,
  ].filter((words) => typeof words === "string");
  const table = unityTable(was, now);
  if (table.length + lines.length === 0) return why.map((words) => paragraph(words));
  return [
    paragraph(
      strong("Chemistry"),
      ", worked out from what the materials are said to hold. Where a tile contradicts a figure, the tile is right.",
    ),
    ...why.map((words) => paragraph(words)),
    ...table,
    ...list(lines),
  ];
}

function unityTable(was: GlazeSide | null, now: GlazeSide): readonly Block[] {
  const [before, after] = [was?.chemistry?.unity ?? null, now.chemistry?.unity ?? null];
  if (before === null && after === null) return [];
  const oxides = new Set(
    [before, after].flatMap((unity) => (unity ? presentOxides(unity).map(([oxide]) => oxide) : [])),
  );
  const moles = (unity: typeof before, oxide: keyof NonNullable<typeof before>) =>
    unity?.[oxide] ? formatMoles(unity[oxide]) : "–";
  const rows = [...oxides].map((oxide) => [
    toUnicodeSubscripts(oxide),
    ...(was ? [moles(before, oxide)] : []),
    moles(after, oxide),
  ]);
  const head = was ? ["Unity, moles", "Before", "Now"] : ["Unity", "Moles"];
  return [{ is: "table", head, rows }];
}

function ratioLine(was: GlazeSide | null, now: GlazeSide): readonly Line[] | null {
  if (!now.chemistry && !was?.chemistry) return null;
  const ratio = ({ chemistry }: GlazeSide) =>
    chemistry?.silicaToAlumina == null ? "none" : fixed(chemistry.silicaToAlumina, 1);
  return [[strong("silica to alumina, by moles"), `: ${fromTo(was && ratio(was), ratio(now))}`]];
}

/** Each set of factors by itself: they do not agree. */
function expansionLines(was: GlazeSide | null, now: GlazeSide): readonly (readonly Line[])[] {
  return expansionSets.map(({ model, name }) => {
    const figure = (side: GlazeSide) => {
      const found = side.chemistry?.expansion.find((each) => each.model === model);
      if (found?.perKelvin == null) return "no figure";
      return `${perMillion(found.perKelvin)} ± ${perMillion(found.doubt ?? 0)}`;
    };
    const [before, after] = [was && figure(was), figure(now)];
    if (after === "no figure" && (before === null || before === after)) return [];
    return [[strong(`expansion by ${name}`), `, 10⁻⁶ per kelvin: ${fromTo(before, after)}`]];
  });
}

function fromTo(before: string | null, after: string): string {
  if (before === null) return after;
  return before === after ? `${after}, as before` : `${before} → ${after}`;
}

/** What came is told as new; what went is told too; what stays is there in full, behind a line that counts it. */
function cautionBlocks({ was, came, went, cautions }: GlazeChange): readonly Block[] {
  const stays = cautions.filter((caution) => !came.includes(caution));
  return [
    ...(came.length > 0
      ? [paragraph(strong("Cautions that came with this")), ...cautionsOf(came)]
      : []),
    ...(went.length > 0 ? [paragraph(strong("Cautions that went")), ...cautionsOf(went)] : []),
    ...(was ? stayedBlocks(stays) : cautionsOf(stays)),
  ];
}

function stayedBlocks(stays: readonly Caution[]): readonly Block[] {
  if (stays.length === 0) return [];
  const words = `${count(stays.length, "caution")}, as before`;
  return [{ is: "folded", words, blocks: cautionsOf(stays) }];
}

function cautionsOf(cautions: readonly Caution[]): readonly Block[] {
  return cautionList(
    cautions
      .toSorted((a, b) => Number(b.isLoud) - Number(a.isLoud))
      .map(({ message, hint }) => ({ severity: "error", message, hint })),
  );
}

function tileBlocks({ was, tiles, isOtherRecipe, through }: GlazeChange): readonly Block[] {
  if (was === null || tiles.length === 0) return [];
  const it = tiles.length === 1 ? "It was" : "They were";
  const glazedWith = isOtherRecipe
    ? `${it} glazed with the recipe as it was, unless somebody says otherwise. A new recipe under a name of its own keeps the two apart.`
    : through.length > 0
      ? `${it} glazed with what was in the bucket then, unless somebody says otherwise.`
      : "";
  return [
    paragraph(
      strong(`It is on ${count(tiles.length, "tile")}`),
      `: ${sentence(allCodes(tiles))} ${glazedWith}`.trimEnd(),
    ),
  ];
}
