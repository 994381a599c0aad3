import { describe, expect, test } from "vitest";
import { besideIndex, makeBesideScripts } from "../../src/publish/beside.ts";
import type { Subject } from "../../src/publish/beside-file.ts";
import { bucketOf } from "../../src/terms/bucket.ts";
import { tablesOfGlaze } from "../../templates/words/glaze/beside.ts";
import { catalogueOf } from "../bench/catalogue-run.ts";
import { makeLargeArchive } from "../bench/large-archive.ts";

/** No file that a phone waits for is larger. */
const mostBytes = 150_000;

describe("what is set side by side, of a large archive", () => {
  const catalogue = catalogueOf(makeLargeArchive(2_000));
  const files = makeBesideScripts(catalogue);

  test("is every tile and every glaze once, in the file that is asked for it", () => {
    const index = besideIndex(catalogue);
    const found = files.flatMap(({ path, content }) => {
      const held = JSON.parse(content.slice(content.indexOf("]=") + 2, -2)) as readonly Subject[];
      return held.map(({ id }) => `${path} ${id}`);
    });
    const expected = (["tiles", "glazes"] as const).flatMap((kind) =>
      catalogue[kind].map(
        ({ id }) => `data/beside/${kind}-${bucketOf(id, index[kind]) + 1}.js ${id}`,
      ),
    );
    expect(found.sort()).toEqual(expected.sort());
  });

  test("has a sentence for every step that is compared", () => {
    const [first] = files;
    const content = first?.content ?? "";
    const held = JSON.parse(content.slice(content.indexOf("]=") + 2, -2)) as readonly Subject[];
    expect(held.length).toBeGreaterThan(5);
    for (const { steps } of held) expect(steps.every(({ words }) => words !== "")).toBe(true);
  });

  test("says of every bought glaze in the same words that only its maker knows what is in it", () => {
    const bought = catalogue.glazes.filter((glaze) => glaze.bought);
    expect(bought.length).toBeGreaterThan(1);
    for (const glaze of bought) {
      const cautions = tablesOfGlaze(glaze).find(({ title }) => title === "Take care")?.lines;
      expect(cautions).toContainEqual([
        "It was bought, and only its maker knows what is in it, so this archive cannot say how it may harm",
        "yes",
      ]);
    }
  });

  test("comes in files that are each small enough for a phone", () => {
    const large = files.filter(({ content }) => Buffer.byteLength(content) > mostBytes);
    expect(large.map(({ path }) => path)).toEqual([]);
  });
});
