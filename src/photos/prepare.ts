import { availableParallelism } from "node:os";
import { derivePictures } from "./derive.ts";
import type { PictureFault } from "./fault.ts";
import type { PictureFacts } from "./inspect.ts";
import { inParallel } from "./parallel.ts";
import { averageColour, type Pixels } from "./pixels.ts";
import { judgePicture, type PictureWarning } from "./quality.ts";
import { changedError, readBytes, readSample } from "./read-source.ts";
import { nameResult } from "./recipe.ts";
import { openSeen, type SeenPictures } from "./seen.ts";
import {
  fileName,
  findOrMakeReading,
  readEntry,
  type StoredEntry,
  type StoredFile,
  writeEntry,
  writeFaultEntry,
  writeReading,
} from "./store.ts";

/** A photograph to make ready, under a key of the caller's. */
export interface PictureSource<Value> {
  readonly key: string;
  readonly path: string;
  /** What to measure on its decoded pixels. Left out, nothing is. */
  readonly reading?: Reading<Value>;
}

/** A measurement on pixels. Its value is remembered as JSON under `id`. */
export interface Reading<Value> {
  /** Names what is measured and how: another crop or another method is another id. */
  readonly id: string;
  /** Pure: the same pixels give the same value. */
  read(pixels: Pixels): Value;
}

/** A photograph made ready: what pages show of it. */
export interface Picture<Value> extends PictureFacts {
  /** Of the source's content and the recipe, in hexadecimal digits. */
  readonly name: string;
  /** The average colour, `#rrggbb`, to stand in while the picture loads. */
  readonly placeholder: string;
  readonly warnings: readonly PictureWarning[];
  /** Widest first, each size in every format. `file` is a name within the pictures' folder. */
  readonly files: readonly PictureFile[];
  readonly reading?: Value;
}

export type PictureFile = Pick<StoredFile, "format" | "height" | "width"> & {
  readonly file: string;
};

export type Prepared<Value> = { readonly key: string } & (
  | { readonly picture: Picture<Value> }
  | { readonly fault: PictureFault }
);

export interface PrepareOptions {
  /** Where pictures, measurements and inspections are remembered between builds. */
  readonly cacheDir: string;
  onProgress?: (progress: { key: string; done: number; total: number }) => void;
  /** Called for each photograph of which what was remembered is damaged, or was not made here. */
  onDamaged?: () => void;
}

/**
 * One picture more than there are cores: while it is read, measured or written, the others keep the
 * cores busy. The picture library works on four at a time, so more only take memory.
 */
export const inFlight = 1 + Math.max(1, Math.min(availableParallelism(), 4));

/**
 * Makes photographs ready for the pages: inspects each, makes its sizes, judges and measures it.
 * What is remembered from an earlier build, undamaged, is not made again. Results come in the order
 * of the sources; a photograph that cannot be used gives a fault. Throws where the machine fails.
 */
export async function preparePictures<Value = never>(
  sources: readonly PictureSource<Value>[],
  { cacheDir, onProgress, onDamaged }: PrepareOptions,
): Promise<Prepared<Value>[]> {
  const seen = await openSeen(cacheDir);
  const work: Work = { cacheDir, seen, underWay: new Map(), ...(onDamaged && { onDamaged }) };
  let done = 0;
  try {
    return await inParallel(sources, inFlight, async (source) => {
      const prepared = await prepareOne(source, work);
      done += 1;
      onProgress?.({ key: source.key, done, total: sources.length });
      return prepared;
    });
  } finally {
    await seen.save();
  }
}

/** What photographs that are made ready together share. */
export interface Work {
  readonly cacheDir: string;
  readonly seen: SeenPictures;
  /** By name: the same photograph under two keys is made once. */
  readonly underWay: Map<string, Promise<StoredEntry>>;
  /** Called for each photograph of which what was remembered is damaged, or was not made here. */
  onDamaged?: () => void;
  /** Is given the pixels that are measured, of each photograph that had to be decoded. */
  onSample?: (name: string, sample: Pixels) => void;
}

/** A source that has been looked at and can be decoded, as far as its header tells. */
interface Found<Value> extends PictureSource<Value> {
  readonly name: string;
  readonly hash: string;
  readonly facts: PictureFacts;
  readonly bytes?: Uint8Array;
}

/** Makes one photograph ready: see `preparePictures`. */
export async function prepareOne<Value>(
  source: PictureSource<Value>,
  work: Work,
): Promise<Prepared<Value>> {
  const { key } = source;
  const { hash, inspection, bytes } = await work.seen.look(source.path);
  if ("fault" in inspection) return { key, fault: inspection.fault };
  const { facts } = inspection;
  const found = { ...source, name: nameResult(hash), hash, facts, ...(bytes && { bytes }) };
  const entry = await findOrMake(found, work);
  if ("fault" in entry) return { key, fault: entry.fault };
  const { placeholder, warnings } = entry;
  const files = entry.files.map(({ format, height, width }) => ({
    file: fileName(found.name, { format, width }),
    format,
    height,
    width,
  }));
  const picture = { ...facts, name: found.name, placeholder, warnings, files };
  if (!source.reading) return { key, picture };
  return {
    key,
    picture: { ...picture, reading: await findOrTakeReading(found, source.reading, work) },
  };
}

function findOrMake<Value>(found: Found<Value>, work: Work): Promise<StoredEntry> {
  const started = work.underWay.get(found.name);
  if (started) return started;
  const entry = findOrMakeEntry(found, work);
  work.underWay.set(found.name, entry);
  return entry;
}

async function findOrMakeEntry<Value>(found: Found<Value>, work: Work): Promise<StoredEntry> {
  const known = await readEntry(work.cacheDir, found.name);
  if (known === "damaged") work.onDamaged?.();
  return typeof known === "string" ? make(found, work) : known;
}

async function make<Value>(
  found: Found<Value>,
  { cacheDir, onSample }: Work,
): Promise<StoredEntry> {
  const { name, facts, reading } = found;
  const derived = await derivePictures(await readBytes(found), facts.format);
  if ("fault" in derived) {
    await writeFaultEntry(cacheDir, name, derived.fault);
    return derived;
  }
  const { files, sample } = derived;
  onSample?.(name, sample);
  const entry = await writeEntry(cacheDir, name, {
    files,
    placeholder: averageColour(sample),
    warnings: judgePicture(facts, sample),
  });
  if (reading) await writeReading(cacheDir, name, reading.id, reading.read(sample));
  return entry;
}

/** A photograph whose pictures are there but not this measurement is decoded once more. */
function findOrTakeReading<Value>(
  found: Found<Value>,
  { id, read }: Reading<Value>,
  { cacheDir }: Work,
): Promise<Value> {
  return findOrMakeReading(cacheDir, found.name, id, async () => {
    const sample = await readSample(found, found.facts.format);
    if ("fault" in sample) throw changedError(found.path);
    return read(sample.pixels);
  });
}
