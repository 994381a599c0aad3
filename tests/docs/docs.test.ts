/** What the docs tell people to type works as it is written. */
import { existsSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { spawnTilebook } from "../commands/tilebook.ts";
import { commitAll, git } from "../git/git.ts";
import { soundFiles, writeFolder } from "../support/archive-folder.ts";
import { removeFolder } from "../support/remove-folder.ts";
import { commandsIn, listDocs, writtenCommands } from "./commands.ts";

const project = fileURLToPath(new URL("../../", import.meta.url));

/** What words that stand for a reader's own stand for here. */
const own: Readonly<Record<string, string>> = {
  FOLDER: "somewhere",
  ARCHIVE: ".",
  SITE: "our-site",
  GLAZE: "liner",
  MATERIAL: "whiting",
  OLD: "EV-1",
  NEW: "EV-9",
  "ONE,OTHER": "liner,chalky",
  "LB-1": "LB-1",
  SET: "evening",
  KEY: "m02",
  NAME: "Spring",
  m07: "m03",
  autumn: "evening",
  FILES: "inbox",
  "TB-014": "EV-1",
};

/** Commands that go on until they are stopped, and what they say once they work. */
const lasting: Readonly<Record<string, RegExp>> = {
  serve: /stop with Ctrl-C/u,
  crop: /The copy stand is at/u,
};

/** No tablet can reach a machine that is in no private network, as those that run tests often are. */
const saidForTablet = /stop with Ctrl-C|This computer is in no local network/u;

/** Commands that ask first, which nobody can answer here, and the answers. */
const answers: Readonly<Record<string, readonly string[]>> = {
  forget: ["--yes"],
  receive: ["--yes"],
  "new set": ["--name", "Spring", "--yes"],
};

async function archiveOfDocs(): Promise<string> {
  const files = await soundFiles();
  const liner = files["recipes/glazes/liner.md"] as string;
  return writeFolder({
    ...files,
    "recipes/glazes/chalky.md": liner.replace("Liner", "Chalky"),
    "inbox/EV-8.md": "---\nlayers: [{glaze: chalky}]\n---\n",
  });
}

/** A request is compared with a branch. */
function commitAsMain(folder: string): void {
  git(folder, "init", "--quiet");
  commitAll(folder, "one");
}

/** Below what a system hands out by itself, so that nothing else is handed it. */
let port = 24_000 + (process.pid % 6_000);

const commands = await writtenCommands();

test("commands are found in code and in running words", () => {
  const text =
    "```\nnpx tilebook serve   shows it\n```\n- `npm run --silent tilebook -- check\n  --fix` shows\n";
  expect(commandsIn("x.md", text).map(({ args }) => args)).toEqual([["serve"], ["check", "--fix"]]);
});

describe("every command of the docs does what it is asked for", () => {
  const distinct = new Map(commands.map(({ args }) => [args.join(" "), args]));

  test.each([...distinct])("tilebook %s", async (_, args) => {
    const folder = await archiveOfDocs();
    if (args.includes("--since")) commitAsMain(folder);
    const typed = args.map((word) => own[word] ?? word);
    const words =
      typed[0] === "new-archive" ? typed.map((word) => (word === "." ? "new" : word)) : typed;
    const said = words.includes("--tablet") ? saidForTablet : lasting[words[0] ?? ""];
    try {
      if (said) {
        port += 1;
        const { err } = await spawnTilebook([...words, "--port", String(port)], {
          cwd: folder,
          onSaid: (all, child) => void (said.test(all) && child.kill("SIGTERM")),
        });
        expect(err).toMatch(said);
        return;
      }
      const answer = answers[words.slice(0, 2).join(" ")] ?? answers[words[0] ?? ""] ?? [];
      const answered = [...words, ...answer];
      expect(await spawnTilebook(answered, { cwd: folder })).toMatchObject({ code: 0 });
    } finally {
      await removeFolder(folder);
    }
  });
});

test("every page that the docs lead to is there", async () => {
  const missing: string[] = [];
  for (const file of await listDocs()) {
    const text = await readFile(join(project, file), "utf8");
    for (const [, to = ""] of text.matchAll(/\]\((?!https?:|#)([^)#]+)/gu))
      if (!existsSync(join(project, dirname(file), to))) missing.push(`${file} leads to ${to}`);
  }
  expect(missing).toEqual([]);
});
