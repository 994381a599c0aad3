/** Numbers, days and lists as they stand in a sentence. */
import { groupThousands } from "../../../src/terms/figures.ts";

/** `1 tile`, `24 tiles`. */
export function count(number: number, one: string, many = `${one}s`): string {
  return `${grouped(number)} ${number === 1 ? one : many}`;
}

/** `1204` as `1,204`. */
export function grouped(number: number): string {
  return groupThousands(String(number));
}

/** `a, b and c`. */
export function listed(words: readonly string[], last = "and"): string {
  if (words.length < 2) return words.join("");
  return `${words.slice(0, -1).join(", ")} ${last} ${words.at(-1)}`;
}

/** `a, b, c and 9 others`: no more than some of a list that may be long. */
export function listedInShort(words: readonly string[], most = 6): string {
  const others = words.length - most;
  return others < 2
    ? listed(words)
    : listed([...words.slice(0, most), `${grouped(others)} others`]);
}

/** `T-1, T-2`, and of many codes no more than a few. */
export function codesInShort(codes: readonly string[]): string {
  return codes.length > 7 ? listedInShort(codes) : codes.join(", ");
}

const months = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
];

/** `2026-10-18` as `18 October 2026`. */
export function formatDay(day: string): string {
  const [year = "", month = "", date = ""] = day.split("-");
  return [date && String(Number(date)), months[Number(month) - 1], year].filter(Boolean).join(" ");
}

/** `4 to 13 October 2025`, `29 September to 8 December 2026`: what two days share is said once. */
export function formatDays(from: string, to: string): string {
  const last = formatDay(to);
  if (from === to) return last;
  const shared =
    from.slice(0, 7) === to.slice(0, 7) ? 2 : from.slice(0, 4) === to.slice(0, 4) ? 1 : 0;
  const first = formatDay(from).split(" ");
  return `${first.slice(0, Math.max(1, first.length - shared)).join(" ")} to ${last}`;
}

/** `satin` as `Satin`. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** Keeps a number and the unit behind it on one line. */
export function tied(words: string): string {
  return words.replace(/ (?=°[CF])/gu, "\u00a0");
}

/** `A` or `An`, for what stands behind it. */
export function article(words: string): "A" | "An" {
  return /^(?:[aeiou]|L-)/iu.test(words) ? "An" : "A";
}

/** A choice with hyphens as words: `too-thin` as `too thin`. */
export function spoken(choice: string): string {
  return choice.replace(/-/gu, " ");
}
