/** A record that a document shows under the name of a file of the demonstration is that file. */
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { listDocs } from "./commands.ts";

const project = fileURLToPath(new URL("../../", import.meta.url));

interface Shown {
  readonly doc: string;
  readonly file: string;
  readonly record: string;
}

/** Records in fenced YAML whose paragraph before begins with the name of their file. */
async function recordsShown(): Promise<readonly Shown[]> {
  const shown = [];
  for (const doc of await listDocs()) {
    const text = await readFile(join(project, doc), "utf8");
    const blocks = text.matchAll(
      /^`(tiles\/[^`]+\.md)`[^`]*(?:`[^`]+`[^`]*)?```yaml\n(.*?)```/gmsu,
    );
    for (const [, file = "", record = ""] of blocks) shown.push({ doc, file, record });
  }
  return shown;
}

/** The record without the remarks that a document puts behind its lines. */
function withoutRemarks(record: string): string {
  return record.replace(/[ \t]+#[ \t].*$/gmu, "");
}

test("the tile that the README shows is the file of that name, and its remarks are all that is added", async () => {
  const shown = await recordsShown();
  expect(shown.map(({ doc }) => doc)).toContain("README.md");
  for (const { file, record } of shown)
    expect(withoutRemarks(record)).toBe(await readFile(join(project, file), "utf8"));
});
