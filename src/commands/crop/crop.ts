/**
 * `tilebook crop`: shows photographs on this computer with a frame for the glaze and one for the
 * grey card, and writes both down for a tile, a set or the whole studio when it is asked to.
 */
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { measureColour } from "../../colour/measure.ts";
import { type StandWork, standServer } from "../../copystand/server.ts";
import { findPhotograph, listPhotographed, type Opened, viewStand } from "../../copystand/stand.ts";
import type { FramesOnTile, MeasuredWords, Scope, StandView } from "../../copystand/types.ts";
import { tellMeasured } from "../../copystand/words.ts";
import { writeDown } from "../../copystand/write-down.ts";
import { Refused } from "../../local-server/door.ts";
import type { LocalServer } from "../../local-server/local-server.ts";
import { type Desk, openDesk } from "../../photos/desk.ts";
import { readCopyStandAssets } from "../../publish/assets.ts";
import { type Archive, findById } from "../../records/archive.ts";
import { idKey } from "../../terms/ids.ts";
import { asTypedFor } from "../as-typed.ts";
import { exitCodes, tellFailure, WrongUsage } from "../failure.ts";
import { cacheFolderOf } from "../folders.ts";
import { openWhole, unknown } from "../open-archive.ts";
import { untilListening, untilStopped } from "../serve/listening.ts";

export interface CropOptions {
  readonly archive: string;
  readonly cache?: string;
  readonly port: number;
}

/**
 * Shows the photographs until the process is told to stop.
 *
 * @param names a set's id or tiles' codes; none for every photographed tile
 */
export async function crop(names: readonly string[], options: CropOptions): Promise<number> {
  const stand = await openCopyStand(names, options);
  if (!stand) return exitCodes.faulty;
  const port = await untilListening(stand.server.listen(options.port), options.port);
  const stopped = untilStopped();
  console.error(`The copy stand is at http://localhost:${port}/ (stop with Ctrl-C).`);
  console.error("Nothing is written unless you ask for it there.");
  await stopped;
  await stand.close();
  return exitCodes.done;
}

export interface CopyStandOpened {
  readonly server: LocalServer;
  readonly close: () => Promise<void>;
}

/** Opens an archive's copy stand without listening yet; undefined where errors are in the way. */
export async function openCopyStand(
  names: readonly string[],
  options: Pick<CropOptions, "archive" | "cache">,
): Promise<CopyStandOpened | undefined> {
  const { archive: dir } = options;
  const cacheDir = cacheFolderOf(options);
  const open = () => openNamed(dir, names);
  const first = await open();
  if (!first) return undefined;
  const chosen = chooseTiles(first.archive, names);
  tellLeftOut(first, asTypedFor(dir)("check"));
  const desk = await openDesk(cacheDir);
  const server = standServer({
    ...workOn(dir, desk, { opened: first, open, ...chosen }),
    assets: await readCopyStandAssets(),
    failed: tellFailure,
  });
  const close = async () => {
    server.close();
    await desk.close();
  };
  return { server, close };
}

/** What the stand is at: the archive as it was last read, and which of its tiles are shown. */
interface Standing {
  opened: Opened;
  /** Reads it anew; undefined where errors are in the way. */
  readonly open: () => Promise<Opened | undefined>;
  readonly ids: ReadonlySet<string> | null;
  readonly scope: Scope;
}

const hasErrors =
  "The archive has errors now: the window in which the command runs tells them. Mend them, and load this page again.";

type Work = Omit<StandWork, "assets" | "failed">;

function workOn(dir: string, desk: Desk, standing: Standing): Work {
  const readAgain = async (): Promise<StandView> => {
    const opened = await standing.open();
    if (!opened) throw new Refused(409, hasErrors);
    standing.opened = opened;
    return viewStand(opened, standing.ids, standing.scope);
  };
  const tileOf = (id: string) => {
    const isShown = standing.ids?.has(idKey(id)) ?? true;
    return isShown ? findById(standing.opened.archive.tiles, id) : undefined;
  };
  const photographOf = (id: string) => {
    const file = findPhotograph(tileOf(id));
    return file === undefined ? undefined : join(dir, file);
  };
  return {
    view: readAgain,
    async picture(id, width) {
      const path = photographOf(id);
      const shown = path === undefined ? undefined : await desk.show(path, width);
      return shown && "file" in shown ? readFile(shown.file) : undefined;
    },
    async measure(asked) {
      const path = photographOf(asked.tile);
      return path === undefined ? undefined : measureOn(desk, path, asked);
    },
    async write(asked) {
      const tile = tileOf(asked.tile);
      if (!tile) return undefined;
      const told = writeDown(dir, standing.opened, tile, asked);
      if (told.written) console.error(told.words);
      return { ...told, view: await readAgain() };
    },
  };
}

async function measureOn(
  desk: Desk,
  path: string,
  { frames }: FramesOnTile,
): Promise<MeasuredWords> {
  const sample = await desk.sample(path);
  if ("fault" in sample) return { fault: `${sample.fault.message} ${sample.fault.hint}` };
  const { crop: glaze, grey } = frames;
  return tellMeasured(measureColour(sample.pixels, { crop: glaze, grey: grey ?? undefined }));
}

/** Errors in what was named are in the way; of what is elsewhere, nothing is written or shown. */
function openNamed(dir: string, names: readonly string[]): Promise<Opened | undefined> {
  const keys = new Set(names.map(idKey));
  const isNamed = (file: string) => {
    const [name = "", folder = ""] = file.split("/").reverse();
    return (
      keys.has(idKey(name.replace(/\.md$/iu, ""))) || (name === "set.md" && keys.has(idKey(folder)))
    );
  };
  return openWhole(dir, isNamed);
}

function tellLeftOut({ archive, counts }: Opened, check: string): void {
  const leftOut = counts.tiles - archive.tiles.size;
  if (leftOut === 0) return;
  const tiles = leftOut === 1 ? "One tile is" : `${leftOut} tiles are`;
  console.error(`${tiles} left out, for there are errors: “${check}” tells them.`);
}

function chooseTiles(
  archive: Archive,
  names: readonly string[],
): { ids: ReadonlySet<string> | null; scope: Scope } {
  const photographed = listPhotographed(archive);
  if (photographed.length === 0) throw new WrongUsage("There is no photograph of a result yet.");
  if (names.length === 0) return { ids: null, scope: "studio" };
  const named = names.map((name) => tilesNamed(archive, name));
  const ids = new Set(named.flatMap(({ ids: some }) => some));
  const sets = named.every(({ scope }) => scope === "set");
  return { ids, scope: sets ? "set" : "tile" };
}

function tilesNamed(archive: Archive, name: string): { ids: readonly string[]; scope: Scope } {
  const photographed = listPhotographed(archive);
  const key = idKey(name);
  if (archive.sets.has(key)) {
    const ids = photographed.filter(({ set }) => set !== null && idKey(set) === key);
    if (ids.length > 0) return { ids: ids.map(({ id }) => idKey(id)), scope: "set" };
    throw new WrongUsage(`The set “${name}” has no photograph of a result yet.`);
  }
  const tile = findById(archive.tiles, name);
  if (findPhotograph(tile) !== undefined) return { ids: [key], scope: "tile" };
  if (tile) throw new WrongUsage(`The tile “${tile.id}” has no photograph of its result yet.`);
  const sets = [...archive.sets.values()].map(({ id, record }) => ({ id, name: record.name }));
  const tiles = photographed.map(({ id }) => ({ id, name: id }));
  throw new WrongUsage(unknown(name, "set or tile", [...sets, ...tiles]));
}
