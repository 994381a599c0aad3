/** What a tile of the archive would gain from what was handed in for it. */
import { makePositionFinder } from "../reader/find-position.ts";
import type { ParsedText, TextParser } from "../reader/parsed-text.ts";
import { findById } from "../records/archive.ts";
import { readAs, type SourceMap } from "../records/read.ts";
import { tileSchema } from "../records/tile.ts";
import { idKey } from "../terms/ids.ts";
import { compareFields, type FieldDifferences } from "./compare-fields.ts";
import { comparePictures, type ShownPicture } from "./compare-pictures.ts";
import type { Refusal } from "./hand-in.ts";
import type { KnownArchive } from "./known-archive.ts";
import type { Addition, AlreadyHere } from "./outcomes.ts";
import type { SettledClaim } from "./settled.ts";

/** What is asked of tiles that are in the archive. */
export interface KnownTiles extends KnownArchive {
  readonly parser: TextParser;
  /** The photographs of a tile, by its id. */
  readonly shown: (tile: string) => readonly ShownPicture[];
  /** Whether a file of the archive has a name. */
  readonly taken: (path: string) => boolean;
}

/** Compares what was handed in with the tile that is there. */
export function planKnown(
  claim: SettledClaim,
  id: string,
  around: KnownTiles,
): Addition | AlreadyHere | Refusal {
  const here = recordOf(id, around);
  if (!here)
    return {
      what: claim.from,
      why: `The record of ${id} in the archive has faults of its own. Mend those first, and then receive this again.`,
    };
  const handedIn = claim.text === null ? undefined : readHandedIn(claim, around.parser);
  if (handedIn && "why" in handedIn) return handedIn;
  const compared = handedIn && compareWith(here, handedIn);
  if (compared?.areLayersOther)
    return {
      what: claim.from,
      why: `${id} is in the archive with other layers. If this is another tile, give it a code of its own; if the archive is wrong, write the layers into ${here.file} by hand.`,
    };
  const pictures = comparePictures(
    { id, file: here.file, pictures: around.shown(id) },
    claim.pictures,
    around.taken,
  );
  const differences = compared?.fields ?? [];
  const addition: Addition = {
    ...{ from: claim.from, tile: id, file: here.file },
    fields: differences.filter(({ was }) => was === null),
    changes: differences.filter(({ was }) => was !== null),
    notes: handedIn ? newNotes(here.notes, handedIn.notes) : "",
    pictures: pictures.added,
    refused: [...pictures.refused, ...(compared?.byHand ?? []).map((field) => byHand(field, here))],
  };
  const isNothing = [addition.fields, addition.changes, addition.pictures, addition.refused].every(
    ({ length }) => length === 0,
  );
  return isNothing && addition.notes === "" ? { from: claim.from, as: id } : addition;
}

function byHand(field: string, { file }: { readonly file: string }): string {
  return `“${field}” is not the same in the archive. Compare the two, and write it into ${file} by hand.`;
}

/**
 * Whether a tile that was handed in is plainly another than the one that has its code: for another set
 * with other layers, or by somebody else with other layers or another photograph.
 */
export function isPlainlyOther(claim: SettledClaim, id: string, around: KnownTiles): boolean {
  const here = recordOf(id, around);
  const handedIn = claim.text === null ? undefined : readHandedIn(claim, around.parser);
  if (!here || !handedIn || "why" in handedIn) return false;
  const { areLayersOther } = compareWith(here, handedIn);
  const isOtherSet = claim.set !== null && idKey(claim.set) !== idKey(here.set ?? "");
  if (isOtherSet && areLayersOther) return true;
  const isOtherMaker = areOther(here.source.maker ?? here.defaults.maker, handedIn.source.maker);
  return isOtherMaker && (areLayersOther || isShownOtherwise(claim, around.shown(id)));
}

function isShownOtherwise({ pictures }: SettledClaim, shown: readonly ShownPicture[]): boolean {
  return pictures.some(({ role, sums }) => {
    const same = shown.filter((picture) => picture.role === role);
    return (
      same.length > 0 && !same.some((picture) => picture.sums.some((sum) => sums.includes(sum)))
    );
  });
}

function areOther(a: unknown, b: unknown): boolean {
  return typeof a === "string" && typeof b === "string" && idKey(a) !== idKey(b);
}

interface Handed {
  readonly source: SourceMap;
  readonly notes: string;
}

interface Here extends Handed {
  readonly file: string;
  readonly set: string | null;
  readonly defaults: SourceMap;
}

function compareWith(here: Here, handedIn: Handed): FieldDifferences {
  return compareFields(here.source, handedIn.source, here.defaults);
}

/** A tile's record as it was written; undefined where it has faults. */
function recordOf(id: string, { archive, texts, parser }: KnownTiles): Here | undefined {
  const tile = findById(archive.tiles, id);
  const held = tile && parser.parse(texts.get(tile.file) ?? "", "markdown");
  if (!held?.source) return undefined;
  const set = findById(archive.sets, tile?.set ?? null);
  const ofSet = set && parser.parse(texts.get(set.file) ?? "", "markdown").source?.defaults;
  const defaults = typeof ofSet === "object" && !Array.isArray(ofSet) ? (ofSet as SourceMap) : {};
  return {
    ...{ source: held.source, notes: held.notes, defaults },
    ...{ file: tile?.file ?? "", set: tile?.set ?? null },
  };
}

/** What was handed in, or its first fault with its line. */
function readHandedIn({ from, text }: SettledClaim, parser: TextParser): Handed | Refusal {
  const plain = (text ?? "").replace(/^\uFEFF/u, "").replace(/\r\n?/gu, "\n");
  const held = parser.parse(plain, "markdown");
  const fault = held.faults.find(({ severity }) => severity === "error");
  if (fault) return { what: `${from}, line ${fault.line}`, why: `${fault.message}. ${fault.hint}` };
  return held.source ? readFields(from, plain, held, held.source, parser) : notRead(from);
}

function notRead(from: string): Refusal {
  return { what: from, why: "Nothing can be read in it. Hand it in again." };
}

function readFields(
  from: string,
  text: string,
  { notes }: ParsedText,
  source: SourceMap,
  parser: TextParser,
): Handed | Refusal {
  const reading = readAs(tileSchema, source);
  if (reading.ok) return { source, notes };
  const [fault] = reading.faults;
  const yaml = parser.yamlOf(text, "markdown") ?? "";
  const { line } = makePositionFinder(yaml)(fault?.path ?? [], fault?.atKey);
  return { what: `${from}, line ${line}`, why: `${fault?.message}. ${fault?.hint}` };
}

/** What the notes that were handed in say beyond those that are there. */
function newNotes(here: string, handedIn: string): string {
  const words = handedIn.trim();
  if (here.includes(words)) return "";
  return (words.startsWith(here) ? words.slice(here.length) : words).trim();
}
