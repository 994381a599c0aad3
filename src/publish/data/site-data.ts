/** The data files of one site, and the sums of those that were made. */
import { hash } from "node:crypto";
import type { Catalogue } from "../../catalogue/types.ts";
import { rememberFor } from "../../terms/remember.ts";
import { sumOf } from "../sum.ts";
import { aboutOf } from "./about.ts";
import type { Content, DataEntry, FileSum } from "./entry.ts";
import { dataEntriesOf } from "./files.ts";
import { manifestText } from "./manifest.ts";

export interface SiteData {
  /** Every data file, and last the manifest, which tells of the others. */
  readonly entries: readonly DataEntry[];
  /** All but the manifest. */
  readonly files: readonly DataEntry[];
  /** Makes a file, and remembers its sum. */
  readonly make: (entry: DataEntry) => Promise<Content>;
  /** Remembers the sum of a file that was made before, and is still the same. */
  readonly note: (entry: DataEntry, content: Content) => void;
  /** The sum of all that every file follows from, but for the code that makes them. */
  readonly key: () => string;
  /** The sums of all but the manifest by their paths; those that were not made yet are made for it. */
  readonly measure: () => Promise<ReadonlyMap<string, FileSum>>;
  /** The same, where all were made or noted; null where not. */
  readonly measured: () => ReadonlyMap<string, FileSum> | null;
}

/** The data of a catalogue; none of an unlisted set, whose link alone leads to it. */
export const siteDataOf = rememberFor((catalogue: Catalogue): SiteData => {
  const files = catalogue.studio.unlisted ? [] : dataEntriesOf(catalogue);
  const sums = new Map<string, FileSum>();
  const note: SiteData["note"] = ({ path }, content) => void sums.set(path, fileSumOf(content));
  const make: SiteData["make"] = async (entry) => {
    const content = await entry.make();
    note(entry, content);
    return content;
  };
  const measure: SiteData["measure"] = async () => {
    for (const entry of files) if (!sums.has(entry.path)) await make(entry);
    return sums;
  };
  const manifest = {
    ...{ path: manifestPath, mediaType: "application/json", rows: null, table: null },
    schema: "data/archive.schema.json",
    make: async () => manifestText(aboutOf(catalogue.studio), files, await measure()),
  };
  return {
    files,
    entries: files.length === 0 ? [] : [...files, manifest],
    make,
    note,
    key: () => keyOf(catalogue, files),
    measure,
    measured: () => (files.every(({ path }) => sums.has(path)) ? sums : null),
  };
});

/** Tells of all other data files. */
export const manifestPath = "data/archive.json";

function fileSumOf(content: Content): FileSum {
  return { bytes: Buffer.byteLength(content), sha256: hash("sha256", content, "hex") };
}

/** Every file follows from what the JSON files hold, and from what the data says of itself. */
function keyOf({ studio }: Catalogue, entries: readonly DataEntry[]): string {
  const texts = entries.filter(({ mediaType }) => mediaType === "application/json");
  return sumOf(JSON.stringify([aboutOf(studio), texts.map(({ make }) => sumOf(String(make())))]));
}
