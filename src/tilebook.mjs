#!/usr/bin/env node
/*
 * The `tilebook` command. It makes this Node read TypeScript and TSX, always by Tilebook's own
 * tsconfig.json: that of whatever folder it is called from would compile the templates otherwise.
 */
import { fileURLToPath } from "node:url";
import { register } from "tsx/esm/api";

const machineFailed = 3;

process.on("uncaughtException", (error) => {
  console.error(error);
  process.exit(machineFailed);
});

register({ tsconfig: fileURLToPath(new URL("../tsconfig.json", import.meta.url)) });
const { main } = await import("./cli.ts");
process.exitCode = await main(process.argv.slice(2));
