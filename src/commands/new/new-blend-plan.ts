/** What `tilebook new --blend` is to write: the glazes and tiles of a whole blend. */
import { type BlendShape, blendPoints } from "../../chemistry/blend-points.ts";
import { type Archive, type Filed, findById } from "../../records/archive.ts";
import type { GlazeRecord } from "../../records/glaze.ts";
import type { WhyTaken } from "../../records/next-code.ts";
import type { KindOfGlaze } from "../../terms/choices.ts";
import { type ConeRange, compareCones } from "../../terms/cones.ts";
import { findIdFault, idKey } from "../../terms/ids.ts";
import { WrongUsage } from "../failure.ts";

export interface BlendOrder {
  readonly shape: BlendShape;
  /** The glazes at the ends or corners. */
  readonly ends: readonly Filed<GlazeRecord>[];
  /** How many steps lie along an edge. */
  readonly steps: number;
  readonly by: "volume" | "weight";
}

/** One blend of the series, or one of its ends. */
export interface PlannedGlaze {
  readonly id: string;
  /** As it is, or as it will be written. */
  readonly record: GlazeRecord;
  /** Parts of each end, in their order. */
  readonly parts: readonly number[];
  /** Whether its record is still to be written. */
  readonly isNew: boolean;
}

/** Every glaze of a blend, in the order in which its tiles are laid out. */
export function planGlazes(archive: Archive, order: BlendOrder): readonly PlannedGlaze[] {
  return blendPoints(order.shape, order.steps).map((parts) => planGlaze(archive, order, parts));
}

function planGlaze(archive: Archive, order: BlendOrder, parts: readonly number[]): PlannedGlaze {
  const mixed = order.ends
    .map((end, i) => ({ end, parts: parts[i] ?? 0 }))
    .filter((part) => part.parts > 0);
  const [only] = mixed;
  const filed = only && mixed.length === 1 ? only.end : findSameBlend(archive, order, parts);
  if (filed) return { id: filed.id, record: filed.record, parts, isNew: false };
  const id = mixed.map((part) => `${part.end.id}-${part.parts}`).join("-");
  const taken = findById(archive.glazes, id);
  if (taken)
    throw new WrongUsage(
      `${taken.file} is there already and is another glaze. Give that one another name, and nothing was written.`,
    );
  return { id, record: describeBlend(mixed, order.by), parts, isNew: true };
}

/** A glaze of the archive that is blended of the same ends in the same shares. */
function findSameBlend(
  archive: Archive,
  { ends, by }: BlendOrder,
  parts: readonly number[],
): Filed<GlazeRecord> | undefined {
  const wanted = sharesOf(ends.map((end, i) => ({ glaze: end.id, parts: parts[i] ?? 0 })));
  return [...archive.glazes.values()].find(({ record }) => {
    if (!record.blend || (record.by ?? "weight") !== by) return false;
    return sharesOf(record.blend) === wanted;
  });
}

/** Shares as text that is equal where they are. */
function sharesOf(blend: NonNullable<GlazeRecord["blend"]>): string {
  const total = blend.reduce((sum, { parts }) => sum + parts, 0);
  const shares = blend
    .filter(({ parts }) => parts > 0)
    .map(({ glaze, parts }) => `${idKey(glaze)} ${(parts / total).toFixed(6)}`);
  return shares.sort().join();
}

interface MixedEnd {
  readonly end: Filed<GlazeRecord>;
  readonly parts: number;
}

function describeBlend(mixed: readonly MixedEnd[], by: BlendOrder["by"]): GlazeRecord {
  const records = mixed.map(({ end }) => end.record);
  const cones = commonCones(records.map((record) => record.cones));
  return {
    name: mixed.map(({ end, parts }) => `${end.record.name} ${parts}`).join(", "),
    kind: commonKind(records.map((record) => record.kind)),
    blend: mixed.map(({ end, parts }) => ({ glaze: end.id, parts })),
    ...(by === "volume" && { by }),
    ...(cones && { cones }),
    stocked: false,
  };
}

function commonKind(kinds: readonly KindOfGlaze[]): KindOfGlaze {
  const [first = "glaze", ...others] = kinds;
  return others.every((kind) => kind === first) ? first : "glaze";
}

/** The cones that all ranges share; undefined where there are none, or somebody's is not known. */
function commonCones(ranges: readonly (ConeRange | undefined)[]): ConeRange | undefined {
  const known = ranges.flatMap((range) => range ?? []);
  const [first, ...others] = known;
  if (!first || known.length < ranges.length) return undefined;
  const shared = others.reduce(
    (a, b) => ({
      from: compareCones(a.from, b.from) > 0 ? a.from : b.from,
      to: compareCones(a.to, b.to) < 0 ? a.to : b.to,
    }),
    first,
  );
  return compareCones(shared.from, shared.to) > 0 ? undefined : shared;
}

/**
 * A code for each tile.
 *
 * @param written the first code, or the whole range
 * @param free the codes of the set's block that are free, to tell of where one is taken
 */
export function planCodes(
  written: string,
  count: number,
  whyTaken: WhyTaken,
  free: readonly string[],
): readonly string[] {
  const codes = spellOut(written, count);
  for (const code of codes) {
    const fault = findIdFault(code) ?? whyTaken(code);
    if (fault !== undefined)
      throw new WrongUsage(
        `“${code}” cannot be the code of a new tile: ${fault}.${free[0] === undefined ? "" : ` The next free code of the set's block is ${free[0]}.`}`,
      );
  }
  return codes;
}

function spellOut(written: string, count: number): readonly string[] {
  const [first = "", last] = written.split("..");
  const [, stem = "", digits = ""] = /^(.*?)(\d+)$/u.exec(first.trim()) ?? [];
  if (digits === "")
    throw new WrongUsage(`Tiles are counted on from a code that ends in a number, as in LB-1.`);
  const codes = Array.from(
    { length: count },
    (_, i) => `${stem}${String(Number(digits) + i).padStart(digits.length, "0")}`,
  );
  const end = codes.at(-1) ?? "";
  if (last !== undefined && idKey(last.trim()) !== idKey(end))
    throw new WrongUsage(`${count} tiles are to be written: ${first.trim()}..${end} would fit.`);
  return codes;
}
