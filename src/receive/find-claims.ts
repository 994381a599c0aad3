/** From the files of a hand-in to the tiles in it. */
import { decodeRecord } from "../reader/decode-text.ts";
import { isMarkdown, isPicture } from "../reader/found-files.ts";
import { looseKey, withoutCopyMarks } from "../reader/meant-names.ts";
import { meantBy, readingsOf } from "../reader/references/picture-names.ts";
import type { PictureRole } from "../records/archive.ts";
import { findIdFault, idKey } from "../terms/ids.ts";
import { largestRecord } from "../terms/limits.ts";
import type { Claim, ClaimedPicture, Claims } from "./claim.ts";
import { baseOf, folderOf, type HandedFile, type HandIn, nameOf, type Refusal } from "./hand-in.ts";

/** What of the archive is asked of while hand-ins are read. */
export interface Known {
  /** The code of a tile of the archive, by its key. */
  readonly tiles: ReadonlyMap<string, string>;
  /** The id of a set of the archive, by its key. */
  readonly sets: ReadonlyMap<string, string>;
  /** The name of the photograph that a record names, where it names one. */
  readonly namedPhoto: (text: string) => string | undefined;
}

/** The tiles in the records and photographs of one hand-in; its spreadsheets are read elsewhere. */
export function findClaims(handIn: HandIn, known: Known): Claims {
  const records = handIn.files.filter(({ path }) => isMarkdown(baseOf(path)));
  const read = records.map((file) => readRecord(handIn, file, known));
  const claims = read.flatMap((each) => ("stem" in each ? [each] : []));
  const refusals = read.flatMap((each) => ("why" in each ? [each] : []));
  return givePictures(handIn, { claims, refusals }, known);
}

interface Started extends Claim {
  readonly folder: string;
  /** The name of the photograph that its record names. */
  readonly photo: string | undefined;
}

function readRecord(handIn: HandIn, file: HandedFile, known: Known): Started | Refusal {
  const what = nameOf(handIn, file.path);
  const other = otherRecord(file.path);
  if (other !== undefined) return { what, why: other };
  const contents = file.read();
  const reading = decodeRecord(
    "bytes" in contents && contents.bytes.length > largestRecord
      ? { tooLarge: contents.bytes.length }
      : contents,
  );
  if (!reading.ok || !("bytes" in contents)) {
    const fault = reading.ok ? undefined : reading.fault;
    return { what: `${what}, line ${fault?.line ?? 1}`, why: `${fault?.message}. ${fault?.hint}` };
  }
  return {
    from: what,
    stem: stemOf(baseOf(file.path).slice(0, -".md".length)),
    set: setOf(file.path, known),
    text: new TextDecoder("utf-8", { ignoreBOM: true }).decode(contents.bytes),
    pictures: [],
    folder: folderOf(file.path),
    photo: known.namedPhoto(reading.text),
  };
}

/** A code without what marks a second download: `TB-101 (1)` is `TB-101`. */
function stemOf(written: string): string {
  const stem = written.normalize("NFC");
  return findIdFault(stem) === undefined ? stem : withoutCopyMarks(stem);
}

/** What is told of a record that is no tile's; undefined where it may be one. */
function otherRecord(path: string): string | undefined {
  if (idKey(baseOf(path)) === "set.md")
    return "It is a set's record, and only tiles are received. Put it into the archive yourself, if you want it.";
  if (/(^|\/)(recipes|pages|tiles\/firings)\//iu.test(path))
    return "It is no tile's record by the folder it is in, and only tiles are received. Put it into the archive yourself, if you want it.";
  return undefined;
}

/** The set that a file was handed in for: its folder in `tiles/`, or a folder with a set's name. */
function setOf(path: string, { sets }: Known): string | null {
  const folders = folderOf(path).split("/");
  const named = idKey(folders.at(-2) ?? "") === "tiles" ? folders.at(-1) : undefined;
  return named ?? sets.get(idKey(folders.at(-1) ?? "")) ?? null;
}

function givePictures(
  handIn: HandIn,
  found: { readonly claims: readonly Started[]; readonly refusals: readonly Refusal[] },
  known: Known,
): Claims {
  const own = new Map<Started, ClaimedPicture[]>(found.claims.map((claim) => [claim, []]));
  const alone = new Map<string, Claim & { readonly pictures: ClaimedPicture[] }>();
  const refusals = [...found.refusals];
  for (const file of handIn.files.filter(({ path }) => isPicture(baseOf(path)))) {
    const shown = shownBy(file, found.claims);
    if (shown) own.get(shown.claim)?.push(shown.picture);
    else if (!addToTile(handIn, file, known, alone) && !file.isBeside)
      refusals.push({ what: nameOf(handIn, file.path), why: ofNoTile });
  }
  const claims = [...own].map(
    ([{ folder, photo, ...claim }, pictures]): Claim => ({ ...claim, pictures }),
  );
  return { claims: [...claims, ...alone.values()], refusals };
}

const ofNoTile =
  "No tile of this code was handed in, and there is none in the archive. Name it after its tile, such as TB-014.jpg or TB-014.before.jpg.";

interface Shown {
  readonly claim: Started;
  readonly picture: ClaimedPicture;
}

/** The tile that a photograph shows: in its own folder first, else the only one of that code. */
function shownBy(file: HandedFile, claims: readonly Started[]): Shown | undefined {
  const [folder, name] = [folderOf(file.path), baseOf(file.path)];
  const beside = claims.filter((claim) => claim.folder === folder);
  const naming = beside.find(({ photo }) => photo !== undefined && idKey(photo) === idKey(name));
  if (naming) return { claim: naming, picture: { role: "result", suffix: null, file } };
  for (const { role, suffix, isOf } of waysToRead(name)) {
    const [claim, ...more] =
      [beside, claims]
        .map((some) => some.filter(({ stem }) => isOf(stem)))
        .find((some) => some.length > 0) ?? [];
    if (claim && more.length === 0) return { claim, picture: { role, suffix, file } };
  }
  return undefined;
}

interface WayToRead {
  readonly role: PictureRole;
  readonly suffix: string;
  readonly isOf: (code: string) => boolean;
}

/** Every way to read a photograph's name: as it is written first, then as it may be meant. */
export function waysToRead(name: string): readonly WayToRead[] {
  const written = readingsOf(name).map(({ id, role }) => ({
    role,
    suffix: name.slice(id.length),
    isOf: (code: string) => idKey(code) === idKey(id),
  }));
  const meant = meantBy(name).map(({ role, key, nameFor }) => ({
    role,
    suffix: nameFor(""),
    isOf: (code: string) => looseKey(code) === key,
  }));
  return [...written, ...meant];
}

/** A photograph of a tile of the archive; false where it is of none. */
function addToTile(
  handIn: HandIn,
  file: HandedFile,
  { tiles }: Known,
  alone: Map<string, Claim & { readonly pictures: ClaimedPicture[] }>,
): boolean {
  for (const { role, suffix, isOf } of waysToRead(baseOf(file.path))) {
    const [code, ...more] = [...tiles.values()].filter(isOf);
    if (code === undefined || more.length > 0) continue;
    const from = nameOf(handIn, file.path);
    const claim = alone.get(code) ?? { from, stem: code, set: null, text: null, pictures: [] };
    claim.pictures.push({ role, suffix, file });
    alone.set(code, claim);
    return true;
  }
  return false;
}
