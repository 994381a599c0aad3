/** Writing fields into records: the fields are there, and not a letter besides has changed. */
import fs from "node:fs";
import path from "node:path";
import { fc, test as propertyTest } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { parseText } from "../../src/archive/parse-text.ts";
import { writeFields } from "../../src/archive/write-fields.ts";
import { temporaryFolder, writeFiles } from "./archives.ts";
import { commentsOf, type Fields, isLeftOf, write } from "./write-record.ts";

const crop = ["20", "14", "80", "68"];
const grey = ["6", "90", "15", "95.5"];

const both = (...under: string[]): Fields => [
  { path: [...under, "photo", "crop"], value: crop },
  { path: [...under, "photo", "grey"], value: grey },
];

describe("fields that were not there", () => {
  it("stand in a studio.yaml after its last field, before the comments beneath", () => {
    const before =
      "format: 1\nstudio: 'Weir  Lane'   # the name\n\n# Take off the “#”:\n# licence: none\n";
    const { after, result } = write("studio", before, both());
    expect(after).toBe(
      "format: 1\nstudio: 'Weir  Lane'   # the name\nphoto: {crop: [20, 14, 80, 68], grey: [6, 90, 15, 95.5]}\n\n# Take off the “#”:\n# licence: none\n",
    );
    expect(result).toEqual({
      ok: true,
      lines: [{ line: 3, text: "photo: {crop: [20, 14, 80, 68], grey: [6, 90, 15, 95.5]}" }],
    });
  });

  it("stand in the defaults of a set, in their layout", () => {
    const head = "---\nname: Evening\ndefaults:   # for all\n    clay: buff # from the sack\n";
    const tail = "jars: {7: soot}\n---\nNotes.\n";
    expect(write("set", head + tail, both("defaults")).after).toBe(
      `${head}    photo: {crop: [20, 14, 80, 68], grey: [6, 90, 15, 95.5]}\n${tail}`,
    );
  });

  it("stand in a set without defaults, and in one whose defaults were left empty", () => {
    const line = "defaults: {photo: {crop: [20, 14, 80, 68], grey: [6, 90, 15, 95.5]}}";
    expect(write("set", "---\nname: Evening\n---\n", both("defaults")).after).toBe(
      `---\nname: Evening\n${line}\n---\n`,
    );
    expect(
      write("set", "---\nname: Evening\ndefaults:  # none yet\n---\n", both("defaults")).after,
    ).toBe(`---\nname: Evening\n${line}  # none yet\n---\n`);
  });

  it("stand beside what a photo says already, in lines or in brackets", () => {
    const lines =
      "---\nlayers: [{glaze: soot}]\nphoto:\n  # seen from above\n  alt: |\n    Blue\n---\n";
    expect(write("tile", lines, both()).after).toBe(
      "---\nlayers: [{glaze: soot}]\nphoto:\n  # seen from above\n  alt: |\n    Blue\n  crop: [20, 14, 80, 68]\n  grey: [6, 90, 15, 95.5]\n---\n",
    );
    const brackets = "---\nphoto: { alt: Blue, } # x\nlayers: [{glaze: soot}]\n---\n";
    expect(write("tile", brackets, both()).after).toBe(
      "---\nphoto: { alt: Blue, crop: [20, 14, 80, 68], grey: [6, 90, 15, 95.5] } # x\nlayers: [{glaze: soot}]\n---\n",
    );
  });
});

