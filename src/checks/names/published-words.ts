/** Everything in an archive that somebody wrote in words of their own and that a site shows. */
import type { Archive, Filed, Tile } from "../../records/archive.ts";
import { findById } from "../../records/archive.ts";
import type { LeachTest } from "../../records/leach-test.ts";
import type { FieldPath } from "../../records/problem.ts";
import type { SetDefaults } from "../../records/set.ts";

/** A text, and where it is: the notes below a record's fields have no path. */
export interface PublishedWords {
  readonly file: string;
  readonly path: FieldPath;
  readonly text: string;
}

type Words = readonly (readonly [path: FieldPath, text: string | null | undefined])[];

/** All such texts, in the order of the archive. */
export function publishedWords(archive: Archive): readonly PublishedWords[] {
  const { studio } = archive;
  return [
    ...placed({ file: "studio.yaml", notes: "" }, [
      [["studio"], studio.studio],
      [["licence"], studio.licence],
      [["handing-in"], studio.handingIn?.words],
      [["welcome"], studio.welcome],
      [["mark", "alt"], studio.mark?.alt],
    ]),
    ...wordsOf(archive.sets, ({ name, defaults }) => [
      [["name"], name],
      ...sharedWords(defaults).map(([path, text]) => [["defaults", ...path], text] as const),
    ]),
    ...[...archive.tiles.values()].flatMap((tile) => placed(tile, wordsOfTile(tile, archive))),
    ...wordsOf(archive.firings, ({ kiln, tiles = {}, witness = {} }) => [
      [["kiln"], kiln],
      ...Object.keys(witness).map((shelf) => [["witness"], shelf] as const),
      ...Object.keys(tiles).map((shelf) => [["tiles"], shelf] as const),
    ]),
    ...wordsOf(archive.glazes, ({ name, bought, leachTests }) => [
      [["name"], name],
      [["bought", "maker"], bought?.maker],
      [["bought", "range"], bought?.range],
      [["bought", "colour"], bought?.colour],
      ...wordsOfReports(leachTests),
    ]),
    ...wordsOf(archive.clays, ({ name, colour }) => [
      [["name"], name],
      [["colour"], colour],
    ]),
    ...wordsOf(archive.materials, ({ name, cautions = [] }) => [
      [["name"], name],
      ...cautions.map((caution, i) => [["cautions", i], caution] as const),
    ]),
    ...wordsOf(archive.pages, ({ title }) => [[["title"], title]]),
  ];
}

function wordsOf<T>(
  records: ReadonlyMap<string, Filed<T>>,
  fieldsOf: (record: T) => Words,
): readonly PublishedWords[] {
  return [...records.values()].flatMap((filed) => placed(filed, fieldsOf(filed.record)));
}

function placed(
  { file, notes }: { readonly file: string; readonly notes: string },
  fields: Words,
): readonly PublishedWords[] {
  const found: PublishedWords[] = [];
  for (const [path, text] of fields) if (text) found.push({ file, path, text });
  if (notes) found.push({ file, path: [], text: notes });
  return found;
}

/** What a set gives its tiles is told there, once. */
function wordsOfTile({ record, steps, set }: Tile, { sets }: Archive): Words {
  const given = sharedWords(findById(sets, set)?.record.defaults);
  return [
    ...sharedWords(record).filter(([, text], i) => given[i]?.[1] !== text),
    ...steps.flatMap((step): Words => {
      if (step.at === null) return [];
      const at = ["layers", step.at];
      if (step.step === "fired") return [[[...at, "shelf"], step.shelf]];
      const along = step.step === "coat" ? step.along : null;
      return [
        [[...at, "detail"], step.detail],
        [[...at, "fade", "along"], along],
      ];
    }),
    ...wordsOfReports(record.leachTests),
    ...(record.result ?? []).map(
      ({ nextTime }, i) => [["result", i, "next-time"], nextTime] as const,
    ),
  ];
}

function wordsOfReports(tests: readonly LeachTest[] = []): Words {
  return tests.flatMap(
    ({ laboratory, ware, fired, report }, i): Words => [
      [["leach-tests", i, "laboratory"], laboratory],
      [["leach-tests", i, "ware"], ware],
      [["leach-tests", i, "fired"], fired],
      [["leach-tests", i, "report"], report],
    ],
  );
}

function sharedWords(
  fields: Pick<SetDefaults, "texture" | "clayBatch" | "photo"> | undefined,
): Words {
  return [
    [["texture"], fields?.texture],
    [["clay-batch"], fields?.clayBatch],
    [["photo", "alt"], fields?.photo?.alt],
  ];
}
