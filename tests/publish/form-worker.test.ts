import { describe, expect, test } from "vitest";
import { makeFormWorker } from "../../src/publish/form-worker.ts";
import { catalogueOf } from "../bench/catalogue-run.ts";
import { makeLargeArchive } from "../bench/large-archive.ts";

const catalogue = catalogueOf(makeLargeArchive(4));
const site = { catalogue, under: "", waiting: [] };
const assets = new Map([
  ["add-worker.js", "run();"],
  ["add.js", "form"],
  ["add.css", "p{}"],
  ["wall.js", "wall"],
  ["fonts/a.woff2", "font"],
]);
const made = (part: ReadonlyMap<string, string> = assets) => makeFormWorker(site, part)[0];

describe("what keeps the form for where there is no connection", () => {
  test("knows all that the form asks for, and nothing else", () => {
    expect(made()?.path).toBe("add-worker.js");
    const [first = "", second] = made()?.content.split("\n") ?? [];
    expect(JSON.parse(first.slice("self.tilebookKeeps=".length, -1)).files).toEqual([
      ...["add.html", "data/add.js", "assets/add.js", "assets/add.css", "assets/fonts/a.woff2"],
    ]);
    expect(second).toBe("run();");
  });

  test("is another as soon as something that it keeps is, and else the same", () => {
    expect(made(new Map([...assets, ["wall.js", "other"]]))?.content).toBe(made()?.content);
    expect(made(new Map([...assets, ["add.js", "other"]]))?.content).not.toBe(made()?.content);
    const other = { ...site, catalogue: { ...catalogue, sets: [] } };
    expect(makeFormWorker(other, assets)[0]?.content).not.toBe(made()?.content);
  });

  test("is not there where nothing can be added", () => {
    const alone = { tiles: 1, forFamilies: true, set: { id: "a", name: "A", url: "sets/a.html" } };
    const families = { ...catalogue, studio: { ...catalogue.studio, alone } };
    expect(makeFormWorker({ ...site, catalogue: families }, assets)).toEqual([]);
  });
});
