/** `npm pack` and `npm publish` call this first: it makes `dist/`, which is what a package runs. */
import { rm } from "node:fs/promises";
import { join } from "node:path";
import { compileInto } from "./compile.mjs";
import { projectFolder } from "./sources.mjs";

const dist = join(projectFolder(), "dist");
await rm(dist, { recursive: true, force: true });
await compileInto(dist);
