import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checks, rules, runChecks } from "../../src/checks/all.ts";
import { commonPractice } from "../../src/checks/check.ts";
import { findLongWaiting } from "../../src/checks/long-waiting.ts";
import { notesByFile } from "../../src/checks/notes.ts";
import { heatOfFirings } from "../../src/firing/of-archive.ts";
import { anyArchive } from "./any-archive.ts";
import { archive, coat, cone, cones, fired, firing, glaze, nothing, set, tile } from "./support.ts";

describe("the table of checks", () => {
  it("names every check once, in kebab-case", () => {
    const names = checks.map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
    for (const name of names) expect(name).toMatch(/^[a-z]+(-[a-z]+)*$/u);
  });

  it("explains each in one sentence", () => {
    for (const { explains } of checks) expect(explains).toMatch(/^[A-Z][^.]*\.$/u);
  });

  it("has errors first; what rests on practice alone is never an error", () => {
    const severities = rules.map(({ severity }) => severity);
    expect(severities).toEqual(severities.toSorted());
    for (const { source, severity } of checks)
      if (source === commonPractice) expect(severity).toBe("warning");
  });
});

describe("any archive", () => {
  it("is checked without a stumble, and every problem says what, where and how to mend it", () => {
    const known = new Map(checks.map((check) => [check.name, check]));
    fc.assert(
      fc.property(anyArchive, (any) => {
        const extra = { ...nothing, heats: heatOfFirings(any) };
        const problems = [...runChecks(any, extra), ...findLongWaiting(any, "2027-01-01")];
        for (const { code, severity, file, message, hint } of problems) {
          expect(known.get(code)?.severity).toBe(severity);
          expect(file).toMatch(/\.(md|csv)$/u);
          expect(message).not.toMatch(/undefined|null|NaN|\[object|\.$/u);
          expect(hint).toMatch(/[.)]$/u);
          expect(hint).not.toMatch(/undefined|null|NaN|\[object/u);
        }
      }),
    );
  });

  it("gives the same problems twice, and is left as it was", () => {
    fc.assert(
      fc.property(anyArchive, (any) => {
        const before = structuredClone(any);
        const problems = runChecks(any, nothing);
        expect(runChecks(any, nothing)).toEqual(problems);
        expect(any).toEqual(before);
      }),
    );
  });
});

describe("notes for pages", () => {
  const firings = [firing("g-7", { cone: cone("7") })];
  const glazes = [glaze("soot", { name: "Soot", cones: cones("5-6") })];
  const tiles = [
    tile("TB-1", [coat("soot"), fired("g-7")]),
    tile("TB-2", [coat("soot", { dried: "wet-on-wet" }), fired("g-7")]),
    tile("TB-3", [coat("soot")]),
  ];
  const sets = [set("thursday", { codes: [["TB-1", "TB-9"]], control: "TB-9" })];
  const problems = runChecks(archive({ tiles, glazes, firings, sets }), nothing);
  const notes = notesByFile(problems);

  it("are the practice notes of each record, in the order of the checks", () => {
    const codes = [...notes].map(([file, own]) => [file, own.map(({ code }) => code)]);
    expect(codes).toEqual([
      ["tiles/TB-1.md", ["hotter-than-range"]],
      ["tiles/TB-2.md", ["hotter-than-range", "wet-on-wet"]],
    ]);
  });

  it("say that they rest on practice alone", () => {
    for (const { hint } of [...notes.values()].flat())
      expect(hint).toContain("Common practice, no published source.");
  });

  it("leave out what is the archive's own business", () => {
    expect(problems.map(({ code }) => code)).toContain("code-of-another-set");
    expect(problems.map(({ code }) => code)).toContain("control-missing");
  });
});
