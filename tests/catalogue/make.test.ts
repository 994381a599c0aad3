import { describe, expect, test } from "vitest";
import type { Findings } from "../../src/catalogue/findings.ts";
import { makeCatalogue } from "../../src/catalogue/make.ts";
import { onlySet, withoutUnlistedSets } from "../../src/catalogue/select.ts";
import type { Archive } from "../../src/records/archive.ts";
import type { Result } from "../../src/records/tile.ts";
import { pictureAlt } from "../../templates/words/tile/stack.ts";
import {
  archive,
  clay,
  coat,
  cone,
  fired,
  firing,
  glaze,
  result,
  set,
  tile,
} from "../checks/support.ts";

const nothingFound: Findings = {
  pictures: new Map(),
  chemistry: new Map(),
  heats: new Map(),
  notes: new Map(),
  builtInMaterials: [],
};

const glazes = [glaze("soot", { name: "Soot" }), glaze("chalk", { name: "Chalk" })];

function withMakers(base: Archive, makers: NonNullable<Archive["studio"]["makers"]>): Archive {
  return { ...base, studio: { ...base.studio, makers } };
}

const catalogueOf = (parts: Parameters<typeof archive>[0]) =>
  makeCatalogue(archive(parts), nothingFound);

describe("a tile's cone", () => {
  const kiln = firing("g-1", {
    cone: cone("6"),
    witness: { bottom: { read: "cone", cone: cone("5½") } },
  });
  const bisque = firing("b-1", { kind: "bisque", cone: cone("9") });

  test("is what its own shelf's witness cone showed, else what was aimed at", () => {
    const { tiles } = catalogueOf({
      glazes,
      firings: [kiln],
      tiles: [
        tile("A", [coat("soot"), { ...fired("g-1"), shelf: "bottom" }]),
        tile("B", [coat("soot"), { ...fired("g-1"), shelf: "top" }]),
      ],
    });
    expect(tiles.map((t) => t.cone)).toEqual(["5½", "6"]);
  });

  test("is that of the hottest firing that is no bisque", () => {
    const onglaze = firing("o-1", { kind: "onglaze", cone: cone("018") });
    const { tiles } = catalogueOf({
      glazes,
      firings: [kiln, bisque, onglaze],
      tiles: [
        tile("A", [fired("b-1", "bisque"), coat("soot"), fired("g-1"), fired("o-1", "onglaze")]),
      ],
    });
    expect(tiles[0]?.cone).toBe("6");
  });

  test("takes a witness in bends for the hottest cone that is bent", () => {
    const bent = firing("g-2", {
      cone: cone("6"),
      witness: {
        top: {
          read: "bends",
          bends: new Map([
            [cone("5"), "down"],
            [cone("6"), "bent"],
            [cone("7"), "standing"],
          ]),
        },
      },
    });
    const { tiles } = catalogueOf({
      glazes,
      firings: [bent],
      tiles: [tile("A", [coat("soot"), { ...fired("g-2"), shelf: "top" }])],
    });
    expect(tiles[0]?.cone).toBe("6");
  });
});

describe("pairs", () => {
  test("gather the tiles of one glaze over another, and know the reverse", () => {
    const { pairs } = catalogueOf({
      glazes,
      tiles: [
        tile("A", [coat("soot"), coat("chalk")]),
        tile("B", [coat("soot"), coat("chalk"), coat("chalk")]),
        tile("C", [coat("chalk"), coat("soot")]),
      ],
    });
    expect(pairs.map(({ url, tiles, reverse }) => ({ url, tiles, reverse }))).toEqual([
      {
        url: "pairs/chalk--over--soot.html",
        tiles: ["A", "B"],
        reverse: "pairs/soot--over--chalk.html",
      },
      {
        url: "pairs/soot--over--chalk.html",
        tiles: ["C"],
        reverse: "pairs/chalk--over--soot.html",
      },
    ]);
  });

  test("are told on the pages of both glazes", () => {
    const { glazeById } = catalogueOf({
      glazes,
      tiles: [tile("A", [coat("soot"), coat("chalk")])],
    });
    expect(glazeById.get("chalk")?.over.map((pair) => pair.glaze.id)).toEqual(["soot"]);
    expect(glazeById.get("soot")?.under.map((pair) => pair.glaze.id)).toEqual(["chalk"]);
    expect(glazeById.get("soot")?.alone).toEqual([]);
  });
});

test("a glaze called constructor is only on the tiles that wear it", () => {
  const { glazes: found } = catalogueOf({
    glazes: [...glazes, glaze("constructor"), glaze("tostring")],
    tiles: [tile("A", [coat("soot")]), tile("B", [coat("constructor")])],
  });
  const worn = Object.fromEntries(found.map(({ id, tiles }) => [`glaze ${id}`, tiles]));
  expect(worn).toEqual({
    "glaze constructor": ["B"],
    "glaze soot": ["A"],
    "glaze tostring": [],
    "glaze chalk": [],
  });
});

