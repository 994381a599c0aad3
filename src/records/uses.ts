/**
 * What tiles and sets use: the glazes on them and in their jars, the clays, the firings, the people
 * they name. By `idKey`; people by their keys in studio.yaml.
 */
import { idKey } from "../terms/ids.ts";
import { indexBy } from "../terms/index-by.ts";
import { rememberFor } from "../terms/remember.ts";
import type { Archive, Filed, Tile } from "./archive.ts";
import type { SetRecord } from "./set.ts";

export interface Uses {
  /** Those that are blended into the glazes on tiles and in jars are among them. */
  readonly glazes: ReadonlySet<string>;
  readonly clays: ReadonlySet<string>;
  readonly firings: ReadonlySet<string>;
  readonly makers: ReadonlySet<string>;
}

/** All that some tiles and some sets use. A firing is used by a set whose reserved codes it holds. */
export function usesOf(
  { tiles, sets }: { readonly tiles: readonly Tile[]; readonly sets: readonly Filed<SetRecord>[] },
  archive: Pick<Archive, "firings" | "glazes">,
): Uses {
  const records = sets.map(({ record }) => record);
  return {
    glazes: withBlended([...tiles.flatMap(glazesOn), ...records.flatMap(glazesInJars)], archive),
    clays: keysOf([
      ...tiles.map(({ clay }) => clay),
      ...records.map(({ defaults }) => defaults?.clay),
    ]),
    firings: new Set([...tiles.flatMap(firingsOf), ...firingsOfCodes(records, archive)]),
    makers: new Set(
      [
        ...tiles.map(({ maker }) => maker),
        ...records.flatMap(({ teacher, defaults }) => [teacher, defaults?.maker]),
      ].filter((key) => key != null),
    ),
  };
}

function keysOf(ids: readonly (string | null | undefined)[]): ReadonlySet<string> {
  return new Set(ids.filter((id) => id != null).map(idKey));
}

function glazesOn({ steps }: Tile): readonly string[] {
  return steps.flatMap((step) => (step.step === "coat" ? [...step.glazes, ...step.over] : []));
}

function glazesInJars({ jars = {} }: SetRecord): readonly string[] {
  return Object.values(jars);
}

/** Glazes by their keys, with those that are blended into them, however deep. */
export function withBlended(
  ids: Iterable<string>,
  { glazes }: Pick<Archive, "glazes">,
): ReadonlySet<string> {
  const found = new Set<string>();
  const left = [...ids].map(idKey);
  for (let key = left.pop(); key !== undefined; key = left.pop()) {
    if (found.has(key)) continue;
    found.add(key);
    left.push(...(glazes.get(key)?.record.blend ?? []).map(({ glaze }) => idKey(glaze)));
  }
  return found;
}

function firingsOf({ steps }: Tile): readonly string[] {
  return steps.flatMap((step) =>
    step.step === "fired" && step.firing !== null ? [idKey(step.firing)] : [],
  );
}

function firingsOfCodes(
  sets: readonly SetRecord[],
  { firings }: Pick<Archive, "firings">,
): readonly string[] {
  const reserved = sets.flatMap(({ codes = [] }) => codes.flat());
  return reserved.flatMap((code) => firingsByCode(firings).get(idKey(code)) ?? []);
}

/** The keys of the firings whose load lists name a code, by the code's key. */
const firingsByCode = rememberFor((firings: Archive["firings"]) => {
  const named = indexBy(firings, ([, { record }]) =>
    Object.values(record.tiles ?? {}).flatMap((entries) => entries.flat().map(idKey)),
  );
  return new Map([...named].map(([code, loads]) => [code, loads.map(([key]) => key)]));
});

/**
 * The materials that some glazes are weighed out of, by `idKey`.
 *
 * @param idOf the id of the material that a recipe means by a word: flint is silica
 */
export function materialsIn(
  glazes: Iterable<string>,
  archive: Pick<Archive, "glazes">,
  idOf: (word: string) => string,
): ReadonlySet<string> {
  const found = new Set<string>();
  for (const key of glazes) {
    const { ingredients = [], additions = [] } = archive.glazes.get(key)?.record ?? {};
    for (const { material } of [...ingredients, ...additions]) found.add(idKey(idOf(material)));
  }
  return found;
}
