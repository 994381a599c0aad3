/** The photographs at the head of the columns, which are enlarged and moved in step. */
import type { Subject } from "../../publish/beside-file.ts";
import { element } from "../parts/element.ts";
import { Hands } from "../photograph/hands.ts";
import type { Zoom } from "../photograph/zoom.ts";

export interface Photographs {
  /** A frame for each subject, in their order. */
  readonly frames: readonly HTMLElement[];
  /** Buttons that move all of them. */
  readonly bar: HTMLElement;
}

export function makePhotographs(subjects: readonly Subject[], root: string): Photographs {
  const hands: Hands[] = [];
  const inStep = (zoom: Zoom, from: number) => {
    for (const [i, other] of hands.entries()) if (i !== from) other.follow(zoom);
  };
  const frames = subjects.map(({ id, picture, stage }) => {
    if (!picture) return element("div", { class: "photograph none" }, element("span", {}, stage));
    const image = element("img", {
      src: root + picture.large,
      alt: picture.alt || id,
      draggable: "false",
    });
    const label = `Photograph of ${id}. Plus and minus enlarge all of them, arrows move them.`;
    const frame = element(
      "div",
      { class: "viewer-frame", tabindex: "0", role: "group", "aria-label": label },
      image,
    );
    const place = hands.length;
    hands.push(new Hands(frame, image, (zoom) => inStep(zoom, place), true));
    return frame;
  });
  const [first] = hands;
  const acts: Readonly<Record<string, () => void>> = {
    "+": () => first?.enlarge(),
    "=": () => first?.enlarge(),
    "-": () => first?.reduce(),
    "0": () => first?.reset(),
    ArrowUp: () => first?.look(0, -1),
    ArrowDown: () => first?.look(0, 1),
    ArrowLeft: () => first?.look(-1, 0),
    ArrowRight: () => first?.look(1, 0),
  };
  for (const frame of frames)
    frame.addEventListener("keydown", (event) => press(event, acts, first));
  return { frames, bar: makeBar(acts) };
}

/** Arrows move the photographs only where they are enlarged: else they scroll the page. */
function press(
  event: KeyboardEvent,
  acts: Readonly<Record<string, () => void>>,
  first?: Hands,
): void {
  if (event.ctrlKey || event.metaKey || event.altKey) return;
  const act = acts[event.key];
  if (!act || (event.key.startsWith("Arrow") && !first?.isEnlarged)) return;
  event.preventDefault();
  act();
}

function makeBar(acts: Readonly<Record<string, () => void>>): HTMLElement {
  const buttons = [
    ["larger", "+"],
    ["smaller", "-"],
    ["whole", "0"],
  ].map(([name = "", key = ""]) => {
    const button = element("button", { type: "button", class: "plain" }, name);
    button.addEventListener("click", () => acts[key]?.());
    return button;
  });
  return element("p", { class: "beside-bar quiet" }, "All photographs: ", ...buttons);
}
