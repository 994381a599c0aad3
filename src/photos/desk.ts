import { join } from "node:path";
import type { PictureFault } from "./fault.ts";
import type { Pixels } from "./pixels.ts";
import { type Picture, prepareOne, type Work } from "./prepare.ts";
import { readSample } from "./read-source.ts";
import { openSeen } from "./seen.ts";
import { entryFolder } from "./store.ts";

/** Photographs that somebody looks at one by one, each made ready when it is asked for. */
export interface Desk {
  /**
   * The path of a prepared picture, WebP: the smallest at least so wide, else the widest. It is
   * remembered as a build remembers it.
   */
  show(path: string, width: number): Promise<{ file: string } | { fault: PictureFault }>;
  /** The pixels that a build measures. The last ones asked for are kept in memory. */
  sample(path: string): Promise<{ pixels: Pixels } | { fault: PictureFault }>;
  /** Writes down what was seen of the photographs. */
  close(): Promise<void>;
}

/** Some 30 megabytes. */
const mostSamples = 32;

/** Opens a desk on the cache of a build; a photograph is decoded once. */
export async function openDesk(cacheDir: string): Promise<Desk> {
  const samples = new Map<string, Pixels>();
  const keep = (name: string, pixels: Pixels) => {
    samples.delete(name);
    samples.set(name, pixels);
    for (const [oldest] of samples) if (samples.size > mostSamples) samples.delete(oldest);
  };
  const seen = await openSeen(cacheDir);
  const work: Work = { cacheDir, seen, underWay: new Map(), onSample: keep };
  return {
    async show(path, width) {
      const prepared = await prepareOne({ key: path, path }, work);
      if ("fault" in prepared) return prepared;
      const { name } = prepared.picture;
      return { file: join(entryFolder(cacheDir, name), chooseFile(prepared.picture, width)) };
    },
    async sample(path) {
      const prepared = await prepareOne({ key: path, path }, work);
      if ("fault" in prepared) return prepared;
      const { name, format } = prepared.picture;
      const known = samples.get(name);
      const found = known
        ? { pixels: known }
        : await readSample({ path, ...(await seen.look(path)) }, format);
      if ("pixels" in found) keep(name, found.pixels);
      return found;
    },
    close: () => seen.save(),
  };
}

function chooseFile({ files }: Pick<Picture<unknown>, "files">, width: number): string {
  const widestFirst = files.filter(({ format }) => format === "webp");
  const chosen = widestFirst.findLast((file) => file.width >= width) ?? widestFirst[0];
  return chosen?.file ?? "";
}
