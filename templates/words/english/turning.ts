/** What a page says of the others that a long list was cut into. */
import { capital, count, grouped } from "./numbers.ts";

interface Part {
  readonly before: number;
  readonly shown: number;
  readonly total: number;
}

/** `Tiles 49 to 96 of 1,203.` */
export function partSentence({ before, shown, total }: Part, many: string): string {
  const [from, to] = [grouped(before + 1), grouped(before + shown)];
  return `${capital(many)} ${from} to ${to} of ${grouped(total)}.`;
}

/** `5 of 48 tiles`, or `48 tiles` where none is shown. */
export function partWords(shown: number, total: number): string {
  return shown === 0 ? count(total, "tile") : `${grouped(shown)} of ${count(total, "tile")}`;
}

/** `Buff, page 2 of 26`. */
export function pageTitle(title: string, here: number, pages: number): string {
  return here === 0 ? title : `${title}, page ${here + 1} of ${pages}`;
}
