/** Looks at an archive's photographs before anything is made of them. */
import { join } from "node:path";
import type { PictureInspection } from "../../checks/check.ts";
import { greyCardWarnings } from "../../checks/grey-card-warnings.ts";
import { judgePictures } from "../../photos/judge.ts";
import { openSeen } from "../../photos/seen.ts";
import type { Tile } from "../../records/archive.ts";
import { asTypedFor } from "../as-typed.ts";
import type { Progress } from "../progress.ts";
import { colourReading } from "./photographs.ts";

type Inspections = ReadonlyMap<string, PictureInspection>;

/** Looks at every picture, a stray one too: whatever lies in the archive may be published with it. */
export async function inspectPictures(
  dir: string,
  files: readonly string[],
  cacheDir: string,
  progress: Progress,
): Promise<Inspections> {
  const seen = await openSeen(cacheDir);
  const inspections = new Map<string, PictureInspection>();
  for (const file of files) {
    inspections.set(file, (await seen.look(join(dir, file))).inspection);
    progress.count(inspections.size, files.length);
  }
  await seen.save();
  return inspections;
}

/**
 * Opens the photographs of the tiles, and adds to what is known of them how they were taken. A
 * build need not: it learns the same as it prepares them.
 */
export async function openPictures(
  dir: string,
  tiles: readonly Tile[],
  inspections: Inspections,
  cacheDir: string,
  progress: Progress,
): Promise<Inspections> {
  const sources = tiles.flatMap(({ pictures, record }) =>
    pictures.map(({ file, role }) => ({
      key: file,
      path: join(dir, file),
      ...(role === "result" && record.photo?.grey && { reading: colourReading(record.photo) }),
    })),
  );
  const judged = await judgePictures(sources, {
    cacheDir,
    onProgress: (done) => progress.count(done, sources.length),
  });
  const opened = new Map(inspections);
  for (const judgement of judged) {
    const { key } = judgement;
    const inspection = inspections.get(key);
    if ("fault" in judgement) opened.set(key, { fault: judgement.fault });
    else if (inspection && "facts" in inspection) {
      const warnings = [
        ...judgement.warnings,
        ...greyCardWarnings(judgement.reading, asTypedFor(dir)),
      ];
      opened.set(key, { ...inspection, warnings });
    }
  }
  return opened;
}