describe("fields that were there", () => {
  it("are changed number by number, so that layout and comments stay", () => {
    const before =
      "---\nlayers: [{glaze: soot}]\nphoto:\n  crop:\n    - 20 # left\n    - 10 # top\n    - 80\n    - '70'\n  grey: [ 1,2 , 15 ,\n    95.5 ] # card\n---\n";
    expect(write("tile", before, both()).after).toBe(
      "---\nlayers: [{glaze: soot}]\nphoto:\n  crop:\n    - 20 # left\n    - 14 # top\n    - 80\n    - 68\n  grey: [ 6,90 , 15 ,\n    95.5 ] # card\n---\n",
    );
  });

  it("may become a word, and a word may become a list", () => {
    const before = "---\nlayers: [{glaze: soot}]\nphoto: {grey: [1, 2, 3, 4]}\n---\n";
    const none: Fields = [{ path: ["photo", "grey"], value: "no" }];
    const { after } = write("tile", before, none);
    expect(after).toBe("---\nlayers: [{glaze: soot}]\nphoto: {grey: no}\n---\n");
    expect(write("tile", after, [{ path: ["photo", "grey"], value: grey }]).after).toBe(
      "---\nlayers: [{glaze: soot}]\nphoto: {grey: [6, 90, 15, 95.5]}\n---\n",
    );
  });

  it("leave the file alone where it says the same already", () => {
    const before = "---\nlayers: [{glaze: soot}]\nphoto: {crop: [20, 14, 80, 68]}\n---\n";
    const { after, result } = write("tile", before, [{ path: ["photo", "crop"], value: crop }]);
    expect(after).toBe(before);
    expect(result.ok).toBe(true);
  });
});

describe("a file as its editor saves it", () => {
  it("keeps its ends of lines, its mark at the beginning, and its permissions", () => {
    const dir = temporaryFolder();
    const before = "\uFEFFformat: 1\r\nstudio: Weir Lane\r\nphoto:\r\n  crop: [1, 2, 3, 4]\r\n";
    writeFiles(dir, { "studio.yaml": before });
    fs.chmodSync(path.join(dir, "studio.yaml"), 0o640);
    const asRead = "format: 1\nstudio: Weir Lane\nphoto:\n  crop: [1, 2, 3, 4]\n";
    const record = { file: "studio.yaml", kind: "studio", asRead } as const;
    expect(writeFields(dir, record, both()).ok).toBe(true);
    expect(fs.readFileSync(path.join(dir, "studio.yaml"), "utf8")).toBe(
      "\uFEFFformat: 1\r\nstudio: Weir Lane\r\nphoto:\r\n  crop: [20, 14, 80, 68]\r\n  grey: [6, 90, 15, 95.5]\r\n",
    );
    expect(fs.statSync(path.join(dir, "studio.yaml")).mode & 0o777).toBe(0o640);
    expect(fs.readdirSync(dir)).toEqual(["studio.yaml"]);
  });

  it("is written through a link to another file of the archive, and the link stays", () => {
    const dir = temporaryFolder();
    const before = "---\nlayers: [{glaze: soot}]\n---\n";
    writeFiles(dir, { "tiles/real.md": before });
    fs.symlinkSync("real.md", path.join(dir, "tiles/link.md"));
    const record = { file: "tiles/link.md", kind: "tile", asRead: before } as const;
    expect(writeFields(dir, record, both()).ok).toBe(true);
    expect(fs.readFileSync(path.join(dir, "tiles/real.md"), "utf8")).toContain("photo: {crop:");
    expect(fs.lstatSync(path.join(dir, "tiles/link.md")).isSymbolicLink()).toBe(true);
  });

  it("is not written where a link leads out of the archive", () => {
    const [dir, elsewhere] = [temporaryFolder(), temporaryFolder()];
    const before = "---\nlayers: [{glaze: soot}]\n---\n";
    writeFiles(elsewhere, { "a.md": before });
    fs.symlinkSync(path.join(elsewhere, "a.md"), path.join(dir, "a.md"));
    const record = { file: "a.md", kind: "tile", asRead: before } as const;
    expect(() => writeFields(dir, record, both())).toThrow("it lies outside of the archive");
    expect(fs.readFileSync(path.join(elsewhere, "a.md"), "utf8")).toBe(before);
  });
});

