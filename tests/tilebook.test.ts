import { spawnSync } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, expect, test } from "vitest";

/*
 * The command as it stands in a studio that installed Tilebook as a package: a folder that knows
 * nothing of TypeScript, or has a tsconfig.json of its own that would compile TSX otherwise.
 */
const project = fileURLToPath(new URL("..", import.meta.url));

const cli = `import { renderToString } from "preact-render-to-string";
import { Tile } from "../templates/tile.tsx";
export async function main(argv: readonly string[]): Promise<number> {
  if (argv[0] === "fail") throw new Error("a bug");
  console.log(renderToString(Tile({ code: argv[0] ?? "" })));
  return 2;
}
`;
const template = `export function Tile({ code }: { readonly code: string }) {
  return <h1 class="tile">{code}</h1>;
}
`;

let studio = "";
beforeAll(() => {
  studio = mkdtempSync(join(tmpdir(), "tilebook-studio-"));
  for (const path of ["src/tilebook.mjs", "tsconfig.json", "package.json"]) {
    write(`node_modules/tilebook/${path}`, "");
    cpSync(join(project, path), join(studio, "node_modules/tilebook", path));
  }
  write("node_modules/tilebook/src/cli.ts", cli);
  write("node_modules/tilebook/templates/tile.tsx", template);
  for (const name of ["tsx", "preact", "preact-render-to-string"]) {
    symlinkSync(
      join(project, "node_modules", name),
      join(studio, "node_modules", name),
      "junction",
    );
  }
  write("plain/notes.md", "");
  write("other/tsconfig.json", JSON.stringify({ compilerOptions: { jsx: "react" } }));
});
afterAll(() => rmSync(studio, { recursive: true }));

function write(path: string, text: string): void {
  const file = join(studio, path);
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, text);
}

function runFrom(folder: string, program: string, ...args: readonly string[]) {
  const { stdout, stderr, status } = spawnSync(process.execPath, [program, ...args], {
    cwd: join(studio, folder),
    encoding: "utf8",
  });
  return { stdout, stderr, status };
}

const installed = () => join(studio, "node_modules/tilebook/src/tilebook.mjs");

test.each(["", "plain", "other"])("TSX is rendered from the folder '%s'", (folder) => {
  expect(runFrom(folder, installed(), "TB-014")).toEqual({
    stdout: '<h1 class="tile">TB-014</h1>\n',
    stderr: "",
    status: 2,
  });
});

test.skipIf(process.platform === "win32")("a link to the command does the same", () => {
  const link = join(studio, "plain/tilebook");
  symlinkSync(installed(), link);
  expect(runFrom("plain", link, "TB-014").stdout).toBe('<h1 class="tile">TB-014</h1>\n');
});

test("what nobody caught ends with the exit code of a failed machine", () => {
  const { stdout, stderr, status } = runFrom("plain", installed(), "fail");
  expect({ stdout, status }).toEqual({ stdout: "", status: 3 });
  expect(stderr).toContain("Error: a bug");
});
