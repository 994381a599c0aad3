/** What lies in `tiles/`: tiles and their pictures, sets, and the folder of the firings. */
import type { Problem } from "../records/problem.ts";
import { idKey } from "../terms/ids.ts";
import { type ArchiveFiles, listKnown } from "./archive-files.ts";
import { type FileCollector, isMarkdown, isPicture, tooDeep } from "./found-files.ts";
import { problemOfFile } from "./problem-of-file.ts";
import { recordNameOf, type Stray, strayRecord } from "./stray-files.ts";

/** The folder of the firings; no set can have its name. */
const firingsFolder = "firings";

/** Finds the tiles, the sets and their tiles, and the firings. */
export function findInTiles(archive: ArchiveFiles, folder: string, collector: FileCollector): void {
  const { files, folders, problems } = listKnown(archive, folder);
  collector.add(...problems);
  for (const name of files) {
    if (idKey(name) === "set.md") collector.add(setOutsideFolder(`${folder}/${name}`));
    else findTileFile(archive, { folder, name, files }, collector);
  }
  for (const name of folders) {
    if (idKey(name) === firingsFolder) findInFirings(archive, `${folder}/${name}`, collector);
    else findInSet(archive, folder, name, collector);
  }
}

function setOutsideFolder(file: string): Problem {
  return problemOfFile(file, {
    code: "set-outside-folder",
    message: "There is a set.md in tiles/ itself, where it belongs to no set",
    hint: "Make a folder for the set and put set.md into it, with the set's tiles.",
  });
}

function findTileFile(archive: ArchiveFiles, stray: Stray, collector: FileCollector): void {
  const { folder, name } = stray;
  if (isMarkdown(name)) collector.addRecord("tile", folder, name);
  else if (isPicture(name)) collector.addPicture(folder, name);
  else collector.addStray(archive, stray, "Records (.md) and their photographs belong in tiles/");
}

function findInSet(
  archive: ArchiveFiles,
  tiles: string,
  id: string,
  collector: FileCollector,
): void {
  const folder = `${tiles}/${id}`;
  const { files, folders, problems } = listKnown(archive, folder);
  collector.add(...problems);
  const set = files.find((name) => idKey(name) === "set.md");
  if (set !== undefined) collector.addSet(folder, set, id);
  // A set.md that was saved under another name is told as that.
  else if (!files.some((name) => idKey(recordNameOf(name) ?? "") === "set.md"))
    collector.add(folderWithoutSet(folder));
  for (const name of files)
    if (name !== set) findTileFile(archive, { folder, name, files }, collector);
  for (const name of folders)
    collector.add(
      tooDeep(
        `${folder}/${name}`,
        `Tiles belong in tiles/ or one folder deeper: put them into ${folder}/, or make “${name}” a set of its own in tiles/.`,
      ),
    );
}

function folderWithoutSet(folder: string): Problem {
  return problemOfFile(folder, {
    code: "folder-without-set",
    message: `The folder ${folder}/ has no set.md, so nothing says what its tiles have in common`,
    hint: `Write ${folder}/set.md with a line “name:” between two lines of “---”, or move the tiles to tiles/.`,
  });
}

function findInFirings(archive: ArchiveFiles, folder: string, collector: FileCollector): void {
  const { files, folders, problems } = listKnown(archive, folder);
  collector.add(...problems);
  for (const name of files) {
    if (idKey(name) === "set.md") collector.add(setNamedFirings(`${folder}/${name}`));
    else if (isMarkdown(name)) collector.addRecord("firing", folder, name);
    else findLog(archive, { folder, name, files }, collector);
  }
  for (const name of folders)
    collector.add(
      tooDeep(`${folder}/${name}`, `Put firings and their logs into ${folder}/ itself.`),
    );
}

/** A log may be a text of any name; what begins as a record does is none. */
function findLog(archive: ArchiveFiles, stray: Stray, collector: FileCollector): void {
  const problem = strayRecord(archive, stray);
  if (problem && (problem.mend || !/\.(txt|text)$/iu.test(stray.name))) collector.add(problem);
  else collector.addLog(stray.folder, stray.name);
}

function setNamedFirings(file: string): Problem {
  return problemOfFile(file, {
    code: "reserved-set",
    message: "A set cannot be named “firings”: that folder holds the kiln loads",
    hint: "Give the set's folder another name.",
  });
}
