import type { PictureFault } from "./fault.ts";
import { inParallel } from "./parallel.ts";
import { inFlight, type PictureSource } from "./prepare.ts";
import { judgePicture, type PictureWarning } from "./quality.ts";
import { changedError, readSample } from "./read-source.ts";
import { nameResult } from "./recipe.ts";
import { openSeen, type SeenPictures } from "./seen.ts";
import { findOrMakeReading, readEntry } from "./store.ts";

export interface JudgeOptions {
  /** Where judgements are remembered; what a build has made ready need not be judged again. */
  readonly cacheDir: string;
  onProgress?: (done: number) => void;
}

/**
 * What a maker can do better next time, and what was measured where that was asked for; or why the
 * photograph cannot be used at all.
 */
export type Judgement<Value> =
  | { readonly warnings: readonly PictureWarning[]; readonly reading?: Value }
  | { readonly fault: PictureFault };

type Verdict = { readonly warnings: readonly PictureWarning[] } | { readonly fault: PictureFault };

/** Under this id a judgement is remembered beside a picture's measurements. */
const judgementRecipe = "judgement 1";

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
    return await inParallel(sources, inFlight, async (source) => {
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
  const decode = once(() => readSample({ path, hash, bytes }, facts.format));
  const verdict = await findVerdict(name, cacheDir, async () => {
    const sample = await decode();
    return "fault" in sample ? sample : { warnings: judgePicture(facts, sample.pixels) };
  });
  if ("fault" in verdict || !reading) return verdict;
  const value = await findOrMakeReading(cacheDir, name, reading.id, async () => {
    const sample = await decode();
    if ("fault" in sample) throw changedError(path);
    return reading.read(sample.pixels);
  });
  return { ...verdict, reading: value };
}

/** A build that made the photograph ready has judged it too. */
async function findVerdict(
  name: string,
  cacheDir: string,
  judge: () => Promise<Verdict>,
): Promise<Verdict> {
  const made = await readEntry(cacheDir, name);
  if (typeof made !== "string") return "fault" in made ? made : { warnings: made.warnings };
  return findOrMakeReading(cacheDir, name, judgementRecipe, judge);
}

function once<T>(make: () => Promise<T>): () => Promise<T> {
  let made: Promise<T> | undefined;
  return () => {
    made ??= make();
    return made;
  };
}
