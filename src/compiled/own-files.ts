/**
 * The files of Tilebook itself: of a package, of a checkout that was compiled, or of the sources as
 * tests run them.
 */
import { existsSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { sumsOfRooms } from "./sources.mjs";

declare global {
  interface ImportMeta {
    /** True in what `compile.mjs` made. */
    readonly compiled?: true;
  }
}

const here = dirname(fileURLToPath(import.meta.url));

/** The folder that holds Tilebook's package.json. */
export const packageFolder: string = findUp(here);

/** What Tilebook's package.json says. */
export function readOwnPackage(): {
  readonly version: string;
  readonly dependencies: Readonly<Record<string, string>>;
} {
  return JSON.parse(readFileSync(join(packageFolder, "package.json"), "utf8"));
}

/** The folder of what was compiled: assets, and the files of a new archive. */
export async function compiledFolder(): Promise<string> {
  if (!import.meta.compiled) return (await import("./program-folder.mjs")).programFolder();
  return here;
}

let sums: Readonly<Record<string, string>> | undefined;

/**
 * The sum of the code of some rooms, to know what other code made. It is the same whether the sources
 * run or what was compiled of them.
 */
export function codeOf(rooms: readonly string[]): string {
  sums ??= import.meta.compiled
    ? (JSON.parse(readFileSync(join(here, "rooms.json"), "utf8")) as Record<string, string>)
    : sumsOfRooms();
  return rooms.map((room) => sums?.[room]).join(" ");
}

function findUp(folder: string): string {
  if (existsSync(join(folder, "package.json"))) return folder;
  return findUp(dirname(folder));
}
