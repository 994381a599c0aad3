/** Which column of a spreadsheet holds what, told by its name. */

/** What a column may hold, besides a part of a layer. */
export type SheetField =
  | "after"
  | "again"
  | "before"
  | "clay"
  | "code"
  | "effects"
  | "fate"
  | "faults"
  | "glazed"
  | "layers"
  | "maker"
  | "next-time"
  | "notes"
  | "photo"
  | "run"
  | "set"
  | "shape"
  | "surface"
  | "texture";

/** What a column may say of a layer. */
export type LayerPart = "by" | "coats" | "layer" | "where";

export type Column =
  | { readonly holds: "field"; readonly field: SheetField }
  | { readonly holds: "layer"; readonly part: LayerPart; readonly nth: number }
  | { readonly holds: "nothing known" }
  /** A second column of the same name: which of them is meant is not for a program to say. */
  | { readonly holds: "the same again" };

/** The names that people give to columns, in small letters, without spaces and signs. */
const fields: Readonly<Record<SheetField, readonly string[]>> = {
  after: ["after", "firing"],
  again: ["again", "wouldyoudoitagain"],
  before: ["before", "photobefore", "beforefiring"],
  clay: ["clay", "claybody", "body"],
  code: ["code", "tile", "tilecode", "tileno", "tilenumber"],
  effects: ["effect", "effects"],
  fate: ["fate"],
  faults: ["fault", "faults"],
  glazed: ["glazed", "date", "day", "dateglazed"],
  layers: ["layers", "coatstack", "layersinorder"],
  maker: ["maker", "makercode", "who"],
  "next-time": ["nexttime"],
  notes: ["note", "notes", "remark", "remarks", "comment", "comments"],
  photo: ["photo", "photos", "photograph", "picture", "image"],
  run: ["run", "ran", "runmm"],
  set: ["set", "class"],
  shape: ["shape"],
  surface: ["surface"],
  texture: ["texture"],
};

const parts: Readonly<Record<LayerPart, readonly string[]>> = {
  by: ["by", "how", "way"],
  coats: ["coat", "coats"],
  layer: ["layer", "glaze"],
  where: ["where", "area", "place"],
};

/** What each column of a spreadsheet holds, by the names in its first row. */
export function matchColumns(names: readonly string[]): readonly Column[] {
  const seen = new Set<string>();
  return names.map((name) => {
    const column = matchColumn(name);
    const key = JSON.stringify(column);
    if (column.holds === "nothing known" || !seen.has(key)) {
      seen.add(key);
      return column;
    }
    return { holds: "the same again" };
  });
}

function matchColumn(name: string): Column {
  const plain = name
    .normalize("NFKC")
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, "");
  const field = findKey(fields, plain);
  if (field) return { holds: "field", field };
  const [, word = "", digits = ""] = /^(\D+)(\d{1,2})$/u.exec(plain) ?? [];
  const part = findKey(parts, word);
  return part && Number(digits) > 0
    ? { holds: "layer", part, nth: Number(digits) }
    : { holds: "nothing known" };
}

function findKey<K extends string>(
  table: Readonly<Record<K, readonly string[]>>,
  word: string,
): K | undefined {
  return (Object.keys(table) as K[]).find((key) => table[key].includes(word));
}
