/** Takes a photograph of what came out of the kiln, and puts it beside the tile's record. */
import { findById } from "../../records/archive.ts";
import type { Written } from "../types.ts";
import type { DeskWork } from "../work.ts";

/** Writes it as `<CODE>.jpg`, scrubbed, and over none that is there. */
export async function photographAction(
  code: string,
  bytes: Uint8Array,
  work: DeskWork,
): Promise<Written> {
  const tile = findById((await work.read()).archive.tiles, code);
  if (!tile) return nothing(`There is no tile “${code}” that can be read.`);
  const known = tile.pictures.find(({ role }) => role === "result");
  if (known)
    return nothing(`${tile.id} has a photograph, ${known.file}. Nothing was written over it.`);
  const taken = await work.takeIn(bytes);
  if ("why" in taken) return nothing(`That photograph was not taken. ${taken.why}`);
  const path = `${tile.file.slice(0, tile.file.lastIndexOf("/") + 1)}${tile.id}.${taken.ending}`;
  return work.writeNew([{ path, content: taken.bytes }]);
}

function nothing(words: string): Written {
  return { written: false, words, files: [] };
}
