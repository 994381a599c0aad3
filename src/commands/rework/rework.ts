/** `tilebook rework`: a glaze without a material that has run out. */
import { findMaterialIdOf, findMaterialOf, findRecipe } from "../../chemistry/from-records.ts";
import { carriedMaterials } from "../../chemistry/minerals/minerals.ts";
import { reworkGlaze } from "../../chemistry/rework-glaze.ts";
import { tellReasons } from "../../chemistry/why-no-chemistry.ts";
import type { Archive, Filed } from "../../records/archive.ts";
import type { GlazeRecord } from "../../records/glaze.ts";
import { idKey } from "../../terms/ids.ts";
import { exitCodes, WrongUsage } from "../failure.ts";
import { findNamed, liesIn, openArchive, unknown } from "../open-archive.ts";
import { renderReworkAsJson } from "./rework-json.ts";
import { renderReworkAsText } from "./rework-text.ts";

export interface ReworkOptions {
  readonly archive: string;
  readonly without: string;
  /** Ids of the only materials that may come in. */
  readonly with?: readonly string[];
  readonly format: "json" | "text";
}

/**
 * Prints the ways to make a glaze without one of its materials, the nearest first. That nothing
 * comes near is an answer too.
 */
export async function rework(glaze: string, options: ReworkOptions): Promise<number> {
  const archive = await openArchive(options.archive, (file) => liesIn("recipes", file));
  if (!archive) return exitCodes.faulty;
  const filed = findNamed(archive.glazes, glaze, "glaze");
  const without = checkWithout(archive, filed, options.without);
  const withOthers = options.with && checkWith(archive, without, options.with);
  const answer = reworkGlaze(archive, filed.id, { without, withOthers });
  if (!answer.ok) throw new WrongUsage(tellReasons(answer.reasons));
  const findMaterial = findMaterialOf(archive);
  const question = { id: filed.id, name: filed.record.name, without };
  const nameOf = (id: string) => {
    const found = findMaterial(id);
    return found.ok ? found.material.name : id;
  };
  const render = options.format === "json" ? renderReworkAsJson : renderReworkAsText;
  console.log(render(question, answer, nameOf));
  return exitCodes.done;
}

/** The material to do without, as the recipe names it. */
function checkWithout(archive: Archive, glaze: Filed<GlazeRecord>, written: string): string {
  const recipe = findRecipe(glaze.record);
  if (!recipe) return written;
  const held = [...recipe.ingredients, ...recipe.additions].map(({ material }) => material);
  const findId = findMaterialIdOf(archive);
  const keyOf = (word: string) => idKey(findId(word) ?? word);
  const found = held.find((material) => keyOf(material) === keyOf(written));
  if (found !== undefined) return found;
  checkMaterial(archive, written);
  throw new WrongUsage(`${glaze.record.name} holds no ${written}. It holds ${held.join(", ")}.`);
}

function checkWith(
  archive: Archive,
  without: string,
  written: readonly string[],
): readonly string[] {
  const findId = findMaterialIdOf(archive);
  const keyOf = (word: string) => idKey(findId(word) ?? word);
  if (written.some((material) => keyOf(material) === keyOf(without)))
    throw new WrongUsage(`${without} cannot be both what there is and what there is not.`);
  for (const material of written) checkMaterial(archive, material);
  return written;
}

function checkMaterial(archive: Archive, written: string): void {
  const found = findMaterialOf(archive)(written);
  if (found.ok) return;
  if (found.reasons.some(({ code }) => code !== "no-such-material"))
    throw new WrongUsage(tellReasons(found.reasons));
  const own = [...archive.materials.values()].map(({ id, record }) => ({ id, name: record.name }));
  throw new WrongUsage(unknown(written, "material", [...own, ...carriedMaterials]));
}
