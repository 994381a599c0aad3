/** Fields that name things outside the record: codes, files, web addresses, a format. */
import type * as z from "zod";
import { countCodes, findCodes } from "../../terms/ids.ts";
import { mostCodesOfRecord } from "../../terms/limits.ts";
import { findLinkFault } from "../../terms/links.ts";
import { refusing } from "./forms.ts";
import { type Named, scalar } from "./scalar.ts";

/**
 * A code or a range of codes, spelt out: `TB-101..TB-103`.
 *
 * @param names `tile` where it names tiles that are there
 */
export const codes = (...names: readonly Named[]) =>
  scalar<readonly string[]>(
    (found) => {
      const meant = rangeMeantBy(found);
      const value = meant === undefined ? findCodes(found) : undefined;
      if (value) return { value };
      if (meant !== undefined)
        return {
          code: "bad-code-range",
          message: `“${found}” looks like a range of codes, and is written as one code`,
          hint: `Write it with two full stops: ${meant}.`,
        };
      return {
        code: "bad-code-range",
        message: `“${found}” cannot be read as a code or a range of codes`,
        hint: "Write a range from the lower to the higher number of one series, as in TB-101..TB-109.",
      };
    },
    { type: ["string", "number"] },
    names,
  );

/**
 * Codes and ranges, however they are grouped, of which one record may name only so many: refused
 * before any range is spelt out.
 */
export function boundedCodes<Out>(schema: z.ZodType<Out>) {
  return refusing(schema, (input) => {
    const count = countAll(input);
    if (count <= mostCodesOfRecord) return undefined;
    return {
      code: "too-many-codes",
      message: `These ranges name ${count} codes, and no more than ${mostCodesOfRecord} are read in one record`,
      hint: "Check the ends of each range; write several loads or sets into a record for each.",
    };
  });
}

function countAll(input: unknown): number {
  if (typeof input === "string") return countCodes(input);
  if (typeof input !== "object" || input === null) return 0;
  return Object.values(input).reduce((sum: number, part) => sum + countAll(part), 0);
}

/** A range that was written with a dash, a word or three dots, as it is read: `TB-101..TB-109`. */
function rangeMeantBy(found: string): string | undefined {
  for (const { 0: sign, index } of found.matchAll(/[-–—…]|\.{3}|\bto\b/giu)) {
    const [first, last] = [found.slice(0, index), found.slice(index + sign.length)];
    const range = `${first.trim()}..${last.trim()}`;
    if (!range.includes("...") && (findCodes(range)?.length ?? 0) > 1) return range;
  }
  return undefined;
}

/** The name of a file beside the record. A path that leads elsewhere is a fault. */
export const fileName = () =>
  scalar<string>(
    (found) =>
      /[\\/]|^\.|:/u.test(found)
        ? {
            code: "path-outside",
            message: `“${found}” leads away from the folder of this record`,
            hint: "Write the bare name of a file beside this one.",
          }
        : { value: found },
    { type: "string" },
  );

/** The last part of an address that is hard to guess. */
export const token = () =>
  scalar<string>(
    (found) => {
      const fault = findLinkFault(found);
      if (fault === undefined) return { value: found };
      return {
        code: "bad-token",
        message: `“${found}” hides nothing: ${fault}`,
        hint: "Take the line out, and let the command “check --fix” write a random one.",
      };
    },
    { type: "string" },
  );

/** A web address; nothing but http and https. */
export const webAddress = () =>
  scalar<string>(
    (found) =>
      isWebAddress(found)
        ? { value: found }
        : {
            code: "bad-address",
            message: `“${found}” is not a whole web address`,
            hint: "Write it whole, beginning with https://.",
          },
    { type: "string", format: "uri" },
  );

/** A web address that nobody on the way can read or change. */
export const secureAddress = () =>
  scalar<string>(
    (found) =>
      isWebAddress(found) && found.startsWith("https://")
        ? { value: found }
        : {
            code: "bad-address",
            message: `“${found}” is not a whole web address that begins with https://`,
            hint: "Write it whole, as https://pottery.example.org/.",
          },
    { type: "string", format: "uri" },
  );

/** The name of a picture at the top of the archive that may be a mark: SVG or PNG. */
export const markFile = () =>
  scalar<string>(
    (found) => {
      if (/[\\/]|^\.|:/u.test(found))
        return {
          code: "path-outside",
          message: `“${found}” leads away from studio.yaml`,
          hint: "Put the mark beside studio.yaml, and write its bare name.",
        };
      if (/\.(?:svg|png)$/iu.test(found)) return { value: found };
      return {
        code: "mark-of-another-kind",
        message: `“${found}” is neither an SVG nor a PNG by its name`,
        hint: "Save the mark as SVG or PNG, and write the file's whole name, such as mark.svg.",
      };
    },
    { type: "string" },
  );

/** A colour as the web writes it; the value has six small letters and digits. */
export const webColour = () =>
  scalar<string>(
    (found) => {
      if (/^#[0-9a-f]{6}$/iu.test(found)) return { value: found.toLowerCase() };
      return {
        code: "not-a-colour",
        message: `“${found}” is not a colour as it is read here`,
        hint: 'Write # and six letters or digits, in quotes: “accent: "#a0522d"”.',
      };
    },
    { type: "string", pattern: "^#[0-9a-fA-F]{6}$" },
  );

function isWebAddress(found: string): boolean {
  if (!URL.canParse(found)) return false;
  const url = new URL(found);
  return /^https?:$/u.test(url.protocol) && url.username === "" && url.search === "";
}

/** The version of the archive's format, which must be the one this Tilebook reads. */
export const formatNumber = (current: string) =>
  scalar<string>(
    (found) =>
      found === current
        ? { value: found }
        : {
            code: "unknown-format",
            message: `This archive is written in format ${found}, and this Tilebook reads format ${current}`,
            hint: "Use the Tilebook that the archive was written for, or upgrade the archive as its documentation describes.",
          },
    { enum: [Number(current), current] },
  );
