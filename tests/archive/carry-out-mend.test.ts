/** Mends on disk, and which of them are sure. */
import fs from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { carryOutMend } from "../../src/archive/carry-out-mend.ts";
import type { Mend, WriteMend } from "../../src/records/mend.ts";
import type { Problem } from "../../src/records/problem.ts";
import { keepSureMends, mendsOf } from "../../src/records/sure-mends.ts";
import { record, temporaryFolder, writeFiles } from "./archives.ts";

describe("a field that is written", () => {
  const mend: WriteMend = {
    does: "write",
    file: "tiles/evening/set.md",
    kind: "set",
    path: ["link"],
    value: "q7mzk2v9xw4trh6npb3cyd",
  };
  const before = record("name: Evening # on Tuesdays\nlisted: no", "Notes.");

  function carryOut(asRead: string) {
    const dir = temporaryFolder();
    writeFiles(dir, { [mend.file]: before });
    const carriedOut = carryOutMend(dir, mend, new Map([[mend.file, asRead]]));
    return { carriedOut, after: fs.readFileSync(path.join(dir, mend.file), "utf8") };
  }

  it("leaves every other letter alone", () => {
    expect(carryOut(before)).toEqual({
      carriedOut: { ok: true },
      after: record(
        "name: Evening # on Tuesdays\nlisted: no\nlink: q7mzk2v9xw4trh6npb3cyd",
        "Notes.",
      ),
    });
  });

  it("is not written into a file that was changed meanwhile", () => {
    expect(carryOut(`${before}More.`)).toEqual({
      carriedOut: { ok: false, inTheWay: { because: "changed", file: mend.file } },
      after: before,
    });
  });
});

describe("mends of one archive", () => {
  const asking = (mend: Mend): Problem => ({
    ...{ file: "x", path: [], severity: "error", code: "c", message: "m", hint: "h" },
    mend,
  });
  const rename = (from: string, to: string): Mend => ({
    does: "rename",
    renamings: [{ from, to }],
  });

  it("are not sure where two want one name, or one file", () => {
    const problems = [
      asking(rename("a b.jpg", "A-B.jpg")),
      asking(rename("a_b.jpg", "a-b.jpg")),
      asking(rename("c.jpg", "d.jpg")),
      asking(rename("c.jpg", "e.jpg")),
      asking(rename("f.jpg", "g.jpg")),
    ];
    expect(mendsOf(keepSureMends(problems))).toEqual([rename("f.jpg", "g.jpg")]);
  });

  it("are carried out once where several problems ask for one", () => {
    const problems = [asking(rename("a.jpg", "b.jpg")), asking(rename("a.jpg", "b.jpg"))];
    expect(mendsOf(keepSureMends(problems))).toEqual([rename("a.jpg", "b.jpg")]);
  });
});
