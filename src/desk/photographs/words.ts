/** By what a code is proposed for a photograph, or why none is. */
import { count, listed } from "../../../templates/words/english/numbers.ts";
import type { Match } from "../../loads/match-photographs.ts";
import type { PictureRole } from "../../records/archive.ts";

/**
 * @param order whose order was used, in words; null for none
 * @param why why the code that was found cannot be written
 */
export function matchWords(match: Match, order: string | null, why: string | undefined): string {
  if (match.code !== null) {
    const by = match.by === "read" ? "read in the frame" : `by the order of ${order ?? "the list"}`;
    if (why === undefined) return `${match.code}, ${by}.`;
    return `This looks like ${match.code}, ${by}. ${why}`;
  }
  if (match.because === "several")
    return `There are labels of ${listed(match.codes)} in the frame: say which tile it shows.`;
  if (match.because === "second")
    return `${match.of} was read in the frame, and in ${match.first} before. If this shows a detail or the back, say so and give its code.`;
  if (match.because === "no-list") return "No code was read in the frame.";
  return `No code was read in the frame. ${whyNotByOrder(match, order ?? "the list")}`;
}

type NotByOrder = Extract<Match, { because: "crossed" | "uneven" }>;

function whyNotByOrder(match: NotByOrder, order: string): string {
  const { after, before } = match;
  if (after !== null && after === before)
    return `It was taken between two photographs of ${after}, so the order does not tell.`;
  const where = whereWords(after, before, order);
  if (match.because === "crossed")
    return `${where} the labels that were read do not follow the order of ${order}, so it does not tell.`;
  const { photographs, codes } = match;
  const tiles = `${count(photographs, "photograph")} and ${count(codes, "tile")}`;
  return `${where} there ${photographs === 1 ? "is" : "are"} ${tiles}, so the order does not tell.`;
}

/** Of which stretch of the list something is said. */
function whereWords(after: string | null, before: string | null, order: string): string {
  if (after !== null && before !== null) return `Between ${after} and ${before}`;
  if (after !== null) return `After ${after}`;
  return before === null ? `In ${order}` : `Before ${before}`;
}

/** What is said of QR codes that belong to no tile: ` Another QR code is in the frame and was not used.` */
export function strangeWords(number: number): string {
  if (number === 0) return "";
  if (number === 1) return " Another QR code in the frame belongs to no tile here.";
  return ` ${number} other QR codes in the frame belong to no tile here.`;
}

export const roleWords: Readonly<Record<PictureRole, string>> = {
  result: "the result",
  before: "before firing",
  detail: "a detail",
  back: "the back",
};
