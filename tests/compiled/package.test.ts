import { mkdtempSync, readdirSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { compileInto } from "../../src/compiled/compile.mjs";
import { codeOf } from "../../src/compiled/own-files.ts";
import { project } from "../house/files.ts";
import { removeFolderNow } from "../support/remove-folder.ts";

let folder = "";
let files: readonly string[] = [];
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "tilebook-package-"));
  await compileInto(folder);
  files = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name));
});
afterAll(() => removeFolderNow(folder));

const programs = () => files.filter((file) => file.endsWith(".mjs"));
const read = (file: string) => readFileSync(file, "utf8");

test("what is compiled holds no TypeScript, and imports no package that only development needs", () => {
  expect(files.filter((file) => /\.tsx?$/u.test(file))).toEqual([]);
  const { dependencies } = JSON.parse(read(join(project, "package.json")));
  const imported = programs().flatMap((file) =>
    [
      ...read(file).matchAll(
        /^(?:import|\} from) ?.*?"([^."][^"]*)";$|import\("([^."][^"]*)"\)/gmu,
      ),
    ].map(([, plain, lazy]) => plain ?? lazy ?? ""),
  );
  const packages = new Set(
    imported
      .filter((name) => !name.startsWith("node:"))
      .map((name) =>
        name
          .split("/")
          .slice(0, name.startsWith("@") ? 2 : 1)
          .join("/"),
      ),
  );
  expect([...packages].sort()).toEqual(Object.keys(dependencies).sort());
});

test("what is compiled tells its own code by the same sums as the sources do", () => {
  const sums = JSON.parse(read(join(folder, "rooms.json")));
  for (const room of ["colour", "photos", "terms", "templates"])
    expect(codeOf([room]), room).toBe(sums[room]);
  expect(new Set(Object.values(sums)).size).toBe(Object.keys(sums).length);
});

test("a command loads nothing that only another needs", () => {
  const reach = (file: string, seen = new Set<string>()): ReadonlySet<string> => {
    if (seen.has(file)) return seen;
    seen.add(file);
    for (const [, next = ""] of read(join(folder, file)).matchAll(
      /(?:^import |from )"\.\/([^"]+)"/gmu,
    ))
      reach(next, seen);
    return seen;
  };
  const text = (start: RegExp) =>
    programs()
      .map((file) => file.slice(folder.length + 1))
      .filter((file) => start.test(file))
      .flatMap((file) => [...reach(file)].map((part) => read(join(folder, part))))
      .join("\n");
  const ofBuild = text(/^build-/u);
  expect(ofBuild).toMatch(/from "preact-render-to-string"/u);
  // Eleventy is loaded only where a page has changed.
  expect(ofBuild).toMatch(/import\("@11ty\/eleventy"\)/u);
  expect(ofBuild).not.toMatch(/from "@11ty\/eleventy"/u);
  // So are the libraries that write databases, where one is made.
  expect(ofBuild).toMatch(/import\("sql\.js"\)/u);
  expect(ofBuild).not.toMatch(/from "(?:sql\.js|hyparquet-writer)"/u);
  const ofCheck = text(/^check-/u);
  expect(ofCheck).toMatch(/from "zod"/u);
  expect(ofCheck).not.toMatch(/import\("(?:@11ty\/eleventy|sql\.js|hyparquet-writer)"\)/u);
  expect(ofCheck).not.toMatch(
    /from "(?:@11ty\/eleventy|pagefind|preact-render-to-string|markdown-it)"/u,
  );
});
