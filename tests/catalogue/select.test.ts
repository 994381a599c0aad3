import { describe, expect, it } from "vitest";
import { onlySet, withoutUnlistedSets } from "../../src/catalogue/select.ts";
import type { Archive } from "../../src/records/archive.ts";
import {
  archive,
  clay,
  coat,
  fired,
  firing,
  glaze,
  material,
  set,
  tile,
} from "../checks/support.ts";

const blend = (...parts: string[]) => ({ blend: parts.map((part) => ({ glaze: part, parts: 1 })) });
const weighed = (...parts: string[]) => ({
  ingredients: parts.map((part) => ({ material: part, parts: 1 })),
});

const whole: Archive = {
  ...archive({
    sets: [
      set("open", { teacher: "t1", jars: { 1: "in-jar" } }),
      set("hidden", {
        listed: false,
        link: "k7wq2mzt4hx3vb5nrd6yfp2cja",
        teacher: "t2",
        jars: { 1: "in-hidden-jar", 2: "in-jar" },
        codes: [["H-7", "H-8"]],
        defaults: { clay: "hidden-default" } as never,
      }),
    ],
    tiles: [
      tile("O-1", [coat("Shared"), fired("both")], {}, { set: "open", clay: "buff", maker: "m1" }),
      tile(
        "H-1",
        [coat("shared"), coat("secret"), fired("Both"), fired("hidden-load")],
        {},
        {
          set: "hidden",
          clay: "dark",
          maker: "m2",
        },
      ),
      tile("H-2", [coat("told")], {}, { set: "hidden", clay: "buff" }),
      tile("H-3", [coat("outer")], {}, { set: "hidden" }),
    ],
    glazes: [
      glaze("shared", weighed("silica", "common")),
      glaze("in-jar"),
      glaze("in-hidden-jar"),
      glaze("secret", weighed("silica", "rare")),
      glaze("told", { listed: true, ...weighed("rarer") }),
      glaze("outer", blend("inner", "shared")),
      glaze("inner"),
      glaze("unused"),
      glaze("unused-of-secret", blend("unused", "secret")),
      glaze("unused-of-shared", blend("shared", "unused")),
      glaze("kept", { listed: false }),
    ],
    materials: ["silica", "common", "rare", "rarer", "bare"].map((id) => material(id)),
    clays: ["buff", "dark", "hidden-default", "unused"].map((id) => clay(id)),
    firings: [
      {
        ...firing("both"),
        load: [
          { tile: "H-1", shelf: "top" },
          { tile: "O-1", shelf: "top" },
        ],
      },
      firing("hidden-load"),
      firing("reserved", { tiles: { top: [["H-8"]] } }),
      firing("to-come"),
    ],
  }),
  studio: {
    format: "1",
    studio: "Eelgate Pottery",
    makers: { m1: {}, m2: { name: "Odile" }, m3: {}, t1: {}, t2: {} },
  } as unknown as Archive["studio"],
};

const idsOf = ({ glazes, clays, firings, materials, tiles, sets, studio }: Archive) => ({
  sets: [...sets.keys()],
  tiles: [...tiles.keys()],
  glazes: [...glazes.keys()],
  clays: [...clays.keys()],
  materials: [...materials.keys()],
  firings: [...firings.keys()],
  makers: Object.keys(studio.makers ?? {}),
});

describe("the site for everyone", () => {
  it("leaves out what unlisted sets alone use, and keeps what nobody uses", () => {
    expect(idsOf(withoutUnlistedSets(whole))).toEqual({
      sets: ["open"],
      tiles: ["o-1"],
      glazes: ["shared", "in-jar", "told", "unused", "unused-of-shared"],
      clays: ["buff", "unused"],
      materials: ["silica", "common", "rarer", "bare"],
      firings: ["both", "to-come"],
      makers: ["m1", "t1"],
    });
  });

  it("loads a shared kiln with the listed tiles alone", () => {
    expect(withoutUnlistedSets(whole).firings.get("both")?.load).toEqual([
      { tile: "O-1", shelf: "top" },
    ]);
  });
});

describe("the site of an unlisted set", () => {
  it("holds what its own tiles are made of, its jars and its clay, and nothing else", () => {
    expect(idsOf(onlySet(whole, "HIDDEN"))).toEqual({
      sets: ["hidden"],
      tiles: ["h-1", "h-2", "h-3"],
      glazes: ["shared", "in-jar", "in-hidden-jar", "secret", "told", "outer", "inner"],
      clays: ["buff", "dark", "hidden-default"],
      materials: ["silica", "common", "rare", "rarer"],
      firings: ["both", "hidden-load"],
      makers: ["m2", "t2"],
    });
  });
});
