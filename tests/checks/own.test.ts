import { expect, it } from "vitest";
import { runChecks } from "../../src/checks/all.ts";
import { archive, nothing, tellProblem } from "./support.ts";

function tellAccent(accent: string): readonly string[] {
  const { studio, ...rest } = archive({});
  return runChecks({ ...rest, studio: { ...studio, accent } }, nothing).map(tellProblem);
}

it("an accent that is seen on light and dark pages is taken", () => {
  expect(tellAccent("#2f7d6d")).toEqual([]);
});

it("one that is too pale, or too dark, is refused with its contrast and a shade that will do", () => {
  expect(tellAccent("#ffe08a")).toMatchInlineSnapshot(`
    [
      "error accent-unseen studio.yaml › accent
    The accent #ffe08a is hard to see on the light pages: its contrast there is 1.1 to 1, and lines need 3 to 1
    Take one nearer the middle between light and dark: “accent: "#a88b33"” is the nearest shade that is seen on both.",
    ]
  `);
  expect(tellAccent("#102040")).toMatchInlineSnapshot(`
    [
      "error accent-unseen studio.yaml › accent
    The accent #102040 is hard to see on the dark pages: its contrast there is 1.2 to 1, and lines need 3 to 1
    Take one nearer the middle between light and dark: “accent: "#4b5f84"” is the nearest shade that is seen on both.",
    ]
  `);
});

function tellLicence(licence: string): readonly string[] {
  const { studio, ...rest } = archive({});
  return runChecks({ ...rest, studio: { ...studio, licence } }, nothing).map(tellProblem);
}

it("a licence with its version is taken, and so is whatever the studio says in words of its own", () => {
  expect(tellLicence("CC BY 4.0")).toEqual([]);
  expect(tellLicence("CC BY 4.0 for the records; the photographs are ours alone.")).toEqual([]);
  expect(tellLicence("Ask us.")).toEqual([]);
});

it("a licence whose version is not said is told, since nobody can know which one is meant", () => {
  expect(tellLicence("CC BY")).toMatchInlineSnapshot(`
    [
      "warning licence-unread studio.yaml › licence
    “CC BY” does not say for certain which licence is meant, so pages and data show it as it is written and lead to none
    Write one licence with its version, such as “licence: CC BY 4.0”, or its web address. Only the studio can say which it chose.",
    ]
  `);
});
