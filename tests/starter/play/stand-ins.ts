/** What stands in for a forge's machine: its command line, and the programs that its image brings. */
import { chmod, mkdir, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { program } from "../../commands/tilebook.ts";
import { project } from "../../house/files.ts";

/** What the command line was asked for: its words, and the text of a file that it was to send. */
export interface Asked {
  readonly words: readonly string[];
  readonly sent: string | null;
}

/** Answers by method and address, without what follows a `?`; what has none is refused. */
export type Answers = Readonly<Record<string, unknown>>;

/**
 * Writes programs into a folder that is to be first in the path: `gh` answers from a file and notes what it was
 * asked; `npx tilebook` is this checkout; `npm ci --ignore-scripts` installs nothing.
 */
export async function writeStandIns(folder: string, answers: Answers): Promise<void> {
  await mkdir(folder, { recursive: true });
  await writeFile(join(folder, "answers.json"), JSON.stringify(answers));
  await writeFile(join(folder, "asked.jsonl"), "");
  await writeProgram(folder, "gh", `exec "${process.execPath}" "$(dirname "$0")/gh.mjs" "$@"`);
  await writeFile(join(folder, "gh.mjs"), commandLine);
  const runsTilebook = `[ "$1" = tilebook ] || exit 64\nshift\nexec "${process.execPath}" "${program}" "$@"`;
  await writeProgram(folder, "npx", runsTilebook);
  await writeProgram(folder, "npm", '[ "$*" = "ci --ignore-scripts" ]');
}

/** What `gh` was asked so far. */
export async function readAsked(folder: string): Promise<readonly Asked[]> {
  const lines = (await readFile(join(folder, "asked.jsonl"), "utf8")).split("\n");
  return lines.filter((line) => line !== "").map((line) => JSON.parse(line) as Asked);
}

async function writeProgram(folder: string, name: string, lines: string): Promise<void> {
  await writeFile(join(folder, name), `#!/bin/sh\n${lines}\n`);
  await chmod(join(folder, name), 0o755);
}

const jq = pathToFileURL(join(project, "node_modules/jq-wasm/dist/index.js")).href;

/** `gh api`, as far as our workflows use it. */
const commandLine = `
import { appendFileSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
const here = dirname(fileURLToPath(import.meta.url));
const words = process.argv.slice(2);
const options = { method: { type: "string", default: "GET" }, jq: { type: "string" }, field: { type: "string" },
  paginate: { type: "boolean" }, silent: { type: "boolean" } };
const { values, positionals } = parseArgs({ args: words, options, allowPositionals: true });
const file = values.field?.startsWith("body=@") ? values.field.slice(6) : null;
appendFileSync(join(here, "asked.jsonl"), JSON.stringify({ words, sent: file && readFileSync(file, "utf8") }) + "\\n");
const answers = JSON.parse(readFileSync(join(here, "answers.json"), "utf8"));
const answer = answers[values.method + " " + positionals[1].split("?")[0]];
if (positionals[0] !== "api" || answer === undefined || !process.env.GH_TOKEN) {
  console.error("gh: Not Found (HTTP 404)");
  process.exit(1);
}
if (values.jq) {
  const { raw } = (await import(${JSON.stringify(jq)})).default;
  const found = await raw(answer, values.jq, ["-r"]);
  if (found) console.log(found);
}
`;
