#!/usr/bin/env node
/** The program: what a package's command runs, compiled. */
import { main } from "./cli.ts";

const machineFailed = 3;

process.on("uncaughtException", (error) => {
  console.error(error);
  process.exit(machineFailed);
});

process.exitCode = await main(process.argv.slice(2));
