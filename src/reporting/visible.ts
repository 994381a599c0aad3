/**
 * Contributed text on its way to a terminal. A control character could move the cursor, change
 * the title or turn letters around, so each is replaced by one character that can be seen.
 */

// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is replaced
const control = /[\0-\x1f\x7f-\x9f\u200e\u200f\u2028-\u202e\u2066-\u2069\ufeff]/gu;

/** The same text, of the same length, with nothing in it that a terminal would obey. */
export function makeVisible(text: string): string {
  return text.replace(control, (found) => {
    const code = found.charCodeAt(0);
    if (found === "\t") return " ";
    if (code < 0x20) return String.fromCharCode(0x2400 + code);
    return code === 0x7f ? "\u2421" : "\ufffd";
  });
}

/** Text as a piece of one line of a report: visible, and no longer than a reader needs. */
export function makeLine(text: string, longest = 500): string {
  const visible = makeVisible(text);
  return visible.length > longest ? `${visible.slice(0, longest)}…` : visible;
}
