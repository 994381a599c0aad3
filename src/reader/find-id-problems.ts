/** What is wrong with the names of records: two that meet, and such as nobody can use. */

import { nextFreeCode } from "../records/next-block.ts";
import { type WhyTaken, whyTaken } from "../records/next-code.ts";
import type { Problem } from "../records/problem.ts";
import { kindsOfFiring } from "../terms/choices.ts";
import { findIdFault, idKey } from "../terms/ids.ts";
import type { FoundFiles, KindOfRecord, RecordFile } from "./found-files.ts";
import { usableId } from "./meant-names.ts";
import type { ParsedText } from "./parsed-text.ts";
import { problemOfFile, problemOfKey } from "./problem-of-file.ts";
import { type AllRecords, readAtAll } from "./read-records.ts";
import { readingsOf } from "./references/picture-names.ts";

/**
 * Finds ids that cannot be used and ids that meet: within a kind of record, among the keys of the
 * makers, and among the links of unlisted sets.
 */
export function findIdProblems(
  files: FoundFiles,
  parsed: ReadonlyMap<string, ParsedText>,
  records: Pick<AllRecords, "sets" | "tiles">,
): readonly Problem[] {
  return [
    ...files.records.flatMap((record) => faultsOfId(record, files)),
    ...findDuplicates(files.records, records),
    ...findDuplicateMakers(files.studio, parsed),
    ...findDuplicateLinks(files.records, parsed),
  ];
}

function faultsOfId(record: RecordFile, files: FoundFiles): Problem[] {
  const { kind, id, file } = record;
  const why = findIdFault(id) ?? (kind === "firing" ? findKindOfFiring(id) : undefined);
  if (why === undefined) return [];
  const better = usableId(id);
  const twin = files.records.find(
    (other) => other.kind === kind && idKey(other.id) === idKey(better ?? ""),
  );
  if (twin) return [secondCopy(record, twin)];
  const what = kind === "set" ? "set's folder" : "file";
  const problem = problemOfFile(file, {
    code: "unusable-id",
    message: `“${id}” cannot be the name of a ${kind}: ${why}`,
    hint: `Give the ${what} another name${better === undefined ? "" : `, such as “${better}”`}.`,
  });
  // What other records name after it would lead nowhere; a tile's code is on its back.
  if (kind !== "tile" || better === undefined) return [problem];
  return [{ ...problem, mend: { does: "rename", renamings: renameTile(record, better, files) } }];
}

function secondCopy({ file }: RecordFile, twin: RecordFile): Problem {
  return problemOfFile(file, {
    code: "unusable-id",
    message: `“${file}” looks like a second copy of “${twin.file}”`,
    hint: "Compare the two, keep what is right in the second, and take the first out.",
  });
}

/** The record and, with it, the photographs that have its name. */
function renameTile({ id, file, folder }: RecordFile, to: string, { pictures }: FoundFiles) {
  const own = pictures.filter(
    (picture) =>
      picture.folder === folder &&
      readingsOf(picture.name).some((name) => idKey(name.id) === idKey(id)),
  );
  return [
    { from: file, to: `${folder}/${to}.md` },
    ...own.map((picture) => ({
      from: picture.file,
      to: `${folder}/${to}${picture.name.normalize("NFC").slice(id.length)}`,
    })),
  ];
}

function findKindOfFiring(id: string): string | undefined {
  if (!kindsOfFiring.some((kind) => kind === idKey(id))) return undefined;
  return "a layer “fired:” with that word tells only the kind of a firing";
}

function findDuplicates(
  records: readonly RecordFile[],
  read: Pick<AllRecords, "sets" | "tiles">,
): Problem[] {
  const first = new Map<string, RecordFile>();
  const problems: Problem[] = [];
  const findNext = nextCodeFinder(records, read);
  for (const record of records) {
    const key = `${record.kind} ${idKey(record.id)}`;
    const earlier = first.get(key);
    if (earlier) problems.push(duplicate(record, earlier, () => findNext(record)));
    else first.set(key, record);
  }
  return problems;
}

