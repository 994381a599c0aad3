/** The archive as it is now, read when it is asked for and not once more until something changes. */
import { Refused } from "../local-server/door.ts";
import type { ReadArchive } from "../reader/read-archive-files.ts";
import type { DeskArchive } from "./types.ts";

export interface ArchiveNow {
  /** @throws Refused where nothing can be shown of it; whatever reading throws */
  readonly read: () => Promise<DeskArchive>;
  /** Something in it was changed: what was read is forgotten. */
  readonly changed: () => void;
}

/** @param readAnew reads the whole archive */
export function archiveNow(readAnew: () => Promise<ReadArchive>): ArchiveNow {
  let reading: Promise<ReadArchive> | undefined;
  return {
    async read() {
      reading ??= readAnew();
      const mine = reading;
      const read = await mine.catch((error: unknown) => {
        if (reading === mine) reading = undefined;
        throw error;
      });
      // It was changed while it was read: what was read may be half of each.
      if (reading !== mine) return this.read();
      const { archive } = read;
      if (archive) return { ...read, archive };
      throw new Refused(
        409,
        `${read.studioFile ?? "studio.yaml"} is missing or has errors, so nothing can be shown here. The window in which the command runs tells them. Mend them, and load this page again.`,
      );
    },
    changed() {
      reading = undefined;
    },
  };
}
