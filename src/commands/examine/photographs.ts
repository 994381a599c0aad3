/** Makes an archive's photographs ready, and says where each prepared picture lies. */
import { join } from "node:path";
import type { PreparedPicture } from "../../catalogue/findings.ts";
import type { PictureInspection } from "../../checks/check.ts";
import { greyCardWarnings } from "../../checks/grey-card-warnings.ts";
import { checkOpenedPictures } from "../../checks/opened-pictures.ts";
import { type MeasuredColour, measureColour, measuringVersion } from "../../colour/measure.ts";
import type { Crop } from "../../colour/region.ts";
import { hashOf } from "../../photos/hash.ts";
import {
  type Picture as Made,
  type Prepared,
  preparePictures,
  type Reading,
} from "../../photos/prepare.ts";
import { entryFolder } from "../../photos/store.ts";
import type { Archive } from "../../records/archive.ts";
import type { Box } from "../../records/fields.ts";
import type { Problem } from "../../records/problem.ts";
import type { PhotoSettings } from "../../records/tile.ts";
import type { TypedCommand } from "../../terms/typed-command.ts";
import { asTypedFor } from "../as-typed.ts";
import type { Progress } from "../progress.ts";

const folder = "pictures/";

export interface Photographs {
  /** By the picture's file, relative to the archive. */
  readonly prepared: ReadonlyMap<string, PreparedPicture>;
  /** What only opening them showed: damage that lay deep, and how they were taken. */
  readonly problems: readonly Problem[];
  /** Their names in the cache. */
  readonly used: ReadonlySet<string>;
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
  const sources = [...archive.tiles.values()].flatMap(({ pictures, record }) =>
    pictures.map(({ file, role }) => ({
      key: file,
      path: join(dir, file),
      ...(role === "result" && { reading: colourReading(record.photo) }),
    })),
  );
  let damaged = 0;
  const results = await preparePictures(sources, {
    cacheDir,
    onProgress: ({ done, total }) => progress.count(done, total),
    onDamaged: () => {
      damaged += 1;
    },
  });
  if (damaged > 0) progress.tell(damagedWords(damaged));
  const asTyped = asTypedFor(dir);
  const made = results.flatMap((result) => ("picture" in result ? [result] : []));
  const places = new Map(
    made.flatMap(({ picture: { name, files: sizes } }) =>
      sizes.map(({ file }) => [folder + file, join(entryFolder(cacheDir, name), file)] as const),
    ),
  );
  return {
    prepared: new Map(made.map(({ key, picture }) => [key, toPrepared(picture)])),
    problems: checkOpenedPictures(
      archive,
      new Map(results.map((result) => toInspection(result, asTyped))),
      asTyped,
    ),
    used: new Set(made.map(({ picture }) => picture.name)),
    fileOf: (url) => places.get(url) ?? join(dir, url),
  };
}

function damagedWords(count: number): string {
  const photographs = `${count} photograph${count === 1 ? "" : "s"}`;
  return `What was remembered of ${photographs} is damaged, or another computer or another Tilebook made it: made anew.`;
}

function toInspection(
  result: Prepared<MeasuredColour>,
  asTyped: TypedCommand,
): readonly [file: string, inspection: PictureInspection] {
  if ("fault" in result) return [result.key, { fault: result.fault }];
  const { traces, warnings, reading } = result.picture;
  const all = [...warnings, ...greyCardWarnings(reading, asTyped)];
  return [result.key, { facts: { traces }, warnings: all }];
}

/** What is measured on a photograph of a result, named by all that its value depends on. */
export function colourReading(photo: PhotoSettings | undefined): Reading<MeasuredColour> {
  const options = { crop: toCrop(photo?.crop), grey: toCrop(photo?.grey) };
  return {
    id: `colour-${hashOf(JSON.stringify([measuringVersion, options.crop, options.grey]))}`,
    read: (pixels) => measureColour(pixels, options),
  };
}

function toCrop(box: Box | false | undefined): Crop | undefined {
  return box ? [box.left, box.top, box.right, box.bottom] : undefined;
}

function toPrepared(picture: Made<MeasuredColour>): PreparedPicture {
  const { width, height, placeholder, files, reading } = picture;
  const sizes = files.map(({ file, ...size }) => ({ url: folder + file, ...size }));
  return {
    width,
    height,
    placeholder,
    files: sizes.sort((a, b) => a.width - b.width),
    colour: reading ?? null,
  };
}
