/** What was wrong with an archive before a request. */
import { textParser } from "../../archive/parse-text.ts";
import { findLongWaiting } from "../../checks/long-waiting.ts";
import { carriedWords } from "../../chemistry/minerals/minerals.ts";
import { type ReadArchive, readArchiveFiles } from "../../reader/read-archive-files.ts";
import type { Problem } from "../../records/problem.ts";
import { asTypedFor } from "../as-typed.ts";
import { type Examined, type Judged, judgeArchive } from "./examine.ts";
import { checkOwnWords } from "./own-words.ts";
import type { Request } from "./request.ts";

export interface ExaminedBefore extends Judged {
  readonly read: ReadArchive;
  readonly pictures: Examined["pictures"];
}

/**
 * Reads and checks the archive as it was. No picture of then is opened: of one that the request does
 * not change, what is found now was there.
 *
 * @param dir the archive's folder, for the commands in hints
 * @param now the archive as it is
 * @param day the day on which tiles have waited for long, where that is asked; as ISO 8601
 */
export async function examineBefore(
  { before, changed }: Request,
  dir: string,
  now: Pick<Examined, "pictures" | "problems" | "read">,
  day?: string,
): Promise<ExaminedBefore> {
  const read = readArchiveFiles(before, { builtInMaterials: carriedWords, texts: textParser });
  const pictures = new Map([...now.pictures].filter(([file]) => !changed.has(file)));
  const { archive } = read;
  if (!archive)
    return { read, pictures, problems: read.problems, chemistry: new Map(), heats: new Map() };
  const judged = judgeArchive(archive, pictures, asTypedFor(dir));
  const problems = [
    ...read.problems,
    ...judged.problems,
    ...(await checkOwnWords(archive)),
    ...(day === undefined ? [] : findLongWaiting(archive, day)),
    ...foundInFolder(now, changed),
  ];
  return { ...judged, read, pictures, problems };
}

/** What only the folder itself tells, of files that are as they were: pictures that are no tile's, the mark. */
function foundInFolder(
  { read, problems }: Pick<Examined, "problems" | "read">,
  changed: ReadonlySet<string>,
): readonly Problem[] {
  const mark = read.archive?.studio.mark?.file ?? "";
  return problems.filter(({ code, file }) => {
    if (code === "mark-unusable") return !changed.has(mark);
    return ["may-not-be-read", "stray-picture"].includes(code) && !changed.has(file);
  });
}
