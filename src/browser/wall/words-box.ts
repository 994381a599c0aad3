/** The box for words. Typing finds; the code of a tile and Enter leads to it. */
import type { Facets } from "../../publish/facets-file.ts";
import { element } from "../parts/element.ts";
import { findCode } from "./words.ts";

export interface WordsBox {
  readonly form: HTMLFormElement;
  /** Shows words that came from elsewhere, unless somebody is typing. */
  readonly show: (words: string) => void;
}

/** How long somebody must pause before what was typed is looked for, in milliseconds. */
const pause = 150;

export function makeWordsBox(
  facets: Facets,
  root: string,
  find: (words: string) => void,
): WordsBox {
  const input = element("input", {
    type: "search",
    name: "words",
    placeholder: "a code, a glaze, a word",
    autocomplete: "off",
    enterkeyhint: "search",
  });
  const label = element("label", {}, element("span", {}, "Find"), input);
  const form = element("form", { class: "words-box", role: "search" }, label);
  let waiting: ReturnType<typeof setTimeout> | undefined;
  input.addEventListener("input", () => {
    clearTimeout(waiting);
    waiting = setTimeout(() => find(input.value.trim()), pause);
  });
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    clearTimeout(waiting);
    const url = findCode(facets, input.value);
    if (url === undefined) find(input.value.trim());
    else location.href = root + url;
  });
  const show = (words: string) => {
    if (document.activeElement !== input) input.value = words;
  };
  return { form, show };
}
