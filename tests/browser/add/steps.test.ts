import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { type DraftStep, readStep, toTileStep, writeStep } from "../../../src/browser/add/steps.ts";
import {
  areas,
  covers,
  dryings,
  kindsOfFiring,
  removals,
  resists,
  thicknesses,
  ways,
} from "../../../src/terms/choices.ts";

const said = fc.stringMatching(/^[a-z0-9]{0,12}$/u);
const id = fc.stringMatching(/^[a-z0-9]{1,12}$/u);
const oneOf = (choices: readonly string[]) => fc.constantFrom("", ...choices);
const place = {
  where: fc.uniqueArray(fc.constantFrom(...areas.filter((area) => area !== "all"))),
  detail: said,
};
const key = fc.constant(3);

const coat = fc
  .record({
    ...{ key, step: fc.constant("coat" as const), glaze: id, fadesTo: said, along: said },
    ...{ coats: said, cover: oneOf(covers), by: oneOf(ways), thickness: oneOf(thicknesses) },
    ...{ seconds: said, gravity: said, dried: oneOf(dryings), over: fc.array(id) },
    ...{ touchUp: fc.boolean(), ...place },
  })
  .map((step) => (step.fadesTo === "" ? { ...step, along: "" } : step));
const mark = fc.oneof(
  fc.record({
    ...{ key, step: fc.constant("resist" as const), what: fc.constantFrom(...resists) },
    ...place,
  }),
  fc.record({
    ...{ key, step: fc.constant("remove" as const), what: fc.constantFrom(...removals) },
    ...place,
  }),
);
const firing = fc.record({
  ...{ key, step: fc.constant("fired" as const), shelf: said },
  what: fc.oneof(fc.constantFrom(...kindsOfFiring), id),
});
const steps: fc.Arbitrary<DraftStep> = fc.oneof(coat, mark, firing);

describe("a step of the form", () => {
  test.prop([steps])("is the same after it was written and read again", (step) => {
    expect(readStep(writeStep(step), 3)).toEqual(step);
  });

  test.prop([steps])("is drawn and said whatever was typed", (step) => {
    expect(toTileStep(step, 0).at).toBe(0);
  });

  it("says nothing in the record of what nobody said", () => {
    const step = readStep({ glaze: "soot" }, 0) as DraftStep;
    expect(writeStep(step)).toEqual({ glaze: "soot" });
  });

  it("draws no coats where what was typed is no number", () => {
    const step = readStep({ glaze: "soot", coats: "two" }, 0) as DraftStep;
    expect(toTileStep(step, 0)).toMatchObject({ coats: null });
    expect(writeStep(step)).toEqual({ glaze: "soot", coats: "two" });
  });

  it("is not read where it is none", () => {
    expect(readStep({ glaze: ["soot"] }, 0)).toBeUndefined();
    expect(readStep({}, 0)).toBeUndefined();
  });
});
