import { readFileSync } from "node:fs";
import { expect, test } from "vitest";

const source = readFileSync(new URL("../../src/terms/limits.ts", import.meta.url), "utf8");

/** A section's heading, or a limit with its comment, as they follow each other in the file. */
const pieces =
  /^\/\/ ## (?<heading>.+)$|^\/\*\*(?<comment>(?:(?!\*\/)[\s\S])+)\*\/\nexport const \w+ = (?<value>[\d_]+);/gmu;

test("docs/limits.md says what the limits are", async () => {
  const lines = [...source.matchAll(pieces)].flatMap(({ groups }) => toLines(groups ?? {}));
  const page = [
    "# How much is read",
    "",
    "Whatever is handed in may come from people nobody knows, so nothing is read without end. These",
    "limits lie far beyond what a studio writes. What is larger is refused, and the message says so.",
    "This page is written from `src/terms/limits.ts` (`npm test -- -u`).",
    ...lines,
    "",
  ].join("\n");
  await expect(page).toMatchFileSnapshot("../../docs/limits.md");
});

test("every limit is told in docs/limits.md", () => {
  const told = [...source.matchAll(pieces)].filter(({ groups }) => groups?.value);
  expect(told.length).toBe(source.match(/^export const /gmu)?.length);
});

function toLines({ heading, comment = "", value = "" }: Record<string, string | undefined>) {
  if (heading) return ["", `## ${heading}`, "", "| at most | of what |", "|---:|---|"];
  const words = comment.replace(/\s*\n \*\s*/gu, " ").trim();
  return [`| ${value.replaceAll("_", ",")} | ${words} |`];
}
