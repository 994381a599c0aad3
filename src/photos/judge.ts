import { decodeLargest, takeSample } from "./decode.ts";
import type { PictureFault } from "./fault.ts";
import { inParallel } from "./parallel.ts";
import { IN_FLIGHT, readBytes } from "./prepare.ts";
import { judgePicture, type PictureWarning } from "./quality.ts";
import { nameResult } from "./recipe.ts";
import { openSeen, type SeenPictures } from "./seen.ts";
import { readEntry, readReading, writeReading } from "./store.ts";

export interface JudgeOptions {
  /** Where judgements are remembered; what a build has made ready need not be judged again. */
  cacheDir: string;
  onProgress?: (done: number) => void;
}

/** What a maker can do better next time, or why the photograph cannot be used at all. */
export type Judgement = { warnings: PictureWarning[] } | { fault: PictureFault };

/** Under this id a judgement is remembered beside a picture's measurements. */
const JUDGEMENT = "judgement 1";

/**
 * Judges photographs without making pictures of them, which takes a third of the time: whether
 * each is large enough, sharp, neither dark nor burnt out, and undamaged to its last line. Results
 * come in the order of the sources; they are those that `preparePictures` gives. Throws where the
 * machine fails.
 */
export async function judgePictures(
  sources: readonly { key: string; path: string }[],
  { cacheDir, onProgress }: JudgeOptions,
): Promise<({ key: string } & Judgement)[]> {
  const seen = await openSeen(cacheDir);
  let done = 0;
  try {
    return await inParallel(sources, IN_FLIGHT, async ({ key, path }) => {
      const judgement = await judgeOne(path, seen, cacheDir);
      done += 1;
      onProgress?.(done);
      return { key, ...judgement };
    });
  } finally {
    await seen.save();
  }
}

async function judgeOne(path: string, seen: SeenPictures, cacheDir: string): Promise<Judgement> {
  const { hash, inspection, bytes } = await seen.look(path);
  if ("fault" in inspection) return inspection;
  const name = nameResult(hash);
  const made = await readEntry(cacheDir, name);
  if (made) return "fault" in made ? made : { warnings: made.warnings };
  const known = await readReading(cacheDir, name, JUDGEMENT);
  if (known) return known as Judgement;
  const { facts } = inspection;
  const whole = await readBytes({ path, hash, ...(bytes && { bytes }) });
  const decoded = await decodeLargest(whole, facts.format);
  const judgement =
    "fault" in decoded
      ? decoded
      : { warnings: judgePicture(facts, await takeSample(decoded.pixels)) };
  await writeReading(cacheDir, name, JUDGEMENT, judgement);
  return judgement;
}
