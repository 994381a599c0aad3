import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { runChecks } from "../../src/checks/all.ts";
import { findNames, hiddenNamesOf } from "../../src/checks/names/hidden-names.ts";
import type { StudioRecord } from "../../src/records/studio.ts";
import {
  archive,
  clay,
  coat,
  fired,
  firing,
  glaze,
  material,
  nothing,
  result,
  set,
  tellProblem,
  tile,
} from "./support.ts";

type Makers = Record<
  string,
  { name?: string; shown?: "yes" | "initials" | "no"; common?: readonly string[] }
>;
const studioOf = (makers: Makers) =>
  ({ format: "1", studio: "Eelgate", makers }) as unknown as StudioRecord;
const found = (text: string, makers: Makers) =>
  findNames(text, hiddenNamesOf(studioOf(makers))).map(
    ({ text: words, isWhole }) => `${isWhole ? "whole" : "part"} ${words}`,
  );

const bram: Makers = { m03: { name: "Bram Tolliver-Oake", shown: "initials" } };

describe("a name in words that everyone can read", () => {
  it("is found whole in any order and across lines, and then not by its parts", () => {
    expect(found("Bram\nTolliver-Oake, Tolliver-Oake, Bram and BRAM TOLLIVER OAKE", bram)).toEqual([
      "whole Bram Tolliver-Oake",
      "whole Tolliver-Oake, Bram",
      "whole BRAM TOLLIVER OAKE",
    ]);
  });

  it("is found by its parts, and where something is said to be hers", () => {
    expect(found("says Bram. Bram's, Brams, “Bram”: **Oake**; Tolliver’s", bram)).toEqual([
      "part Bram",
      "part Bram",
      "part Brams",
      "part Bram",
      "part Oake",
      "part Tolliver",
    ]);
    expect(found("Tolliver is here; Oake. “Bram”", bram)).toEqual([
      "part Tolliver",
      "part Oake",
      "part Bram",
    ]);
  });

  it("is no word that only holds it or is written small", () => {
    expect(found("Bramble, oake, bram, Oaken, Abram, tolliver-oake", bram)).toEqual([]);
  });

  it("is found whatever the marks of its letters", () => {
    const makers: Makers = { a: { name: "Zoë Øster" }, b: { name: "Renee Marc\u0327al" } };
    expect(found("Zoe, ZOË, or Oster, Renée, or Marc\u0327al, Marçal, zoë", makers)).toEqual([
      "part Zoe",
      "part ZOË",
      "part Oster",
      "part Renée",
      "part Marc\u0327al",
      "part Marçal",
    ]);
  });

  it("is found in writing without capitals and without spaces", () => {
    const makers: Makers = { a: { name: "王小明" }, b: { name: "김 지민" } };
    expect(found("今日は王小明の釉薬。지민이가", makers)).toEqual([
      "part 今日は王小明の釉薬",
      "part 지민이가",
    ]);
    expect(found("王小明", makers)).toEqual(["whole 王小明"]);
  });

  it("of one word is whole by itself, and told although it was written small in the studio's file", () => {
    expect(found("Ask Noor", { a: { name: "noor" } })).toEqual(["whole Noor"]);
  });

  it("is never one that may be shown, nor its small words, nor a single letter", () => {
    const makers: Makers = {
      a: { name: "Wren Ashdown", shown: "yes" },
      b: { name: "Wren van der Pike", shown: "no" },
      c: { name: "Rowan K." },
      d: {},
    };
    expect(found("Wren Ashdown, Wren, Van, Der, K, Pike, Rowan", makers)).toEqual([
      "part Pike",
      "part Rowan",
    ]);
  });

  it("is no everyday word that the studio says is common, though the whole name still is told", () => {
    const makers: Makers = { a: { name: "Rose Clay", common: ["Rose", "clay"] } };
    expect(found("Rose over white. Clay too dry.", makers)).toEqual([]);
    expect(found("May I? Rose", { a: { name: "May Rose", common: ["May"] } })).toEqual([
      "part Rose",
    ]);
    expect(found("May Rose", { a: { name: "May Rose", common: ["May"] } })).toEqual([
      "whole May Rose",
    ]);
  });

  it("is found in any text it is put into, once for each time", () => {
    const filler = fc.stringMatching(/^[ a-z.,;*\n]{0,20}$/u);
    fc.assert(
      fc.property(fc.array(filler, { minLength: 2, maxLength: 6 }), (pieces) => {
        const text = pieces.join(" Bram ");
        const names = findNames(text, hiddenNamesOf(studioOf(bram)));
        expect(names.map(({ word }) => word)).toEqual(
          pieces.slice(1).map((_, nth) => ({ text: "Bram", nth })),
        );
      }),
    );
  });
});

