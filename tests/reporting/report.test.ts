import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { LocatedProblem } from "../../src/reader/locate.ts";
import type { RecordCounts } from "../../src/reader/read-archive-files.ts";
import { reportAs } from "../../src/reporting/report.ts";

const counts: RecordCounts = {
  tiles: 31,
  sets: 1,
  firings: 4,
  glazes: 12,
  clays: 2,
  materials: 0,
  pictures: 29,
};

const unknown: LocatedProblem = {
  file: "tiles/evening/WL-101.md",
  path: ["layers", 0, "glaze"],
  severity: "error",
  code: "unknown-glaze",
  message: "There is no glaze “tidewrak”",
  hint: "Did you mean “tidewrack”?",
  line: 4,
  column: 12,
  lineText: "  - glaze: tidewrak",
  takenBy: null,
};

const note: LocatedProblem = {
  file: "tiles/WL-9.md",
  path: ["layers"],
  severity: "warning",
  code: "light-over-dark",
  message: "A light glaze lies over a dark one (common practice, no published source)",
  hint: "Say in the notes how it came out.",
  line: 12,
  column: 1,
  lineText: "layers:",
  takenBy: null,
};

/** Nothing that a terminal, or whoever reads the output line by line, would obey. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
const obeyed = /[\0-\x09\x0b-\x1f\x7f-\x9f\u200e\u200f\u2028-\u202e\u2066-\u2069\ufeff]/u;

const anyText = fc.string({ unit: "binary" });
const anyProblem = fc.record({
  file: anyText,
  path: fc.constant([]),
  severity: fc.constantFrom("error" as const, "warning" as const),
  code: fc.constant("any-code"),
  message: anyText,
  hint: anyText,
  line: fc.integer({ min: 1, max: 9999 }),
  column: fc.integer({ min: 1, max: 300 }),
  lineText: anyText,
  takenBy: fc.option(anyText),
});

describe("a report for people", () => {
  it("tells each problem with its line, file by file, and how many there are", () => {
    expect(reportAs("text", [unknown, note], counts)).toMatchInlineSnapshot(`
      "tiles/evening/WL-101.md:4:12 error: There is no glaze “tidewrak” [unknown-glaze]
        4 |   - glaze: tidewrak
          |            ^
        Did you mean “tidewrack”?

      tiles/WL-9.md:12:1 warning: A light glaze lies over a dark one (common practice, no published source) [light-over-dark]
        12 | layers:
           | ^
        Say in the notes how it came out.

      Read 31 tiles, 1 set, 29 photographs, 4 firings, 12 glazes, 2 clays and 0 materials.
      1 error, 1 warning."
    `);
  });

  it("tells that nothing is wrong, and what was looked at", () => {
    expect(reportAs("text", [], counts)).toMatchInlineSnapshot(`
      "Read 31 tiles, 1 set, 29 photographs, 4 firings, 12 glazes, 2 clays and 0 materials.
      No errors, no warnings."
    `);
  });

  it("tells nothing twice, but names every tile that takes a field from its set", () => {
    const taken = (takenBy: string): LocatedProblem => ({
      ...unknown,
      file: "tiles/evening/set.md",
      message: "Buff stoneware would melt",
      lineText: "  clay: buff",
      line: 5,
      column: 9,
      takenBy,
    });
    const problems = [
      unknown,
      taken("tiles/evening/WL-102.md"),
      unknown,
      taken("tiles/evening/WL-101.md"),
    ];
    expect(reportAs("text", problems, counts)).toMatchInlineSnapshot(`
      "tiles/evening/set.md:5:9 error: Buff stoneware would melt (tiles/evening/WL-101.md takes this from here) [unknown-glaze]
        5 |   clay: buff
          |         ^
        Did you mean “tidewrack”?

      tiles/evening/set.md:5:9 error: Buff stoneware would melt (tiles/evening/WL-102.md takes this from here) [unknown-glaze]
        5 |   clay: buff
          |         ^
        Did you mean “tidewrack”?

      tiles/evening/WL-101.md:4:12 error: There is no glaze “tidewrak” [unknown-glaze]
        4 |   - glaze: tidewrak
          |            ^
        Did you mean “tidewrack”?

      Read 31 tiles, 1 set, 29 photographs, 4 firings, 12 glazes, 2 clays and 0 materials.
      3 errors, no warnings."
    `);
  });

  it("goes through the files as a reader would, and down each of them", () => {
    const at = (file: string, line: number, column: number) => ({ ...unknown, file, line, column });
    const places = [
      at("tiles/WL-10.md", 2, 1),
      at("tiles/WL-9.md", 10, 1),
      at("tiles/WL-9.md", 9, 4),
      at("tiles/WL-9.md", 9, 3),
      at("recipes/glazes/soot.md", 99, 1),
    ];
    expect(reportAs("text", places, counts).match(/^\S+:\d+:\d+/gmu)).toEqual([
      "recipes/glazes/soot.md:99:1",
      "tiles/WL-9.md:9:3",
      "tiles/WL-9.md:9:4",
      "tiles/WL-9.md:10:1",
      "tiles/WL-10.md:2:1",
    ]);
  });

  it("shows colours only where it is told to", () => {
    const plain = reportAs("text", [unknown, note], counts);
    const coloured = reportAs("text", [unknown, note], counts, { colour: true });
    expect(plain).not.toContain("\u001b");
    // biome-ignore lint/suspicious/noControlCharactersInRegex: the colours of a terminal
    expect(coloured.replace(/\u001b\[\d+m/gu, "")).toBe(plain);
    expect(coloured).toContain("\u001b[31merror\u001b[39m");
    expect(coloured).toContain("\u001b[33mwarning\u001b[39m");
  });

  it("quotes of a long line what stands around the fault, with the marker beneath it", () => {
    const lineText = `layers: [${"{glaze: soot}, ".repeat(40)}{glaze: tidewrak}]`;
    const column = lineText.indexOf("tidewrak") + 1;
    const lines = reportAs("text", [{ ...unknown, lineText, column }], counts).split("\n");
    const marked = lines[2]?.indexOf("^") ?? -1;
    expect(lines[1]?.slice(marked, marked + 8)).toBe("tidewrak");
    expect(lines[1]?.length).toBeLessThanOrEqual(80);
  });

  it("puts the marker beneath the fault whatever stands before it", () => {
    for (const before of ["a\tb ", "😀 ", "\u202e ", "é "]) {
      const lineText = `${before}tidewrak`;
      const column = lineText.indexOf("tidewrak") + 1;
      const lines = reportAs("text", [{ ...unknown, lineText, column }], counts).split("\n");
      const marker = [...(lines[2] ?? "")].indexOf("^");
      expect([...(lines[1] ?? "")].slice(marker).join("")).toBe("tidewrak");
    }
  });

  it("makes visible what a terminal would obey", () => {
    const hostile = {
      ...unknown,
      message: "Red \u001b[31m bell \u0007 back\u0008 \u202eright\nnext",
      lineText: "a\u009bb",
    };
    expect(reportAs("text", [hostile], counts)).toMatchInlineSnapshot(`
      "tiles/evening/WL-101.md:4:12 error: Red ␛[31m bell ␇ back␈ �right␊next [unknown-glaze]
        4 | a�b
          |    ^
        Did you mean “tidewrack”?

      Read 31 tiles, 1 set, 29 photographs, 4 firings, 12 glazes, 2 clays and 0 materials.
      1 error, no warnings."
    `);
  });

  it("never holds a character that a terminal would obey, whatever was contributed", () => {
    fc.assert(
      fc.property(fc.array(anyProblem, { maxLength: 3 }), (problems) => {
        expect(reportAs("text", problems, counts)).not.toMatch(obeyed);
        expect(reportAs("github", problems, counts)).not.toMatch(obeyed);
        expect(reportAs("json", problems, counts)).not.toMatch(obeyed);
      }),
    );
  });
});

describe("a report for programs", () => {
  it("is JSON and nothing else", () => {
    expect(reportAs("json", [unknown, note], counts)).toMatchInlineSnapshot(`
      "{
        "problems": [
          {
            "severity": "error",
            "code": "unknown-glaze",
            "file": "tiles/evening/WL-101.md",
            "line": 4,
            "column": 12,
            "message": "There is no glaze “tidewrak”",
            "hint": "Did you mean “tidewrack”?"
          },
          {
            "severity": "warning",
            "code": "light-over-dark",
            "file": "tiles/WL-9.md",
            "line": 12,
            "column": 1,
            "message": "A light glaze lies over a dark one (common practice, no published source)",
            "hint": "Say in the notes how it came out."
          }
        ],
        "counts": {
          "tiles": 31,
          "sets": 1,
          "firings": 4,
          "glazes": 12,
          "clays": 2,
          "materials": 0,
          "pictures": 29,
          "errors": 1,
          "warnings": 1
        }
      }"
    `);
  });

  it("says of nothing wrong that there is nothing", () => {
    expect(JSON.parse(reportAs("json", [], counts))).toEqual({
      problems: [],
      counts: { ...counts, errors: 0, warnings: 0 },
    });
  });

  it("holds every word as it was contributed", () => {
    fc.assert(
      fc.property(anyProblem, (problem) => {
        const { problems } = JSON.parse(reportAs("json", [{ ...problem, takenBy: null }], counts));
        const { severity, code, file, line, column, message, hint } = problem;
        expect(problems).toEqual([{ severity, code, file, line, column, message, hint }]);
      }),
    );
  });
});

describe("a report for a GitHub workflow", () => {
  it("is one annotation a line", () => {
    expect(reportAs("github", [unknown, note], counts)).toMatchInlineSnapshot(`
      "::error file=tiles/evening/WL-101.md,line=4,col=12,title=unknown-glaze::There is no glaze “tidewrak”%0ADid you mean “tidewrack”?
      ::warning file=tiles/WL-9.md,line=12,col=1,title=light-over-dark::A light glaze lies over a dark one (common practice, no published source)%0ASay in the notes how it came out.
      Read 31 tiles, 1 set, 29 photographs, 4 firings, 12 glazes, 2 clays and 0 materials.
      1 error, 1 warning."
    `);
  });

  it("names files from the root of the repository", () => {
    const report = reportAs("github", [unknown], counts, { folder: "studio/archive" });
    expect(report).toContain("::error file=studio/archive/tiles/evening/WL-101.md,line=4,");
  });

  it("escapes what would end a value or begin a command", () => {
    const hostile = {
      ...unknown,
      file: "tiles/a:b,c%0A::set-output.md",
      message: "100%\n::error::forged",
      hint: "x",
    };
    expect(reportAs("github", [hostile], counts).split("\n")[0]).toMatchInlineSnapshot(
      `"::error file=tiles/a%3Ab%2Cc%250A%3A%3Aset-output.md,line=4,col=12,title=unknown-glaze::100%25␊::error::forged%0Ax"`,
    );
  });

  it("has as many commands as problems, whatever was contributed", () => {
    fc.assert(
      fc.property(fc.array(anyProblem, { maxLength: 4 }), (problems) => {
        const lines = reportAs("github", problems, counts).split(/\r?\n|\r/u);
        const commands = lines.filter((line) => line.trimStart().startsWith("::"));
        expect(commands).toHaveLength(lines.length - 2);
        expect(commands.length).toBeLessThanOrEqual(problems.length);
      }),
    );
  });
});

describe("a fault that many files share", () => {
  const files = Array.from({ length: 15 }, (_, i) => `tiles/CL-${i + 10}.md`);
  const many = files.map((file, i) => ({ ...unknown, file, line: 4 + (i % 2) }));
  const listAll = "npx tilebook check --all";

  it("is told once in a text, with its places and the command that tells them all", () => {
    expect(reportAs("text", [...many, note], counts, { listAll })).toMatchInlineSnapshot(`
      "tiles/CL-10.md:4:12 error: There is no glaze “tidewrak” [unknown-glaze]
        4 |   - glaze: tidewrak
          |            ^
        Did you mean “tidewrack”?
        The same is wrong in 14 other places: tiles/CL-11.md:5, tiles/CL-12.md:4, tiles/CL-13.md:5, tiles/CL-14.md:4, tiles/CL-15.md:5, tiles/CL-16.md:4, tiles/CL-17.md:5, tiles/CL-18.md:4, tiles/CL-19.md:5, tiles/CL-20.md:4, tiles/CL-21.md:5, tiles/CL-22.md:4 and 2 more: “npx tilebook check --all” tells them all.

      tiles/WL-9.md:12:1 warning: A light glaze lies over a dark one (common practice, no published source) [light-over-dark]
        12 | layers:
           | ^
        Say in the notes how it came out.

      Read 31 tiles, 1 set, 29 photographs, 4 firings, 12 glazes, 2 clays and 0 materials.
      15 errors, 1 warning."
    `);
  });

  it("is told for each of them where that is asked for", () => {
    expect(reportAs("text", many, counts).match(/There is no glaze/gu)).toHaveLength(15);
  });

  it("is told of each in JSON, and in an annotation for each file", () => {
    const twice = [...many, { ...unknown, file: "tiles/CL-10.md", line: 9 }];
    expect(JSON.parse(reportAs("json", twice, counts)).problems).toHaveLength(16);
    const lines = reportAs("github", twice, counts).split("\n");
    expect(lines.filter((line) => line.startsWith("::error"))).toHaveLength(15);
    expect(lines[0]).toBe(
      "::error file=tiles/CL-10.md,line=4,col=12,title=unknown-glaze::There is no glaze “tidewrak” (also: line 9)%0ADid you mean “tidewrack”?",
    );
  });

  it("is one where the records' own names alone differ, and not where what was written does", () => {
    const without = files.map((file) => ({
      ...unknown,
      file,
      message: `${file.slice(6, -3)} has a result, and there is no photograph of it`,
    }));
    const other = { ...unknown, file: "tiles/tidewrak.md" };
    expect(reportAs("text", without, counts, { listAll })).toContain("14 other places");
    expect(reportAs("text", [...many.slice(0, 2), other], counts, { listAll })).toContain(
      "2 other places",
    );
    const quoted = ["a", "b", "c"].map((id) => ({
      ...unknown,
      file: `tiles/${id}.md`,
      message: `There is no glaze “${id}”`,
    }));
    expect(reportAs("text", quoted, counts, { listAll })).not.toContain("other places");
  });
});
