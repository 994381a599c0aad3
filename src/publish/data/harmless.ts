/**
 * Text that a spreadsheet would run as a formula is marked with an apostrophe. A cell is run where it
 * begins with `=`, `+`, `-` or `@`, or with one of their wide forms, and spaces and quotes before it
 * keep no program from that. A spreadsheet that was told to cut at semicolons or tabs, or that takes no
 * heed of quotes, begins a cell within a text as well, so what follows one of those is marked too.
 *
 * Source of the characters and of the separators: OWASP, "CSV Injection",
 * https://owasp.org/www-community/attacks/CSV_Injection; the small forms are ours, to be careful.
 */
const starters = new Set("=+-@＝＋－＠﹦﹢﹣﹫");
const separators = new Set(";|\t\r\n");

/** What a program may leave out before it looks at how a cell begins. */
const passedOver = /[\s\p{C}"']/u;

/** The text with an apostrophe before each character that could begin a formula. */
export function harmless(text: string): string {
  if (!mayBegin.test(text)) return text;
  let marked = "";
  let begins = true;
  for (const letter of text) {
    if (begins && starters.has(letter)) marked += "'";
    marked += letter;
    begins = separators.has(letter) || (begins && passedOver.test(letter));
  }
  return marked;
}

const mayBegin = /[=+\-@＝＋－＠﹦﹢﹣﹫]/u;
