/**
 * Archives of any size, made in memory: sets, loads, glazes, blends, clays and makers grow with the
 * tiles, as they do in a studio that goes on for years. No file is read, and no chance plays a part.
 */
import type { Lab } from "../../src/colour/cielab.ts";
import type { FoundFiles } from "../../src/reader/found-files.ts";
import type { AllRecords, Records } from "../../src/reader/read-records.ts";
import type { Filed } from "../../src/records/archive.ts";
import { ways } from "../../src/terms/choices.ts";
import { idKey } from "../../src/terms/ids.ts";
import { cone, cones } from "../checks/support.ts";

/** Records as they are read, before anything that they name is found. */
export interface UnlinkedArchive {
  readonly records: AllRecords;
  readonly files: FoundFiles;
  /** A colour for most photographs, by the picture's file. */
  readonly colours: ReadonlyMap<string, Lab>;
}

/** How many tiles there are to one of each: a class of thirty, a kiln of twenty-five. */
const tilesTo = { set: 30, load: 25, glaze: 14, maker: 20, material: 100 } as const;

/** A studio does not buy more clays because it makes more tiles; every glaze is set beside each. */
const clays = 12;

interface Sizes {
  readonly tiles: number;
  readonly sets: number;
  readonly loads: number;
  readonly glazes: number;
  readonly makers: number;
  readonly materials: number;
}

/** An archive of so many tiles. */
export function makeLargeArchive(tiles: number): UnlinkedArchive {
  const per = (of: number) => Math.max(3, Math.ceil(tiles / of));
  const sizes: Sizes = {
    tiles,
    sets: per(tilesTo.set),
    loads: per(tilesTo.load),
    glazes: per(tilesTo.glaze),
    makers: per(tilesTo.maker),
    materials: per(tilesTo.material),
  };
  const studio = studioOf(sizes);
  const tileRecords = listOf(tiles, (i) => filed(folderOf(i), codeOf(i), tileOf(i, sizes)));
  const sets = listOf(sizes.sets, (i) => ({
    ...filed(`tiles/set-${i}`, `set-${i}`, setOf(i, sizes)),
    file: `tiles/set-${i}/set.md`,
  }));
  const records = {
    studio,
    studioPartly: studio,
    sets: recordsOf(sets),
    tiles: recordsOf(tileRecords),
    firings: recordsOf([
      filed("tiles/firings", "bisque-1", { kind: "bisque", on: "2020-01-01", cone: cone("06") }),
      ...listOf(sizes.loads, (i) => filed("tiles/firings", `load-${i}`, loadOf(i, sizes))),
    ]),
    glazes: recordsOf(
      listOf(sizes.glazes, (i) => filed("recipes/glazes", `Glaze-${i}`, glazeOf(i, sizes))),
    ),
    clays: recordsOf(listOf(clays, (i) => filed("recipes/clays", `clay-${i}`, clayOf(i)))),
    materials: recordsOf(
      listOf(sizes.materials, (i) => filed("recipes/materials", `stock-${i}`, materialOf(i))),
    ),
    pages: recordsOf([]),
    removed: new Map(),
    problems: [],
  } as unknown as AllRecords;
  return {
    records,
    files: filesOf(tileRecords, sets),
    colours: new Map(
      tileRecords.flatMap(({ file }, i) => (i % 5 === 0 ? [] : [[picture(file), colourOf(i)]])),
    ),
  };
}

function listOf<T>(count: number, make: (i: number) => T): readonly T[] {
  return Array.from({ length: count }, (_, i) => make(i));
}

function filed(folder: string, id: string, record: unknown): Filed<unknown> {
  return {
    id,
    file: `${folder}/${id}.md`,
    record,
    notes: `Notes about ${id}, in two or three words.`,
  };
}

function recordsOf(list: readonly Filed<unknown>[]): Records<unknown> {
  return {
    ids: new Map(list.map(({ id }) => [idKey(id), id])),
    read: new Map(list.map((one) => [idKey(one.id), one])),
    partly: new Map(),
  };
}

function filesOf(tiles: readonly Filed<unknown>[], sets: readonly Filed<unknown>[]): FoundFiles {
  const recordOf = (kind: "tile" | "set") => (one: Filed<unknown>) => ({
    kind,
    id: one.id,
    file: one.file,
    folder: one.file.slice(0, one.file.lastIndexOf("/")),
  });
  return {
    studio: "studio.yaml",
    records: [...sets.map(recordOf("set")), ...tiles.map(recordOf("tile"))],
    pictures: tiles.map(({ file }) => ({
      file: picture(file),
      folder: file.slice(0, file.lastIndexOf("/")),
      name: picture(file).slice(file.lastIndexOf("/") + 1),
    })),
    logs: [],
    problems: [],
  };
}

function picture(file: string): string {
  return file.replace(/md$/u, "jpg");
}

function codeOf(i: number): string {
  return `TB-${String(i).padStart(5, "0")}`;
}

/** One tile in ten is in no set. */
function folderOf(i: number): string {
  return i % 10 === 9 ? "tiles" : `tiles/set-${Math.floor(i / tilesTo.set)}`;
}

function studioOf({ makers }: Sizes) {
  const shown = ["yes", "initials", "no"] as const;
  return {
    format: "1",
    studio: "Eelgate Pottery",
    makers: Object.fromEntries(
      listOf(makers, (i) => [
        `m${i}`,
        { name: `Rowan K${"e".repeat(i % 9)}l${i}`, shown: shown[i % 3] },
      ]),
    ),
  };
}

