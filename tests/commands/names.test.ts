/** Where `check` says that a name is. */
import { expect, test } from "vitest";
import { archiveWith } from "./archives.ts";
import { tilebook } from "./tilebook.ts";

test("a name is told at the line and column of its word, in notes, in fields and in a set's", async () => {
  const archive = await archiveWith({
    "tiles/evening/EV-7.md": [
      "---",
      "# Bram wrote this line, which nobody publishes.",
      "maker: m02",
      "layers:",
      "  - glaze: soot # as Bram likes it",
      "    detail: 'where Bram",
      "      pressed, and Bram again'",
      "---",
      "",
      "Bramble blue. Not so",
      "as **Bram**, or Bram",
      "Tolliver, has it.",
      "",
    ].join("\r\n"),
    "tiles/evening/set.md":
      "---\nname: Evening class\ndefaults: {clay: buff, texture: Bram's comb}\n---\n",
  });
  const { code, out } = await tilebook("check", "--archive", archive, "--format", "json");
  const { problems } = JSON.parse(out) as {
    problems: { code: string; file: string; line: number; column: number }[];
  };
  const named = problems.filter((problem) => /name-in-words$/u.test(problem.code));
  expect(code).toBe(1);
  expect(
    named.map((problem) => `${problem.file}:${problem.line}:${problem.column} ${problem.code}`),
  ).toEqual([
    "tiles/evening/EV-7.md:6:20 part-of-name-in-words",
    "tiles/evening/EV-7.md:7:20 part-of-name-in-words",
    "tiles/evening/EV-7.md:11:6 part-of-name-in-words",
    "tiles/evening/EV-7.md:11:17 name-in-words",
    "tiles/evening/set.md:3:33 part-of-name-in-words",
  ]);
});
