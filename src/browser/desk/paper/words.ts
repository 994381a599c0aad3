/** What is shown of a row: what was understood, and what was not. */
import type { TypedFault } from "../../../desk/paper/typed-tile.ts";
import type { LookedAt } from "../../../desk/paper/types.ts";
import type { Written } from "../../../desk/types.ts";
import { element } from "../../parts/element.ts";

/** Fills the place beneath a row. */
export function showLooked(place: HTMLElement, layers: string, looked: LookedAt): void {
  const drawing = element("div", { class: "drawn" });
  // The server's own drawing: figures and colours, no word of anybody's.
  drawing.innerHTML = looked.drawing;
  const words = element("ol", { class: "understood" });
  words.append(...looked.words.map((step) => element("li", {}, step)));
  const faults = looked.faults.map((fault) => tellFault(fault, layers));
  place.replaceChildren(...(looked.words.length > 0 ? [drawing, words] : []), ...faults);
}

/** What is wrong, with the words of the line that are meant. */
function tellFault({ field, from, to, message, hint }: TypedFault, layers: string): HTMLElement {
  const said = element("p", { class: "fault" });
  if (field === "layers" && from !== undefined && to !== undefined)
    said.append(
      element(
        "span",
        { class: "code" },
        layers.slice(0, from),
        element("mark", {}, layers.slice(from, to)),
        layers.slice(to),
      ),
      element("br"),
    );
  said.append(`${message}. ${hint}`);
  return said;
}

export function showWritten(place: HTMLElement, { words, files }: Written): void {
  const lines = files.flatMap((file) => file.lines.map(({ text }) => text)).join("\n");
  place.append(element("p", { class: "told" }, words));
  if (lines !== "")
    place.append(
      element(
        "details",
        {},
        element("summary", {}, "What the file holds"),
        element("pre", {}, lines),
      ),
    );
}

export function showTrouble(place: HTMLElement, words: string): void {
  place.replaceChildren(element("p", { class: "fault" }, words));
}
