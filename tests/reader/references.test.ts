import { describe, expect, it } from "vitest";
import {
  read,
  readWith,
  record,
  sound,
  tell,
  tellOf,
  temporaryFolder,
  writeFiles,
} from "../archive/archives.ts";

const tile = (yaml: string) => record(yaml);
const layer = "layers: [{glaze: soot}]";

describe("a name that leads nowhere", () => {
  it("in a tile is reported with what was probably meant", async () => {
    expect(
      await tellOf({
        "recipes/glazes/tw-2.md": record("name: Tidewrack\nkind: glaze\nbought: {maker: Oxbow}"),
        "tiles/firings/g-1101.md": record("on: 2026-11-01\nkind: glaze"),
        "tiles/WL-002.md": tile(
          [
            "maker: Rowan",
            "clay: bufff",
            "layers:",
            "  - fired: g-1011",
            "  - fired: bisk",
            "  - fired: hotter",
            "  - glaze: Tidewrak",
            "  - glaze: oilskin",
            "  - fade: {from: sot, to: soot}",
            "    over: [soot, chalk]",
            "  - glaze: 7",
          ].join("\n"),
        ),
      }),
    ).toMatchInlineSnapshot(`
      "
      tiles/WL-002.md:2:8 error: There is no maker “Rowan” [unknown-maker]
        2 | maker: Rowan
          |        ^
        Add the code under “makers:” in studio.yaml, as in “m07: {}”.

      tiles/WL-002.md:3:7 error: There is no clay “bufff” [unknown-clay]
        3 | clay: bufff
          |       ^
        Did you mean “buff”?

      tiles/WL-002.md:5:12 error: There is no firing “g-1011” [unknown-firing]
        5 |   - fired: g-1011
          |            ^
        Did you mean “g-1101”?

      tiles/WL-002.md:6:12 error: There is no firing “bisk” [unknown-firing]
        6 |   - fired: bisk
          |            ^
        Write a record of it in tiles/firings, or only its kind: bisque, glaze, onglaze, once, raku.

      tiles/WL-002.md:7:12 error: There is no firing “hotter” [unknown-firing]
        7 |   - fired: hotter
          |            ^
        Write a record of it in tiles/firings, or only its kind: bisque, glaze, onglaze, once, raku.

      tiles/WL-002.md:8:12 error: There is no glaze “Tidewrak” [unknown-glaze]
        8 |   - glaze: Tidewrak
          |            ^
        Did you mean “tw-2”, the id of “Tidewrack”?

      tiles/WL-002.md:9:12 error: There is no glaze “oilskin” [unknown-glaze]
        9 |   - glaze: oilskin
          |            ^
        Write a record of it in recipes/glazes, or correct the id.

      tiles/WL-002.md:10:18 error: There is no glaze “sot” [unknown-glaze]
        10 |   - fade: {from: sot, to: soot}
           |                  ^
        Did you mean “soot”?

      tiles/WL-002.md:11:18 error: There is no glaze “chalk” [unknown-glaze]
        11 |     over: [soot, chalk]
           |                  ^
        Write a record of it in recipes/glazes, or correct the id.

      tiles/WL-002.md:12:12 error: There is no glaze or jar “7” [unknown-glaze]
        12 |   - glaze: 7
           |            ^
        Jars are numbered by a set, and this tile is in none: write the id of the glaze.
      "
    `);
  });

  it("leaves its step out, and the rest of the tile goes on", async () => {
    const { archive } = await readWith({
      "tiles/WL-002.md": tile(
        "maker: m09\nclay: none\nlayers: [{glaze: nothing}, {glaze: soot, over: [nothing]}, {fired: nowhere}]",
      ),
    });
    expect(archive?.tiles.get("wl-002")).toMatchObject({
      maker: null,
      clay: null,
      stage: "waiting",
      steps: [{ step: "coat", at: 1, glazes: ["soot"], over: [] }],
    });
  });

  it("in a recipe is reported, and the recipe stays as it was written", async () => {
    const found = await readWith({
      "recipes/glazes/a.md": record(
        "name: A\nkind: glaze\ningredients:\n  - {material: whitting, parts: 20}\n  - {material: moon-dust, parts: 20}\n  - {material: Silica, parts: 60}\nadditions:\n  - {material: red iron oxide, parts: 2}",
      ),
      "recipes/glazes/b.md": record("name: B\nkind: glaze\nblend: [{glaze: sooty, parts: 1}]"),
    });
    expect(tell(found)).toMatchInlineSnapshot(`
      "
      recipes/glazes/a.md:5:16 warning: There is no material “whitting” [unknown-material]
        5 |   - {material: whitting, parts: 20}
          |                ^
        Did you mean “whiting”? Otherwise write a record of it in recipes/materials, with its formula or the analysis from its supplier's sheet. Until then this glaze has no chemistry, and nobody is warned of what this material holds.

      recipes/glazes/a.md:6:16 warning: There is no material “moon-dust” [unknown-material]
        6 |   - {material: moon-dust, parts: 20}
          |                ^
        Write a record of it in recipes/materials, with its formula or the analysis from its supplier's sheet. Until then this glaze has no chemistry, and nobody is warned of what this material holds.

      recipes/glazes/a.md:9:16 warning: There is no material “red iron oxide” [unknown-material]
        9 |   - {material: red iron oxide, parts: 2}
          |                ^
        Did you mean “red-iron-oxide”? Otherwise write a record of it in recipes/materials, with its formula or the analysis from its supplier's sheet. Until then this glaze has no chemistry, and nobody is warned of what this material holds.

      recipes/glazes/b.md:4:17 error: There is no glaze “sooty” [unknown-glaze]
        4 | blend: [{glaze: sooty, parts: 1}]
          |                 ^
        Did you mean “soot”?
      "
    `);
    expect(found.archive?.glazes.get("a")?.record.ingredients).toHaveLength(3);
  });

  it("of a teacher is told where it is only spelt otherwise, since the set's page would name nobody", async () => {
    expect(
      await tellOf({
        "tiles/evening/set.md": record("name: Evening\nteacher: M01"),
        "tiles/evening/WL-101.md": tile(layer),
      }),
    ).toMatchInlineSnapshot(`
      "
      tiles/evening/set.md:3:10 error: There is no maker “M01” in studio.yaml [unknown-maker]
        3 | teacher: M01
          |          ^
        Write it as studio.yaml spells it: “teacher: m01”. The makers there are m01.
      "
    `);
  });

  it("in a set is reported once, where the set says it", async () => {
    expect(
      await tellOf({
        "tiles/evening/set.md": record(
          "name: Evening\nteacher: Rowan\ncontrol: WL-900\ncodes: WL-100..WL-199\njars: {1: sot, soot: soot, 2a: soot, 2A: soot}\ndefaults:\n  clay: bluff\n  maker: m09",
        ),
        "tiles/evening/WL-101.md": tile("layers: [{glaze: 1}, {glaze: 3}]"),
        "tiles/evening/WL-102.md": tile(layer),
      }),
    ).toMatchInlineSnapshot(`
      "
      tiles/evening/set.md:3:10 error: There is no maker “Rowan” in studio.yaml [unknown-maker]
        3 | teacher: Rowan
          |          ^
        The makers there are m01. Add the code under “makers:” in studio.yaml, as in “m07: {}”.

      tiles/evening/set.md:4:10 error: There is no tile “WL-900” [unknown-tile]
        4 | control: WL-900
          |          ^
        Correct the code, write the tile's record, or reserve the code with “codes:” in a set.md.

      tiles/evening/set.md:6:11 error: There is no glaze “sot” [unknown-glaze]
        6 | jars: {1: sot, soot: soot, 2a: soot, 2A: soot}
          |           ^
        Did you mean “soot”?

      tiles/evening/set.md:6:16 error: “soot” is the number of a jar and the id of a glaze, so it is not clear which is meant [ambiguous-jar]
        6 | jars: {1: sot, soot: soot, 2a: soot, 2A: soot}
          |                ^
        Give the jar another number, or rename the glaze “soot”.

      tiles/evening/set.md:6:38 error: The jars “2a” and “2A” differ only in how they are spelt [duplicate-jar]
        6 | jars: {1: sot, soot: soot, 2a: soot, 2A: soot}
          |                                      ^
        Keep one of the two.

      tiles/evening/set.md:8:9 error: There is no clay “bluff” [unknown-clay]
        8 |   clay: bluff
          |         ^
        Did you mean “buff”?

      tiles/evening/set.md:9:10 error: There is no maker “m09” [unknown-maker]
        9 |   maker: m09
          |          ^
        Add the code under “makers:” in studio.yaml, as in “m07: {}”.

      tiles/evening/WL-101.md:2:18 error: There is no glaze or jar “1” [unknown-glaze]
        2 | layers: [{glaze: 1}, {glaze: 3}]
          |                  ^
        Add the number to “jars:” in the set.md of “evening”, or write the id of the glaze.

      tiles/evening/WL-101.md:2:30 error: There is no glaze or jar “3” [unknown-glaze]
        2 | layers: [{glaze: 1}, {glaze: 3}]
          |                              ^
        Add the number to “jars:” in the set.md of “evening”, or write the id of the glaze.
      "
    `);
  });

  it("a control tile may be reserved and not yet made", async () => {
    sound(
      await readWith({
        "tiles/evening/set.md": record("name: Evening\ncontrol: wl-100\ncodes: WL-100"),
      }),
    );
  });

  it("a control tile that was renamed is told its new code", async () => {
    expect(
      await tellOf({
        "tiles/evening/set.md": record("name: Evening\ncontrol: WL-902"),
        "tiles/WL-002.md": tile(`${layer}\nformerly: [WL-902]`),
      }),
    ).toMatchInlineSnapshot(`
      "
      tiles/evening/set.md:3:10 error: There is no tile “WL-902” any more [unknown-tile]
        3 | control: WL-902
          |          ^
        That tile is now called “WL-002”.
      "
    `);
  });
});

