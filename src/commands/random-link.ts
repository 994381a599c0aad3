/** Draws the last part of an unlisted set's address. */
import { randomBytes } from "node:crypto";
import { findLinkFault } from "../terms/links.ts";

/** RFC 4648's letters of base32, small: none is taken for another case of itself. */
const letters = "abcdefghijklmnopqrstuvwxyz234567";

/** 26 letters of five bits each, from the system's own source of chance: 130 bits. */
export function drawLink(): string {
  const drawn = Array.from(randomBytes(26), (byte) => letters[byte % letters.length]).join("");
  return findLinkFault(drawn) === undefined ? drawn : drawLink();
}
