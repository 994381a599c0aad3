/** Commands as they are typed: what a shell makes of them is what was meant. */
import { execFileSync } from "node:child_process";
import { fc, test as propertyTest } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { quoteForShell, typedCommand } from "../../src/terms/typed-command.ts";

const npx = typedCommand({ program: "npx tilebook", shell: "posix", archive: null });

describe("a command as it is typed", () => {
  it("begins as this Tilebook was started, and names its files", () => {
    expect(npx("check --fix")).toBe("npx tilebook check --fix");
    expect(npx("scrub", ["tiles/TB-1.jpg", "tiles/TB 2.jpg"])).toBe(
      "npx tilebook scrub tiles/TB-1.jpg 'tiles/TB 2.jpg'",
    );
  });

  it("names the archive where it is another folder than the reader's", () => {
    const elsewhere = typedCommand({
      program: "npm run --silent tilebook --",
      shell: "posix",
      archive: "../our tests",
    });
    expect(elsewhere("scrub", ["tiles/a.jpg"])).toBe(
      "npm run --silent tilebook -- scrub --archive '../our tests' tiles/a.jpg",
    );
  });

  it("names no file where one of them cannot be quoted for every shell of Windows", () => {
    const windows = typedCommand({ program: "npx tilebook", shell: "windows", archive: null });
    expect(windows("scrub", ["tiles/TB 2.jpg"])).toBe('npx tilebook scrub "tiles/TB 2.jpg"');
    expect(windows("scrub", ["tiles/%PATH%.jpg", "tiles/TB 2.jpg"])).toBe("npx tilebook scrub");
  });
});

describe("a quoted word", () => {
  propertyTest.prop([fc.string({ unit: "binary", minLength: 1, maxLength: 40 })], { numRuns: 150 })(
    "is what a POSIX shell hands on, letter by letter",
    (word) => {
      fc.pre(!word.includes("\0"));
      const quoted = quoteForShell(word, "posix") ?? "";
      const handedOn = execFileSync("sh", ["-c", `printf %s ${quoted}`], { encoding: "utf8" });
      expect(handedOn).toBe(word.startsWith("-") ? `./${word}` : word);
    },
  );

  it.each(["a%b", "a$b", "a`b", 'a"b', "a“b", "a\nb", "a!b", "a^b", "C:\\our tests\\"])(
    "is not to be had on Windows for %j, which some shell there reads otherwise",
    (word) => {
      expect(quoteForShell(word, "windows")).toBeUndefined();
    },
  );
});