/** Every eighth set is not listed. */
function setOf(i: number, { makers }: Sizes) {
  const first = i * tilesTo.set;
  return {
    name: `Class ${i}`,
    teacher: `m${i % makers}`,
    begins: day(i),
    ends: day(i + 60),
    defaults: { clay: `clay-${i % 3}` },
    codes: [listOf(tilesTo.set, (j) => codeOf(first + j)).filter((_, j) => (first + j) % 10 !== 9)],
    control: codeOf(first),
    ...(i % 8 === 7 ? { listed: false, link: `q${i}w8e7r6t5y4u3i2o1p9a8s7d6f5` } : {}),
  };
}

function day(i: number): string {
  return new Date(Date.UTC(2021, 0, 1 + (i % 1500))).toISOString().slice(0, 10);
}

/** A studio's programmes are few, and used again and again. */
function loadOf(i: number, sizes: Sizes) {
  const slot = i % 8;
  const aim = ["6", "04", "8", "10"][slot % 4] ?? "6";
  const inLoad = listOf(tilesTo.load, (j) => i * tilesTo.load + j).filter(
    (tile) => tile < sizes.tiles,
  );
  const listed = inLoad.filter((tile) => tile % 3 === 0).map(codeOf);
  return {
    kind: "glaze",
    on: day(100 + i),
    kiln: `Kiln ${i % 5}`,
    heatedBy: "electric",
    atmosphere: slot === 3 ? "reduction" : "oxidation",
    cone: cone(aim),
    witness: { top: { read: "cone", cone: cone(aim) } },
    schedule: [
      { to: 600, rate: 100 },
      { to: [1222, 1060, 1250, 1285][slot % 4], rate: 60 + slot, hold: 10 },
      ...(slot > 3 ? [{ to: 900, rate: -50 }] : []),
    ],
    ...(i % 2 === 0 ? { tiles: { top: [listed.slice(0, 4)], bottom: [listed.slice(4)] } } : {}),
  };
}

/** Of ten glazes two are bought, six are weighed out, and two are blended, in chains of a few. */
function glazeOf(i: number, sizes: Sizes) {
  const base = {
    name: `Glaze ${i}`,
    kind: i % 25 === 24 ? "slip" : "glaze",
    cones: cones("04-10"),
  };
  if (i % 10 < 2) return { ...base, bought: { maker: "Oxbow", colour: `No. ${i}` } };
  if (i % 10 > 7)
    return {
      ...base,
      blend: [7, 6].map((back) => ({
        glaze: `glaze-${i - (i % 10) + back + (i % 10 === 9 ? 1 : 0)}`,
        parts: 1,
      })),
    };
  const stock = `stock-${i % sizes.materials}`;
  const weighed = ["potash-feldspar", "silica", "whiting", "kaolin", stock];
  return {
    ...base,
    ingredients: weighed.map((material, j) => ({ material, parts: 5 + ((i * (j + 3)) % 40) })),
    additions: [
      { material: ["red-iron-oxide", "copper-carbonate", "rutile"][i % 3], parts: 1 + (i % 8) },
    ],
  };
}

function clayOf(i: number) {
  const colour = ["buff", "white", "brick red", "grey"][i % 4];
  return {
    name: `Clay ${i}`,
    colour,
    cones: cones("04-10"),
    expansion: { mean: 6 + (i % 7) / 5, between: [20, 500] },
  };
}

function materialOf(i: number) {
  return {
    name: `Stock ${i}`,
    formula: ["CaCO3", "SiO2", "ZnO", "Al2O3"][i % 4],
    price: 2 + (i % 5),
  };
}

function tileOf(i: number, sizes: Sizes) {
  const upper = (i * 7) % sizes.glazes;
  const isAlone = i % 3 !== 0;
  const load = Math.floor(i / tilesTo.load) % sizes.loads;
  const coat = (glaze: number, coats: number) => ({
    step: "glaze",
    glaze: `glaze-${glaze}`,
    coats,
    by: ways[(i + glaze) % 3],
  });
  const isListed = i % 3 === 0 && load % 2 === 0;
  return {
    ...(i % 10 === 9 ? { clay: `Clay-${i % clays}` } : {}),
    maker: `M${i % sizes.makers}`,
    glazed: day(60 + load),
    layers: [
      { step: "fired", fired: "bisque-1" },
      coat(upper, 1 + (i % 3)),
      ...(isAlone ? [] : [coat((upper + 3) % sizes.glazes, 2)]),
      ...(isListed ? [] : [{ step: "fired", fired: `load-${load}`, shelf: "top" }]),
    ],
    ...(i % 20 === 19 ? {} : { result: [resultOf(i)] }),
    ...(i % 50 === 0 ? { formerly: [`Old-${i}`] } : {}),
  };
}

function resultOf(i: number) {
  return {
    surface: [["gloss", "satin", "matte"][i % 3]],
    faults: [["none", "crawling", "pinholing", "crazing"][i % 4]],
    again: ["yes", "changed", "no"][i % 3],
    nextTime: i % 4 === 0 ? "Thinner at the rim, and dry it longer." : undefined,
  };
}

function colourOf(i: number): Lab {
  return [20 + ((i * 13) % 60), ((i * 7) % 40) - 20, ((i * 11) % 40) - 20];
}
