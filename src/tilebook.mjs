#!/usr/bin/env node
/*
 * The `tilebook` command of a checkout: it runs the sources as they are now, compiled. A package
 * holds them compiled already, and its command is `dist/tilebook.mjs`.
 */
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { programFolder } from "./compiled/program-folder.mjs";

const machineFailed = 3;

const folder = await programFolder().catch((error) => {
  console.error(["EACCES", "EPERM", "EROFS"].includes(error.code) ? tellNotAllowed(error) : error);
  process.exit(machineFailed);
});
await import(pathToFileURL(join(folder, "tilebook.mjs")).href);

/** @param {NodeJS.ErrnoException} error */
function tellNotAllowed({ path }) {
  return (
    `Tilebook keeps itself compiled in its own folder, and this computer does not let you write there (${path}). ` +
    "Ask whoever installed it to run `npm run tilebook -- --version` in that folder once, and again after every change to it."
  );
}
