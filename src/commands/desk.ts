/** The desk of an archive, for the command that shows it. */
import { folderFiles } from "../archive/folder-files.ts";
import { textParser } from "../archive/parse-text.ts";
import { readArchive } from "../archive/read-archive.ts";
import { carriedWords } from "../chemistry/minerals/minerals.ts";
import { archiveNow } from "../desk/archive-now.ts";
import { type Desk, makeDesk } from "../desk/desk.ts";
import type { DeskPage } from "../desk/page.ts";
import { deskWork, type TakeIn } from "../desk/work.ts";
import { makeToken } from "../local-server/local-server.ts";
import { sniffFormat } from "../photos/format.ts";
import { takeInPicture } from "../photos/take-in.ts";
import { readDeskAssets } from "../publish/assets.ts";
import { asTypedFor } from "./as-typed.ts";

export interface DeskOpened {
  readonly desk: Desk;
  /** Something in the archive was changed. */
  readonly changed: () => void;
}

/**
 * @param dir the archive's folder
 * @param pages all of them, but in tests
 */
export async function openDesk(dir: string, pages?: readonly DeskPage[]): Promise<DeskOpened> {
  const now = archiveNow(() => readArchive(dir, { builtInMaterials: carriedWords }));
  const trial = {
    files: folderFiles(dir),
    reader: { builtInMaterials: carriedWords, texts: textParser },
    asTyped: asTypedFor(dir),
  };
  const work = deskWork(dir, now, { trial, takeIn });
  const needs = { work, assets: await readDeskAssets(), token: makeToken() };
  return { desk: makeDesk(needs, pages), changed: now.changed };
}

const takeIn: TakeIn = async (bytes) => {
  const [taken, format] = [await takeInPicture(bytes), sniffFormat(bytes)];
  if (!taken.ok) return { why: `${taken.fault.message} ${taken.fault.hint}` };
  return { bytes: taken.bytes, ending: format === "jpeg" ? "jpg" : (format ?? "jpg") };
};
