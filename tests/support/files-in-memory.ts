/** Archives that lie on no disk. */
import type { ArchiveFiles } from "../../src/reader/archive-files.ts";
import { filesOfTexts } from "../../src/reader/with-files.ts";

/** Texts by their paths. */
export type Texts = Readonly<Record<string, string>>;

/** An archive of some texts. */
export function filesOf(texts: Texts): ArchiveFiles {
  return filesOfTexts(new Map(Object.entries(texts)));
}
