/** What the tile form is filled with. */
import { describe, expect, test } from "vitest";
import { makeFormScripts } from "../../src/publish/add.ts";
import type { FormLayers, FormSite } from "../../src/publish/add-file.ts";
import { catalogueOf } from "../bench/catalogue-run.ts";
import { makeLargeArchive } from "../bench/large-archive.ts";
import { examine, sitesOf } from "../support/site-in-memory.ts";

/** What a script of a site leaves behind. */
function run(script: string): {
  readonly tilebookForm?: FormSite;
  readonly tilebookLayers?: unknown;
} {
  const self = {};
  new Function("self", script)(self);
  return self;
}

const studio = `format: 1
studio: Eelgate
handing-in: {by: share, words: Put it on the board.}
makers: {m07: {name: Rowan Keel, shown: no}, t01: {}}
`;
const texts = {
  "studio.yaml": studio,
  "recipes/glazes/soot.md":
    "---\nname: Soot\nkind: glaze\nbought: {maker: Oxbow}\ntone: dark\n---\n",
  "recipes/glazes/plum.md": "---\nname: Plum\nkind: glaze\nbought: {maker: Oxbow}\n---\n",
  "recipes/clays/buff.md": "---\nname: Levels Buff\ncones: 5-6\n---\n",
  "tiles/firings/g-1.md": "---\non: 2026-10-20\nkind: glaze\ncone: 6\n---\n",
  "tiles/evening/set.md":
    "---\nname: Evening\njars: {2: soot, 10: plum}\ncodes: EV-1..EV-9\ndefaults: {clay: buff, maker: m07}\n---\n",
  "tiles/evening/EV-1.md":
    "---\nlayers:\n  - fired: bisque\n  - {resist: wax, where: motif}\n  - {glaze: 2, coats: 2, by: brush, thickness: thin}\n  - {fade: {from: soot, to: plum}}\n  - fired: g-1\n---\n",
  "tiles/hidden/set.md":
    "---\nname: Hidden\nlisted: no\nlink: k7wq2mzt4hx3vb5nrd6yfp2cja\njars: {1: plum}\ncodes: HI-1..HI-3\n---\n",
  "tiles/hidden/HI-1.md": "---\nmaker: t01\nlayers: [{glaze: soot}]\n---\n",
};

describe("what the form knows", () => {
  const { read, problems } = examine(texts);
  const sites = read.archive ? sitesOf(read.archive, problems) : undefined;
  const [open, hidden] = [sites?.open, sites?.hidden.get("hidden")];

  test("is the sets that everybody sees, with jars, free codes and what they give, and no maker's key", () => {
    const script = open?.get("data/add.js") ?? "";
    const site = run(script).tilebookForm;
    expect(site?.sets).toEqual([
      {
        ...{ id: "evening", name: "Evening", codes: ["EV-1..EV-9"], sheets: "notes/evening.html" },
        jars: [
          ["2", "soot"],
          ["10", "plum"],
        ],
        gives: { clay: "buff", maker: true },
      },
    ]);
    expect(site?.taken).toEqual(["EV-1"]);
    expect(site?.handingIn).toEqual({ by: "share", words: "Put it on the board." });
    for (const kept of ["m07", "t01", "Rowan", "HI-1", "Hidden"])
      expect(script).not.toContain(kept);
  });

  test("is of an unlisted set that set alone, with the glazes in its jars", () => {
    const site = run(hidden?.get("data/add.js") ?? "").tilebookForm;
    expect(site?.sets.map(({ id }) => id)).toEqual(["hidden"]);
    expect(site?.glazes.map(({ id }) => id)).toEqual(["plum", "soot"]);
    expect(site?.taken).toEqual(["HI-1"]);
  });

  test("has a tile's steps as a record of another holds them, up to its last layer", () => {
    const layers = run(open?.get("data/add/layers-1.js") ?? "").tilebookLayers;
    expect((layers as Record<string, FormLayers>)["0"]?.["EV-1"]).toEqual([
      { fired: "bisque" },
      { resist: "wax", where: ["motif"] },
      { glaze: "soot", coats: "2", by: "brush", thickness: "thin" },
      { fade: { from: "soot", to: "plum" } },
    ]);
  });

  test("comes in files that are each small enough for a phone, of a large archive too", () => {
    const large = makeFormScripts(catalogueOf(makeLargeArchive(2_000)))
      .map(({ path, content }) => [path, Buffer.byteLength(content)] as const)
      .filter(([, bytes]) => bytes > 60_000);
    expect(large).toEqual([]);
  });
});
