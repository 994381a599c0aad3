/** What photographs give away about whoever took them, looked for in every file that is published. */
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { expect, test } from "vitest";
import { FORMATS } from "../photos/pictures.ts";
import { encodeHiddenPlace, findSecrets } from "../photos/secrets.ts";
import { archiveWith } from "./archives.ts";
import { listFiles } from "./site-files.ts";
import { tilebook } from "./tilebook.ts";

/** Pages and scripts may speak of such words; nothing but a photograph brings these along. */
const wordsOfPages = new Set(["Exif\0\0", "GPSLatitude", "II*\0"]);

test("no file of a site holds place, device, serial number, owner or thumbnail of a photograph, whatever its format", async () => {
  const planted = await Promise.all(FORMATS.map(plant));
  const archive = await archiveWith(Object.fromEntries(planted.flat()));
  const { code, out } = await tilebook("build", "--archive", archive);
  expect({ code, errors: out.match(/error: .*/gu) }).toEqual({ code: 0, errors: null });
  const site = join(archive, "site");
  const files = await listFiles(site);
  const published = files.filter((file) => file.startsWith("pictures/"));
  expect(published.length).toBeGreaterThanOrEqual(2 * FORMATS.length);
  const given: string[] = [];
  for (const file of files) {
    const found = findSecrets(await readFile(join(site, file)));
    const isPicture = /\.(jpg|webp)$/u.test(file);
    if (found.some((word) => isPicture || !wordsOfPages.has(word))) given.push(file);
  }
  expect(given).toEqual([]);
});

/** A tile for each format, and one in the unlisted set with the same photograph as its detail. */
async function plant(format: (typeof FORMATS)[number]) {
  const bytes = await encodeHiddenPlace(format);
  expect(findSecrets(bytes).length).toBeGreaterThanOrEqual(3);
  const code = `PL-${FORMATS.indexOf(format) + 1}`;
  return [
    [`tiles/evening/${code}.md`, "---\nlayers: [{glaze: soot}]\n---\n"],
    [`tiles/evening/${code}.${format}`, bytes],
    [`tiles/hidden/HID-1.detail-${format}.${format}`, bytes],
  ] as const;
}
