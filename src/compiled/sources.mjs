/** What Tilebook is made of, and the sums that tell one state of it from another. */
import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { join, relative, sep } from "node:path";
import { fileURLToPath } from "node:url";

/** The folder of a checkout. */
export function projectFolder() {
  return fileURLToPath(new URL("../../", import.meta.url));
}

/** The sum of everything that decides what is compiled: the sources, and the versions of packages. */
export function sumOfSources() {
  const project = projectFolder();
  const files = ["src", "templates"].flatMap((folder) => listFiles(join(project, folder)));
  const settings = ["package-lock.json", "package.json", "tsconfig.json"];
  return sumOfFiles([...files, ...settings.map((name) => join(project, name))]);
}

/**
 * The sum of the code of each room.
 *
 * @returns {Readonly<Record<string, string>>} by the name of the room's folder
 */
export function sumsOfRooms() {
  const project = projectFolder();
  const rooms = readdirSync(join(project, "src"), { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => ({ name, folder: join(project, "src", name) }));
  const templates = { name: "templates", folder: join(project, "templates") };
  return Object.fromEntries(
    [...rooms, templates].map(({ name, folder }) => [name, sumOfFiles(listFiles(folder))]),
  );
}

/** @param {string} folder */
function listFiles(folder) {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();
}

/** @param {readonly string[]} files */
function sumOfFiles(files) {
  const sum = createHash("sha256");
  for (const file of files) {
    const content = readFileSync(file);
    const name = relative(projectFolder(), file).split(sep).join("/");
    sum.update(`${name}\n${content.length}\n`).update(content);
  }
  return sum.digest("hex").slice(0, 32);
}
