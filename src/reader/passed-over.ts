/** Files and folders that are no part of an archive, told by their names. */

/** READMEs, licences, and what begins with a full stop. */
const beside = /^\.|^(readme|licen[cs]e)(\.\w+)?$/iu;

/** What systems, editors and office programs leave lying about: locks, thumbnails, half-written copies. */
const leftBehind = /^~\$|^#.*#$|^(thumbs\.db|ehthumbs\.db|desktop\.ini|icon\r)$|~$|\.(swp|tmp)$/iu;

/** Whether a name is passed over in silence. */
export function isPassedOver(name: string): boolean {
  return beside.test(name) || leftBehind.test(name);
}
