/** What `new tile` asks a person at a terminal, one thing after the other. */
import { type Asking, askRest, namedChoices } from "../../asking/ask-field.ts";
import { askLayers } from "../../asking/ask-layers.ts";
import type { Draft } from "../../asking/draft.ts";
import type { Prompts } from "../../asking/prompts.ts";
import { tellSteps } from "../../desk/paper/told.ts";
import type { DeskArchive } from "../../desk/types.ts";
import { knownNames } from "../../editing/names.ts";
import { type MapShape, shapeOfRecord } from "../../editing/shape.ts";
import { shortNames } from "../../reader/short-form/names.ts";
import { readShortForm } from "../../reader/short-form/read-short-form.ts";
import { findById } from "../../records/archive.ts";
import { sharedTileFields } from "../../records/tile.ts";
import { findIdFault } from "../../terms/ids.ts";

const none = "";

/** Which set it is for; null for none. */
export async function askSet({ archive }: DeskArchive, prompts: Prompts): Promise<string | null> {
  if (archive.sets.size === 0) return null;
  const sets = [...archive.sets.values()].map(({ id, record: { name } }) => ({
    ...{ value: id, label: `${id}: ${name}` },
  }));
  const chosen = await prompts.choose("Which set does it belong to?", [
    ...sets,
    { value: none, label: "No set" },
  ]);
  return chosen === none ? null : chosen;
}

/** @param whyTaken why a code cannot be had */
export function askCode(
  prompts: Prompts,
  next: string | undefined,
  whyTaken: (code: string) => string | undefined,
): Promise<string> {
  return prompts.write("Its code, as it is on the clay?", {
    ...(next !== undefined && { begin: next }),
    faultOf(code) {
      if (code === "") return "Write the code that is on the clay.";
      const why = findIdFault(code);
      if (why !== undefined) return `“${code}” cannot be a code: ${why}. Write another code.`;
      const taken = whyTaken(code);
      return taken && `“${code}” is taken: ${taken}. Look at the clay again.`;
    },
  });
}

/** The key of who glazed it; empty where that is not known. */
export async function askMaker({ archive }: DeskArchive, prompts: Prompts): Promise<string> {
  const makers = namedChoices(knownNames(archive, null), ["maker"]);
  if (makers.length === 0) return none;
  return prompts.choose("Who glazed it?", [...makers, { value: none, label: "Not known" }]);
}

/** The layers, and before them what else is to be said of the tile; both go into the draft. */
export async function askOfTile(
  archive: DeskArchive,
  set: string | null,
  prompts: Prompts,
  draft: Draft,
): Promise<void> {
  const asking: Asking = { prompts, draft, names: knownNames(archive.archive, set) };
  const names = shortNames(archive.archive, set);
  const [tile] = shapeOfRecord("tile").maps;
  const step = tile?.fields.get("layers")?.entries;
  if (!tile || !step) return;
  await askShared(archive, set, asking, tile);
  const tellLayers = (line: string) => tellSteps(archive.archive, readShortForm(line, names).steps);
  await askLayers({ ...asking, shortNames: names, tellLayers }, step);
}

/** What the set gives is shown, and may be said otherwise of this tile. */
async function askShared(
  { archive }: DeskArchive,
  set: string | null,
  asking: Asking,
  tile: MapShape,
): Promise<void> {
  const given = tellDefaults(findById(archive.sets, set)?.record.defaults ?? {});
  if (given !== "") asking.prompts.tell(`From the set: ${given}.`);
  const shared = [...tile.fields].filter(([name]) => name in sharedTileFields && name !== "maker");
  await askRest(asking, [], { ...tile, fields: new Map(shared) });
}

function tellDefaults(defaults: object): string {
  return Object.entries(defaults)
    .filter(([, value]) => typeof value === "string" || typeof value === "number")
    .map(([name, value]) => `${name.replace(/[A-Z]/gu, (it) => `-${it.toLowerCase()}`)} ${value}`)
    .join(", ");
}
