import { fc, test as propertyTest } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { parseText } from "../../src/archive/parse-text.ts";
import { renderRecord } from "../../src/reader/render-record.ts";

test("a record is written as potters write it", () => {
  expect(
    renderRecord({
      name: "Eider 4, cobalt 1",
      cones: undefined,
      blend: [
        { glaze: "eider", parts: "4" },
        { glaze: "saltern-cobalt", parts: "1" },
      ],
      defaults: { clay: "buff", maker: undefined },
      stocked: "no",
    }),
  ).toBe(
    [
      "---",
      "name: Eider 4, cobalt 1",
      "blend:",
      "  - {glaze: eider, parts: 4}",
      "  - {glaze: saltern-cobalt, parts: 1}",
      "defaults: {clay: buff}",
      "stocked: no",
      "---",
      "",
    ].join("\n"),
  );
});

const text = fc
  .string({ unit: "grapheme", minLength: 1 })
  .filter((value) => value.trim() === value);

propertyTest.prop([text, text])("any text is read as it was given", (name, glaze) => {
  fc.pre(/^[^\p{C}\p{Z}]+$/u.test(name + glaze));
  const { source } = parseText(renderRecord({ name, blend: [{ glaze }] }), "markdown");
  expect(source).toMatchObject({ name, blend: [{ glaze }] });
});
