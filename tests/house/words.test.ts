import { expect, test } from "vitest";
import { listSources } from "./files.ts";
import { parseEnglish, readEnglish } from "./words.ts";

/** Rooms that hand over facts: what is said of them is said in templates/words/. */
const factual = /^src\/(catalogue|firing)\//u;

/** The reading of logs says what it took for what where it decides it, as checks do. */
const reading = /^src\/firing\/log[./]/u;

/** Values that records and pages share, and not sentences. */
const tags = [/: from memory$/u];

test("catalogue and firing hand over facts, and leave the English to templates/words", () => {
  const files = listSources().filter((file) => factual.test(file) && !reading.test(file));
  expect(files.length).toBeGreaterThan(50);
  const english = files.flatMap(readEnglish);
  expect(english.filter((found) => !tags.some((tag) => tag.test(found)))).toEqual([]);
});

test("English is found in quotes and between expressions, but not in what problems say", () => {
  const text = `const a = "just over";
const b = \`\${c} works out at \${d}\`;
const e = { message: "Look at this", hint: \`Look at \${f} again\` };
throw new RangeError("no such cone");
const g = "cone", h = \`cone \${i}\`;
const source = "Orton Foundation, from memory";`;
  expect(parseEnglish("x.ts", text)).toEqual(["x.ts:1: just over", "x.ts:2: … works out at …"]);
});
