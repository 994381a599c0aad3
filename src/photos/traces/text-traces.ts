import { bufferOf, latin1 } from "../containers/part.ts";
import type { Trace } from "./trace.ts";

/**
 * Finds traces in words: in XMP under whatever prefix, as attribute, element or structure; in the
 * atoms of a film; in remarks that spell out coordinates. Nought bytes and white space are taken
 * out first, so that UTF-16 reads like ASCII and no padding comes between a name and its value.
 * Every pattern ends after a bounded stretch, so the work grows with the bytes and no faster.
 */
export function findTextTraces(bytes: Uint8Array): Trace[] {
  const text = compact(bytes);
  const named = names.flatMap(([trace, name]) => (holdsProperty(text, name) ? [trace] : []));
  return isFilmPlace(bytes, text) || worded.some((words) => words.test(text))
    ? [...named, "place"]
    : named;
}

function compact(bytes: Uint8Array): string {
  const kept = Buffer.alloc(bytes.length);
  let length = 0;
  for (const byte of bytes) {
    if (byte <= 0x20) continue;
    kept[length] = byte;
    length += 1;
  }
  return latin1(kept, 0, length).toLowerCase();
}

/** Ends a name: its value comes after it, or another attribute of its element. */
const end = "(?=[=>]|rdf:|xml:)";

/**
 * Local names of properties (XMP, part 2; IPTC Photo Metadata 2023; W3C's geo positions), lower case.
 * The first takes all of Exif's and what makers of drones and phones spell in their own way.
 */
const names: readonly (readonly [Trace, RegExp])[] = [
  ["place", /gps[:_.-]?(?:dest)?(?:l(?:at|on|ng)|pos|coord|area)[a-z]{0,16}/g],
  ["place", new RegExp(`:(?:lat|long?|latitude|longitude|coordinates)${end}`, "g")],
  [
    "place",
    new RegExp(
      `:(?:city|(?:sub)?location(?:created|shown|name)?|state|provincestate|country(?:name|code)?|shotlocation|coverage)${end}`,
      "g",
    ),
  ],
  ["device", new RegExp(`:(?:lens)?(?:make|model)${end}`, "g")],
  ["owner", new RegExp(`:(?:camera)?ownername${end}`, "g")],
  ["owner", new RegExp(`:(?:artist|author|creator|credit|rights|authorsposition)${end}`, "g")],
  ["serial", new RegExp(`(?:serialnumber|imageuniqueid)${end}`, "g")],
];

/** Whether the text names a property and does not leave it plainly empty. */
function holdsProperty(text: string, name: RegExp): boolean {
  for (const { 0: found, index } of text.matchAll(name)) {
    const after = text.slice(index + found.length, index + found.length + 3);
    const isEmpty = ['=""', "=''", "></"].includes(after) || after.startsWith("/>");
    if (!isEmpty) return true;
  }
  return false;
}

/** Coordinates as people and programs spell them: in decimals, in degrees and minutes, as a link. */
const worded = [
  /\d{1,2}\.\d{4,12}[ns\xb0]?[,;/|]?[-+]?\d{1,3}\.\d{4,12}/,
  /\d{1,3}(?:\xc2?\xb0|deg)\d{1,2}(?:'|min|\xe2\x80\xb2)[\d.]{0,8}(?:"|''|sec|\xe2\x80\xb3)?[nsew]/,
  /geo:-?\d{1,2}(?:\.\d{1,12})?,-?\d{1,3}/,
  // ISO 6709, annex H: degrees with decimals, and the solidus that ends it.
  /[+-]\d{2,6}\.\d{1,12}[+-]\d{3,7}\.\d{1,12}(?:[+-]\d{1,7}(?:\.\d{1,6})?)?(?:crs[\w:-]{1,16})?\//,
];

const iso6709 = /[+-]\d{2,6}(?:\.\d{1,12})?[+-]\d{3,7}/;

/**
 * The place of a film: QuickTime's atom and key for a text as ISO 6709 has it, and the box of 3GPP
 * TS 26.244, section 8.10, which is called `loci` and begins with four noughts.
 */
function isFilmPlace(bytes: Uint8Array, text: string): boolean {
  const isNamed = text.includes("\xa9xyz") || text.includes("location.iso6709");
  return (isNamed && iso6709.test(text)) || bufferOf(bytes).includes("loci\0\0\0\0", 0, "latin1");
}
