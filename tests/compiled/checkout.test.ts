import { spawnSync } from "node:child_process";
import {
  chmodSync,
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, expect, test } from "vitest";
import { removeFolderNow } from "../support/remove-folder.ts";

/*
 * The command of a checkout, in a small one: it runs its sources as they are now, wherever it is
 * called from, even from a folder whose own tsconfig.json would compile TSX otherwise.
 */
const project = fileURLToPath(new URL("../..", import.meta.url));

const cli = (word: string) => `import { renderToString } from "preact-render-to-string";
import { Tile } from "../templates/tile.tsx";
export async function main(argv: readonly string[]): Promise<number> {
  if (argv[0] === "fail") setTimeout(() => { throw new Error("a bug"); });
  console.log(renderToString(Tile({ code: "${word} " + argv[0] })));
  return 2;
}
`;
const template = `export function Tile({ code }: { readonly code: string }) {
  return <h1 class="tile">{code}</h1>;
}
`;

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "tilebook-checkout-"));
  for (const path of [
    ...["src/tilebook.mjs", "src/compiled", "src/program.ts", "src/photos/heic-worker.mjs"],
    ...["tsconfig.json", "package.json", "package-lock.json"],
  ])
    cpSync(join(project, path), join(folder, "checkout", path), { recursive: true });
  for (const style of ["site", "copystand", "trouble", "no-site", "way-to-desk", "let-in", "desk"])
    write(`checkout/templates/styles/${style}.css`, "p { margin: 0 }");
  for (const script of ["wall", "crop/copystand", "desk/paper"])
    write(`checkout/src/browser/${script}.ts`, "document.title = 'Tiles';");
  write("checkout/templates/pages/tile-page.tsx", "export const styles = 'tile';");
  write("checkout/templates/assets/icon.svg", "<svg/>");
  write("checkout/src/starter/studio.yaml", "format: 1");
  write("checkout/src/cli.ts", cli("Tile"));
  write("checkout/templates/tile.tsx", template);
  for (const name of ["esbuild", "postcss", "preact", "preact-render-to-string"]) {
    mkdirSync(join(folder, "checkout/node_modules"), { recursive: true });
    const to = join(folder, "checkout/node_modules", name);
    symlinkSync(join(project, "node_modules", name), to, "junction");
  }
  write("plain/notes.md", "");
  write("other/tsconfig.json", JSON.stringify({ compilerOptions: { jsx: "react" } }));
});
afterAll(() => removeFolderNow(folder));

function write(path: string, text: string): void {
  const file = join(folder, path);
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, text);
}

function runFrom(from: string, program: string, ...args: readonly string[]) {
  const { stdout, stderr, status } = spawnSync(process.execPath, [program, ...args], {
    cwd: join(folder, from),
    encoding: "utf8",
  });
  return { stdout, stderr, status };
}

const command = () => join(folder, "checkout/src/tilebook.mjs");
const compiled = () => join(folder, "checkout/node_modules/.cache/tilebook");

test.each(["", "plain", "other"])("the sources run from the folder '%s'", (from) => {
  expect(runFrom(from, command(), "TB-014")).toEqual({
    stdout: '<h1 class="tile">Tile TB-014</h1>\n',
    stderr: "",
    status: 2,
  });
});

test.skipIf(process.platform === "win32")("a link to the command does the same", () => {
  const link = join(folder, "plain/tilebook");
  symlinkSync(command(), link);
  expect(runFrom("plain", link, "TB-014").stdout).toBe('<h1 class="tile">Tile TB-014</h1>\n');
});

test("what nobody caught ends with the exit code of a failed machine", () => {
  const { stderr, status } = runFrom("plain", command(), "fail");
  expect(status).toBe(3);
  expect(stderr).toContain("Error: a bug");
});

test("they are compiled once, and anew as soon as one of them is another", () => {
  const before = readdirSync(compiled());
  runFrom("", command(), "TB-014");
  expect(readdirSync(compiled())).toEqual(before);
  write("checkout/src/cli.ts", cli("Test"));
  expect(runFrom("", command(), "TB-014").stdout).toBe('<h1 class="tile">Test TB-014</h1>\n');
  write("checkout/templates/tile.tsx", template.replaceAll("h1", "h2"));
  expect(runFrom("", command(), "TB-014").stdout).toBe('<h2 class="tile">Test TB-014</h2>\n');
  write("checkout/templates/tile.tsx", template);
  write("checkout/src/cli.ts", cli("Tile"));
  expect(runFrom("", command(), "TB-014").stdout).toBe('<h1 class="tile">Tile TB-014</h1>\n');
});

test("what was compiled of older sources goes after a day, when something is compiled again", () => {
  const [old = ""] = readdirSync(compiled());
  const twoDaysAgo = Date.now() / 1000 - 2 * 24 * 60 * 60;
  utimesSync(join(compiled(), old), twoDaysAgo, twoDaysAgo);
  const kept = readdirSync(compiled()).filter((name) => name !== old);
  write("checkout/src/cli.ts", cli("Fresh"));
  expect(runFrom("", command(), "TB-014").stdout).toBe('<h1 class="tile">Fresh TB-014</h1>\n');
  expect(readdirSync(compiled())).toEqual(expect.arrayContaining(kept));
  expect(readdirSync(compiled())).not.toContain(old);
});

const mayChooseUser = process.platform !== "win32" && process.getuid?.() === 0;

test.runIf(mayChooseUser)(
  "who may not write there runs what somebody compiled before, or is told",
  () => {
    const asNobody = () => {
      const { stdout, stderr, status } = spawnSync(process.execPath, [command(), "TB-014"], {
        cwd: tmpdir(),
        encoding: "utf8",
        uid: 65534,
        gid: 65534,
      });
      return { stdout, stderr, status };
    };
    chmodSync(folder, 0o755);
    runFrom("", command(), "TB-014");
    expect(asNobody().stdout).toBe('<h1 class="tile">Fresh TB-014</h1>\n');
    write("checkout/src/cli.ts", cli("New"));
    const { stderr, ...ended } = asNobody();
    expect(ended).toEqual({ stdout: "", status: 3 });
    expect(stderr.replace(/\(.*\)/u, "(PLACE)")).toBe(
      "Tilebook keeps itself compiled in its own folder, and this computer does not let you write there (PLACE). " +
        "Ask whoever installed it to run `npm run tilebook -- --version` in that folder once, and again after every change to it.\n",
    );
  },
);

test("a source that cannot be compiled is told with its line, and nothing is left of the attempt", () => {
  const before = readdirSync(compiled());
  write("checkout/templates/tile.tsx", "export function Tile( {");
  const { stdout, stderr, status } = runFrom("", command(), "TB-014");
  expect({ stdout, status }).toEqual({ stdout: "", status: 3 });
  expect(stderr).toContain("templates/tile.tsx:1:23");
  expect(readdirSync(compiled())).toEqual(before);
});
