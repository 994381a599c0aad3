/** What is told of a load before it is written: what the build would say, and what nobody can judge. */
import { expect, test } from "vitest";
import { runChecks } from "../../src/checks/all.ts";
import { type TriedFiring, tryLoad } from "../../src/loads/try-load.ts";
import { readArchiveFiles } from "../../src/reader/read-archive-files.ts";
import { nothing } from "../checks/support.ts";
import type { Texts } from "../support/files-in-memory.ts";
import { needsOf, record, tile } from "./archive.ts";

const glaze = { kind: "glaze", kiln: "Big electric", cone: "6" };

const load = (
  fields: TriedFiring["fields"],
  top: readonly string[],
  low: readonly string[] = [],
) => ({
  id: "g-261130",
  file: "tiles/firings/g-261130.md",
  fields,
  shelves: [
    { name: "top", codes: top },
    { name: "bottom", codes: low },
  ],
});

/** What is told of each code, and of the load: `error may-melt: message | hint`. */
function told(texts: Texts, firing: TriedFiring) {
  const tried = tryLoad(firing, needsOf(texts));
  const words = (
    cautions: readonly { severity: string; code: string; message: string; hint: string }[],
  ) =>
    cautions.map(
      ({ severity, code, message, hint }) => `${severity} ${code}: ${message} | ${hint}`,
    );
  return {
    tiles: Object.fromEntries([...(tried?.ofTiles ?? [])].map(([code, all]) => [code, words(all)])),
    load: words(tried?.ofLoad ?? []),
  };
}

const sound = tile("{glaze: soot, coats: 2}", "clay: buff");

test("nothing is told of tiles that belong there", () => {
  expect(
    told({ "tiles/A-1.md": sound, "tiles/A-2.md": sound }, load(glaze, ["A-1"], ["A-2"])),
  ).toEqual({ tiles: {}, load: [] });
});

test("a low-fire clay in a cone 6 load is the build's own error, and the first thing told", () => {
  const texts = {
    "tiles/A-1.md": tile("{glaze: soot}", "clay: terracotta"),
    "tiles/A-2.md": sound,
  };
  expect(told(texts, load(glaze, ["A-2", "A-1"]))).toEqual({
    load: [],
    tiles: {
      "a-1": [
        "error may-melt: A-1 may melt onto the shelf: its clay Terracotta is for cones 06–03, and firing g-261130 is aimed at cone 6: 8 cones hotter, about 130 °C (235 °F) | Keep it out of firing g-261130; if it has been through it, write down its result or fate. If a cone was mistyped (06 is far cooler than 6), mend recipes/clays/terracotta.md or tiles/firings/g-261130.md.",
      ],
    },
  });
});

test("what is told of a tile is what the build says once the load is written", () => {
  const texts = {
    "tiles/A-1.md": tile("{glaze: soot}", "clay: terracotta"),
    "tiles/A-2.md": tile("{glaze: slide, coats: 4}", "clay: buff", "shape: upright"),
    "tiles/A-3.md": tile("{glaze: gilt}", "clay: buff"),
  };
  const tried = tryLoad(load(glaze, ["A-1", "A-2", "A-3"]), needsOf(texts));
  const own = ["glaze-runs", "never-bisqued"];
  const here = [...(tried?.ofTiles.values() ?? [])]
    .flat()
    .filter(({ code }) => !own.includes(code))
    .map(({ code, message }) => `${code}: ${message}`);
  const written = record("kind: glaze", "kiln: Big electric", "cone: 6", "tiles: {top: A-1..A-3}");
  const { files, reader } = needsOf({ ...texts, "tiles/firings/g-261130.md": written });
  const { archive, problems } = readArchiveFiles(files, reader);
  const build = [...problems, ...(archive ? runChecks(archive, nothing) : [])];
  expect(here.length).toBeGreaterThan(3);
  expect(here.toSorted()).toEqual(
    build.map(({ code, message }) => `${code}: ${message}`).toSorted(),
  );
});

test("what nobody wrote down is told as that, since no rule can judge it", () => {
  const texts = {
    "tiles/A-1.md": tile("{glaze: soot}"),
    "tiles/A-2.md": tile("{glaze: dusk}, {glaze: soot}", "clay: found"),
    "tiles/a/set.md": record("name: Evening", "codes: A-9"),
  };
  expect(told(texts, load(glaze, ["A-1", "A-2", "A-9"]))).toEqual({
    load: [],
    tiles: {
      "a-1": [
        "warning clay-unknown: Nobody wrote down the clay of A-1, so nothing tells whether it can take cone 6 | Find out before it goes in: low-fire clay melts over the shelf. Then write “clay:” into its record.",
      ],
      "a-2": [
        "warning clay-without-cones: Ditch clay has no cones in its record, so nothing tells whether A-2 can take cone 6 | Look at the bag or ask the supplier, and write “cones:” into recipes/clays/found.md.",
        "warning glaze-without-cones: Dusk has no cones in its record, so nothing tells whether it is for cone 6 | Look at the label, and write “cones:” into the glaze’s record.",
      ],
      "a-9": [
        "warning no-record: A-9 has no record that can be read, so nothing about it could be checked | Write its record before the kiln is lit: at least its clay and its glazes.",
      ],
    },
  });
});

test("a load without a cone says once that nothing was checked against one", () => {
  const texts = { "tiles/A-1.md": tile("{glaze: soot}", "clay: terracotta") };
  expect(told(texts, load({ kind: "glaze" }, ["A-1"]))).toEqual({
    tiles: {},
    load: [
      "warning cone-unknown: No cone is written for this firing, so no clay and no glaze was checked against it | Write down the cone you aim at.",
    ],
  });
});