describe("faults in one record", () => {
  it("are not repeated by those that name it", async () => {
    expect(
      await tellOf({
        "tiles/evening/set.md": record("kind: class\njars: {7: soot}\ncodes: WL-100..WL-120"),
        "tiles/evening/WL-101.md": tile("layers: [{glaze: 7}, {glaze: sky}, {fired: g}]"),
        "recipes/glazes/sky.md": record("name: Sky"),
        "tiles/firings/g.md": record("on: 2026-11-01\nlog: g.csv\ntiles: {top: WL-101}"),
        "tiles/firings/g.csv": "",
        "tiles/firings/h.md": record("on: 2026-11-02\nkind: glaze\ntiles: {top: [WL-101, WL-110]}"),
      }),
    ).toMatchInlineSnapshot(`
      "
      recipes/glazes/sky.md:1:1 error: Nothing says where the glaze comes from [none-of]
        1 | ---
          | ^
        Write exactly one of: bought, ingredients, blend.

      recipes/glazes/sky.md:2:1 error: “kind” is missing [missing-field]
        2 | name: Sky
          | ^
        Add a line “kind:” with its value.

      tiles/evening/set.md:2:1 error: “name” is missing [missing-field]
        2 | kind: class
          | ^
        Add a line “name:” with its value.

      tiles/firings/g.md:2:1 error: “kind” is missing [missing-field]
        2 | on: 2026-11-01
          | ^
        Add a line “kind:” with its value.
      "
    `);
  });
});

