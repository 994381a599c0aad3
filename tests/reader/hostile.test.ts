/** Records that somebody made to keep a reader busy: refused in words, and soon. */
import { describe, expect, it } from "vitest";
import { findCodes } from "../../src/terms/ids.ts";
import {
  longestYaml,
  mostCodesOfArchive,
  mostCommas,
  mostEmptyLines,
  mostLines,
} from "../../src/terms/limits.ts";
import { least, readWith, record, tell } from "../archive/archives.ts";
import { processorTimeOf } from "../support/processor-time.ts";

const tile = (yaml: string) => ({ "tiles/WL-002.md": record(yaml) });
const times = (piece: string, count: number) => piece.repeat(count);
const full = (piece: string) => times(piece, Math.floor((longestYaml - 100) / piece.length));
const list = (count: number, make: (i: number) => string) =>
  Array.from({ length: count }, (_, i) => make(i)).join("");

/** Each at the largest size that is looked at, or beyond it, and the codes of what is told. */
const hostile: Readonly<Record<string, readonly [Record<string, string>, readonly string[]]>> = {
  "40 KB of faulty layers": [
    tile(`layers:\n${times("  - glze: soot\n", 900)}`),
    ["list-too-long", "more-problems", "step-without-key"],
  ],
  "more sound layers than a tile has": [
    tile(`layers:\n${times("  - glaze: soot\n", 900)}`),
    ["list-too-long"],
  ],
  "layers without end": [tile(`layers:\n${full("  - glaze: soot\n")}`), ["list-too-long"]],
  "fields without a value": [tile(full("a:\n")), ["yaml-too-long"]],
  "fields that nobody declared": [
    tile(`layers: [{glaze: soot}]\n${list(4000, (i) => `k${i}: v\n`)}`),
    ["more-problems", "unknown-field"],
  ],
  "makers without end": [
    {
      "studio.yaml": `format: 1\nstudio: A\nmakers:\n${list(4500, (i) => `  m${i}: {shown: x}\n`)}`,
    },
    ["more-problems", "unknown-choice"],
  ],
  anchors: [tile(list(4000, (i) => `k${i}: &a${i} v\n`)), ["bad-beginning"]],
  aliases: [
    tile(`a: &a x\nb: [${times("*a,", 900)}]\nc: [${times("*a,", 900)}]`),
    ["too-many-aliases"],
  ],
  "ids to lap over": [
    tile(`layers:\n  - glaze: soot\n    over: [${list(900, (i) => `id${i},`)}]`),
    ["list-too-long"],
  ],
  commas: [tile(`a: [${times(",", mostCommas + 1)}`), ["yaml-too-long"]],
  "as many commas as are looked at": [tile(`a: [${times(",", mostCommas)}`), ["unclosed-bracket"]],
  lines: [tile(`a: [${times("\n#", mostLines + 1)}`), ["yaml-too-long"]],
  "as many lines as are looked at": [
    tile(`a: [${times("\n#", mostLines - 10)}`),
    ["unclosed-bracket"],
  ],
  brackets: [tile(`a: ${full("[")}`), ["unclosed-bracket"]],
  dashes: [tile(full("- ")), ["nested-too-deep"]],
  quotes: [tile(`a: ${full('"')}`), ["text-after-quote"]],
  comments: [
    tile(`layers: [{glaze: soot}]\n${times("clay: b #x\n", 800)}`),
    ["duplicate-field", "more-problems", "unknown-clay"],
  ],
  "maps in maps": [tile(`a: ${times("{a: ", 25)}b${times("}", 25)}`), ["nested-too-deep"]],
  "a long name": [
    tile(`${full("k")}: v`),
    ["yaml-too-long", "unreadable-yaml", "no-colon", "bad-indent", "key-too-long"],
  ],
  "a long text": [tile(`layers: [{glaze: soot, detail: ${full("x")}}]`), ["value-too-long"]],
  "noughts for a cone": [
    { "tiles/firings/g-1.md": record(`kind: glaze\ncone: ${times("0", 9000)}`) },
    ["unknown-cone"],
  ],
  "spaces before a cone": [
    {
      "tiles/firings/g-1.md": record(
        `kind: glaze\ncone: 6${times(" ", 9000)}-${times(" ", 9000)}x`,
      ),
    },
    ["value-too-long", "unknown-cone"],
  ],
  "spaces after the first line": [
    { "tiles/WL-002.md": `---${times(" ", 300_000)}x\n---\n` },
    ["front-matter-language"],
  ],
  "spaces after the second line": [
    { "tiles/WL-002.md": `---\nlayers: [{glaze: soot}]\n---${times(" ", 300_000)}x\n` },
    ["front-matter-not-closed"],
  ],
  "empty lines in the fields": [
    { "tiles/WL-002.md": `---\n${times("\n", 300_000)}---\n` },
    ["too-many-empty-lines"],
  ],
  "as many empty lines as are looked at, again and again": [
    tile(times(`#${times("\n", mostEmptyLines)}`, 38)),
    ["missing-field"],
  ],
  "a range of a hundred million tiles": [
    { "tiles/firings/g-1.md": record("kind: glaze\ntiles: {top: [TB-1..TB-99999999]}") },
    ["bad-code-range"],
  ],
  "ranges in one record": [
    {
      "tiles/firings/g-1.md": record(
        `kind: glaze\ntiles: {top: [${times("TB-1..TB-1000,", 900)}]}`,
      ),
    },
    ["too-many-codes"],
  ],
};

describe("a record made to keep the reader busy", () => {
  it.each(Object.entries(hostile))("is refused: %s", async (_, [files, codes]) => {
    let located: readonly { readonly file: string; readonly code: string }[] = [];
    const time = await processorTimeOf(async () => {
      const { problems, locate } = await readWith(files);
      located = problems.map(locate);
    });
    // Coarse, for a slow machine: what grows with the square takes minutes.
    expect(time).toBeLessThan(10_000);
    expect(located.length).toBeLessThan(250);
    const told = new Set(located.filter(({ file }) => file in files).map(({ code }) => code));
    expect([...told].length).toBeGreaterThan(0);
    expect([...told].filter((code) => !codes.includes(code))).toEqual([]);
  });

  it("has its problems counted beyond a hundred", async () => {
    const found = await readWith(
      tile(`layers: [{glaze: soot}]\n${list(150, (i) => `k${i}: v\n`)}`),
    );
    expect(found.problems).toHaveLength(101);
    expect(tell(found)).toContain(
      "error: This file has 50 more problems, which are not told here [more-problems]",
    );
  });
});

describe("many records together", () => {
  it("name no more codes than are read, before a range is spelt out", async () => {
    const ranges = times("TB-1..TB-1000,", 5);
    const files = Object.fromEntries(
      Array.from({ length: mostCodesOfArchive / 5000 + 1 }, (_, i) => [
        `tiles/firings/g-${i}.md`,
        record(`on: 2026-01-01\nkind: glaze\ntiles: {top: [${ranges}]}`),
      ]),
    );
    const { problems } = await readWith({ ...least, ...files });
    const refused = problems.filter(({ code }) => code === "too-many-codes");
    expect(refused.map(({ message }) => message)).toEqual([
      "With this record, the archive names more than the 100,000 codes that are read of all load lists and sets together",
    ]);
  });

  it("with a range that no series has is no range", () => {
    expect(findCodes("TB-1..TB-99999999")).toBeUndefined();
  });
});
