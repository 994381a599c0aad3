/** What the name of a photograph says, and what it was meant to say. */
import type { PictureRole } from "../../records/archive.ts";
import { looseKey, withoutCopyMarks } from "../meant-names.ts";

/** A tile's code, and what of the tile is shown. */
export interface PictureName {
  readonly id: string;
  readonly role: PictureRole;
}

/** `TB-014.back.jpg` is the back of TB-014, unless there is a tile `TB-014.back`. */
export function readingsOf(name: string): readonly PictureName[] {
  const stem = name.replace(/\.\w+$/u, "");
  const named = /^(.+)\.(before|detail|back)(?:(?<=detail)[^.]*)?$/iu.exec(stem);
  const whole = { id: stem, role: "result" as const };
  if (!named) return [whole];
  return [whole, { id: named[1] ?? "", role: (named[2] ?? "").toLowerCase() as PictureRole }];
}

/** How a name that leads to no tile may be read all the same. */
export interface MeantName {
  readonly role: PictureRole;
  /** The `looseKey` of the tile's code. */
  readonly key: string;
  /** The file's name for a tile of this code. */
  readonly nameFor: (id: string) => string;
}

/** The readings of a misspelt name: as a photograph of the result first, then as what it says. */
export function meantBy(name: string): readonly MeantName[] {
  const ending = endingOf(name);
  const stem = withoutCopyMarks(withoutEndings(name));
  const named = /^(.+?)[\s._-]+(before|detail|back)((?:(?<=detail)[\s._-]*[\p{L}\p{N}-]+)?)$/iu;
  const whole: MeantName = {
    role: "result",
    key: looseKey(stem),
    nameFor: (id) => `${id}.${ending}`,
  };
  const [, code = "", word = "", more = ""] = named.exec(stem) ?? [];
  if (word === "") return [whole];
  const role = word.toLowerCase() as PictureRole;
  const suffix = more.replace(/[\s._-]+/gu, "-");
  return [
    whole,
    { role, key: looseKey(code), nameFor: (id) => `${id}.${role}${suffix}.${ending}` },
  ];
}

const endings = /(?:\s*\.(?:jpe?g|png|webp|avif|tiff?|heic|heif))+$/iu;

/** `CL-02.HEIC.jpg` was saved anew: only its last ending is one. */
function withoutEndings(name: string): string {
  return name.replace(endings, "");
}

function endingOf(name: string): string {
  return name.slice(name.lastIndexOf(".") + 1).toLowerCase();
}
