/**
 * The last part of an unlisted set's address, which is all that hides it: whether it looks as if it
 * had been drawn at random. No test can tell that it was; these find what people make up, and let all
 * but six in a thousand of those pass that are drawn as base32 (counted over 20,000).
 */

/** 22 letters of 64 kinds hold the 128 bits that nobody can try one by one. */
export const [shortestLink, longestLink] = [22, 64];

/** Why a link can be guessed or cannot be used, in a potter's words; undefined where it is fine. */
export function findLinkFault(link: string): string | undefined {
  if (link.length < shortestLink) return `it has fewer than ${shortestLink} letters and digits`;
  if (link.length > longestLink) return `it has more than ${longestLink} letters and digits`;
  if (!/^[a-z0-9][a-z0-9_-]*$/iu.test(link) || /[^\x20-\x7e]/u.test(link))
    return "only the letters a to z, digits, “-” and “_” can stand in it, and a letter or digit first";
  if (isOfWords(link)) return "it is made of words and numbers that somebody may think of";
  if (isRepeated(link)) return "the same letters come again and again in it";
  if (isRow(link)) return "its letters stand in a row, as in abc or 123";
  return undefined;
}

/** Letters alone, digits alone, or the one kind and the other in turns between hyphens. */
function isOfWords(link: string): boolean {
  return link
    .split(/[-_]+/u)
    .every((piece) => /^([a-z]*|[0-9]*|[a-z]{3,}[0-9]{1,4})$/iu.test(piece));
}

/** Of letters drawn at random hardly three come twice in the same order. */
function isRepeated(link: string): boolean {
  const letters = link.toLowerCase();
  const threes = Array.from({ length: letters.length - 2 }, (_, i) => letters.slice(i, i + 3));
  return new Set(letters).size < 9 || new Set(threes).size < 0.8 * threes.length;
}

/** Of letters drawn at random few follow their neighbour in the alphabet. */
function isRow(link: string): boolean {
  const codes = Array.from(link.toLowerCase(), (letter) => letter.charCodeAt(0));
  const near = codes.filter((code, i) => i > 0 && Math.abs(code - (codes[i - 1] ?? 0)) <= 1);
  return near.length > 0.4 * codes.length;
}
