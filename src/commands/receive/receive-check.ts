/** Reads and checks an archive as it would be with what was handed in, before anything is written. */
import { folderFiles } from "../../archive/folder-files.ts";
import { textParser } from "../../archive/parse-text.ts";
import { changeRecord } from "../../archive/write-fields.ts";
import { carriedWords } from "../../chemistry/minerals/minerals.ts";
import type { LocatedProblem } from "../../reader/locate.ts";
import { readArchiveFiles } from "../../reader/read-archive-files.ts";
import { withFiles } from "../../reader/with-files.ts";
import type { Refusal } from "../../receive/hand-in.ts";
import type { Addition, NewTile, ReceivingPlan } from "../../receive/outcomes.ts";
import type { Archive } from "../../records/archive.ts";
import { asTypedFor } from "../as-typed.ts";
import { judgeArchive } from "../examine/examine.ts";

/** The archive as it is. */
export interface Before {
  readonly dir: string;
  readonly archive: Archive;
  readonly texts: ReadonlyMap<string, string>;
}

export interface CheckedPlan {
  readonly plan: ReceivingPlan;
  /** The archive as it would be. */
  readonly archive: Archive;
}

/** Takes out of a plan what would bring an error into the archive, and tells why. */
export function checkPlan(plan: ReceivingPlan, before: Before): CheckedPlan {
  const { archive, errors } = examineWith(before, filesOf(plan, before));
  const own = plan.additions.length > 0 ? examineWith(before, new Map()).errors : noErrors;
  const tiles = plan.newTiles.map((tile) => ({ tile, refusals: faultsOf(tile, errors, noErrors) }));
  const additions = plan.additions.map((addition) => ({
    addition,
    refusals: changedText(addition, before)
      ? faultsOf(addition, errors, own)
      : [{ what: addition.from, why: cannotChange(addition) }],
  }));
  const isSound = ({ refusals }: { readonly refusals: readonly Refusal[] }) =>
    refusals.length === 0;
  return {
    archive: archive ?? before.archive,
    plan: {
      ...plan,
      newTiles: tiles.filter(isSound).map(({ tile }) => tile),
      additions: additions.filter(isSound).map(({ addition }) => addition),
      refusals: [...plan.refusals, ...[...tiles, ...additions].flatMap(({ refusals }) => refusals)],
    },
  };
}

function cannotChange({ tile, file }: Addition): string {
  return `${file} is written in a way that nothing can be added to without changing more. Write what is new of ${tile} into it by hand.`;
}

function filesOf(plan: ReceivingPlan, before: Before): ReadonlyMap<string, string | Uint8Array> {
  const added = new Map<string, string | Uint8Array>();
  for (const { files } of plan.newTiles)
    for (const { path, content } of files) added.set(path, content);
  for (const addition of plan.additions) {
    const text = changedText(addition, before);
    if (text) added.set(addition.file, text);
    for (const { file } of addition.pictures) added.set(file.path, file.content);
  }
  return added;
}

function changedText({ file, fields, notes }: Addition, { texts }: Before): string | undefined {
  const changed = changeRecord(texts.get(file) ?? "", "tile", { fields, addedNotes: notes });
  return changed.ok ? changed.text : undefined;
}

/** Errors by the file of the record that has them. */
type Errors = ReadonlyMap<string, readonly LocatedProblem[]>;
const noErrors: Errors = new Map();

function examineWith(
  { dir }: Before,
  added: ReadonlyMap<string, string | Uint8Array>,
): { readonly archive: Archive | null; readonly errors: Errors } {
  const files = withFiles(folderFiles(dir), added);
  const read = readArchiveFiles(files, { builtInMaterials: carriedWords, texts: textParser });
  const checked = read.archive
    ? judgeArchive(read.archive, new Map(), asTypedFor(dir)).problems
    : [];
  const errors = new Map<string, LocatedProblem[]>();
  for (const problem of [...read.problems, ...checked]) {
    if (problem.severity !== "error") continue;
    const found = errors.get(problem.file) ?? [];
    errors.set(problem.file, [...found, read.locate(problem)]);
  }
  return { archive: read.archive, errors };
}

/** What is told of a tile with errors: those that it has without what was handed in are its own. */
function faultsOf({ from, file }: NewTile | Addition, errors: Errors, own: Errors): Refusal[] {
  const known = new Set((own.get(file) ?? []).map(({ code, message }) => `${code} ${message}`));
  return (errors.get(file) ?? [])
    .filter(({ code, message }) => !known.has(`${code} ${message}`))
    .map((problem) => {
      // A row of a spreadsheet has no lines; a field that is the set's is told where it stands.
      const isElsewhere = problem.file !== file;
      const line = isElsewhere
        ? ` (${problem.file}, line ${problem.line})`
        : `, line ${problem.line}`;
      const place = / row \d+$/u.test(from) && !isElsewhere ? "" : line;
      return { what: `${from}${place}`, why: `${problem.message}. ${problem.hint}` };
    });
}
