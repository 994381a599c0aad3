/**
 * Archives at random whose records name one another, and faults at random in some of them. Ids are
 * few, so that what is faulty is named by others.
 */
import fc from "fast-check";
import type { TextFiles } from "./memory-archive.ts";

export interface WrittenRecord {
  readonly file: string;
  /** `tile EV-1`, as it is told of when it is left out. */
  readonly name: string;
  /** Lines of its front matter. */
  readonly lines: readonly string[];
  /** How its author slipped; some slips do no harm. */
  readonly slip: ((lines: readonly string[]) => readonly string[]) | null;
}

const sets = ["dawn", "night", "midday"];
const codes = ["A-1", "A-2", "A-3", "B-1", "B-2", "C-10", "C-11", "C-12"];
const glazes = ["soot", "mist", "liner", "fog", "half"];
const clays = ["buff", "red", "scrap"];
const firings = ["b-1", "g-1", "g-2"];

const of = <T>(...values: readonly T[]) => fc.constantFrom(...values);
const some = <T>(values: readonly T[]) => fc.subarray([...values]);

const slips = of<(lines: readonly string[]) => readonly string[]>(
  (lines) => [...lines, "colour of the sky: blue"],
  (lines) => [...lines, "layers: ["],
  (lines) => ["\tname: x", ...lines],
  (lines) => lines.map((line) => line.replace(/^(cone|name|layers):/u, "$1")),
  (lines) => lines.map((line) => line.replace("glaze: ", "glaze: un")),
  (lines) => lines.map((line) => line.replace("..", "-").replace("[", "")),
  () => [],
);

const glazeLines = of(
  ["bought: {maker: Oxbow}", "label: [not-for-food]"],
  ["ingredients: [{material: talc, parts: 40}, {material: silica, parts: 60}]"],
  ["ingredients: [{material: dust, parts: 40}, {material: talc, parts: 60}]"],
  ["bought: {maker: Oxbow}", "moves: runs", "cones: 5-6"],
);

const step = fc.oneof(
  of(...glazes, "7").map((glaze) => `{glaze: ${glaze}, coats: 2}`),
  of(...glazes).map((glaze) => `{glaze: ${glaze}, coats: 1, where: rim, over: [soot]}`),
  of("bisque", "glaze", ...firings).map((firing) => `{fired: ${firing}}`),
);

const tileLines = fc
  .tuple(
    fc.array(step, { minLength: 1, maxLength: 4 }),
    fc.option(of(...clays)),
    fc.boolean(),
    fc.option(of(...codes, "OLD-1")),
  )
  .map(([steps, clay, result, formerly]) => [
    `layers: [${steps.join(", ")}]`,
    ...(clay === null ? [] : [`clay: ${clay}`]),
    ...(result ? ["result: {surface: satin, faults: [running], again: no}"] : []),
    ...(formerly === null ? [] : [`formerly: [${formerly}]`]),
  ]);

const record = (file: string, name: string, lines: fc.Arbitrary<readonly string[]>) =>
  fc
    .tuple(lines, fc.option(slips, { freq: 6 }))
    .map(([own, slip]): WrittenRecord => ({ file, name, lines: own, slip }));

const setLines = (id: string) =>
  fc
    .tuple(fc.boolean(), fc.option(of(...clays)), of(...glazes), fc.option(of(...codes)))
    .map(([listed, clay, jar, control]) => [
      "name: A class",
      ...(listed ? [] : ["listed: no", `link: k7wq2mzt4hx3vb5nrd6yfp2cj${id.length}`]),
      ...(clay === null ? [] : [`defaults: {clay: ${clay}}`]),
      `jars: {7: ${jar}}`,
      ...(control === null ? [] : [`control: ${control}`]),
    ]);

const firingLines = fc
  .tuple(of("bisque", "glaze"), some(codes), of(2, 3, 4), fc.boolean())
  .map(([kind, load, day, ranged]) => [
    `on: 2026-10-0${day}`,
    `kind: ${kind}`,
    `cone: ${kind === "bisque" ? "06" : "6"}`,
    ...(load.length === 0 && !ranged
      ? []
      : [`tiles: {top: [${[...load, ...(ranged ? ["C-10..C-12"] : [])].join(", ")}]}`]),
  ]);

