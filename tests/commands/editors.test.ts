/** `tilebook editors`, and what `check` keeps up to date for editors. */
import { mkdir, readdir, readFile, rm, symlink, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { expect, test } from "vitest";
import { archiveWith, folderWith } from "./archives.ts";
import { sumsOf } from "./site-files.ts";
import { tilebook } from "./tilebook.ts";

const settings = [
  ".vscode/settings.json",
  ".vscode/extensions.json",
  ".helix/languages.toml",
  ".vscode/tilebook.code-snippets",
];

async function glazesOffered(archive: string): Promise<readonly string[]> {
  const schema = await readFile(join(archive, ".tilebook/schemas/tile.schema.json"), "utf8");
  return JSON.parse(schema).definitions.glaze.enum;
}

test("it writes settings and what follows from the archive, and a second time nothing", async () => {
  const archive = await archiveWith({ ".gitignore": "site/" });
  const first = await tilebook("editors", "--archive", archive);
  expect(first.code).toBe(0);
  expect(first.out.split("\n")).toEqual([
    ...settings.map((file) => `Written: ${file}`),
    "Written: .tilebook/.gitignore",
    ...["tile", "set", "firing", "glaze", "clay", "material", "page", "studio"].map(
      (kind) => `Written: .tilebook/schemas/${kind}.schema.json`,
    ),
    "Written: .vscode/tilebook-ids.code-snippets",
  ]);
  expect(await readFile(join(archive, ".gitignore"), "utf8")).toBe(
    "site/\n.vscode/tilebook-ids.code-snippets\n",
  );
  const before = await sumsOf(archive);
  const second = await tilebook("editors", "--archive", archive);
  expect(second.out.split("\n")).toEqual(settings.map((file) => `Left as it was: ${file}`));
  expect(await sumsOf(archive)).toEqual(before);
});

test("settings that somebody made stay as they are", async () => {
  const archive = await archiveWith({ ".vscode/settings.json": "{}" });
  await tilebook("editors", "--archive", archive);
  expect(await readFile(join(archive, ".vscode/settings.json"), "utf8")).toBe("{}");
});

test("check offers a new glaze to editors at once, and says nothing of it", async () => {
  const archive = await archiveWith({});
  await tilebook("editors", "--archive", archive);
  const said = await tilebook("check", "--archive", archive);
  await writeFile(
    join(archive, "recipes/glazes/fog.md"),
    "---\nname: Fog\nkind: glaze\nbought: {maker: Oxbow}\n---\n",
  );
  const after = await tilebook("check", "--archive", archive);
  expect(await glazesOffered(archive)).toEqual(["fog", "liner", "soot"]);
  expect(after.err).toBe(said.err);
  expect(`${after.out}${after.err}`).not.toMatch(/schema|snippet|editor/iu);
});

test("in a fresh clone, which has the settings alone, check writes what they point to", async () => {
  const archive = await archiveWith({});
  await tilebook("editors", "--archive", archive);
  await rm(join(archive, ".tilebook"), { recursive: true });
  await tilebook("check", "--archive", archive);
  expect(await glazesOffered(archive)).toEqual(["liner", "soot"]);
});

test.skipIf(process.platform === "win32")(
  "nothing is written through a link that leads out of the archive",
  async () => {
    const elsewhere = await folderWith({ "note.txt": "mine" });
    for (const link of [".tilebook", ".vscode", ".helix"]) {
      const archive = await archiveWith({});
      await symlink(elsewhere, join(archive, link));
      await tilebook("editors", "--archive", archive);
      await tilebook("check", "--archive", archive);
      expect(await readdir(elsewhere), link).toEqual(["note.txt"]);
    }
    const archive = await archiveWith({});
    await symlink(join(elsewhere, "note.txt"), join(archive, ".gitignore"));
    await tilebook("editors", "--archive", archive);
    expect(await readFile(join(elsewhere, "note.txt"), "utf8")).toBe("mine");
  },
);

test("an archive that is set up for no editor gets nothing for one", async () => {
  const archive = await archiveWith({ ".vscode/settings.json": "{}" });
  await tilebook("check", "--archive", archive);
  expect(await readdir(archive)).not.toContain(".tilebook");
  expect(await readdir(join(archive, ".vscode"))).toEqual(["settings.json"]);
});

test("where it cannot be written, check goes on as if nothing were", async () => {
  const archive = await archiveWith({});
  await tilebook("editors", "--archive", archive);
  const said = await tilebook("check", "--archive", archive);
  // A folder in the place of a file can be written by nobody, whoever runs the tests.
  const place = join(archive, ".tilebook/schemas/tile.schema.json");
  await rm(place);
  await mkdir(place);
  expect(await tilebook("check", "--archive", archive)).toEqual(said);
});
