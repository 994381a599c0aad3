import { describe, expect, it } from "vitest";
import { yamlOf } from "../../src/archive/parse-text.ts";
import { findPosition } from "../../src/reader/find-position.ts";
import type { FieldPath, Problem } from "../../src/records/problem.ts";
import { readWith, record } from "../archive/archives.ts";

const text = record(
  [
    "glazed: 2026-10-14", // line 2
    "layers:",
    "  - fired: bisque",
    "  -",
    "  - glaze: soot # line 6",
    "    coats: 1",
    "    where: [raised, rim]",
    "  - {fade: {from: plum, to: sky}, coats: 2}",
    "result: {surface: satin, faults: [crawling]}",
    "clay:",
    "  |-",
    "  buff",
    "maker:",
    "fate: !!str stuck",
    "later: &l",
    "  - on: 2027-01-11",
  ].join("\n"),
);

const at = (path: FieldPath, atKey = false) => {
  const { line, column } = findPosition(yamlOf(text, "markdown") ?? "", path, atKey);
  return `${line}:${column}`;
};

describe("a field is found again", () => {
  it("at its value, or at its name where the name is what is wrong", () => {
    expect(at(["glazed"])).toBe("2:9");
    expect(at(["glazed"], true)).toBe("2:1");
    expect(at(["layers", 0, "fired"])).toBe("4:12");
    expect(at(["result", "faults", 0])).toBe("10:35");
  });

  it("at its name where its value begins on another line", () => {
    expect(at(["layers"])).toBe("3:1");
    expect(at(["later"])).toBe("16:1");
  });

  it("in a list whose empty entries do not count", () => {
    expect(at(["layers", 1])).toBe("6:5");
    expect(at(["layers", 1, "coats"])).toBe("7:12");
    expect(at(["layers", 1, "where", 1])).toBe("8:21");
    expect(at(["layers", 2, "fade", "to"])).toBe("9:29");
  });

  it("where one value stands and a list might have", () => {
    expect(at(["result", 0, "surface", 0])).toBe("10:19");
    expect(at(["glazed", 0])).toBe("2:9");
  });

  it("where it was left empty", () => {
    expect(at(["maker"])).toBe("14:1");
  });

  it("behind a tag, and where its text is written beneath", () => {
    expect(at(["fate"])).toBe("15:13");
    expect(at(["clay"])).toBe("11:1");
  });

  it("or else the nearest field around it, down to the first of all", () => {
    expect(at(["layers", 1, "by"])).toBe("6:5");
    expect(at(["layers", 7, "glaze"])).toBe("3:1");
    expect(at(["result", 0, "run"])).toBe("10:9");
    expect(at(["texture"])).toBe("2:1");
    expect(at([])).toBe("1:1");
  });

  it("at the beginning of a file that holds no fields at all", () => {
    expect(findPosition("no fields", ["clay"])).toEqual({ line: 1, column: 1 });
    expect(findPosition("", ["studio"])).toEqual({ line: 1, column: 1 });
  });
});

describe("a problem that a check found", () => {
  const problem = (file: string, path: FieldPath): Problem => ({
    file,
    path,
    severity: "warning",
    code: "a-check",
    message: "Something is wrong",
    hint: "Mend it.",
  });

  it("is joined to the set where the tile has the field from there", async () => {
    const { locate } = await readWith({
      "tiles/evening/set.md": record(
        "name: Evening\ndefaults:\n  clay: buff\n  texture: smooth\n  photo: {crop: [8, 8, 92, 92]}",
      ),
      "tiles/evening/WL-101.md": record(
        "texture: carved\nlayers: [{glaze: soot}]\nphoto: {alt: A tile}",
      ),
    });
    const tile = "tiles/evening/WL-101.md";
    const inSet = { file: "tiles/evening/set.md", takenBy: tile };
    expect(locate(problem(tile, ["clay"]))).toMatchObject({
      ...inSet,
      line: 4,
      column: 9,
      lineText: "  clay: buff",
    });
    expect(locate(problem(tile, ["photo", "crop"]))).toMatchObject({ ...inSet, line: 6 });
    const own = { file: tile, takenBy: null };
    expect(locate(problem(tile, ["texture"]))).toMatchObject({ ...own, line: 2, column: 10 });
    expect(locate(problem(tile, ["photo", "alt"]))).toMatchObject({ ...own, line: 4 });
    expect(locate(problem(tile, ["photo", "grey"]))).toMatchObject({ ...own, line: 4 });
    expect(locate(problem(tile, ["layers", 0, "glaze"]))).toMatchObject({ ...own, line: 3 });
    expect(locate(problem(tile, ["maker"]))).toMatchObject({ ...own, line: 2 });
  });

  it("stands at line 1 of a file that is no text, or that nobody has read", async () => {
    const { locate } = await readWith({ "tiles/WL-001.jpg": "" });
    for (const file of ["tiles/WL-001.jpg", "nowhere.md"])
      expect(locate(problem(file, ["photo"]))).toMatchObject({
        file,
        line: 1,
        column: 1,
        lineText: "",
      });
  });
});
