import { describe, expect, it } from "vitest";
import type { PictureInspection } from "../../src/checks/check.ts";
import { codesIn, nothing, tell } from "./support.ts";

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
      Remove the place from the picture's metadata, for example by exporting it again without location, and put that in its place. If the archive was shared already, the old picture is still in its history."
    `);
  });

  it("the camera's name alone is no error, for it is stripped", () => {
    expect(codesIn({}, inspected({ facts: { traces: ["device", "owner", "serial"] } }))).toEqual(
      [],
    );
  });
});
