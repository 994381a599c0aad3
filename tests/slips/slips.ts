/**
 * Slips that people make, and what they are told of them. A subject is a table: what the slip is,
 * and the files that hold it. All that is told, word for word, is in `told/<subject>.txt` beside the
 * lines as they were typed (`npm test -- tests/slips -u` writes it anew: read the change).
 */
import { expect, test } from "vitest";
import { type Files, least, tellOf } from "../archive/archives.ts";

/** The files a slip was made in, laid over the least sound archive. */
export type Slips = Readonly<Record<string, Files>>;

/**
 * Tests that each slip is told, and how.
 *
 * @param subject names the file in `told/`
 * @param tell what a person is told of an archive with these files; the reader's report if left out
 */
export function testSlips(
  subject: string,
  slips: Slips,
  tell: (files: Files) => string | Promise<string> = tellOf,
): void {
  test.each(Object.entries(slips))("%s is told", async (_, files) => {
    expect((await tell(files)).trim()).not.toBe("");
  });

  test(`what is told of ${subject} is told in these words`, async () => {
    const told: string[] = [];
    for (const [slip, files] of Object.entries(slips))
      told.push(`## ${slip}\n\n${show(files)}\n\n${(await tell(files)).trim()}\n`);
    await expect(told.join("\n\n")).toMatchFileSnapshot(`told/${subject}.txt`);
  });
}

/** The files as they were typed; what cannot be seen is shown by its code. */
function show(files: Files): string {
  return Object.entries(files)
    .filter(([name, content]) => least[name] !== content)
    .map(([name, content]) => `${name}\n${typeof content === "string" ? indent(content) : "    …"}`)
    .join("\n");
}

function indent(content: string): string {
  const seen = content
    .replaceAll("\t", "⟨tab⟩")
    .replace(/[\u00a0\u2000-\u200f\u202f\u205f\u3000\ufeff]/gu, (odd) => `⟨U+${hex(odd)}⟩`);
  return seen.replace(/^/gmu, "    ");
}

function hex(character: string): string {
  return character.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0");
}
