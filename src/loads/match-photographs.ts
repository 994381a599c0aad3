/**
 * Which photograph shows which tile: by the code that was read in the frame, or by the order in which
 * they were taken. What is found is a proposal, which somebody looks at before anything is written.
 */
import { compareIds, idKey } from "../terms/ids.ts";

export interface Frame {
  /** The file's name, as the camera gave it. */
  readonly name: string;
  /** Codes of the archive that were read in it, each once. */
  readonly read: readonly string[];
}

/** A tile in the order of the load list, or of its set. */
export interface TileInOrder {
  readonly code: string;
  /** Whether its photograph is still missing. */
  readonly isAwaited: boolean;
}

/** A stretch of the list, between two codes that were read; null where the list begins or ends. */
interface Stretch {
  readonly after: string | null;
  readonly before: string | null;
}

export type Match =
  | { readonly code: string; readonly by: "order" | "read" }
  /** More than one code lies in the frame. */
  | { readonly code: null; readonly because: "several"; readonly codes: readonly string[] }
  /** The code was read in an earlier photograph too, whose name this is. */
  | { readonly code: null; readonly because: "second"; readonly of: string; readonly first: string }
  | { readonly code: null; readonly because: "no-list" }
  /** The codes that were read do not follow the list here. */
  | ({ readonly code: null; readonly because: "crossed" } & Stretch)
  /** There are more photographs here than codes, or fewer. */
  | ({
      readonly code: null;
      readonly because: "uneven";
      readonly photographs: number;
      readonly codes: number;
    } & Stretch);

/** By the names that a camera gives: IMG_9 before IMG_10. */
export function inOrderOfNames<T extends { readonly name: string }>(frames: readonly T[]): T[] {
  return [...frames].sort((a, b) => compareIds(a.name, b.name));
}

/**
 * Proposes a code for each photograph, or says why it has none. A code that was read is never
 * overruled, and none is proposed twice. Between two codes that were read, the order of the list
 * fills in, and only where there are as many photographs as codes, or as codes that still want one.
 *
 * @param frames in the order in which they were taken
 * @param order each code once; empty where there is no list
 * @returns one for each frame, in their order
 */
export function matchPhotographs(
  frames: readonly Frame[],
  order: readonly TileInOrder[],
): readonly Match[] {
  const matches: (Match | undefined)[] = matchRead(frames);
  const places = new Map(order.map(({ code }, at) => [idKey(code), at]));
  const taken = new Set(frames.flatMap(({ read }) => read.map(idKey)));
  for (const { open, from, to } of stretchesOf(frames, places, order.length)) {
    const found = fill(open.length, order, { from, to }, taken);
    for (const [i, at] of open.entries()) {
      const match = found[i];
      if (match?.code) taken.add(idKey(match.code));
      matches[at] ??= match;
    }
  }
  return matches.map((match) => match ?? { code: null, because: "no-list" });
}

/** What the codes in the frames say by themselves; undefined for a frame without one. */
function matchRead(frames: readonly Frame[]): (Match | undefined)[] {
  const firsts = new Map<string, string>();
  return frames.map(({ name, read }) => {
    const [code] = read;
    if (code === undefined) return undefined;
    if (read.length > 1) return { code: null, because: "several", codes: read };
    const first = firsts.get(idKey(code));
    if (first !== undefined) return { code: null, because: "second", of: code, first };
    firsts.set(idKey(code), name);
    return { code, by: "read" };
  });
}

interface OpenStretch {
  /** Places of the photographs in which not one single code was read. */
  readonly open: readonly number[];
  /** The place in the list of the code that was read before them: -1 where there is none. */
  readonly from: number;
  /** Of the one behind them: the length of the list where there is none. */
  readonly to: number;
}

/** A frame with a code that is not in the list is no tile of this load, and counts for nothing. */
function stretchesOf(
  frames: readonly Frame[],
  places: ReadonlyMap<string, number>,
  length: number,
): readonly OpenStretch[] {
  const stretches: OpenStretch[] = [];
  let [open, from]: [number[], number] = [[], -1];
  for (const [at, { read }] of frames.entries()) {
    if (read.length !== 1) open.push(at);
    const to = read.length === 1 ? places.get(idKey(read[0] ?? "")) : undefined;
    if (to === undefined) continue;
    stretches.push({ open, from, to });
    [open, from] = [[], to];
  }
  return [...stretches, { open, from, to: length }];
}

function fill(
  photographs: number,
  order: readonly TileInOrder[],
  { from, to }: { readonly from: number; readonly to: number },
  taken: ReadonlySet<string>,
): readonly (Match | undefined)[] {
  const all = (match: Match) => Array.from({ length: photographs }, () => match);
  if (order.length === 0) return all({ code: null, because: "no-list" });
  const stretch = { after: order[from]?.code ?? null, before: order[to]?.code ?? null };
  const between = order.slice(from + 1, to);
  if (to < from || between.some(({ code }) => taken.has(idKey(code))))
    return all({ code: null, because: "crossed", ...stretch });
  const awaited = between.filter(({ isAwaited }) => isAwaited);
  const chosen = [between, awaited].find(({ length }) => length === photographs);
  if (chosen) return chosen.map(({ code }) => ({ code, by: "order" }));
  return all({ code: null, because: "uneven", photographs, codes: between.length, ...stretch });
}
