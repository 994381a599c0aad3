/** Writing the data files of a site, or carrying over those that follow from what they did. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Catalogue } from "../catalogue/types.ts";
import { carryUnchanged, type Place, writeOrCarry } from "./carry.ts";
import { siteDataOf } from "./data/site-data.ts";
import { fileUnder } from "./filed-page.ts";
import { renderingCode } from "./rendering-code.ts";
import { sumOf } from "./sum.ts";
import { inTurns } from "./turns.ts";

/**
 * Writes every data file of a catalogue; its sums are known then.
 *
 * @param under the folder of the site beneath the root; empty for the root itself
 */
export async function writeData(catalogue: Catalogue, under: string, place: Place): Promise<void> {
  const data = siteDataOf(catalogue);
  if (data.entries.length === 0) return;
  const key = sumOf(renderingCode() + data.key());
  await inTurns(data.entries, async (entry) => {
    const path = fileUnder(under, entry.path);
    if (carryUnchanged(place, path, key)) data.note(entry, readFileSync(join(place.folder, path)));
    else writeOrCarry(place, path, await data.make(entry), key);
  });
}
