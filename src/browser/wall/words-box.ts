/** The box for words. Typing finds; the code of a tile and Enter leads to it. */
import type { Facets } from "../../publish/facets-file.ts";
import { findCode } from "./words.ts";

export interface WordsBox {
  /** What was typed before the script ran. */
  readonly typed: string;
  /** Shows words that came from elsewhere, unless somebody is typing. */
  readonly show: (words: string) => void;
}

/** How long somebody must pause before what was typed is looked for, in milliseconds. */
const pause = 150;

/** Takes the box that the page holds. */
export function takeWordsBox(
  input: HTMLInputElement,
  facets: Facets,
  root: string,
  find: (words: string) => void,
): WordsBox {
  let waiting: ReturnType<typeof setTimeout> | undefined;
  input.addEventListener("input", () => {
    clearTimeout(waiting);
    waiting = setTimeout(() => find(input.value.trim()), pause);
  });
  input.addEventListener("keydown", (event) => {
    if (event.key !== "Enter" || event.isComposing) return;
    clearTimeout(waiting);
    const url = findCode(facets, input.value);
    if (url === undefined) find(input.value.trim());
    else location.href = root + url;
  });
  const show = (words: string) => {
    if (document.activeElement !== input) input.value = words;
  };
  return { typed: input.value.trim(), show };
}