describe("load lists", () => {
  const load = (on: string, tiles: string) => record(`on: ${on}\nkind: glaze\ntiles: ${tiles}`);

  it("name only tiles that there are or that a set reserves", async () => {
    expect(
      await tellOf({
        "tiles/evening/set.md": record("name: Evening\ncodes: [WL-100..WL-109, EX-1]"),
        "tiles/WL-002.md": tile(`${layer}\nformerly: [WL-902]`),
        "tiles/firings/g.md": load(
          "2026-11-01",
          "\n  top: [wl-001, WL-101..WL-103, ex-1]\n  bottom: [WL-100..WL-111, WL-902, LW-001, WL-300..WL-330]",
        ),
      }),
    ).toMatchInlineSnapshot(`
      "
      tiles/firings/g.md:6:12 error: There are no tiles “WL-110” and “WL-111” [unknown-tile]
        6 |   bottom: [WL-100..WL-111, WL-902, LW-001, WL-300..WL-330]
          |            ^
        Correct the code, write the tile's record, or reserve the code with “codes:” in a set.md.

      tiles/firings/g.md:6:28 error: There is no tile “WL-902” any more [unknown-tile]
        6 |   bottom: [WL-100..WL-111, WL-902, LW-001, WL-300..WL-330]
          |                            ^
        That tile is now called “WL-002”.

      tiles/firings/g.md:6:36 error: There is no tile “LW-001” [unknown-tile]
        6 |   bottom: [WL-100..WL-111, WL-902, LW-001, WL-300..WL-330]
          |                                    ^
        Did you mean “WL-001”?

      tiles/firings/g.md:6:44 error: There are no tiles “WL-300”, “WL-301” and 28 more up to “WL-330” [unknown-tile]
        6 |   bottom: [WL-100..WL-111, WL-902, LW-001, WL-300..WL-330]
          |                                            ^
        Correct the code, write the tile's record, or reserve the code with “codes:” in a set.md.
      "
    `);
  });

  it("put a tile in one place of one kiln on one day", async () => {
    expect(
      await tellOf({
        "tiles/firings/a.md": load("2026-11-01", "{top: WL-001}"),
        "tiles/firings/b.md": load("2026-11-01", "{top: [WL-001]}"),
        "tiles/firings/c.md": load("2026-11-02", "{top: WL-001, bottom: wl-001}"),
      }),
    ).toMatchInlineSnapshot(`
      "
      tiles/firings/b.md:4:15 error: “WL-001” is in two loads on 2026-11-01: in “a” and in “b” [two-loads-on-one-day]
        4 | tiles: {top: [WL-001]}
          |               ^
        Take the code out where it does not belong.

      tiles/firings/c.md:4:30 error: “wl-001” is in this load twice: on “top” and on “bottom” [tile-twice-in-load]
        4 | tiles: {top: WL-001, bottom: wl-001}
          |                              ^
        Take the code out where it does not belong.
      "
    `);
  });

  it("are warned of where the tile tells another shelf", async () => {
    const found = await readWith({
      "tiles/WL-001.md": tile("layers: [{glaze: soot}, {fired: glaze, shelf: top}]"),
      "tiles/firings/a.md": load("2026-11-01", "{bottom: WL-001}"),
    });
    expect(tell(found)).toMatchInlineSnapshot(`
      "
      tiles/WL-001.md:2:47 warning: The tile says it stood at “top”, and the load list of “a” says “bottom” [shelf-differs]
        2 | layers: [{glaze: soot}, {fired: glaze, shelf: top}]
          |                                               ^
        Correct the one that is wrong, or leave the shelf to the load list.
      "
    `);
    expect(found.archive?.tiles.get("wl-001")?.steps[1]).toMatchObject({ shelf: "top" });
  });
});

