/** The words of the sentence that ask for a colour: they open the browser's own colour picker. */
import { must } from "../parts/element.ts";
import type { Asked, Near } from "./near.ts";

export interface NearBox {
  /** Shows the colour asked for, wherever it came from. */
  readonly show: (asked: Asked | undefined) => void;
}

/** How long a hand must rest while it picks before the tiles follow, in milliseconds. */
const pause = 150;

/**
 * Takes the words that the page holds.
 *
 * @param choose takes the colour that was picked, undefined where it was cleared; `going` where
 * it only takes the place of the one before, since the picker was not closed in between
 */
export function takeNearBox(
  node: HTMLElement,
  choose: (near: Near | undefined, going: boolean) => void,
): NearBox {
  const field = must(node.querySelector<HTMLElement>(".field"));
  const input = must(node.querySelector("input"));
  const swatch = must(node.querySelector<HTMLElement>(".asked"));
  const word = must(node.querySelector<HTMLElement>(".asked-for"));
  const clear = must(node.querySelector("button"));
  const none = word.textContent;
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
    word.textContent = asked?.name ?? none;
    if (asked && document.activeElement !== input) input.value = asked.hex;
  };
  return { show };
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