describe("nothing is written", () => {
  it("where the file is another than was read", () => {
    const now = "---\nlayers: [{glaze: soot}]\n---\nA word more.\n";
    const { after, result } = write("tile", now, both(), "---\nlayers: [{glaze: soot}]\n---\n");
    expect(result).toEqual({ ok: false, because: "changed" });
    expect(after).toBe(now);
  });

  it("where the record has a fault, or would have one", () => {
    const faulty = "---\nlayers: [{glase: soot}]\n---\n";
    expect(write("tile", faulty, both()).result).toEqual({ ok: false, because: "faulty" });
    const sound = "---\nlayers: [{glaze: soot}]\n---\n";
    const wrong: Fields = [{ path: ["photo", "crop"], value: ["80", "0", "20", "10"] }];
    const { after, result } = write("tile", sound, wrong);
    expect(result).toEqual({ ok: false, because: "unchangeable" });
    expect(after).toBe(sound);
  });

  it("where another field repeats what would be changed", () => {
    const before =
      "---\nlayers: [{glaze: soot}]\nphoto: {grey: &box [1, 2, 3, 4], crop: *box}\n---\n";
    const { after, result } = write("tile", before, [{ path: ["photo", "grey"], value: grey }]);
    expect(result).toEqual({ ok: false, because: "unchangeable" });
    expect(after).toBe(before);
  });
});

const percent = fc.integer({ min: 0, max: 1000 }).map((tenths) => tenths / 10);
const box = fc
  .tuple(percent, percent, percent, percent)
  .filter(([left, top, right, bottom]) => left < right && top < bottom)
  .map((edges) => edges.map(String));

const comment = fc.constantFrom("", "   # as it was: {crop: [1, 2]}", " #", " # ---");
const blank = fc.constantFrom("", "\n", "\n  # a thought\n", "\n# crop: [9, 9, 99, 99]\n");
const photo = fc.constantFrom(
  "",
  "photo:",
  "photo: {}",
  "photo: ~",
  "photo: {alt: 'A, b: c'}",
  "photo: { grey: no, }",
  "photo:\n  alt: >-\n    Motif\n    bare\n\n  crop: [1, 2, 3, 4]",
  "photo:\n    crop:\n    - 1\n    # the top\n    - 2\n    - 3\n    - 4",
  'photo:\n  grey:\n    - 1\n    - 2\n    - 3\n    - 4\n  alt: "A\n    b"',
  "photo: {crop: [1,\n  2, 3, 4], # edges\n  alt: x}",
);
const other = fc.constantFrom(
  "glazed: 2026-10-14",
  "clay:",
  "later:\n- on: 2027-01-11\n  faults: crazing",
  "result: {surface: satin,\n  next-time: |-x }",
  "result:\n    next-time: |\n      one coat\n\n      fewer\n",
  "fate: 'stuck'",
);

const recordText = fc
  .record({ photo, other, comment, blank, end: fc.constantFrom("\n", "\r\n"), first: fc.boolean() })
  .map(({ photo: own, other: field, comment: words, blank: gap, end, first }) => {
    const layers = `layers:${words}\n  - {glaze: soot}${words}${gap}`;
    const fields = first ? [own, layers, field] : [layers, field, own];
    const yaml = fields.filter((each) => each !== "").join("\n");
    return `---\n${yaml}\n---\nNotes: {crop: none}\n\n---\n`.replaceAll("\n", end);
  })
  .filter((text) => {
    const { source, faults } = parseText(text.replaceAll("\r\n", "\n"), "markdown");
    return source !== null && faults.length === 0;
  });

propertyTest.prop([recordText, box, fc.oneof(box, fc.constant("no" as const))])(
  "whatever a record looks like, it then gives those numbers, and nothing else has changed",
  (before, newCrop, newGrey) => {
    const { after, result } = write("tile", before, [
      { path: ["photo", "crop"], value: newCrop },
      { path: ["photo", "grey"], value: newGrey },
    ]);
    expect(result.ok).toBe(true);
    const read = (text: string) => parseText(text.replaceAll("\r\n", "\n"), "markdown");
    const [was, is] = [read(before), read(after)];
    expect(is.source).toEqual({
      ...was.source,
      photo: { ...((was.source?.photo as object) ?? {}), crop: newCrop, grey: newGrey },
    });
    expect(is.notes).toBe(was.notes);
    expect(isLeftOf(commentsOf(before), commentsOf(after))).toBe(true);
    expect(isLeftOf(untouchable(before), after.split("\n"))).toBe(true);
  },
);

/** The lines that hold nothing of a photo. */
function untouchable(text: string): readonly string[] {
  const inPhoto = /photo|crop|grey|^\s*- \d|^\s+(2, 3, 4\]|alt|b")/u;
  return text.split("\n").filter((line) => !inPhoto.test(line));
}