describe("logs", () => {
  it.each([
    ["UTF-8", Buffer.from("minutes,°C\r\n0,20\r\n")],
    ["UTF-8 with a mark", Buffer.from("\uFEFFminutes,°C\n0,20\n")],
    ["UTF-16", Buffer.from("\uFEFFminutes,°C\n0,20\n", "utf16le")],
    ["UTF-16, the large end first", Buffer.from("\uFEFFminutes,°C\n0,20\n", "utf16le").swap16()],
    ["Windows-1252", Buffer.from("minutes,°C\n0,20\n", "latin1")],
  ])("are read as loggers write them: %s", async (_, bytes) => {
    const { archive } = await readWith({
      "tiles/firings/c.md": record("kind: glaze\nlog: C.CSV"),
      "tiles/firings/c.csv": bytes,
    });
    expect(archive?.firings.get("c")?.log).toEqual({
      file: "tiles/firings/c.csv",
      text: "minutes,°C\n0,20\n",
    });
  });

  it("that are missing, or that nobody can read, are reported", async () => {
    expect(
      await tellOf({
        "tiles/firings/a.md": record("kind: glaze\nlog: a.cvs"),
        "tiles/firings/a.csv": "",
        "tiles/firings/b.md": record("kind: glaze\nlog: ../b.csv"),
        "tiles/firings/c.md": record("kind: glaze\nlog: C.CSV"),
        "tiles/firings/c.csv": "minutes,\u0007\n",
        "tiles/firings/d.md": record("kind: glaze\nlog: nothing.csv"),
      }),
    ).toMatchInlineSnapshot(`
      "
      tiles/firings/a.csv:1:1 warning: No firing names the log “a.csv” [unused-log]
        Write “log: a.csv” into the record of its firing.

      tiles/firings/a.md:3:6 error: There is no log “a.cvs” beside this record [missing-log]
        3 | log: a.cvs
          |      ^
        Did you mean “a.csv”?

      tiles/firings/b.md:3:6 error: “../b.csv” leads away from the folder of this record [path-outside]
        3 | log: ../b.csv
          |      ^
        Write the bare name of a file beside this one.

      tiles/firings/c.csv:1:9 error: There is a character here that nobody can see (U+0007) [control-character]
        Delete what is around it and type it again.

      tiles/firings/d.md:3:6 error: There is no log “nothing.csv” beside this record [missing-log]
        3 | log: nothing.csv
          |      ^
        Put the file into tiles/firings, or take the line out.
      "
    `);
  });
});