const clayLines = (id: string) =>
  of(["cones: 5-7"], ["cones: 04-1"]).map((cones) => [
    `name: ${id}`,
    ...(id === "scrap" ? ["reclaim: yes"] : cones),
  ]);

/** Every record of an archive, in the order of their files. */
export const anyRecords: fc.Arbitrary<readonly WrittenRecord[]> = fc
  .tuple(
    fc.tuple(...sets.map((id) => record(`tiles/${id}/set.md`, `set ${id}`, setLines(id)))),
    fc.tuple(
      ...codes.map((code, i) =>
        of("", ...sets.slice(0, 1 + (i % 3)).map((set) => `${set}/`)).chain((folder) =>
          record(`tiles/${folder}${code}.md`, `tile ${code}`, tileLines),
        ),
      ),
    ),
    fc.tuple(...firings.map((id) => record(`tiles/firings/${id}.md`, `firing ${id}`, firingLines))),
    fc.tuple(
      ...glazes.map((id) =>
        record(
          `recipes/glazes/${id}.md`,
          `glaze ${id}`,
          (id === "half"
            ? of(["blend: [{glaze: soot, parts: 1}, {glaze: fog, parts: 1}]", "by: volume"])
            : glazeLines
          ).map((lines) => [`name: ${id}`, "kind: glaze", ...lines]),
        ),
      ),
    ),
    fc.tuple(...clays.map((id) => record(`recipes/clays/${id}.md`, `clay ${id}`, clayLines(id)))),
    fc.tuple(
      ...["talc", "dust"].map((id) =>
        record(
          `recipes/materials/${id}.md`,
          `material ${id}`,
          of([`name: ${id}`, "formula: MgO·SiO2"], [`name: ${id}`, "formula: BaO·CO2"]),
        ),
      ),
    ),
  )
  .map((groups) => groups.flat());

/** The files of an archive; each tile has a photograph. */
export function filesOf(records: readonly WrittenRecord[]): TextFiles {
  return new Map([
    ["studio.yaml", "format: 1\nstudio: Eelgate Pottery\n"],
    ...records.map(({ file, lines, slip }) => {
      return [file, ["---", ...(slip?.(lines) ?? lines), "---", ""].join("\n")] as const;
    }),
    ...records
      .filter(({ name }) => name.startsWith("tile "))
      .map(({ file }) => [file.replace(/\.md$/u, ".jpg"), ""] as const),
  ]);
}

/**
 * The archive with some records taken out by hand: their files and photographs, and their names from
 * load lists, jars, defaults and control tiles, as somebody would who puts them aside.
 */
export function withoutByHand(
  records: readonly WrittenRecord[],
  names: ReadonlySet<string>,
): readonly WrittenRecord[] {
  const gone = (kind: string, ids: readonly string[]) =>
    ids.filter((id) => names.has(`${kind} ${id}`));
  const tiles = gone("tile", codes);
  const ends: Readonly<Record<string, readonly string[]>> = {
    jars: gone("glaze", glazes).map((id) => ` ${id}}`),
    defaults: gone("clay", clays).map((id) => ` ${id}}`),
    control: tiles.map((id) => `: ${id}`),
  };
  const edit = (line: string): readonly string[] => {
    const [field = ""] = line.split(":");
    if (field === "tiles") return editLoad(line, tiles);
    return ends[field]?.some((end) => line.endsWith(end)) ? [] : [line];
  };
  return records
    .filter(({ name }) => !names.has(name))
    .map((written) => ({ ...written, lines: written.lines.flatMap(edit) }));
}

function editLoad(line: string, gone: readonly string[]): readonly string[] {
  const all = (/\[(.*)\]/u.exec(line)?.[1] ?? "")
    .split(", ")
    .flatMap((code) => (code === "C-10..C-12" ? ["C-10", "C-11", "C-12"] : [code]));
  const left = all.filter((code) => !gone.includes(code));
  return left.length === 0 ? [] : [`tiles: {top: [${left.join(", ")}]}`];
}
