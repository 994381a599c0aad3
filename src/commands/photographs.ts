/** Makes an archive's photographs ready, and says where each prepared picture lies. */
import { join } from "node:path";
import type { PreparedPicture } from "../catalogue/findings.ts";
import { toProblem } from "../checks/check.ts";
import { unusablePicture } from "../checks/rules/unusable-picture.ts";
import { preparePictures } from "../photos/prepare.ts";
import { entryFolder } from "../photos/store.ts";
import type { Archive } from "../records/archive.ts";
import type { Problem } from "../records/problem.ts";
import type { Progress } from "./progress.ts";

const folder = "pictures/";

export interface Photographs {
  /** By the picture's file, relative to the archive. */
  readonly prepared: ReadonlyMap<string, PreparedPicture>;
  /** Photographs whose damage lay so deep that only opening them showed it. */
  readonly problems: readonly Problem[];
  /** Where the picture with an address on the site lies. */
  readonly fileOf: (url: string) => string;
}

/** Prepares every photograph of every tile. */
export async function preparePhotographs(
  dir: string,
  archive: Archive,
  cacheDir: string,
  progress: Progress,
): Promise<Photographs> {
  const files = [...archive.tiles.values()].flatMap((tile) =>
    tile.pictures.map(({ file }) => file),
  );
  const results = await preparePictures(
    files.map((file) => ({ key: file, path: join(dir, file) })),
    { cacheDir, onProgress: ({ done, total }) => progress.count(done, total) },
  );
  const made = results.flatMap((result) => ("picture" in result ? [result] : []));
  const places = new Map(
    made.flatMap(({ picture: { name, files: sizes } }) =>
      sizes.map(({ file }) => [folder + file, join(entryFolder(cacheDir, name), file)] as const),
    ),
  );
  return {
    prepared: new Map(made.map(({ key, picture }) => [key, toPrepared(picture)])),
    problems: results.flatMap((result) =>
      "fault" in result
        ? [toProblem(unusablePicture, { ...result.fault, path: [] }, result.key)]
        : [],
    ),
    fileOf: (url) => places.get(url) ?? join(dir, url),
  };
}

type Made = Extract<
  Awaited<ReturnType<typeof preparePictures>>[number],
  { picture: unknown }
>["picture"];

function toPrepared({ width, height, placeholder, files }: Made): PreparedPicture {
  const sizes = files.map(({ file, ...size }) => ({ url: folder + file, ...size }));
  return {
    width,
    height,
    placeholder,
    files: sizes.sort((a, b) => a.width - b.width),
    colour: null,
  };
}
