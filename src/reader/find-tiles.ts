/** What lies in `tiles/`: tiles and their pictures, sets, and the folder of the firings. */
import type { Problem } from "../records/problem.ts";
import { idKey } from "../terms/ids.ts";
import { type ArchiveFiles, listKnown } from "./archive-files.ts";
import { type Finds, isMarkdown, isPicture, tooDeep } from "./finds.ts";
import { problemOfFile } from "./problem-of-file.ts";
import { recordNameOf, type Stray, strayRecord } from "./stray-files.ts";

/** The folder of the firings; no set can have its name. */
const firingsFolder = "firings";

/** Finds the tiles, the sets and their tiles, and the firings. */
export function findInTiles(archive: ArchiveFiles, folder: string, finds: Finds): void {
  const { files, folders, problems } = listKnown(archive, folder);
  finds.add(...problems);
  for (const name of files) {
    if (idKey(name) === "set.md") finds.add(setOutsideFolder(`${folder}/${name}`));
    else findTileFile(archive, { folder, name, files }, finds);
  }
  for (const name of folders) {
    if (idKey(name) === firingsFolder) findInFirings(archive, `${folder}/${name}`, finds);
    else findInSet(archive, folder, name, finds);
  }
}

function setOutsideFolder(file: string): Problem {
  return problemOfFile(file, {
    code: "set-outside-folder",
    message: "There is a set.md in tiles/ itself, where it belongs to no set",
    hint: "Make a folder for the set and put set.md into it, with the set's tiles.",
  });
}

function findTileFile(archive: ArchiveFiles, stray: Stray, finds: Finds): void {
  const { folder, name } = stray;
  if (isMarkdown(name)) finds.addRecord("tile", folder, name);
  else if (isPicture(name)) finds.addPicture(folder, name);
  else finds.addStray(archive, stray, "Records (.md) and their photographs belong in tiles/");
}

function findInSet(archive: ArchiveFiles, tiles: string, id: string, finds: Finds): void {
  const folder = `${tiles}/${id}`;
  const { files, folders, problems } = listKnown(archive, folder);
  finds.add(...problems);
  const set = files.find((name) => idKey(name) === "set.md");
  if (set !== undefined) finds.addSet(folder, set, id);
  // A set.md that was saved under another name is told as that.
  else if (!files.some((name) => idKey(recordNameOf(name) ?? "") === "set.md"))
    finds.add(folderWithoutSet(folder));
  for (const name of files) if (name !== set) findTileFile(archive, { folder, name, files }, finds);
  for (const name of folders)
    finds.add(
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

function findInFirings(archive: ArchiveFiles, folder: string, finds: Finds): void {
  const { files, folders, problems } = listKnown(archive, folder);
  finds.add(...problems);
  for (const name of files) {
    if (idKey(name) === "set.md") finds.add(setNamedFirings(`${folder}/${name}`));
    else if (isMarkdown(name)) finds.addRecord("firing", folder, name);
    else findLog(archive, { folder, name, files }, finds);
  }
  for (const name of folders)
    finds.add(tooDeep(`${folder}/${name}`, `Put firings and their logs into ${folder}/ itself.`));
}

/** A log may be a text of any name; what begins as a record does is none. */
function findLog(archive: ArchiveFiles, stray: Stray, finds: Finds): void {
  const problem = strayRecord(archive, stray);
  if (problem && (problem.mend || !/\.(txt|text)$/iu.test(stray.name))) finds.add(problem);
  else finds.addLog(stray.folder, stray.name);
}

function setNamedFirings(file: string): Problem {
  return problemOfFile(file, {
    code: "reserved-set",
    message: "A set cannot be named “firings”: that folder holds the kiln loads",
    hint: "Give the set's folder another name.",
  });
}
