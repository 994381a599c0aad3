import { decodeLargest, takeSample } from "./decode.ts";
import type { PictureFault } from "./fault.ts";
import { inParallel } from "./parallel.ts";
import type { Pixels } from "./pixels.ts";
import { IN_FLIGHT, type PictureSource, type Reading, readBytes } from "./prepare.ts";
import { judgePicture, type PictureWarning } from "./quality.ts";
import { nameResult } from "./recipe.ts";
import { openSeen, type SeenPictures } from "./seen.ts";
import { readEntry, readReading, writeReading } from "./store.ts";

export interface JudgeOptions {
  /** Where judgements are remembered; what a build has made ready need not be judged again. */
  cacheDir: string;
  onProgress?: (done: number) => void;
}

/**
 * What a maker can do better next time, and what was measured where that was asked for; or why the
 * photograph cannot be used at all.
 */
export type Judgement<Value> =
  | { warnings: PictureWarning[]; reading?: Value }
  | { fault: PictureFault };

type Verdict = { warnings: PictureWarning[] } | { fault: PictureFault };

/** Under this id a judgement is remembered beside a picture's measurements. */
const JUDGEMENT = "judgement 1";

/**
 * Judges photographs without making pictures of them, which takes a third of the time: whether
 * each is large enough, sharp, neither dark nor burnt out, and undamaged to its last line. Results
 * come in the order of the sources; they are those that `preparePictures` gives. Throws where the
 * machine fails.
 */
export async function judgePictures<Value = never>(
  sources: readonly PictureSource<Value>[],
  { cacheDir, onProgress }: JudgeOptions,
): Promise<({ key: string } & Judgement<Value>)[]> {
  const seen = await openSeen(cacheDir);
  let done = 0;
  try {
    return await inParallel(sources, IN_FLIGHT, async (source) => {
      const judgement = await judgeOne(source, seen, cacheDir);
      done += 1;
      onProgress?.(done);
      return { key: source.key, ...judgement };
    });
  } finally {
    await seen.save();
  }
}

async function judgeOne<Value>(
  { path, reading }: PictureSource<Value>,
  seen: SeenPictures,
  cacheDir: string,
): Promise<Judgement<Value>> {
  const { hash, inspection, bytes } = await seen.look(path);
  if ("fault" in inspection) return inspection;
  const { facts } = inspection;
  const name = nameResult(hash);
  const decode = once(async () => {
    const whole = await readBytes({ path, hash, ...(bytes && { bytes }) });
    const decoded = await decodeLargest(whole, facts.format);
    return "fault" in decoded ? decoded : { sample: await takeSample(decoded.pixels) };
  });
  const verdict = await findVerdict(name, cacheDir, async () => {
    const decoded = await decode();
    return "fault" in decoded ? decoded : { warnings: judgePicture(facts, decoded.sample) };
  });
  if ("fault" in verdict || !reading) return verdict;
  return { ...verdict, reading: await findReading(name, cacheDir, reading, decode) };
}

async function findVerdict(
  name: string,
  cacheDir: string,
  judge: () => Promise<Verdict>,
): Promise<Verdict> {
  const made = await readEntry(cacheDir, name);
  if (made) return "fault" in made ? made : { warnings: made.warnings };
  const known = await readReading(cacheDir, name, JUDGEMENT);
  if (known) return known as Verdict;
  const verdict = await judge();
  await writeReading(cacheDir, name, JUDGEMENT, verdict);
  return verdict;
}

async function findReading<Value>(
  name: string,
  cacheDir: string,
  { id, read }: Reading<Value>,
  decode: () => Promise<{ sample: Pixels } | { fault: PictureFault }>,
): Promise<Value> {
  const known = await readReading(cacheDir, name, id);
  if (known !== undefined) return known as Value;
  const decoded = await decode();
  if ("fault" in decoded) throw new Error(decoded.fault.message);
  const value = read(decoded.sample);
  await writeReading(cacheDir, name, id, value);
  return value;
}

function once<T>(make: () => Promise<T>): () => Promise<T> {
  let made: Promise<T> | undefined;
  return () => {
    made ??= make();
    return made;
  };
}
