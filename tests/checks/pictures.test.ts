import { describe, expect, it } from "vitest";
import { runChecks } from "../../src/checks/all.ts";
import type { PictureInspection } from "../../src/checks/check.ts";
import { checkOpenedPictures } from "../../src/checks/opened-pictures.ts";
import { archive, codesIn, nothing, tell } from "./support.ts";

const inspected = (inspection: PictureInspection) => ({
  ...nothing,
  pictures: new Map([["tiles/TB-1.jpg", inspection]]),
});

describe("photographs", () => {
  it("one that cannot be used is an error, in the words of whoever looked at it", () => {
    const fault = {
      message: "The photograph is empty: the file holds 0 bytes.",
      hint: "Copy it from the camera or phone again.",
    };
    expect(tell({}, inspected({ fault }))).toMatchInlineSnapshot(`
      "error unusable-picture tiles/TB-1.jpg
      The photograph is empty: the file holds 0 bytes.
      Copy it from the camera or phone again."
    `);
  });

  it("one that carries the place where it was taken is an error", () => {
    const facts = { traces: ["device", "place"] };
    expect(tell({}, inspected({ facts }))).toMatchInlineSnapshot(`
      "error picture-with-place tiles/TB-1.jpg
      This photograph carries the place where it was taken, and everyone who gets the archive could read it
      Run “npx tilebook scrub tiles/TB-1.jpg”, which takes the place out and leaves the picture as it is. If the archive was shared already, the old picture is still in its history."
    `);
  });

  it("several that carry it are told with one command, for all of them", () => {
    const facts = { traces: ["place"] };
    const pictures = new Map(["tiles/TB-1.jpg", "tiles/TB 2.jpg"].map((file) => [file, { facts }]));
    const hints = runChecks(archive({}), { ...nothing, pictures }).map(({ hint }) => hint);
    expect(hints).toEqual(
      Array(2).fill(
        "Run “npx tilebook scrub”, which takes the place out of every photograph of the archive and leaves the pictures as they are. If the archive was shared already, the old pictures are still in its history.",
      ),
    );
  });

  it("what else they carry is one warning for all, with what was read in how many", () => {
    const pictures = new Map([
      ["tiles/TB-1.jpg", { facts: { traces: ["device", "notes"] } }],
      ["tiles/TB-2.jpg", { facts: { traces: ["notes"] } }],
      ["tiles/TB-3.jpg", { facts: { traces: ["device", "notes", "owner", "serial"] } }],
      ["tiles/TB-4.jpg", { facts: { traces: [] } }],
    ]);
    expect(tell({}, { ...nothing, pictures })).toMatchInlineSnapshot(`
      "warning picture-with-notes tiles/TB-1.jpg
      3 photographs, this one first, carry more than the picture (a name in 1, the camera or phone in 2, a serial number in 1): words, dates, small copies, or data that cannot be read and may hide a name or a place
      Run “npx tilebook scrub”: it takes all that out and leaves the pictures as they are."
    `);
  });

  it("one whose notes cannot be read is told, for they may hide a place", () => {
    expect(tell({}, inspected({ facts: { traces: ["notes"] } }))).toMatchInlineSnapshot(`
      "warning picture-with-notes tiles/TB-1.jpg
      This photograph carries more than the picture: words, dates, small copies, or data that cannot be read and may hide a name or a place
      Run “npx tilebook scrub”: it takes all that out and leaves the pictures as they are."
    `);
  });

  it("one that was taken poorly is a warning for its maker, in each way", () => {
    const codes = [
      "grey-card-useless",
      "picture-blurred",
      "picture-burnt-out",
      "picture-dark",
      "picture-small",
    ];
    const warnings = codes.map((code) => ({ code, message: `Found ${code}.`, hint: "Again." }));
    const found = inspected({ facts: { traces: [] }, warnings });
    expect(codesIn({}, found).toSorted()).toEqual(codes);
    expect(tell({}, found)).toContain(
      "warning picture-small tiles/TB-1.jpg\nFound picture-small.\nAgain.",
    );
  });

  it("what opening one shows is told alike by a build and by a check", () => {
    const opened: PictureInspection[] = [
      {
        facts: { traces: [] },
        warnings: [{ code: "picture-dark", message: "Dark.", hint: "Light." }],
      },
      { fault: { message: "Damaged.", hint: "Again." } },
    ];
    for (const inspection of opened) {
      const { pictures } = inspected(inspection);
      expect(checkOpenedPictures(archive({}), pictures, nothing.asTyped)).toEqual(
        runChecks(archive({}), inspected(inspection)),
      );
    }
  });
});
