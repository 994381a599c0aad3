/**
 * Which files an archive holds and what each of them is, told by its folder and its name alone.
 * Names are compared without regard to case and Unicode form, as some file systems do, so that
 * an archive means the same everywhere.
 */
import type { Problem } from "../records/problem.ts";
import { idKey } from "../terms/ids.ts";
import { type ArchiveFiles, type FolderListing, listKnown } from "./archive-files.ts";
import { findInTiles } from "./find-tiles.ts";
import {
  FileCollector,
  type FoundFiles,
  isMarkdown,
  type KindOfRecord,
  tooDeep,
  unexpectedFile,
} from "./found-files.ts";
import { problemOfFile } from "./problem-of-file.ts";

const recipeKinds: ReadonlyMap<string, KindOfRecord> = new Map([
  ["glazes", "glaze"],
  ["clays", "clay"],
  ["materials", "material"],
]);

/** Finds the files of an archive. */
export function findFiles(archive: ArchiveFiles): FoundFiles {
  const collector = new FileCollector();
  const root = archive.list("");
  if (root) findInRoot(archive, root, collector);
  else collector.add(noArchive);
  return collector.found();
}

const noArchive = problemOfFile("studio.yaml", {
  code: "no-archive",
  message: "There is no folder of that name, so there is no archive to read",
  hint: "Name the folder that holds studio.yaml.",
});

function findInRoot(archive: ArchiveFiles, root: FolderListing, collector: FileCollector): void {
  const problems = root.problems.filter(({ file }) => isOfArchive(file));
  collector.add(...problems);
  for (const name of root.folders) {
    if (idKey(name) === "tiles") findInTiles(archive, name, collector);
    if (idKey(name) === "recipes") findInRecipes(archive, name, collector);
    if (idKey(name) === "pages") findRecords(archive, name, "page", collector);
  }
  collector.studio = root.files.find(isStudio);
  if (collector.studio === undefined && !problems.some(({ file }) => isStudio(file)))
    collector.add(noStudio(root.files));
}

/** The rest of the root is no concern of the archive's: it may be a checkout of anything. */
function isOfArchive(name: string): boolean {
  return isStudio(name) || ["tiles", "recipes", "pages"].includes(idKey(name));
}

function isStudio(name: string): boolean {
  return idKey(name) === "studio.yaml";
}

function noStudio(names: readonly string[]): Problem {
  const [near, ...others] = names.filter((name) => /^studio\.(yml|md|txt|yaml\.txt)$/iu.test(name));
  const problem = problemOfFile("studio.yaml", {
    code: "no-studio",
    message: "There is no studio.yaml, which says whose archive this is",
    hint: near
      ? `Rename “${near}” to “studio.yaml”.`
      : "Write studio.yaml with two lines: “format: 1” and “studio:” with the studio's name.",
  });
  if (near === undefined || others.length > 0 || !/\.yml$|\.yaml\.txt$/iu.test(near))
    return problem;
  return {
    ...problem,
    mend: { does: "rename", renamings: [{ from: near, to: "studio.yaml" }] },
  };
}

function findInRecipes(archive: ArchiveFiles, recipes: string, collector: FileCollector): void {
  const { files, folders, problems } = listKnown(archive, recipes);
  collector.add(...problems);
  const expected = "The folders glazes, clays and materials belong in recipes/";
  for (const name of files) {
    if (isMarkdown(name)) collector.add(recipeOutsideFolder(`${recipes}/${name}`));
    else collector.addStray(archive, { folder: recipes, name, files }, expected);
  }
  for (const name of folders) {
    const kind = recipeKinds.get(idKey(name));
    if (kind) findRecords(archive, `${recipes}/${name}`, kind, collector);
    else collector.add(unexpectedFile(`${recipes}/${name}`, expected));
  }
}

function recipeOutsideFolder(file: string): Problem {
  return problemOfFile(file, {
    code: "recipe-outside-folder",
    message: `“${file}” is in recipes/ itself, where nothing says what it is a record of`,
    hint: "Move it into recipes/glazes/, recipes/clays/ or recipes/materials/.",
  });
}

function findRecords(
  archive: ArchiveFiles,
  folder: string,
  kind: KindOfRecord,
  collector: FileCollector,
): void {
  const { files, folders, problems } = listKnown(archive, folder);
  collector.add(...problems);
  for (const name of files) {
    if (isMarkdown(name)) collector.addRecord(kind, folder, name);
    else collector.addStray(archive, { folder, name, files }, `Records (.md) belong in ${folder}/`);
  }
  for (const name of folders)
    collector.add(tooDeep(`${folder}/${name}`, `Put its records into ${folder}/ itself.`));
}
