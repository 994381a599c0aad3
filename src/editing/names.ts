/** What the fields of an archive may name, each with the words that say what it is. */
import { coneRangeWords } from "../../templates/words/firing/cones.ts";
import { carriedMaterials } from "../chemistry/minerals/minerals.ts";
import { type Archive, findById } from "../records/archive.ts";
import type { Named } from "../records/fields.ts";
import { kindsOfFiring } from "../terms/choices.ts";
import { compareIds, idKey } from "../terms/ids.ts";
import { rememberFor } from "../terms/remember.ts";

/** Something that a field may name. */
export interface KnownName {
  /** As a record writes it. */
  readonly word: string;
  /** What people call it; empty where that says no more than the word. */
  readonly name: string;
  /** What else is known of it, such as its cones. */
  readonly detail: string;
  /** Other words by which it may be looked for. */
  readonly also: readonly string[];
  /** The file of its record, where it has one. */
  readonly file?: string;
}

export type KnownNames = Readonly<Record<Named, readonly KnownName[]>>;

/**
 * What the fields of a record may name.
 *
 * @param set the id of the set that the record lies in, whose jars are meant; null for none
 */
export function knownNames(archive: Archive, set: string | null): KnownNames {
  return { ...namesOfArchive(archive), jar: jarsOf(archive, set) };
}

const namesOfArchive = rememberFor(
  (archive: Archive): Omit<KnownNames, "jar"> => ({
    clay: sorted(archive.clays).map(({ id, file, record: { name, cones } }) => ({
      ...{ word: id, name, file, also: [] },
      detail: cones ? coneRangeWords(cones) : "",
    })),
    firing: sorted(archive.firings).map(({ id, file, record }) => ({
      ...{ word: id, name: record.kiln ?? "", file, also: [] },
      detail: joined([`${record.kind} firing`, record.cone && `cone ${record.cone}`, record.on]),
    })),
    glaze: sorted(archive.glazes).map(({ id, file, record: { name, kind, cones, bought } }) => ({
      ...{ word: id, name, file },
      detail: joined([kind, cones && coneRangeWords(cones)]),
      also: [bought?.maker, bought?.range, bought?.colour].filter((word) => word !== undefined),
    })),
    "kind of firing": kindsOfFiring.map((word) => ({ word, name: "", detail: "", also: [] })),
    maker: Object.entries(archive.studio.makers ?? {}).map(([word, { name = "" }]) => ({
      ...{ word, name, detail: "", also: [] },
    })),
    material: materialsOf(archive),
    tile: sorted(archive.tiles).map(({ id, file, set }) => ({
      ...{ word: id, name: "", file, detail: set ?? "", also: [] },
    })),
  }),
);

function sorted<T extends { readonly id: string }>(records: ReadonlyMap<string, T>): readonly T[] {
  return [...records.values()].sort((a, b) => compareIds(a.id, b.id));
}

/** The studio's own first; one that it has a record of hides the carried one of that id. */
function materialsOf(archive: Archive): readonly KnownName[] {
  const own = sorted(archive.materials).map(({ id, file, record: { name } }) => ({
    ...{ word: id, name, file, detail: "", also: [] },
  }));
  const carried = carriedMaterials.filter(({ id }) => !archive.materials.has(idKey(id)));
  return [
    ...own,
    ...carried.map(({ id, tradeNames }) => ({
      ...{ word: id, name: "", detail: tradeNames.join(", "), also: tradeNames },
    })),
  ];
}

function jarsOf(archive: Archive, set: string | null): readonly KnownName[] {
  const jars = Object.entries(findById(archive.sets, set)?.record.jars ?? {});
  return jars.map(([word, id]) => {
    const glaze = findById(archive.glazes, id);
    const file = glaze && { file: glaze.file };
    return {
      word,
      name: glaze?.record.name ?? id,
      detail: `jar ${word}: ${id}`,
      also: [id],
      ...file,
    };
  });
}

function joined(parts: readonly (string | undefined)[]): string {
  return parts.filter(Boolean).join(", ");
}
