/**
 * The index for finding words: Pagefind's, under `pagefind/`. That of a large site is cut into shards,
 * which a browser searches together, so that an edit remakes one of them.
 */
import { readdirSync, rmSync } from "node:fs";
import { join, relative, sep } from "node:path";
import { gunzipSync } from "node:zlib";
import { readOwnPackage } from "../compiled/own-files.ts";
import { hasCode } from "../disk/machine-error.ts";
import { carryUnchanged, type Place, writeOrCarry } from "./carry.ts";
import { type FiledPage, fileUnder } from "./filed-page.ts";
import { type IndexFile, type IndexRecord, makeIndexes } from "./pagefind-index.ts";
import { shardsOf } from "./search-shards.ts";
import { sumOf } from "./sum.ts";

/** The site whose pages are indexed. */
export interface SearchedSite {
  /** Its folder beneath the root. */
  readonly under: string;
  readonly pages: readonly FiledPage[];
}

/** One index of Pagefind's. */
interface Shard {
  /** Relative to the root of the whole. */
  readonly folder: string;
  /** The sum of all that it is made of. */
  readonly key: string;
  readonly records: () => readonly IndexRecord[];
  /** Whether a browser loads Pagefind's code from here; the other shards are joined to this one. */
  readonly isFirst: boolean;
}

/**
 * Indexes the pages of sites that have words to be found. Pagefind does so in a process of its own:
 * let it work while pages are written.
 *
 * @returns true where an index was made anew
 * @throws where Pagefind reports an error of its own
 */
export async function writeSearch(sites: readonly SearchedSite[], place: Place): Promise<boolean> {
  const shards = sites.flatMap(listShards);
  const changed = shards.filter((shard) => !carryShard(shard, place));
  if (changed.length > 0)
    await makeIndexes(changed, (shard, files) => writeShard(shard, files, place));
  return changed.length > 0;
}

function listShards({ under, pages }: SearchedSite): readonly Shard[] {
  // Another Pagefind makes another index of the same words.
  const version = readOwnPackage().dependencies.pagefind;
  const found = pages.filter(({ words }) => words !== "");
  return shardsOf(found).map(({ folder, pages: own }, i) => ({
    folder: fileUnder(under, folder),
    key: sumOf(
      JSON.stringify([version, i === 0, own.map(({ page, words }) => [page.path, words])]),
    ),
    records: () => own.flatMap(toRecord),
    isFirst: i === 0,
  }));
}

function toRecord({ page, entry }: FiledPage): IndexRecord[] {
  const found = entry();
  if (found === null) return [];
  const { title, kind, words, picture } = found;
  const meta = { title, kind, ...(picture && { picture }) };
  return [{ url: page.path, content: `${title} ${words}`, language: "en", meta }];
}

/**
 * Carries a shard over, if it was made here of the same and no file of it was touched since. It holds
 * code: one that came with somebody's site is not believed.
 */
function carryShard({ folder, key }: Shard, place: Place): boolean {
  const { last, ledger } = place;
  if (last === null) return false;
  const files = listShard(join(last, folder));
  const whole = wholeOf(key, files);
  if (ledger.findWhole(folder) !== whole) return false;
  if (!files.every((file) => carryUnchanged(place, `${folder}/${file}`, key))) {
    for (const file of files) rmSync(join(place.folder, folder, file), { force: true });
    return false;
  }
  ledger.noteWhole(folder, whole);
  return true;
}

/** The sum of what a shard was made of, and of the names of its files. */
function wholeOf(key: string, files: readonly string[]): string {
  return sumOf(`${key}\n${[...files].sort().join("\n")}`);
}

/** The files of a shard, as paths in its folder; none where there is no such folder. */
function listShard(folder: string): string[] {
  try {
    return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
      if (entry.isFile()) return [entry.name];
      if (!partsOfAShard.includes(entry.name)) return [];
      return listFiles(join(folder, entry.name)).map((file) => `${entry.name}/${file}`);
    });
  } catch (error) {
    // There was none, or another build put its own site there meanwhile.
    if (hasCode(error, "ENOENT", "ENOTDIR")) return [];
    throw error;
  }
}

/** The folders that Pagefind makes in an index; those of other shards may lie beside them. */
const partsOfAShard = ["filter", "fragment", "index"];

function listFiles(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join("/"));
}

function writeShard({ folder, key, isFirst }: Shard, all: readonly IndexFile[], place: Place) {
  const files = [
    ...all.filter(({ path }) => !isSpare(path, isFirst)),
    { path: "addresses.json", content: addressesOf(all) },
  ];
  for (const { path, content } of files) writeOrCarry(place, `${folder}/${path}`, content, key);
  place.ledger.noteWhole(
    folder,
    wholeOf(
      key,
      files.map(({ path }) => path),
    ),
  );
}

/** Which page each record is of, so that a browser need not load a file for every hit. */
function addressesOf(files: readonly IndexFile[]): Uint8Array {
  const addresses = files.flatMap(({ path, content }) => {
    const id = /^fragment\/(.*)\.pf_fragment$/u.exec(path)?.[1];
    return id === undefined ? [] : [[id, addressIn(content)] as const];
  });
  addresses.sort(([a], [b]) => (a < b ? -1 : 1));
  return Buffer.from(JSON.stringify(Object.fromEntries(addresses)));
}

/** A packed record is JSON after a few letters that say so. */
function addressIn(fragment: Uint8Array): string {
  const text = gunzipSync(fragment).toString();
  return (JSON.parse(text.slice(text.indexOf("{"))) as { url: string }).url;
}

/** Pagefind's ready-made boxes, which no page here loads; and its code, which the first shard runs for all. */
function isSpare(path: string, isFirst: boolean): boolean {
  if (/^pagefind-(ui|modular-ui|component-ui|highlight)\./u.test(path)) return true;
  return !isFirst && /^(pagefind\.js|pagefind-worker\.js|wasm\..*)$/u.test(path);
}
