/** The glazes that a request adds or changes, and those that change with what they are mixed from. */
import type { Caution } from "../chemistry/cautions/cautions.ts";
import { findMaterialIdOf } from "../chemistry/from-records.ts";
import { tellReasons } from "../chemistry/why-no-chemistry.ts";
import type { Archive, Filed, Tile } from "../records/archive.ts";
import type { GlazeRecord } from "../records/glaze.ts";
import { materialsIn, withBlended } from "../records/uses.ts";
import { compareIds, idKey } from "../terms/ids.ts";
import { indexBy } from "../terms/index-by.ts";
import { fieldChanges, isSame } from "./fields.ts";
import type { GlazeChange, GlazeSide } from "./types.ts";
import type { Version } from "./version.ts";

type Glaze = Filed<GlazeRecord>;

/** Glazes whose record, chemistry or cautions are otherwise than before. */
export function glazesOfRequest(before: Version | null, after: Version): readonly GlazeChange[] {
  const tiles = before ? tilesByGlaze(before.archive) : new Map<string, readonly string[]>();
  const changes = [...after.archive.glazes].flatMap(([key, glaze]) => {
    const earlier = before?.archive.glazes.get(key);
    const change = glazeChange(glaze, earlier, before, after, tiles.get(key) ?? []);
    return change ? [change] : [];
  });
  return changes.sort((a, b) => compareIds(a.now.record.name, b.now.record.name));
}

function glazeChange(
  glaze: Glaze,
  earlier: Glaze | undefined,
  before: Version | null,
  after: Version,
  tiles: readonly string[],
): GlazeChange | undefined {
  const { id, file } = glaze;
  const now = sideOf(glaze, after);
  const was = before && earlier ? sideOf(earlier, before) : null;
  const fields = fieldChanges("glaze", earlier, glaze);
  const cautions = cautionsFor(glaze, after);
  const had = before && earlier ? cautionsFor(earlier, before) : [];
  const came = was ? cautions.filter((one) => !had.some((other) => isAlike(one, other))) : [];
  const went = had.filter((one) => !cautions.some((other) => isAlike(one, other)));
  const isOther = fields.length > 0 || came.length > 0 || went.length > 0;
  if (was && !isOther && isSame(figuresOf(was), figuresOf(now))) return undefined;
  return {
    ...{ what: was ? "changed" : "added", id, file, was, now, fields, came, went, cautions, tiles },
    isOtherRecipe: was !== null && !isSame(recipeOf(was.record), recipeOf(now.record)),
    through: before && was ? changedWithin(glaze, before.archive, after.archive) : [],
  };
}

function sideOf({ id, record }: Glaze, { findings }: Version): GlazeSide {
  const found = findings.chemistry.get(idKey(id));
  const isExpected = record.bought === undefined;
  return {
    record,
    chemistry: found?.ok ? found.chemistry : null,
    whyNot: found && !found.ok && isExpected ? tellReasons(found.reasons) : null,
  };
}

function figuresOf({ chemistry, whyNot }: GlazeSide): unknown {
  return chemistry === null ? whyNot : { ...chemistry, raw: null };
}

function recipeOf({ ingredients, additions, blend, by, bought }: GlazeRecord): unknown {
  return { ingredients, additions, blend, by, bought };
}

function cautionsFor({ id }: Glaze, { hazards }: Version): readonly Caution[] {
  return hazards.get(idKey(id)) ?? [];
}

function isAlike(a: Caution, b: Caution): boolean {
  return a.code === b.code && a.message === b.message && a.isLoud === b.isLoud;
}

/** The ids of materials and glazes that it is mixed from and that are otherwise than before. */
function changedWithin(glaze: Glaze, before: Archive, after: Archive): readonly string[] {
  const within = withBlended([glaze.id], after);
  const idOf = findMaterialIdOf(after);
  const materials = materialsIn(within, after, (word) => idOf(word) ?? word);
  const own = idKey(glaze.id);
  return [
    ...[...materials].flatMap((key) => changedId(key, before.materials, after.materials)),
    ...[...within].flatMap((key) =>
      key === own ? [] : changedId(key, before.glazes, after.glazes),
    ),
  ].sort(compareIds);
}

function changedId(
  key: string,
  before: ReadonlyMap<string, Filed<object>>,
  after: ReadonlyMap<string, Filed<object>>,
): readonly string[] {
  const [was, now] = [before.get(key), after.get(key)];
  return isSame(was?.record, now?.record) ? [] : [now?.id ?? was?.id ?? key];
}

/** The codes of the tiles that have each glaze on them, by itself or blended into another, by `idKey`. */
export function tilesByGlaze(archive: Archive): ReadonlyMap<string, readonly string[]> {
  const blended = new Map<string, ReadonlySet<string>>();
  const within = (id: string) => {
    const found = blended.get(id) ?? withBlended([id], archive);
    blended.set(id, found);
    return found;
  };
  const keysOn = ({ steps }: Tile) => [
    ...new Set(
      steps.flatMap((step) =>
        step.step === "coat" ? step.glazes.flatMap((id) => [...within(id)]) : [],
      ),
    ),
  ];
  const byGlaze = indexBy(archive.tiles.values(), keysOn);
  return new Map(
    [...byGlaze].map(([key, tiles]) => [key, tiles.map(({ id }) => id).sort(compareIds)]),
  );
}
