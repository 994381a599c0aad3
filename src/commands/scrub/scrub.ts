/** `tilebook scrub`: takes everything out of photographs but the picture itself. */
import { statSync } from "node:fs";
import { join, relative, sep } from "node:path";
import { folderFiles } from "../../archive/folder-files.ts";
import type { Scrubbing } from "../../photos/scrub/scrub.ts";
import { scrubFile } from "../../photos/scrub/scrub-file.ts";
import type { Trace } from "../../photos/traces/trace.ts";
import { findFiles } from "../../reader/find-files.ts";
import { exitCodes, WrongUsage } from "../failure.ts";

export interface ScrubOptions {
  readonly archive: string;
}

/**
 * Scrubs photographs in place and says of each what became of it: of those that were named, or of
 * every one in the archive, where those that gave nothing away are only counted.
 *
 * @param files paths from here or from the archive
 * @returns 1 where one could not be scrubbed
 */
export async function scrub(files: readonly string[], options: ScrubOptions): Promise<number> {
  const { archive } = options;
  const named = files.length > 0;
  const paths = named ? files.map((file) => findNamed(file, archive)) : allPictures(archive);
  const counts = { clean: 0, scrubbed: 0, fault: 0 };
  const removed = new Set<Trace>();
  for (const path of paths) {
    const scrubbing = await scrubFile(path);
    counts[scrubbing.outcome] += 1;
    if (scrubbing.outcome === "scrubbed") for (const trace of scrubbing.removed) removed.add(trace);
    if (named || scrubbing.outcome !== "clean")
      console.log(`${tellPath(path, archive, named)}: ${tellOutcome(scrubbing)}`);
  }
  console.log(tellCounts(counts));
  if (removed.has("place"))
    console.log("Copies that were shared before, and the archive's history, still tell the place.");
  return counts.fault > 0 ? exitCodes.faulty : exitCodes.done;
}

function findNamed(file: string, archive: string): string {
  const path = [file, join(archive, file)].find((each) =>
    statSync(each, { throwIfNoEntry: false }),
  );
  if (path === undefined) throw new WrongUsage(`There is no file ${file}. Nothing was changed.`);
  if (statSync(path).isDirectory())
    throw new WrongUsage(
      `${file} is a folder. Name photographs, or none for all of the archive's. Nothing was changed.`,
    );
  return path;
}

function allPictures(archive: string): readonly string[] {
  const { pictures, studio } = findFiles(folderFiles(archive));
  if (studio === undefined)
    throw new WrongUsage(
      `There is no archive in ${archive}: it has no studio.yaml. Name its folder with --archive, or name the photographs.`,
    );
  return pictures.map(({ file }) => join(archive, file));
}

/** As `check` tells it, where the whole archive is scrubbed. */
function tellPath(path: string, archive: string, named: boolean): string {
  return named ? path : relative(archive, path).split(sep).join("/");
}

const words: Readonly<Record<Trace, string>> = {
  device: "device",
  notes: "notes",
  owner: "owner",
  place: "place",
  serial: "serial number",
};

function tellOutcome(scrubbing: Scrubbing): string {
  if (scrubbing.outcome === "clean") return "nothing to remove.";
  if (scrubbing.outcome === "fault")
    return `not changed. ${scrubbing.fault.message} ${scrubbing.fault.hint}`;
  const gone = listed(scrubbing.removed.map((trace) => words[trace]));
  return `${gone} removed. The picture itself was not touched.`;
}

function listed(parts: readonly string[]): string {
  return parts.length < 2 ? parts.join() : `${parts.slice(0, -1).join(", ")} and ${parts.at(-1)}`;
}

function tellCounts(counts: Readonly<Record<Scrubbing["outcome"], number>>): string {
  const { clean, scrubbed, fault } = counts;
  const all = clean + scrubbed + fault;
  const told = [
    ...(scrubbed > 0 ? [`${scrubbed} scrubbed`] : []),
    `${clean} had nothing to remove`,
    ...(fault > 0 ? [`${fault} not changed: see above`] : []),
  ];
  return `${all} ${all === 1 ? "photograph" : "photographs"}: ${told.join(", ")}.`;
}
