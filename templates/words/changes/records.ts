/** Records of other kinds in a request: what changed of them, and which tiles that concerns. */
import type {
  Changes,
  GoneRecord,
  RecordChange,
  UntoldRecord,
} from "../../../src/changes/types.ts";
import { addTo } from "../../../src/terms/index-by.ts";
import { count, listed } from "../english/numbers.ts";
import {
  type Block,
  code,
  type Item,
  type Line,
  list,
  paragraph,
  sentence,
  shortList,
  strong,
} from "./summary.ts";
import { allCodes, fieldLine, fileLine } from "./values.ts";

const kinds: Readonly<Record<RecordChange["kind"] | GoneRecord["kind"], string>> = {
  clay: "clay",
  firing: "firing",
  glaze: "glaze",
  material: "material",
  page: "page",
  set: "set",
  studio: "studio",
  tile: "tile",
};

export function recordItem(record: RecordChange): Item {
  const { kind, id, name, what, fields } = record;
  const called = kind === "studio" ? "studio.yaml" : `The ${kinds[kind]} ${name}`;
  const heading = `${called}${name === id || kind === "studio" ? "" : `, ${id}`} (${what === "added" ? "new" : "changed"})`;
  return {
    ...{ name: called, heading, least: [] },
    blocks: [...list(fields.map(fieldLine)), ...concerned(record)],
  };
}

function concerned({ kind, tiles, glazes }: RecordChange): readonly Block[] {
  const inGlazes = glazes.length > 0 ? `It is in ${listed(glazes)}. ` : "";
  if (tiles.length === 0) return inGlazes === "" ? [] : [paragraph(inGlazes.trimEnd())];
  const have = tiles.length === 1 ? "has" : "have";
  const itWas = `${tiles.length === 1 ? "It was" : "They were"} glazed with the material as it was, unless somebody says otherwise.`;
  return [
    paragraph(
      inGlazes,
      strong(`${count(tiles.length, "tile")} ${have} it`),
      `: ${sentence(allCodes(tiles))}${kind === "material" ? ` ${itWas}` : ""}`,
    ),
  ];
}

export function goneBlocks(gone: readonly GoneRecord[]): readonly Block[] {
  const lines = gone.map(
    ({ kind, id, file }): Line => [`the ${kinds[kind]} `, strong(id), ", ", code(file)],
  );
  const labels = gone.some(({ kind }) => kind === "tile")
    ? [paragraph("Labels and links with the code of a tile that is gone lead nowhere.")]
    : [];
  return [...shortList(lines, "they are among the files of the request"), ...labels];
}

/** What is faulty by its file, and what waits for one record together. */
export function untoldBlocks(untold: readonly UntoldRecord[]): readonly Block[] {
  const faulty = untold.filter(({ because }) => because === null);
  const waiting = new Map<string, string[]>();
  for (const { id, because } of untold)
    if (because) addTo(waiting, `the ${kinds[because.kind]} ${because.id}`, id);
  return shortList(
    [
      ...faulty.map(({ file }): Line => [code(file), " has errors"]),
      ...[...waiting].map(([ground, ids]): Line => {
        const wait = ids.length === 1 ? "waits" : "wait";
        return [
          strong(`${count(ids.length, "record")} ${wait} for ${ground}`),
          `: ${allCodes(ids)}`,
        ];
      }),
    ],
    "the check tells them",
  );
}

/** Who and what would be seen that was not seen before. */
export function exposedBlocks({ makers, sets }: Changes["exposed"]): readonly Block[] {
  const named = `${count(makers, "maker")} would be named, or named otherwise, by what this request writes into `;
  return [
    ...(makers > 0
      ? [
          paragraph(
            strong(named.trim()),
            " ",
            code("studio.yaml"),
            ". Ask them before you merge, and of children the parents.",
          ),
        ]
      : []),
    ...sets.map((set) =>
      paragraph(strong(`Everybody would see the set ${set}`), ": before, only its link led there."),
    ),
  ];
}

/** The files outside the archive that may change what runs. */
export function runningBlocks(outside: Changes["outside"]): readonly Block[] {
  return [
    paragraph(strong("This request also changes what runs when the site is published"), ":"),
    ...shortList(outside.map(fileLine), "they are among the files of the request"),
    paragraph("Read these files before you merge. Once they are merged, they run."),
  ];
}
