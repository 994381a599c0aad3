import { Ajv2020 } from "ajv/dist/2020.js";
import { expect, test } from "vitest";
import { jsonSchemaOf } from "../../src/records/json-schema.ts";
import { recordKinds } from "../../src/records/kinds.ts";
import { makeReference, type ReferenceField } from "../../src/records/reference.ts";
import { studioSchema } from "../../src/records/studio.ts";

const reference = makeReference();

test("every field of every record has a sentence that explains it", () => {
  const bare = reference.flatMap(({ kind, fields }) =>
    fields
      .filter(({ explanation }) => !/^\S.*\.$|\?$/u.test(explanation))
      .map(({ name }) => `${kind} ${name}`),
  );
  expect(bare).toEqual([]);
});

test("the potters' reference in docs/ says what the schemas say", async () => {
  const pages = reference.map(
    ({ file, sentence, fields }) =>
      `## \`${file}\`\n\n${sentence}\n\n| field | what it says |\n|---|---|\n${fields.map(toRow).join("\n")}`,
  );
  const page = [
    "# Every field of every record",
    "",
    "Records are text files whose head, between two lines of `---`, is YAML. What is left empty",
    "counts as left out. Fields in **bold** must be there. A field of a field is shown behind `›`.",
    "This page is written from the schemas in `src/records/` (`npm test -- -u`).",
    "",
    ...pages.join("\n\n").split("\n"),
    "",
  ].join("\n");
  await expect(page).toMatchFileSnapshot("../../docs/records.md");
});

function toRow({ name, explanation, choices, required, ownWords }: ReferenceField): string {
  const list =
    choices.length > 0 ? ` One of: ${choices.join(", ")}${ownWords ? ", or own words" : ""}.` : "";
  const words = `${explanation}${list}`.replaceAll("|", "\\|");
  return `| ${required ? `**\`${name}\`**` : `\`${name}\``} | ${words} |`;
}

test.each(recordKinds.map((kind) => [kind.name, kind] as const))(
  "the editor's schema of a %s knows its fields by name and allows no other",
  (name, { schema }) => {
    const described = jsonSchemaOf(schema);
    expect(described.type).toBe("object");
    expect(described.additionalProperties).toBe(false);
    const fields = Object.keys(described.properties as object);
    expect(fields.length).toBeGreaterThan(name === "page" ? 0 : 3);
  },
);

test.each(recordKinds.map((kind) => [kind.name, kind] as const))(
  "the editor's schema of a %s is strict: no word in it is without effect",
  (_, { schema }) => {
    // What one of several keys demands is declared around it, where Ajv does not look for it.
    const options = { strict: true, strictRequired: false, allowUnionTypes: true };
    const strict = new Ajv2020({ ...options, validateFormats: false });
    expect(() => strict.compile(jsonSchemaOf(schema))).not.toThrow();
  },
);

test("an editor that goes by the schema takes one value or a list of them, no longer than it may be", () => {
  const validate = new Ajv2020({ allowUnionTypes: true, validateFormats: false }).compile(
    jsonSchemaOf(studioSchema),
  );
  const accepts = (common: unknown) =>
    validate({ format: 1, studio: "Weir Lane", makers: { m01: { name: "Rose", common } } });
  for (const common of ["Rose", ["Rose"], ["Rose", "Reed"]]) expect(accepts(common)).toBe(true);
  for (const common of [[], Array(31).fill("Rose"), { a: "Rose" }])
    expect(accepts(common)).toBe(false);
});

test("an editor that goes by the schema takes a card's place, or no for none", () => {
  const validate = new Ajv2020({ allowUnionTypes: true, validateFormats: false }).compile(
    jsonSchemaOf(studioSchema),
  );
  const accepts = (photo: unknown) => validate({ format: 1, studio: "Weir Lane", photo });
  // What editors make of `no` differs: YAML 1.1 reads a truth value, YAML 1.2 a word.
  for (const grey of [[6, 90, 15, 95.5], ["6", "90", "15", "95.5"], "no", false])
    expect(accepts({ crop: [20, 18, 80, 68], grey }), String(grey)).toBe(true);
  for (const grey of ["yes", true, "none", 7]) expect(accepts({ grey }), String(grey)).toBe(false);
  expect(accepts({ alt: "A tile" })).toBe(false);
});
