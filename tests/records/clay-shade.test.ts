import { describe, expect, it } from "vitest";
import { shadeOf } from "../../src/records/clay-shade.ts";

const said = (colour: string | undefined, shade?: "white" | "buff" | "dark") =>
  shadeOf({ colour, shade })?.shade ?? null;

describe("what a clay looks like fired", () => {
  it("is what its record says, whatever its colour", () => {
    expect(shadeOf({ shade: "dark", colour: "buff" })).toEqual({ shade: "dark", by: "shade" });
  });

  it.each([
    ["off-white", "white"],
    ["warm buff, freckled with iron", "buff"],
    ["Orange-red", "dark"],
    ["grey, toasted brown in reduction", "dark"],
  ] as const)("is read from the words of its colour: %s", (colour, shade) => {
    expect(shadeOf({ colour, shade: undefined })).toEqual({ shade, by: "colour" });
  });

  it("is not guessed where the words say nothing, or two things, or a pale dark", () => {
    for (const colour of [undefined, "", "anyone's guess", "grey", "buff, brown in reduction"])
      expect(said(colour), colour).toBeNull();
    expect(said("light brown")).toBeNull();
    expect(said("sandstone")).toBeNull();
  });
});