const namedBy: Readonly<Record<KindOfRecord, string>> = {
  set: "Two sets",
  tile: "Two tiles",
  firing: "Two firings",
  glaze: "Two glazes",
  clay: "Two clays",
  material: "Two materials",
  page: "Two pages",
};

/** Finds the next free code for the second of two tiles; each gets another. */
function nextCodeFinder(
  records: readonly RecordFile[],
  read: Pick<AllRecords, "sets" | "tiles">,
): (record: RecordFile) => string | undefined {
  const archive = { sets: readAtAll(read.sets), tiles: readAtAll(read.tiles) };
  const sets = new Map(
    records.flatMap((each) => (each.kind === "set" ? [[each.folder, each.id]] : [])),
  );
  const given = new Set<string>();
  const bySet = new Map<string | null, WhyTaken>();
  return ({ id, folder }) => {
    const set = sets.get(folder) ?? null;
    const taken = bySet.get(set) ?? whyTaken(archive, records, set);
    bySet.set(set, taken);
    const isTaken = (code: string) => taken(code) ?? (given.has(idKey(code)) ? "given" : undefined);
    const next = nextFreeCode(archive, id, set, isTaken);
    if (next !== undefined) given.add(idKey(next));
    return next;
  };
}

function duplicate(
  { kind, id, file }: RecordFile,
  earlier: RecordFile,
  findNext: () => string | undefined,
): Problem {
  const spelt =
    earlier.id === id ? "" : `, which differs from “${earlier.id}” only in how it is spelt`;
  return problemOfFile(file, {
    code: "duplicate-id",
    message: `${namedBy[kind]} are called “${id}”${spelt}: ${earlier.file} and ${file}`,
    hint: kind === "tile" ? renameOneTile(findNext()) : "Rename one of the two.",
  });
}

function renameOneTile(next: string | undefined): string {
  const free = next === undefined ? "" : ` The next free code is ${next}.`;
  return `Rename one of the two, together with its photographs.${free}`;
}

function findDuplicateMakers(
  studio: string | undefined,
  parsed: ReadonlyMap<string, ParsedText>,
): Problem[] {
  const makers = studio === undefined ? undefined : parsed.get(studio)?.source?.makers;
  if (studio === undefined || typeof makers !== "object" || Array.isArray(makers)) return [];
  const first = new Map<string, string>();
  const problems: Problem[] = [];
  for (const key of Object.keys(makers)) {
    const earlier = first.get(idKey(key));
    if (earlier !== undefined) problems.push(duplicateMaker(studio, key, earlier));
    else first.set(idKey(key), key);
  }
  return problems;
}

function duplicateMaker(studio: string, key: string, earlier: string): Problem {
  return problemOfKey(
    studio,
    {
      code: "duplicate-maker",
      message: `The makers “${earlier}” and “${key}” differ only in how they are spelt`,
      hint: "Give one of the two another code.",
    },
    ["makers", key],
  );
}

/** Two sets with one link would be published over each other. */
function findDuplicateLinks(
  records: readonly RecordFile[],
  parsed: ReadonlyMap<string, ParsedText>,
): Problem[] {
  const first = new Map<string, RecordFile>();
  const problems: Problem[] = [];
  for (const set of records) {
    const link = set.kind === "set" ? parsed.get(set.file)?.source?.link : undefined;
    if (typeof link !== "string") continue;
    const earlier = first.get(idKey(link));
    if (earlier) problems.push(duplicateLink(set, link, earlier));
    else first.set(idKey(link), set);
  }
  return problems;
}

function duplicateLink({ id, file }: RecordFile, link: string, earlier: RecordFile): Problem {
  const fault = {
    code: "duplicate-link",
    message: `The sets “${earlier.id}” and “${id}” have the same link, “${link}”`,
    hint: "Take the line out of one of them: the command “check --fix” then writes a random one.",
  };
  return problemOfFile(file, fault, ["link"]);
}
