import { fc, test as propertyTest } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import {
  type Chosen,
  formatChoice,
  isChosen,
  kinds,
  nothingChosen,
  parseChoice,
  readChosen,
  toggle,
} from "../../../src/browser/beside/choice.ts";
import { bucketOf, countBuckets } from "../../../src/terms/bucket.ts";

const anyId = fc.stringMatching(/^[A-Z]{2}-\d{1,3}$/u);
const anyIds = fc.uniqueArray(anyId, { maxLength: 4 });
const anyChosen: fc.Arbitrary<Chosen> = fc.record({ tiles: anyIds, glazes: anyIds });
const anyKind = fc.constantFrom(...kinds);

describe("what is set side by side", () => {
  propertyTest.prop([anyKind, fc.uniqueArray(anyId, { minLength: 1, maxLength: 4 })])(
    "is read back from its address",
    (kind, ids) => {
      expect(parseChoice(formatChoice(kind, ids))).toEqual({ kind, ids });
    },
  );

  propertyTest.prop([anyChosen, anyKind, anyId])(
    "is never more than four, and what is chosen twice is taken away",
    (chosen, kind, id) => {
      const next = toggle(chosen, kind, id);
      expect(next[kind].length).toBeLessThanOrEqual(4);
      if (isChosen(chosen, kind, id)) expect(isChosen(next, kind, id)).toBe(false);
      else if (chosen[kind].length < 4) expect(toggle(next, kind, id)).toEqual(chosen);
      else expect(next).toBe(chosen);
    },
  );

  propertyTest.prop([fc.jsonValue()])("is read from whatever a browser kept", (kept) => {
    const { tiles, glazes } = readChosen(kept);
    for (const ids of [tiles, glazes])
      expect(ids.length <= 4 && ids.every((id) => typeof id === "string")).toBe(true);
  });

  test("is a tile once, however its code is written", () => {
    expect(parseChoice("?tiles=GR-1,gr-1,,%20GR-2")).toEqual({
      kind: "tiles",
      ids: ["GR-1", "GR-2"],
    });
    expect(parseChoice("?cone=6")).toBeUndefined();
    expect(toggle(toggle(nothingChosen, "tiles", "GR-1"), "tiles", "gr-1")).toEqual(nothingChosen);
  });
});

propertyTest.prop([anyId, fc.nat({ max: 20_000 })])(
  "each is in one of the files, whatever case it is asked for in",
  (id, things) => {
    const buckets = countBuckets(things, 24);
    expect(bucketOf(id, buckets)).toBeLessThan(buckets);
    expect(bucketOf(id.toLowerCase(), buckets)).toBe(bucketOf(id, buckets));
    expect(buckets * 24).toBeGreaterThanOrEqual(things);
  },
);
