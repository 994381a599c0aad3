import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { compareFields } from "../../src/receive/compare-fields.ts";
import type { SourceMap } from "../../src/records/read.ts";

const layers = [{ glaze: "soot", coats: "2" }];
const here: SourceMap = { maker: "m01", layers, result: { surface: "satin" } };

const compare = (handedIn: SourceMap, archive = here, defaults: SourceMap = {}) =>
  compareFields(archive, handedIn, defaults);

describe("what was handed in", () => {
  test("adds nothing where it says the same, says less, or says it in another form", () => {
    for (const same of [
      here,
      { layers },
      { layers: [{ coats: "2", glaze: "soot" }], result: [{ surface: ["satin"] }] },
    ])
      expect(compare(same)).toEqual({ fields: [], byHand: [], areLayersOther: false });
  });

  test("adds nothing that the tile has from its set", () => {
    expect(compare({ clay: "buff" }, here, { clay: "buff" }).fields).toEqual([]);
    expect(compare({ clay: "white" }, here, { clay: "buff" }).fields).toEqual([
      { path: ["clay"], value: "white", was: "buff" },
    ]);
  });

  test("adds what the archive says nothing of, field by field of a result", () => {
    expect(
      compare({ result: { surface: "satin", faults: ["crazing"] }, fate: "stuck" }).fields,
    ).toEqual([
      { path: ["result", 0, "faults"], value: ["crazing"], was: null },
      { path: ["fate"], value: "stuck", was: null },
    ]);
  });

  test("tells what the archive says otherwise apart from what is new", () => {
    expect(compare({ maker: "m02", result: { surface: ["gloss", "matte"] } }).fields).toEqual([
      { path: ["maker"], value: "m02", was: "m01" },
      { path: ["result", 0, "surface"], value: ["gloss", "matte"], was: "satin" },
    ]);
  });

  test("adds a result of another firing, and a later look of another day, behind the others", () => {
    const archive = {
      ...here,
      result: { after: "g-1", surface: "satin" },
      later: [{ on: "2026-12-01", faults: "crazing" }],
    };
    const handedIn = {
      result: [{ after: "g-2", surface: "gloss" }],
      later: [
        { on: "2027-01-01", faults: "crazing" },
        { on: "2026-12-01", run: "2" },
      ],
    };
    expect(compare(handedIn, archive).fields).toEqual([
      { path: ["result", 1, "after"], value: "g-2", was: null },
      { path: ["result", 1, "surface"], value: "gloss", was: null },
      { path: ["later", 1, "on"], value: "2027-01-01", was: null },
      { path: ["later", 1, "faults"], value: "crazing", was: null },
      { path: ["later", 0, "run"], value: "2", was: null },
    ]);
  });

  test("leaves to people what no small edit can bring together", () => {
    expect(compare({ "leach-tests": [{ on: "2026-12-01" }] }).byHand).toEqual(["leach-tests"]);
  });

  test("may have other layers, which no comparison brings together", () => {
    expect(compare({ layers: [{ glaze: "soot" }] })).toEqual({
      ...{ fields: [], byHand: [], areLayersOther: true },
    });
  });

  test("compared with itself adds nothing, whatever it says", () => {
    const word = fc.constantFrom("a", "b", "m01");
    const fields = fc.record(
      {
        maker: word,
        fate: word,
        layers: fc.array(fc.record({ glaze: word }), { minLength: 1 }),
        result: fc.oneof(
          fc.record({ surface: word }),
          fc.array(fc.record({ after: word, run: word })),
        ),
        later: fc.array(fc.record({ on: word, faults: fc.array(word) })),
        photo: fc.record({ alt: word }),
      },
      { requiredKeys: ["layers"] },
    );
    fc.assert(
      fc.property(fields, (record) => {
        const unique = withoutRepeats(record as SourceMap);
        expect(compare(unique, unique)).toEqual({ fields: [], byHand: [], areLayersOther: false });
      }),
    );
  });
});

/** Two results of one firing, or two looks on one day, are nobody's record. */
function withoutRepeats(record: SourceMap): SourceMap {
  const only = (list: unknown, key: string) =>
    Array.isArray(list)
      ? list.filter((one, at) => list.findIndex((other) => other[key] === one[key]) === at)
      : list;
  return {
    ...record,
    result: only(record.result, "after"),
    later: only(record.later, "on"),
  } as SourceMap;
}
