import type { HeifEntry } from "../containers/heif-items.ts";
import {
  type HeifAssociation,
  type HeifItem,
  type HeifLocation,
  type HeifReference,
  readAssociations,
  readItems,
  readLocations,
  readReferences,
} from "../containers/heif-items.ts";
import { cursor, findBox, parseBoxes } from "../containers/isobmff.ts";
import { latin1, type Part } from "../containers/part.ts";
import { findNeededItems, opacityTypes } from "./heif-needed.ts";

/** What the `meta` box of an AVIF or HEIC tells of its items (ISO/IEC 14496-12, section 8.11). */
export interface HeifMeta {
  readonly box: Part;
  readonly boxes: readonly Part[];
  readonly items: readonly HeifItem[];
  readonly locations: readonly HeifLocation[];
  readonly references: readonly HeifReference[];
  /** Each `ipma` box with what it holds. */
  readonly associations: readonly { box: Part; associations: HeifAssociation[]; countAt: number }[];
  /** The properties in their order, the first being number 1. */
  readonly properties: readonly Part[];
  readonly needed: ReadonlySet<number>;
}

/** Throws a RangeError where the box does not say what it must, or points where nothing can be. */
export function readMeta(bytes: Uint8Array, box: Part): HeifMeta {
  const boxes = wholeBoxes(bytes, box.bodyStart + 4, box.end);
  const [pitm, iinf, iloc, iprp] = ["pitm", "iinf", "iloc", "iprp"].map((name) => {
    const found = findBox(boxes, name);
    if (!found || boxes.filter((other) => other.name === name).length > 1)
      throw new RangeError(name);
    return found;
  }) as [Part, Part, Part, Part];
  const inIprp = wholeBoxes(bytes, iprp.bodyStart, iprp.end);
  const properties = inIprp.filter(({ name }) => name === "ipco");
  if (properties.length !== 1 || inIprp.some(({ name }) => name !== "ipco" && name !== "ipma"))
    throw new RangeError("iprp");
  const iref = findBox(boxes, "iref");
  const read = {
    box,
    boxes,
    items: readItems(bytes, iinf).items,
    locations: readLocations(bytes, iloc).locations,
    references: iref ? readReferences(bytes, iref) : [],
    associations: inIprp
      .filter(({ name }) => name === "ipma")
      .map((ipma) => ({ box: ipma, ...readAssociations(bytes, ipma) })),
    properties: properties.flatMap((ipco) => wholeBoxes(bytes, ipco.bodyStart, ipco.end)),
  };
  return { ...read, needed: findNeeded(bytes, pitm, read) };
}

function wholeBoxes(bytes: Uint8Array, from: number, to: number): readonly Part[] {
  const { parts, complete } = parseBoxes(bytes, from, to);
  const areShort = parts.every(({ start, bodyStart }) => bodyStart - start === 8);
  if (!complete || !areShort) throw new RangeError("boxes");
  return parts;
}

function findNeeded(
  bytes: Uint8Array,
  pitm: Part,
  { items, references, associations, properties }: Omit<HeifMeta, "needed">,
): ReadonlySet<number> {
  const take = cursor(bytes, pitm.bodyStart);
  const idLength = take(4) < 0x01000000 ? 2 : 4;
  const primary = take(idLength);
  const isOpacity = (id: number) =>
    associations
      .flatMap((each) => each.associations)
      .filter((association) => association.id === id)
      .flatMap((association) => association.properties)
      .some((number) => isOpacityType(bytes, properties[number - 1]));
  const needed = findNeededItems(primary, items, references, isOpacity);
  if (needed.size === 0) throw new RangeError("no picture");
  return needed;
}

function isOpacityType(bytes: Uint8Array, property: Part | undefined): boolean {
  if (property?.name !== "auxC") return false;
  const words = latin1(bytes, property.bodyStart + 4, property.end);
  return opacityTypes.some((type) => words.startsWith(`${type}\0`));
}

/** The raw bytes of those entries that belong to needed items. */
export function keepEntries<Entry extends HeifEntry>(
  bytes: Uint8Array,
  entries: readonly Entry[],
  isKept: (entry: Entry) => boolean,
): Buffer[] {
  return entries.filter(isKept).map(({ start, end }) => Buffer.from(bytes.subarray(start, end)));
}
