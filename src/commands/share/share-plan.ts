/** What of an archive is handed on where one set is shared, settled before anything is written. */
import type { Findings } from "../../catalogue/findings.ts";
import { catalogueMaker } from "../../catalogue/make.ts";
import { type SharedWith, sharedPart, tilesOfSet } from "../../catalogue/shared.ts";
import type { Catalogue } from "../../catalogue/types.ts";
import { notesByFile } from "../../checks/notes.ts";
import type { Archive, Filed } from "../../records/archive.ts";
import type { Problem } from "../../records/problem.ts";
import type { SetRecord } from "../../records/set.ts";
import type { TypedCommand } from "../../terms/typed-command.ts";
import { judgeArchive } from "../examine/examine.ts";

/** A whole archive, and what is known of it. */
interface Known {
  readonly archive: Archive;
  readonly problems: readonly Problem[];
  readonly findings: Findings;
}

/** What is about to be handed on. */
export interface SharePlan {
  /** The whole archive. */
  readonly archive: Archive;
  /** What of it is shared. */
  readonly part: Archive;
  readonly set: Filed<SetRecord>;
  readonly whom: SharedWith;
  readonly catalogue: Catalogue;
}

export function planSharing(
  known: Known,
  set: Filed<SetRecord>,
  whom: SharedWith,
  asTyped: TypedCommand,
): SharePlan {
  const { archive } = known;
  const part = sharedPart(archive, set, whom);
  const notes = notesFor(known, judgeArchive(part, new Map(), asTyped).problems);
  const tiles = tilesOfSet(archive, set.id).length;
  const alone = { unlisted: true, tiles, forFamilies: whom === "families" };
  const makeCatalogue = catalogueMaker(archive, { ...known.findings, notes });
  return { archive, part, set, whom, catalogue: makeCatalogue(part, alone) };
}

/**
 * Practice notes as the whole archive has them, and those besides that only tiles which are not
 * shared speak against: what is shared rests on its own tiles, and no caution of it goes quiet.
 */
function notesFor({ problems }: Known, own: readonly Problem[]): Findings["notes"] {
  const notes = new Map(notesByFile(problems));
  for (const [file, told] of notesByFile(own)) {
    const known = notes.get(file) ?? [];
    const more = told.filter(({ message }) => known.every((each) => each.message !== message));
    notes.set(file, [...known, ...more]);
  }
  return notes;
}
