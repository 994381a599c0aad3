/** What glazes are made of, raw: recipes of materials, and blends of other glazes. */
import { idKey } from "../terms/ids.ts";
import type { Analysis } from "./analysis.ts";
import type { FindMaterial } from "./materials.ts";
import { mixAnalyses, type Weighed } from "./mix.ts";
import type { Note } from "./notes.ts";
import { type Recipe, recipeToBatch } from "./recipe.ts";
import { notWorked, type Reason, type Worked } from "./why-no-chemistry.ts";

export interface BlendPart {
  readonly glaze: string;
  readonly parts: number;
}

/** How a glaze comes about. */
export type Making =
  | { readonly kind: "bought" }
  | {
      readonly kind: "blend";
      readonly by: "volume" | "weight";
      readonly parts: readonly BlendPart[];
    }
  | { readonly kind: "recipe"; readonly recipe: Recipe };

export interface MixedGlaze {
  readonly id: string;
  readonly name: string;
  readonly making: Making;
}

export interface AnalysedGlaze {
  /** Of the raw mixture, additions included. */
  readonly raw: Analysis;
  readonly notes: readonly Note[];
}

export type GlazeResult = Worked<AnalysedGlaze>;

/** Gives the raw analysis of the glaze of an id. */
export type FindGlaze = (id: string) => GlazeResult;

/**
 * Works out glazes by their recipes and blends. Every glaze is worked out once, when it is first
 * asked for; a blend that comes back to itself is a reason that tells the way round.
 */
export function glazeFinder(glazes: readonly MixedGlaze[], findMaterial: FindMaterial): FindGlaze {
  const byId = new Map(glazes.map((glaze) => [idKey(glaze.id), glaze]));
  const known = new Map<string, GlazeResult>();

  function find(id: string, within: readonly MixedGlaze[]): GlazeResult {
    const glaze = byId.get(idKey(id));
    if (!glaze) return noSuchGlaze(id);
    if (within.includes(glaze)) return blendOfItself(glaze, within);
    const result = known.get(idKey(id)) ?? work(glaze, [...within, glaze]);
    known.set(idKey(id), result);
    return result;
  }

  function work(glaze: MixedGlaze, within: readonly MixedGlaze[]): GlazeResult {
    const { making } = glaze;
    if (making.kind === "bought") return bought(glaze);
    if (making.kind === "recipe") return workRecipe(making.recipe, findMaterial);
    if (making.by === "volume") return blendedByVolume(glaze);
    return workBlend(making.parts, (id) => find(id, within));
  }

  return (id) => find(id, []);
}

function workRecipe(recipe: Recipe, findMaterial: FindMaterial): GlazeResult {
  return combine(
    recipeToBatch(recipe).map(({ material: id, weight }) => {
      const found = findMaterial(id);
      if (!found.ok) return found;
      const { analysis, name, notes } = found.material;
      const named = notes.map((note) => nameMaterial(note, name));
      return { ok: true, part: { analysis, weight }, notes: named };
    }),
  );
}

/** Notes that are about the figures of a sheet do not say whose. */
function nameMaterial(note: Note, name: string): Note {
  const namesIt = note.code === "typical" || note.code === "theoretical";
  return namesIt ? note : { ...note, message: `${name}: ${note.message}` };
}

function workBlend(parts: readonly BlendPart[], findGlaze: FindGlaze): GlazeResult {
  return combine(
    parts.map(({ glaze, parts: weight }) => {
      const found = findGlaze(glaze);
      if (!found.ok) return found;
      return { ok: true, part: { analysis: found.raw, weight }, notes: found.notes };
    }),
  );
}

type Portion = Worked<{ readonly part: Weighed; readonly notes: readonly Note[] }>;

/** Mixes what could be worked out, unless something could not. */
function combine(portions: readonly Portion[]): GlazeResult {
  const [reason, ...more] = portions.flatMap((portion): readonly Reason[] =>
    portion.ok ? [] : portion.reasons,
  );
  if (reason) return { ok: false, reasons: [reason, ...more] };
  const worked = portions.filter((portion) => portion.ok);
  const notes = worked.flatMap((portion) => portion.notes);
  const firstOfEach = new Map(notes.map((note) => [note.message, note]));
  return {
    ok: true,
    raw: mixAnalyses(worked.map((portion) => portion.part)),
    notes: [...firstOfEach.values()],
  };
}

function bought(glaze: MixedGlaze): GlazeResult {
  return notWorked(
    "bought",
    `${glaze.name} was bought, and only its maker knows what is in it`,
    "Its label and safety sheet are the place to look.",
  );
}

function blendedByVolume(glaze: MixedGlaze): GlazeResult {
  return notWorked(
    "blended-by-volume",
    `${glaze.name} was blended by volume, and how much dry glaze each part held is not known`,
    "Blend by dry weight where the chemistry matters.",
  );
}

function noSuchGlaze(id: string): GlazeResult {
  return notWorked(
    "no-such-glaze",
    `There is no glaze “${id}”`,
    `Add a record for it, recipes/glazes/${id}.md, or mend the name in the blend.`,
  );
}

function blendOfItself(glaze: MixedGlaze, within: readonly MixedGlaze[]): GlazeResult {
  const round = [...within.slice(within.indexOf(glaze)), glaze];
  return notWorked(
    "blend-of-itself",
    `The blend of ${glaze.name} leads back to itself: ${round.map((g) => g.id).join(" → ")}`,
    "Take one of these glazes out of the other's blend.",
  );
}
