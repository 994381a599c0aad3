/** The commands that the docs tell people to type. */
import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const project = fileURLToPath(new URL("../../", import.meta.url));

export interface WrittenCommand {
  /** Where it is written, from the project's root. */
  readonly file: string;
  /** What comes after `tilebook`. */
  readonly args: readonly string[];
}

/** Every document that a reader of the project or of a new archive is handed; workflows are played in tests/starter. */
export async function listDocs(): Promise<readonly string[]> {
  const docs = await readdir(join(project, "docs"));
  const guide = await readdir(join(project, "docs/guide"));
  return [
    ...["README.md", "DEVELOPERS.md", "CONTRIBUTING.md", "src/starter/README.md"],
    ...docs.filter((name) => name.endsWith(".md")).map((name) => `docs/${name}`),
    ...guide.map((name) => `docs/guide/${name}`),
  ];
}

/** Every command of Tilebook in the docs, each once for a file. */
export async function writtenCommands(): Promise<readonly WrittenCommand[]> {
  const all = await Promise.all(
    (await listDocs()).map(async (file) =>
      commandsIn(file, await readFile(join(project, file), "utf8")),
    ),
  );
  return all.flat();
}

/** Commands in code, on a line of their own with their explanation two spaces behind. */
export function commandsIn(file: string, text: string): readonly WrittenCommand[] {
  const pattern = /(?:npx tilebook|npm run --silent tilebook --)((?: [^\s`|]+|\n\s*--[a-z-]+)*)/gu;
  const found = [...text.matchAll(pattern)].map(([, words = ""]) =>
    words.split(/\s+/u).filter((word) => word !== ""),
  );
  const once = new Map(
    found.filter((args) => isCommand(args)).map((args) => [args.join(" "), args]),
  );
  return [...once.values()].map((args) => ({ file, args }));
}

/** `tilebook --` may stand alone where a text explains how commands are named. */
function isCommand([command]: readonly string[]): boolean {
  return command !== undefined && command !== "--";
}
