/** What holds of every archive, however many faults it has. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { notesByFile } from "../../src/checks/notes.ts";
import { isError, withoutFaulty } from "../../src/commands/build/sound-part.ts";
import { anyRecords, filesOf, withoutByHand } from "./any-faulty-archive.ts";
import { asTyped, examine, pagesOf, withoutNotice } from "./memory-archive.ts";

test("what is published of a faulty archive is what would be, were its faulty records taken out by hand", () => {
  fc.assert(
    fc.property(anyRecords, (records) => {
      const examined = examine(filesOf(records));
      const sound = withoutFaulty(examined, asTyped);
      if ("inTheWay" in sound) throw new Error("Everything was in the way.");
      const names = new Set(sound.leftOut.map(({ kind, id }) => `${kind} ${id}`));
      const left = withoutByHand(records, names);
      // Where every record is faulty, an archive of none is told as a fault of its own.
      fc.pre(left.length > 0);
      const byHand = examine(filesOf(left));
      expect(byHand.problems.filter(isError)).toEqual([]);
      const expected = withoutFaulty(byHand, asTyped);
      if ("inTheWay" in expected) throw new Error("What is left is not sound.");
      const pages = new Map(pagesOf(examined, sound));
      const waiting = pages.get("waiting.html");
      pages.delete("waiting.html");
      expect(waiting !== undefined).toBe(
        [...pages.values()].some((page) => page !== withoutNotice(page)),
      );
      const wanted = pagesOf(byHand, expected);
      expect([...pages.keys()]).toEqual([...wanted.keys()]);
      for (const [path, page] of pages) expect(withoutNotice(page), path).toBe(wanted.get(path));
    }),
    { numRuns: 25 },
  );
}, 240_000);

test("every error belongs to a record that is named as left out", () => {
  fc.assert(
    fc.property(anyRecords, (records) => {
      const examined = examine(filesOf(records));
      const sound = withoutFaulty(examined, asTyped);
      if ("inTheWay" in sound) throw new Error("Everything was in the way.");
      const told = sound.leftOut.flatMap(({ faults }) => faults);
      for (const error of examined.problems.filter(isError)) expect(told).toContainEqual(error);
      for (const { faults, because } of sound.leftOut)
        expect(faults.length > 0 || because !== null).toBe(true);
      expect(records.length).toBe(sound.leftOut.length + recordsIn(sound.archive));
    }),
    { numRuns: 25 },
  );
}, 120_000);

test("what is published of a tile or a glaze is what would be, were all slips mended", () => {
  fc.assert(
    fc.property(anyRecords, (records) => {
      // Of a load list that was wiped out nobody can know who stood in it.
      fc.pre(
        records.every(({ name, slip }) => !name.startsWith("firing") || slip?.([""]).length !== 0),
      );
      const sound = withoutFaulty(examine(filesOf(records)), asTyped);
      const mended = withoutFaulty(
        examine(filesOf(records.map((record) => ({ ...record, slip: null })))),
        asTyped,
      );
      if ("inTheWay" in sound || "inTheWay" in mended) throw new Error("All was in the way.");
      const [notes, notesMended] = [notesByFile(sound.problems), notesByFile(mended.problems)];
      for (const [key, tile] of sound.archive.tiles) {
        const whole = mended.archive.tiles.get(key);
        if (!whole) continue;
        expect(tile).toEqual(whole);
        expect(notes.get(tile.file)).toEqual(notesMended.get(tile.file));
      }
      for (const [key, glaze] of sound.archive.glazes) {
        if (!mended.archive.glazes.has(key)) continue;
        expect(glaze).toEqual(mended.archive.glazes.get(key));
        expect(sound.chemistry.get(key)).toEqual(mended.chemistry.get(key));
      }
    }),
    { numRuns: 40 },
  );
}, 240_000);

function recordsIn({
  studio: _,
  ...kinds
}: Parameters<typeof withoutFaulty>[0]["read"]["archive"] & object) {
  return Object.values(kinds).reduce((sum, records) => sum + records.size, 0);
}
