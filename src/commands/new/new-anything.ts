/** `tilebook new` alone: what shall it be? */
import type { Prompts } from "../../asking/prompts.ts";
import { recordKinds } from "../../records/kinds.ts";
import { exitCodes } from "../failure.ts";
import { type NewKind, newRecord } from "./new-record.ts";
import { newTile } from "./new-tile.ts";

const kinds: readonly ("tile" | NewKind)[] = ["tile", "glaze", "firing", "set", "clay", "material"];

/** Asks what is new, and then for it. */
export async function newAnything(archive: string, prompts: Prompts | undefined): Promise<number> {
  if (!prompts) return exitCodes.usage;
  const chosen = await prompts.choose(
    "What is new?",
    kinds.map((kind) => {
      const sentence = recordKinds.find(({ name }) => name === kind)?.sentence ?? "";
      return { value: kind, label: kind, hint: sentence };
    }),
  );
  const kind = kinds.find((each) => each === chosen) ?? "tile";
  if (kind === "tile") return newTile({ archive }, prompts);
  return newRecord(kind, [], { archive }, prompts);
}
