import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import {
  type Draft,
  emptyDraft,
  faultOfCode,
  fieldsOf,
  keepable,
  nameWithoutCode,
  nextCode,
  placeOf,
  readDraft,
  takenCodes,
} from "../../../src/browser/add/draft.ts";
import { newCoat, newMark } from "../../../src/browser/add/steps.ts";
import { eveningSite as site } from "./site.ts";

const draft = (part: Partial<Draft> = {}): Draft => ({
  ...emptyDraft(1),
  set: "evening",
  code: "EV-104",
  ...part,
});
const taken = takenCodes(site, ["EV-103"]);
const [evening] = site.sets;

describe("codes", () => {
  it("come from the set's block: the first that no tile has, none was handed in with, and is no control's", () => {
    expect(nextCode(evening, takenCodes(site, []))).toBe("EV-103");
    expect(nextCode(evening, taken)).toBe("EV-104");
    expect(nextCode(evening, takenCodes(site, ["EV-103", "EV-104", "ev-105"]))).toBeUndefined();
    expect(nextCode(undefined, taken)).toBeUndefined();
  });

  it.each([
    ["", "Type the code on its back, or say that it has none."],
    ["ev-101", "There is a tile ev-101 already. Take another code."],
    ["EV-103", "There is a tile EV-103 already. Take another code."],
    ["TH-201", "TH-201 is kept for Thursday. Take another code."],
    [
      "../../evil",
      "This cannot be a code: a name may hold letters, digits, “-”, “_” and “.”, and begins with a letter or digit.",
    ],
    [
      "<script>alert(1)</script>",
      "This cannot be a code: a name may hold letters, digits, “-”, “_” and “.”, and begins with a letter or digit.",
    ],
    [
      "EV\u202e104",
      "This cannot be a code: a name may hold letters, digits, “-”, “_” and “.”, and begins with a letter or digit.",
    ],
    [
      "E".repeat(10_000),
      "This cannot be a code: it is too long: a name may have 72 letters, and fewer where they are not those of English.",
    ],
    ["con", "This cannot be a code: Windows cannot store a file named “con”."],
    ["EV-104", undefined],
    ["Z-1", undefined],
  ])("%j is answered plainly", (code, fault) => {
    expect(faultOfCode(draft({ code }), site, taken)).toBe(fault);
  });

  it("may be left for later: the tile's files have a name of their own", () => {
    const noCode = nameWithoutCode((count) => new Uint8Array(count).map((_, i) => i * 31));
    expect(noCode).toMatch(/^no-code-[2-9a-hjkmnp-z]{8}$/u);
    const without = draft({ code: "", noCode });
    expect(faultOfCode(without, site, taken)).toBeUndefined();
    expect(placeOf(without)).toBe(`tiles/evening/${noCode}`);
    expect(placeOf({ ...without, set: "" })).toBe(`tiles/${noCode}`);
  });
});

describe("a draft", () => {
  it("gives the fields of a record, without those that nobody filled in", () => {
    const layers = [
      newCoat(0, "soot"),
      { ...newMark(1, "resist", "wax"), where: ["motif"] as const },
    ];
    expect(fieldsOf(draft({ maker: " m07 ", layers }))).toEqual({
      maker: "m07",
      layers: [{ glaze: "soot" }, { resist: "wax", where: ["motif"] }],
    });
    expect(fieldsOf(draft())).toEqual({});
  });

  test.prop([fc.string(), fc.string(), fc.string()])("is kept whole", (code, maker, notes) => {
    const whole = draft({ code, maker, notes, layers: [newCoat(0, "soot")] });
    expect(readDraft(keepable(whole))).toEqual(whole);
  });

  test.prop([fc.oneof(fc.string(), fc.json())])("is not read from anything else", (kept) => {
    const found = readDraft(kept);
    if (found) expect(JSON.parse(kept)).toMatchObject({ begun: found.begun });
    else expect(found).toBeUndefined();
  });

  it("with a step that is none is told to be unreadable, and never half read", () => {
    expect(
      readDraft('{"begun": 1, "layers": [{"glaze": "soot"}, {"gloss": "x"}]}'),
    ).toBeUndefined();
    expect(readDraft('{"begun": 1, "layers": "soot"}')).toBeUndefined();
    expect(readDraft('{"layers": []}')).toBeUndefined();
  });
});