describe("a check of names", () => {
  const words = "with Bram";
  const named = {
    ...archive({
      sets: [
        set("bram", {
          name: words,
          defaults: { texture: words, photo: { alt: words } } as never,
        }),
      ],
      tiles: [
        {
          ...tile(
            "A",
            [
              coat("soot", { detail: words, along: words }),
              { ...fired(null), shelf: words },
              { ...fired(null), at: null, shelf: words },
            ],
            {
              texture: words,
              clayBatch: words,
              photo: { alt: words } as never,
              result: [{ ...result(), nextTime: words } as never],
            },
            { set: "bram" },
          ),
          notes: words,
        },
      ],
      firings: [
        firing("g", {
          kiln: words,
          tiles: { [words]: [["A"]] },
          witness: { [words]: {} as never },
        }),
      ],
      glazes: [
        glaze("soot", { name: words, bought: { maker: words, range: words, colour: words } }),
      ],
      clays: [clay("buff", { name: words, colour: words })],
      materials: [material("ash", { name: words, formula: "SiO2", cautions: [words, words] })],
    }),
    studio: { ...studioOf(bram), handingIn: { by: "download" as const, words }, licence: words },
  };

  it("looks at every text that a site shows, each where it was written", () => {
    const places = runChecks(named, nothing)
      .filter(({ code }) => code === "part-of-name-in-words")
      .map(({ file, path }) => [file, ...path].join(" › "));
    expect(places).toMatchInlineSnapshot(`
      [
        "studio.yaml › licence",
        "studio.yaml › handing-in",
        "tiles/bram/set.md › name",
        "tiles/bram/set.md › defaults › texture",
        "tiles/bram/set.md › defaults › photo › alt",
        "tiles/A.md › clay-batch",
        "tiles/A.md › layers › 0 › detail",
        "tiles/A.md › layers › 0 › fade › along",
        "tiles/A.md › layers › 1 › shelf",
        "tiles/A.md › result › 0 › next-time",
        "tiles/A.md",
        "tiles/firings/g.md › kiln",
        "tiles/firings/g.md › witness",
        "tiles/firings/g.md › tiles",
        "recipes/glazes/soot.md › name",
        "recipes/glazes/soot.md › bought › maker",
        "recipes/glazes/soot.md › bought › range",
        "recipes/glazes/soot.md › bought › colour",
        "recipes/clays/buff.md › name",
        "recipes/clays/buff.md › colour",
        "recipes/materials/ash.md › name",
        "recipes/materials/ash.md › cautions › 0",
        "recipes/materials/ash.md › cautions › 1",
      ]
    `);
  });

  it("warns of a part and stops at a whole name, and says what to write instead", () => {
    const studio = studioOf({
      m03: { name: "Bram Tolliver-Oake", shown: "initials" },
      m05: { name: "Hesper Bram", shown: "no" },
    });
    const tiles = [
      { ...tile("A", [coat("soot")]), notes: "Bram says so; Tolliver-Oake, Bram agrees." },
      { ...tile("B", [coat("soot")]), notes: "Oake." },
    ];
    const problems = runChecks({ ...archive({ tiles }), studio }, nothing);
    expect(problems.map(tellProblem).join("\n\n")).toMatchInlineSnapshot(`
      "error name-in-words tiles/A.md
      “Tolliver-Oake, Bram” is the name of m03, who asked for initials
      Everyone can read these words: write the initials instead.

      warning part-of-name-in-words tiles/A.md
      “Bram” may be a part of the name of m03, who asked for initials or of m05, who is not to be named
      Everyone can read these words: leave the name out. Where it is no name but a word, add “common: Bram” to m03 in studio.yaml.

      warning part-of-name-in-words tiles/B.md
      “Oake” may be a part of the name of m03, who asked for initials
      Everyone can read these words: write the initials instead. Where it is no name but a word, add “common: Oake” to m03 in studio.yaml."
    `);
  });
});
