/** Which code and which set each tile gets that was handed in. */
import type { Archive } from "../records/archive.ts";
import { findById } from "../records/archive.ts";
import { freeCodes, type WhyTaken, whyTaken } from "../records/next-code.ts";
import { firstToReserve } from "../records/reserved-codes.ts";
import { findIdFault, idKey } from "../terms/ids.ts";
import { hasNoCode } from "./claim.ts";
import type { Refusal } from "./hand-in.ts";
import type { KnownArchive } from "./known-archive.ts";
import { findMarks, markOf } from "./marks.ts";
import type { SettledClaim } from "./settled.ts";

/** The archive that tiles are received into. */
export interface Receiver extends KnownArchive {
  /** The id of the set for what names none; null where none was said. */
  readonly set: string | null;
  /** Whether a tile that was handed in is plainly another than the one that has its code. */
  readonly isOther: (claim: SettledClaim, tile: string) => boolean;
}

export type Placed =
  /** A tile that is not in the archive yet. */
  | {
      readonly kind: "new";
      readonly claim: SettledClaim;
      readonly code: string;
      readonly set: string | null;
      /** Why its code or its set is another than it came with: whole sentences. */
      readonly why: readonly string[];
      /** What the comment says that it is known again by; null where its code says enough. */
      readonly mark: string | null;
    }
  /** A tile that is in the archive. */
  | { readonly kind: "known"; readonly claim: SettledClaim; readonly tile: string }
  /** The same as one before it, to the letter. */
  | { readonly kind: "same"; readonly claim: SettledClaim; readonly from: string }
  | { readonly kind: "refused"; readonly refusal: Refusal };

/** Places every tile: codes that are free are kept, and then those without one get the next free ones. */
export function placeAll(claims: readonly SettledClaim[], receiver: Receiver): readonly Placed[] {
  const placing = new Placing(receiver);
  const first = claims.map((claim) => placing.place(claim));
  return first.map((placed) => ("kind" in placed ? placed : placing.giveNext(placed)));
}

/** A tile that keeps no code: it gets the next free one once all others have theirs. */
interface WithoutCode {
  readonly claim: SettledClaim;
  readonly set: string | null;
  readonly why: readonly string[];
}

class Placing {
  readonly #receiver: Receiver;
  readonly #marks: ReadonlyMap<string, string>;
  readonly #tiles: ReadonlyMap<string, string>;
  /** The claims that keep their codes, by the codes' keys. */
  readonly #claimed = new Map<string, SettledClaim>();
  /** Where each was handed in first, by what it is known by. */
  readonly #seen = new Map<string, string>();
  readonly #takenFor = new Map<string | null, WhyTaken>();

  constructor(receiver: Receiver) {
    this.#receiver = receiver;
    this.#marks = findMarks(receiver.recordFiles, receiver.texts);
    this.#tiles = tilesByCode(receiver);
  }

  place(claim: SettledClaim): Placed | WithoutCode {
    const mark = markOf(claim);
    const earlier = this.#seen.get(`${mark} ${claim.sum}`);
    if (earlier !== undefined) return { kind: "same", claim, from: earlier };
    this.#seen.set(`${mark} ${claim.sum}`, claim.from);
    const marked = this.#marks.get(mark);
    if (marked !== undefined) return { kind: "known", claim, tile: marked };
    if (hasNoCode(claim.stem)) return this.#placeNameless(claim);
    return this.#placeByCode(claim);
  }

