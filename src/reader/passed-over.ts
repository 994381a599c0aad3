/** Files and folders that are no part of an archive, told by their names. */
import { idKey } from "../terms/ids.ts";

/** READMEs, licences, and what begins with a full stop. */
const beside = /^\.|^(readme|licen[cs]e)(\.\w+)?$/iu;

/** What systems, editors and office programs leave lying about: locks, thumbnails, half-written copies. */
const leftBehind = /^~\$|^#.*#$|^(thumbs\.db|ehthumbs\.db|desktop\.ini|icon\r)$|~$|\.(swp|tmp)$/iu;

/** Whether a name is passed over in silence. */
export function isPassedOver(name: string): boolean {
  return beside.test(name) || leftBehind.test(name);
}

/** Whether a file is where an archive has its files: in one of its folders, or studio.yaml itself. */
export function isOfArchive(file: string): boolean {
  const [first = "", ...rest] = file.split("/");
  const key = idKey(first);
  return rest.length === 0 ? key === "studio.yaml" : ["tiles", "recipes", "pages"].includes(key);
}