test("a picture is told in the words of its page: layers that lie side by side are not one over the other", () => {
  const side = tile(
    "A",
    [
      coat("soot", { where: ["bottom"] }),
      coat("chalk", { where: ["top"] }),
      coat("mist", { where: ["centre"], over: ["soot", "chalk"] }),
    ],
    { result: [result()] },
  );
  const parts = { glazes: [...glazes, glaze("mist", { name: "Mist" })], tiles: [side] };
  const picture = { width: 1, height: 1, placeholder: "#000000", files: [], colour: null };
  const [found] = makeCatalogue(archive(parts), {
    ...nothingFound,
    pictures: new Map([["tiles/A.jpg", picture]]),
  }).tiles;
  expect(found?.pictures.map((each) => pictureAlt(found, each))).toEqual([
    "Tile A: Mist over Chalk and Soot",
  ]);
});

describe("privacy", () => {
  const people = archive({
    glazes,
    sets: [set("open"), set("secret", { listed: false })],
    tiles: [
      tile("A", [coat("soot")], {}, { maker: "m01", set: "open" }),
      tile("B", [coat("soot"), coat("chalk")], {}, { maker: "m02", set: "secret" }),
      tile("C", [coat("soot")], {}, { maker: "m03", set: "open" }),
      tile("D", [coat("soot")], {}, { maker: "m04", set: "open" }),
    ],
    firings: [{ ...firing("g-1"), load: [{ tile: "B", shelf: "top" }] }],
  });
  const known = withMakers(people, {
    m01: { name: "Wren Ashdown-Pike", shown: "yes" },
    m02: { name: "Odile Farthingale", shown: "yes" },
    m03: { name: "Bram Tolliver", shown: "initials" },
    m04: { name: "Hesper Lund", shown: undefined },
  });

  test("a maker is named, told by initials or not at all, as `shown` says, and never by the key", () => {
    const catalogue = makeCatalogue(known, nothingFound);
    const names = catalogue.tiles.map((t) => t.maker?.name ?? null);
    expect(names).toEqual(["Wren Ashdown-Pike", "Odile Farthingale", "B. T.", null]);
    expect(JSON.stringify(catalogue)).not.toMatch(/m0\d|Tolliver|Hesper/u);
  });

  test("only who lets the whole name be shown has a page", () => {
    const { makers } = makeCatalogue(known, nothingFound);
    expect(makers.map((maker) => maker.url)).toEqual([
      "makers/odile-farthingale.html",
      "makers/wren-ashdown-pike.html",
    ]);
  });

  test("an unlisted set is absent from everyone else's evidence", () => {
    const catalogue = makeCatalogue(withoutUnlistedSets(known), nothingFound);
    expect(catalogue.tiles.map((t) => t.id)).toEqual(["A", "C", "D"]);
    expect(catalogue.pairs).toEqual([]);
    expect(catalogue.makers.map((maker) => maker.name)).toEqual(["Wren Ashdown-Pike"]);
    expect(JSON.stringify(catalogue)).not.toMatch(/secret|Odile/u);
  });

  test("an unlisted set's own site holds its tiles alone", () => {
    const catalogue = makeCatalogue(onlySet(known, "secret"), nothingFound, {
      unlisted: true,
      tiles: 1,
      forFamilies: false,
    });
    expect(catalogue.tiles.map((t) => t.id)).toEqual(["B"]);
    expect(catalogue.studio.unlisted).toBe(true);
    expect(catalogue.sets.map(({ id }) => id)).toEqual(["secret"]);
  });
});

describe("what came out", () => {
  test("is the last result's surface, and every effect and fault ever seen", () => {
    const first = { ...result(), surface: ["gloss"], faults: ["pinholing"] } as Result;
    const second = {
      ...result(),
      surface: ["satin"],
      faults: ["none"],
      effects: ["breaking"],
    } as Result;
    const later = [{ on: "2027-01-11", faults: ["crazing"] }] as never;
    const { tiles } = catalogueOf({
      glazes,
      tiles: [tile("A", [coat("soot"), fired(null)], { result: [first, second], later })],
    });
    expect(tiles[0]).toMatchObject({
      surface: ["satin"],
      effects: ["breaking"],
      faults: ["crazing", "pinholing"],
    });
  });
});

test("an old code leads on to the tile that has it now", () => {
  const { moved } = catalogueOf({
    glazes,
    tiles: [tile("B", [coat("soot")], { formerly: ["A"] })],
  });
  expect(moved).toEqual([
    { from: "A", url: "tiles/a.html", to: { id: "B", name: "B", url: "tiles/b.html" } },
  ]);
});

test("codes are sorted as people do, with numbers by their value", () => {
  const { tiles } = catalogueOf({
    glazes,
    tiles: ["T-10", "T-9", "t-2"].map((id) => tile(id, [coat("soot")])),
  });
  expect(tiles.map(({ id }) => id)).toEqual(["t-2", "T-9", "T-10"]);
});

test("a finished catalogue cannot be changed", () => {
  const catalogue = catalogueOf({
    glazes,
    clays: [clay("buff")],
    tiles: [tile("A", [coat("soot")])],
  });
  expect(() => {
    (catalogue.tiles as unknown[]).push("x");
  }).toThrow(TypeError);
  expect(Object.isFrozen(catalogue.tiles[0]?.steps)).toBe(true);
});
