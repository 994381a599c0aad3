import { describe, expect, test } from "vitest";
import type { Lab } from "../../../../src/colour/cielab.ts";
import {
  aloneWords,
  findingSentence,
  tableCaption,
  whatVaries,
} from "../../../../templates/words/colour/glaze-alone.ts";
import {
  type Alone,
  alone,
  type Coloured,
  sootOf,
} from "../../../catalogue/colours/colour-support.ts";

const blue: Lab = [45, 0, -35];
const brown: Lab = [45, 12, 25];
const dark: Lab = [30, 8, 18];

/** Put on in a way that nobody wrote down. */
const somehow = { coat: { by: null } };

type Tested = readonly [code: string, about: Alone, lab: Lab];

/** What is said of soot on these tiles, with two of another glaze that were made alike. */
function sayings(...tiles: readonly Tested[]): readonly string[] {
  const { onClays, colourFindings } = sootOf(
    ...tiles.map(([code, about, lab]) => [alone(code, about), lab] as const),
    [alone("K-1", { glaze: "kelp" }), [50, 0, 0]],
    [alone("K-2", { glaze: "kelp" }), [50.2, 0, 0]],
  );
  return colourFindings.map((finding) => findingSentence(finding, whatVaries(onClays)));
}

describe("a finding is told", () => {
  test("by the names of both colours, and by how far apart they are", () => {
    expect(sayings(["A", { coats: 1 }, brown], ["B", { coats: 3 }, blue])).toEqual([
      "From 1 to 3 coats on Buff at cone 6 it goes from brown to blue; 36 apart.",
    ]);
    expect(sayings(["A", { cone: "4" }, brown], ["B", { cone: "8" }, dark])).toEqual([
      "From cone 4 to cone 8 with 2 coats on Buff it stays brown, but darker; 13 apart.",
    ]);
    expect(sayings(["A", { clay: "buff" }, brown], ["B", { clay: "red" }, blue])).toEqual([
      "On Red instead of Buff, with 2 coats at cone 6 it is blue, not brown; 36 apart.",
    ]);
    expect(
      sayings(["A", { cone: "10" }, brown], ["B", { cone: "10", atmosphere: "reduction" }, blue]),
    ).toEqual([
      "In reduction instead of in oxidation, with 2 coats on Buff at cone 10 it is blue, not brown; 36 apart.",
    ]);
  });

  test("as none where it is no more than tiles made alike differ", () => {
    expect(sayings(["A", { coats: 1 }, brown], ["B", { coats: 3 }, brown])).toEqual([
      "From 1 to 3 coats on Buff at cone 6: no more than tiles made alike differ (0 apart).",
    ]);
  });

  test("with the way and the texture, where the tiles of one glaze have several", () => {
    const dipped: Tested = ["C", { coats: 1, coat: { by: "dip" }, texture: "combed" }, blue];
    expect(sayings(["A", { coats: 1 }, brown], ["B", { coats: 3 }, blue], dipped)).toEqual([
      "From 1 to 3 coats, brushed, over smooth clay, on Buff at cone 6 it goes from brown to blue; 36 apart.",
    ]);
  });

  test("with the tiles that should be the same and are not", () => {
    expect(
      sayings(["A", { coats: 3, ...somehow }, brown], ["B", { coats: 3, ...somehow }, dark]),
    ).toEqual([
      "With 3 coats on Buff at cone 6 it came out brown both times, and darker on B than on A; 13 apart. Something not in this table made the difference. Not recorded: how it was put on.",
    ]);
    expect(
      sayings(
        ["A", { coats: 1, ...somehow }, blue],
        ["B", { coats: 3, ...somehow }, brown],
        ["C", { coats: 3, faults: ["crazing"], ...somehow }, blue],
      )[0],
    ).toBe(
      "From 1 to 3 coats on Buff at cone 6: 36 apart, but tiles in one cell of the table differ as much. Not recorded: how it was put on.",
    );
  });

  test("as the kiln's cooling where nothing else differs, and never as chance", () => {
    expect(
      sayings(["A", { coats: 3 }, brown], ["B", { coats: 3, loads: ["6-slow"] }, dark]),
    ).toEqual([
      "Cooled slowly instead of left to cool, with 3 coats on Buff at cone 6 it is brown, but darker; 13 apart.",
    ]);
  });

  test("with the cooling between commas where it varies", () => {
    const slow = (coats: number) => ({ coats, loads: ["6-slow"] });
    expect(
      sayings(["A", slow(1), brown], ["B", slow(3), blue], ["C", { coats: 3 }, brown])[0],
    ).toBe(
      "From 1 to 3 coats, cooled slowly, on Buff at cone 6 it goes from brown to blue; 36 apart.",
    );
  });

  test("with what nobody wrote down, which may have made the difference", () => {
    expect(
      sayings(["A", { coats: 1, ...somehow }, brown], ["B", { coats: 3, ...somehow }, blue]),
    ).toEqual([
      "From 1 to 3 coats on Buff at cone 6 it goes from brown to blue; 36 apart. Not recorded: how it was put on.",
    ]);
  });

  test("of no two tiles of which one says how it was put on and the other does not", () => {
    expect(sayings(["A", { coats: 1, ...somehow }, brown], ["B", { coats: 3 }, blue])).toEqual([]);
  });
});

describe("under a swatch", () => {
  const under = (about: Alone) => {
    const { onClays } = sootOf([alone("A", about), brown]);
    const [first] = onClays.flatMap(({ measured }) => measured);
    return first && aloneWords(first, { ways: true, texture: true, fire: true, cooling: true });
  };

  test("stands what else its colour depends on", () => {
    expect(under({})).toBe("brushed");
    expect(
      under({ texture: "combed", faults: ["crawling"], loads: ["4-oxidation", "6-oxidation"] }),
    ).toBe("brushed; combed clay; crawling; fired again");
  });

  test("stands why it is under no number of coats", () => {
    expect(under({ coats: null })).toBe("coats not recorded; brushed");
    expect(under({ coat: { where: ["top"], coats: null } })).toBe("at the top; brushed");
    expect(under({ coat: { cover: "dense", coats: null, by: "trail" } })).toBe(
      "dense cover; trailed",
    );
  });
});

test("the caption names the way once where all went on in one way", () => {
  const caption = (...tiles: readonly Coloured[]) => {
    const { onClays } = sootOf(...tiles);
    return tableCaption("Soot", onClays, whatVaries(onClays));
  };
  expect(caption([alone("A"), brown])).toBe(
    "Soot as each tile measured, all brushed: cones across, coats down.",
  );
  expect(caption([alone("A"), brown], [alone("B", { coat: { by: "dip" } }), brown])).toBe(
    "Soot as each tile measured: cones across, coats down.",
  );
});
