/** What an editor offers where somebody writes: fields, choices, and what the archive has. */
import type { YamlCursor } from "../reader/yaml-cursor.ts";
import type { KnownName, KnownNames } from "./names.ts";
import type { FieldShape, Shape } from "./shape.ts";
import { mapsWith, shapesAt } from "./shape-at.ts";

export interface Offer {
  readonly kind: "field" | "choice" | "name";
  /** What it is called in the list. */
  readonly label: string;
  /** What is written in the place of what was typed. */
  readonly text: string;
  /** What closes it, behind the place where writing goes on. */
  readonly closing: string;
  /** A few words beside it. */
  readonly detail: string;
  /** The sentence that explains it. */
  readonly sentence: string;
  /** Other words that find it. */
  readonly also: readonly string[];
}

/** Offers for a cursor in a record of some kind. */
export function offersAt(record: Shape, cursor: YamlCursor, known: KnownNames): readonly Offer[] {
  const shapes = shapesAt(record, cursor.path);
  if (cursor.at === "name") return fieldOffers(shapes, cursor, "");
  const values = onlyOnce(shapes.flatMap((shape) => valueOffers(shape, known)));
  if (cursor.path.length === 0 || cursor.startsLine)
    return [...values, ...fieldOffers(shapes, cursor, ""), ...entryOffers(shapes, cursor)];
  return [...values, ...fieldOffers(shapes, cursor, "{"), ...entryOffers(shapes, cursor)];
}

/** @param opening what a map begins with on a line that something stands on already */
function fieldOffers(shapes: readonly Shape[], cursor: YamlCursor, opening: string) {
  const { beside } = cursor;
  const closing = opening === "" ? "" : "}";
  const offers = mapsWith(shapes, beside).flatMap(({ fields, oneOf }) => {
    const settled = oneOf.some((name) => beside.includes(name)) ? oneOf : [];
    return [...fields]
      .filter(([name]) => !beside.includes(name) && !settled.includes(name))
      .map(([name, field]) => ({
        ...fieldOffer(name, field),
        text: `${opening}${name}: `,
        closing,
      }));
  });
  // What is needed comes first: of a layer, what it is.
  return onlyOnce(offers).toSorted((a, b) => Number(b.detail !== "") - Number(a.detail !== ""));
}

function fieldOffer(name: string, { sentence, required }: FieldShape): Offer {
  const detail = required ? "needed" : "";
  return { kind: "field", label: name, text: `${name}: `, closing: "", detail, sentence, also: [] };
}

/** The first entry of a list of maps, where none stands yet. */
function entryOffers(shapes: readonly Shape[], cursor: YamlCursor): readonly Offer[] {
  if (cursor.isEntry) return [];
  const entries = shapes.flatMap(({ entries: entry, maps }) =>
    entry && maps.length === 0 ? [entry] : [],
  );
  const [opening, closing] = cursor.startsLine ? ["- ", ""] : ["[{", "}]"];
  return fieldOffers(entries, { ...cursor, beside: [] }, "").map((offer) => ({
    ...offer,
    text: `${opening}${offer.text}`,
    closing,
  }));
}

function valueOffers(shape: Shape, known: KnownNames): readonly Offer[] {
  const { sentence } = shape;
  const inside = shape.entries ? valueOffers({ ...shape.entries, sentence }, known) : [];
  return [
    ...shape.choices.map((word): Offer => {
      return {
        kind: "choice",
        label: word,
        text: word,
        closing: "",
        detail: "",
        sentence,
        also: [],
      };
    }),
    ...shape.names.flatMap((name) => known[name]).map((name) => nameOffer(name, sentence)),
    ...inside,
  ];
}

function nameOffer({ word, name, detail, also }: KnownName, sentence: string): Offer {
  const told = [name, detail].filter((it) => it !== "").join(", ");
  return {
    kind: "name",
    label: word,
    text: quoted(word),
    closing: "",
    detail: told,
    sentence,
    also: [name, ...also],
  };
}

/** As YAML needs it: what could be read as something else stands between quotes. */
function quoted(word: string): string {
  return /^[\p{L}\p{N}][\p{L}\p{M}\p{N}._-]*$/u.test(word) ? word : JSON.stringify(word);
}

function onlyOnce(offers: readonly Offer[]): readonly Offer[] {
  return [...new Map(offers.map((offer) => [`${offer.kind} ${offer.label}`, offer])).values()];
}
