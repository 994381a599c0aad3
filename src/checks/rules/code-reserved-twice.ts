import {
  firstToReserve,
  listReservedCodes,
  type ReservedCode,
} from "../../records/reserved-codes.ts";
import { idKey } from "../../terms/ids.ts";
import type { ArchiveRule } from "../check.ts";

export const codeReservedTwice: ArchiveRule = {
  of: "archive",
  name: "code-reserved-twice",
  severity: "error",
  explains: "A code is reserved by one set only.",
  find: (archive) => {
    const reserved = listReservedCodes(archive);
    const first = firstToReserve(archive);
    const clashes = new Map<string, { at: ReservedCode; other: string; codes: string[] }>();
    for (const at of reserved) {
      const other = first.get(idKey(at.code));
      if (!other || other === at.set) continue;
      const key = `${at.set.file}\n${at.index}\n${other.file}`;
      const clash = clashes.get(key);
      if (clash) clash.codes.push(at.code);
      else clashes.set(key, { at, other: other.id, codes: [at.code] });
    }
    return [...clashes.values()].map(({ at, other, codes }) => ({
      file: at.set.file,
      path: ["codes", at.index],
      message: `${inWords(codes)} reserved by the set ${other} too`,
      hint: "Give each set codes of its own, in one of the two.",
    }));
  },
};

function inWords([first, ...more]: readonly string[]): string {
  const last = more.at(-1);
  if (last === undefined) return `${first} is`;
  return more.length === 1
    ? `${first} and ${last} are`
    : `${more.length + 1} codes, ${first} to ${last}, are`;
}
