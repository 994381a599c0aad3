/** What a set names: its teacher, its control tile, the clay and maker of its defaults. */
import type { Filed } from "../../records/archive.ts";
import type { Problem } from "../../records/problem.ts";
import type { SetRecord } from "../../records/set.ts";
import { idKey } from "../../terms/ids.ts";
import { problemOfFile } from "../problem-of-file.ts";
import { follow, type Known, type Lookup, lookUp, unknownName } from "./look-up.ts";
import { addMaker, clayLookup, type MakerCodes, makerLookup, tileLookup } from "./lookups.ts";
import { isKnown, renamedTile, type TileCodes } from "./tile-codes.ts";

/** What a set may name. */
export interface SetNames {
  /** Null where the studio's makers are unknown. */
  readonly makers: MakerCodes | null;
  readonly clays: Known;
  readonly codes: TileCodes;
}

/** Finds what a set names and nobody knows; its jars are followed by `followJars`. */
export function findUnknownInSet(set: Filed<SetRecord>, names: SetNames): readonly Problem[] {
  const { teacher, defaults = {} } = set.record;
  const find = (
    written: string | undefined,
    path: readonly string[],
    known: Known,
    lookup: Lookup,
  ) =>
    written === undefined ? [] : follow({ file: set.file, path, written }, known, lookup).problems;
  return [
    ...findTeacher(set.file, teacher, names.makers),
    ...(names.makers
      ? find(defaults.maker, ["defaults", "maker"], names.makers.ids, makerLookup(names.makers))
      : []),
    ...find(defaults.clay, ["defaults", "clay"], names.clays, clayLookup),
    ...findControl(set, names.codes),
  ];
}

function findControl(
  { file, record: { control } }: Filed<SetRecord>,
  codes: TileCodes,
): readonly Problem[] {
  if (control === undefined || codes.reservedUnknown || isKnown(control, codes)) return [];
  const mention = { file, path: ["control"], written: control };
  return codes.formerly.has(idKey(control))
    ? [renamedTile(mention, codes)]
    : [unknownName(mention, codes.ids, tileLookup)];
}

/** A set keeps its teacher's key as it was written, so one spelt otherwise would name nobody. */
function findTeacher(
  file: string,
  teacher: string | undefined,
  makers: MakerCodes | null,
): readonly Problem[] {
  if (teacher === undefined || makers === null) return [];
  const keys = [...makers.ids.values()];
  if (keys.includes(teacher)) return [];
  const spelt = lookUp(makers.ids, teacher);
  const fault = {
    code: "unknown-maker",
    message: `There is no maker “${teacher}” in studio.yaml`,
    hint:
      spelt === undefined
        ? `${keys.length > 0 ? `The makers there are ${keys.join(", ")}. ` : ""}${addMaker}`
        : `Write it as studio.yaml spells it: “teacher: ${spelt}”. The makers there are ${keys.join(", ")}.`,
  };
  return [problemOfFile(file, fault, ["teacher"])];
}

/** The keys of every code that a set reserves. */
export function reservedCodes(sets: Iterable<Filed<SetRecord>>): ReadonlySet<string> {
  return new Set([...sets].flatMap(({ record }) => (record.codes ?? []).flat().map(idKey)));
}
