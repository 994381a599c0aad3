/** The words of the sentence that ask for a colour: they open the browser's own colour picker. */
import { element } from "../parts/element.ts";
import type { Asked, Near } from "./near.ts";

export interface NearBox {
  readonly node: HTMLElement;
  /** Shows the colour asked for, wherever it came from. */
  readonly show: (asked: Asked | undefined) => void;
}

/** How long a hand must rest while it picks before the tiles follow, in milliseconds. */
const pause = 150;

/**
 * @param choose takes the colour that was picked, undefined where it was cleared; `going` where
 * it only takes the place of the one before, since the picker was not closed in between
 */
export function makeNearBox(choose: (near: Near | undefined, going: boolean) => void): NearBox {
  const input = element("input", { type: "color", name: "near", value: "#808080" });
  const swatch = element("span", { class: "asked", "aria-hidden": "true" });
  const word = element("span");
  const field = element("span", { class: "field" }, input, swatch, word);
  const lead = element("span", { class: "lead" }, "near ");
  const what = element("span", { class: "unseen" }, " the colour");
  const clear = element("button", { type: "button", class: "plain" }, "clear", what);
  const node = element("span", { class: "near" }, element("label", {}, lead, field), clear);
  const stop = listenToPicker(input, (going) => choose({ hex: input.value }, going));
  clear.addEventListener("click", () => {
    stop();
    input.focus();
    choose(undefined, false);
  });
  const show = (asked: Asked | undefined) => {
    field.classList.toggle("chosen", asked !== undefined);
    clear.hidden = asked === undefined;
    swatch.hidden = asked === undefined;
    swatch.style.background = asked?.hex ?? "";
    word.textContent = asked?.name ?? "a colour";
    if (asked && document.activeElement !== input) input.value = asked.hex;
  };
  return { node, show };
}

/** Tells of every colour that a hand rests on, and of the last; gives a way to stop waiting. */
function listenToPicker(input: HTMLInputElement, tell: (going: boolean) => void): () => void {
  let waiting: ReturnType<typeof setTimeout> | undefined;
  let going = false;
  const pick = () => {
    clearTimeout(waiting);
    tell(going);
    going = true;
  };
  input.addEventListener("input", () => {
    clearTimeout(waiting);
    waiting = setTimeout(pick, pause);
  });
  input.addEventListener("change", () => {
    pick();
    going = false;
  });
  return () => clearTimeout(waiting);
}
