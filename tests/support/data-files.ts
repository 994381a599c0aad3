/** The JSON files of a catalogue, for tests that look into them. */
import type { Catalogue } from "../../src/catalogue/types.ts";
import { dataEntriesOf } from "../../src/publish/data/files.ts";

export function makeDataFiles(catalogue: Catalogue): { path: string; content: string }[] {
  return dataEntriesOf(catalogue)
    .filter(({ path }) => path.endsWith(".json"))
    .map(({ path, make }) => ({ path, content: make() as string }));
}