  /** The word in place of a code is one tile's alone: a second hand-in of it is the same tile. */
  #placeNameless(claim: SettledClaim): Placed | WithoutCode {
    const earlier = this.#seen.get(idKey(claim.stem));
    if (earlier !== undefined)
      return refused(
        claim,
        `It is the same tile as in ${earlier}, handed in once more with something else. Take that one in first, and then receive this again: what it adds is shown then.`,
      );
    this.#seen.set(idKey(claim.stem), claim.from);
    return this.#inItsSet(claim, []);
  }

  #placeByCode(claim: SettledClaim): Placed | WithoutCode {
    const code = claim.stem;
    const tile = this.#tiles.get(idKey(code));
    if (tile !== undefined && !this.#receiver.isOther(claim, tile))
      return { kind: "known", claim, tile };
    const fault = findIdFault(code);
    if (fault !== undefined)
      return refused(claim, `“${code}” cannot be a tile's code: ${fault}. Give it another one.`);
    const placed = this.#inItsSet(claim, []);
    if ("kind" in placed) return placed;
    const why = this.#whyNotKept(code, placed.set);
    if (why !== undefined) return { ...placed, why: [...placed.why, why] };
    this.#claimed.set(idKey(code), claim);
    return { kind: "new", ...placed, code, mark: null };
  }

  #whyNotKept(code: string, set: string | null): string | undefined {
    const earlier = this.#claimed.get(idKey(code));
    if (earlier) return `It came as ${code}, and so did ${earlier.from}, which keeps it.`;
    const taken = this.#taken(set)(code);
    return taken === undefined ? undefined : `It came as ${code}: ${taken}.`;
  }

  giveNext({ claim, set: id, why }: WithoutCode): Placed {
    const set = findById(this.#receiver.archive.sets, id);
    const says = why.length === 0 ? "It has no code." : why.join(" ");
    if (!set)
      return refused(claim, `${says} Say with --set which set it is for: its block has the codes.`);
    const isFree = (code: string) => !this.#claimed.has(idKey(code));
    const code = freeCodes(set.record, this.#taken(set.id)).find(isFree);
    if (code === undefined) return refused(claim, `${says} ${noneFree(set)}`);
    this.#claimed.set(idKey(code), claim);
    return { kind: "new", claim, code, set: set.id, why, mark: markOf(claim) };
  }

  #taken(set: string | null): WhyTaken {
    const { archive, recordFiles } = this.#receiver;
    const taken = this.#takenFor.get(set) ?? whyTaken(archive, recordFiles, set);
    this.#takenFor.set(set, taken);
    return taken;
  }

  /** The set that was named; else the one that reserves the code; else the one that was said. */
  #inItsSet(claim: SettledClaim, why: readonly string[]): WithoutCode | Placed {
    const { archive, set: said } = this.#receiver;
    const named = claim.set === null ? undefined : findSet(archive, claim.set);
    if (named !== undefined) return { claim, set: named, why };
    if (claim.set === null) {
      const owner = firstToReserve(archive).get(idKey(claim.stem));
      return { claim, set: owner?.id ?? said, why };
    }
    const unknown = `It was handed in for a set “${claim.set}”, which is not in the archive.`;
    if (said === null)
      return refused(
        claim,
        `${unknown} Make that set first, or say with --set which one it is for.`,
      );
    return { claim, set: said, why: [...why, unknown] };
  }
}

function refused({ from }: SettledClaim, why: string): Placed {
  return { kind: "refused", refusal: { what: from, why } };
}

function noneFree({ id, record, file }: { id: string; record: { codes?: unknown }; file: string }) {
  return record.codes === undefined
    ? `The set ${id} reserves no codes: write some into ${file}, as in “codes: TB-101..TB-140”, or give the tile one.`
    : `The set ${id} has no free code left: reserve more in ${file}.`;
}

/** A set by its id, or by the name that people call it by. */
function findSet({ sets }: Archive, written: string): string | undefined {
  const named = [...sets.values()].filter(({ record }) => idKey(record.name) === idKey(written));
  return findById(sets, written)?.id ?? (named.length === 1 ? named[0]?.id : undefined);
}

/** The id of the tile that has a code, or had it before. */
function tilesByCode({ archive, recordFiles }: Receiver): ReadonlyMap<string, string> {
  const former = [...archive.tiles.values()].flatMap(({ id, record }) =>
    (record.formerly ?? []).map((code) => [idKey(code), id] as const),
  );
  const current = recordFiles
    .filter(({ kind }) => kind === "tile")
    .map(({ id }) => [idKey(id), id] as const);
  return new Map([...former, ...current]);
}