test("a glaze that runs is told from its record, and from the tiles that ran", () => {
  const ran = (run: string, shape: string) =>
    tile(
      ...["{glaze: soot, coats: 3}", "clay: buff", `shape: ${shape}`],
      `result: {faults: running, run: ${run}}`,
    );
  const texts = {
    "tiles/A-1.md": tile("{glaze: soot}, {glaze: slide}", "clay: buff"),
    "tiles/A-2.md": sound,
    "tiles/R-1.md": ran("12", "upright"),
    "tiles/R-2.md": ran("4", "flat"),
    "tiles/R-3.md": tile("{glaze: soot}", "clay: buff", "result: {run: 3, again: yes}"),
    "tiles/firings/g-261020.md": record(
      "on: 2026-10-20",
      "kind: glaze",
      "cone: 6",
      "tiles: {top: R-1..R-3}",
    ),
  };
  const guard =
    "Stand it on something that catches drips, away from its neighbours. A run of glaze breaks off sharp.";
  expect(told(texts, load(glaze, ["A-1", "A-2"])).tiles).toEqual({
    "a-1": [`warning glaze-runs: Slide runs, as its record says | ${guard}`],
    "a-2": [
      `warning glaze-runs: The same glazes ran before: R-1 (12 mm, upright, cone 6) and R-2 (4 mm, flat, cone 6) | ${guard}`,
    ],
  });
  expect(told(texts, load({ kind: "bisque", cone: "06" }, ["A-2"])).tiles["a-2"]).toEqual([
    "warning glaze-in-bisque: Soot is on A-2, and this is a bisque | Glaze that melts sticks to whatever touches it, and bisque is stacked. Keep it out, or write “- fired: bisque” above the layers if it was bisqued before.",
  ]);
});

test("what does not belong into this load yet, or no more, is told", () => {
  const raw = record("clay: buff", "layers: [{glaze: soot}]");
  const texts = {
    "tiles/A-1.md": raw,
    "tiles/A-2.md": tile("{glaze: soot}", "clay: buff", "fate: broken"),
    "tiles/A-3.md": tile("{glaze: soot}", "clay: buff", "result: {surface: satin}"),
    "tiles/A-4.md": sound,
    "tiles/firings/g-261020.md": record(
      "on: 2026-10-20",
      "kind: glaze",
      "cone: 6",
      "tiles: {top: A-3}",
    ),
    "tiles/firings/g-261201.md": record("kind: glaze", "cone: 6", "tiles: {top: A-4}"),
  };
  const all = told(texts, load(glaze, ["A-1", "A-2", "A-3", "A-4"])).tiles;
  expect(
    Object.values(all)
      .flat()
      .map((words) => words.split(" | ")[0]),
  ).toEqual([
    "warning never-bisqued: Nothing in the record of A-1 says that it was bisqued",
    "warning lost-already: The record of A-2 says that it did not come back whole: broken",
    "warning fired-already: A-3 has been through a glaze firing and has a result, and nothing was put on it since",
    "warning listed-elsewhere: A-4 is on the list of g-261201 too, and that is still to come",
  ]);
  expect(told(texts, load({ kind: "once", cone: "6" }, ["A-1"])).tiles).toEqual({});
});

test("the control tile of a set is missed, unless a twin of it is there", () => {
  const texts = {
    "tiles/a/set.md": record("name: Evening", "control: C-1", "defaults: {clay: buff}"),
    "tiles/a/C-1.md": tile("{glaze: soot, coats: 2, by: dip}", "result: {surface: satin}"),
    "tiles/a/C-1.jpg": "",
    "tiles/a/C-2.md": tile("{glaze: soot, coats: 2, by: dip}"),
    "tiles/a/A-1.md": tile("{glaze: soot, coats: 1, by: dip}"),
  };
  expect(told(texts, load(glaze, ["A-1"])).load).toEqual([
    "warning control-absent: Neither C-1, the control tile of Evening, nor a twin of it is in this load | Without it nobody can tell later whether the kiln or the glaze was different. Put one in, if there is one.",
  ]);
  expect(told(texts, load(glaze, ["A-1"], ["C-2"])).load).toEqual([]);
  expect(told(texts, load({ kind: "bisque", cone: "06" }, ["A-1"])).load).toEqual([]);
});

test("a code that is nobody's, and one that stands twice, are told as the build tells them", () => {
  const texts = { "tiles/A-1.md": sound };
  expect(told(texts, load(glaze, ["A-1", "A-7"], ["A-1"]))).toEqual({
    load: [],
    tiles: {
      "a-1": [
        "error tile-twice-in-load: “A-1” is in this load twice: on “top” and on “bottom” | Take the code out where it does not belong.",
      ],
      "a-7": [
        "error unknown-tile: There is no tile “A-7” | Correct the code, write the tile's record, or reserve the code with “codes:” in a set.md.",
      ],
    },
  });
});

test("a programme that climbs too far for its cone is told for the load as a whole", () => {
  const fields = { ...glaze, cone: "06", schedule: [{ to: "1220", rate: "150" }] };
  const { load: words } = told(
    { "tiles/A-1.md": record("clay: terracotta", "layers: [{fired: bisque}, {glaze: soot}]") },
    load(fields, ["A-1"]),
  );
  expect(words[0]).toMatch(/^error programme-too-hot: /u);
});