describe("ids", () => {
  it("meet whatever their case and Unicode form", async () => {
    const dir = temporaryFolder();
    writeFiles(dir, {
      "studio.yaml":
        "format: 1\nstudio: Weir Lane\nmakers: {m01: {}, M01: {}, é: {}, e\u0301: {}}\n",
      "tiles/WL-001.md": tile(layer),
      "tiles/evening/set.md": record("name: Evening"),
      "tiles/evening/wl-001.md": tile(layer),
      "tiles/crème.md": tile(layer),
      "tiles/evening/cre\u0300me.md": tile(layer),
      "recipes/glazes/soot.md": record("name: Soot\nkind: glaze\nbought: {maker: Oxbow}"),
      "recipes/clays/soot.md": record("name: A clay of the same name is another thing"),
    });
    expect(tell(await read(dir))).toMatchInlineSnapshot(`
      "
      studio.yaml:3:19 error: The makers “m01” and “M01” differ only in how they are spelt [duplicate-maker]
        3 | makers: {m01: {}, M01: {}, é: {}, é: {}}
          |                   ^
        Give one of the two another code.

      studio.yaml:3:35 error: The makers “é” and “é” differ only in how they are spelt [duplicate-maker]
        3 | makers: {m01: {}, M01: {}, é: {}, é: {}}
          |                                   ^
        Give one of the two another code.

      tiles/evening/crème.md:1:1 error: Two tiles are called “crème”: tiles/crème.md and tiles/evening/crème.md [duplicate-id]
        1 | ---
          | ^
        Rename one of the two, together with its photographs.

      tiles/evening/wl-001.md:1:1 error: Two tiles are called “wl-001”, which differs from “WL-001” only in how it is spelt: tiles/WL-001.md and tiles/evening/wl-001.md [duplicate-id]
        1 | ---
          | ^
        Rename one of the two, together with its photographs. The next free code is wl-002.
      "
    `);
  });

  it("that two tiles have: the hint names the next free code of the second one's set, another each time", async () => {
    const told = await tellOf({
      "tiles/WL-101.md": tile(layer),
      "tiles/WL-102.md": tile(layer),
      "tiles/evening/set.md": record("name: Evening\ncodes: WL-101..WL-140"),
      "tiles/evening/WL-101.md": tile(layer),
      "tiles/evening/WL-102.md": tile(layer),
      "tiles/evening/WL-103.md": tile(layer),
    });
    expect(told.match(/The next free code is \S+/gu)).toEqual([
      "The next free code is WL-104.",
      "The next free code is WL-105.",
    ]);
  });

  it("of unlisted sets in links are each its own", async () => {
    expect(
      await tellOf({
        "tiles/a/set.md": record("name: A\nlisted: no\nlink: k7wq2mzt4hx3vb5nrd6yfp2cja"),
        "tiles/b/set.md": record("name: B\nlisted: no\nlink: k7wq2mzt4hx3vb5nrd6yfp2cja"),
      }),
    ).toMatchInlineSnapshot(`
      "
      tiles/b/set.md:4:7 error: The sets “a” and “b” have the same link, “k7wq2mzt4hx3vb5nrd6yfp2cja” [duplicate-link]
        4 | link: k7wq2mzt4hx3vb5nrd6yfp2cja
          |       ^
        Take the line out of one of them: the command “check --fix” then writes a random one.
      "
    `);
  });

  it("that nobody can use are refused", async () => {
    expect(
      await tellOf({
        "tiles/index.md": tile(layer),
        "tiles/con.md": tile(layer),
        "tiles/WL 002.md": tile(layer),
        "tiles/-x.md": tile(layer),
        "tiles/x..md": tile(layer),
        "tiles/a set/set.md": record("name: A set"),
        "tiles/firings/Glaze.md": record("kind: glaze"),
      }),
    ).toMatchInlineSnapshot(`
      "
      tiles/-x.md:1:1 error: “-x” cannot be the name of a tile: a name may hold letters, digits, “-”, “_” and “.”, and begins with a letter or digit [unusable-id]
        1 | ---
          | ^
        Give the file another name, such as “x”.

      tiles/a set/set.md:1:1 error: “a set” cannot be the name of a set: a name may hold letters, digits, “-”, “_” and “.”, and begins with a letter or digit [unusable-id]
        1 | ---
          | ^
        Give the set's folder another name, such as “a-set”.

      tiles/con.md:1:1 error: “con” cannot be the name of a tile: Windows cannot store a file named “con” [unusable-id]
        1 | ---
          | ^
        Give the file another name.

      tiles/firings/Glaze.md:1:1 error: “Glaze” cannot be the name of a firing: a layer “fired:” with that word tells only the kind of a firing [unusable-id]
        1 | ---
          | ^
        Give the file another name.

      tiles/index.md:1:1 error: “index” cannot be the name of a tile: “index” is the name of the page that lists them all [unusable-id]
        1 | ---
          | ^
        Give the file another name.

      tiles/WL 002.md:1:1 error: “WL 002” cannot be the name of a tile: a name may hold letters, digits, “-”, “_” and “.”, and begins with a letter or digit [unusable-id]
        1 | ---
          | ^
        Give the file another name, such as “WL-002”.

      tiles/x..md:1:1 error: “x.” cannot be the name of a tile: a name may not end in a full stop [unusable-id]
        1 | ---
          | ^
        Give the file another name, such as “x”.
      "
    `);
  });
});
