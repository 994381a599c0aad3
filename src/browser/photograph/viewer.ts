/** A photograph as large as the screen, in a dialog; its neighbours on the wall beside it. */
import { element } from "../parts/element.ts";
import { Hands } from "./hands.ts";

export interface Photograph {
  /** Address of its largest file. */
  readonly file: string;
  readonly alt: string;
  readonly caption: string;
}

export interface Steps {
  readonly before: string | undefined;
  readonly after: string | undefined;
}

/** An address that ends so opens the photograph at once. */
export const openMark = "#photograph";

export class Viewer {
  private readonly dialog = element("dialog", { class: "viewer" });
  private readonly picture = element("img", { draggable: "false" });
  private readonly frame = element("div", { class: "viewer-frame" }, this.picture);
  private readonly caption = element("p", {});
  private readonly hands = new Hands(this.frame, this.picture);

  constructor(private readonly steps: Steps) {
    const bar = element(
      "div",
      { class: "viewer-bar" },
      this.caption,
      button("larger", () => this.hands.enlarge()),
      button("smaller", () => this.hands.reduce()),
      ...this.stepLink("before", steps.before),
      ...this.stepLink("next", steps.after),
      button("close", () => this.dialog.close()),
    );
    this.dialog.append(this.frame, bar);
    this.dialog.addEventListener("keydown", (event) => this.press(event));
    document.body.append(this.dialog);
  }

  open({ file, alt, caption }: Photograph): void {
    this.picture.src = file;
    this.picture.alt = alt;
    this.caption.textContent = caption;
    this.dialog.setAttribute("aria-label", `Photograph of ${caption}`);
    this.hands.reset();
    this.dialog.showModal();
  }

  private stepLink(name: string, address: string | undefined): HTMLElement[] {
    return address === undefined ? [] : [element("a", { href: address + openMark }, name)];
  }

  /** Arrows look around in an enlarged photograph, and step to its neighbours otherwise. */
  private press(event: KeyboardEvent): void {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const act = this.actOf(event.key);
    if (!act) return;
    event.preventDefault();
    act();
  }

  private actOf(key: string): (() => void) | undefined {
    const { hands, steps } = this;
    const acts: Record<string, () => void> = {
      "+": () => hands.enlarge(),
      "=": () => hands.enlarge(),
      "-": () => hands.reduce(),
      "0": () => hands.reset(),
      ArrowUp: () => hands.look(0, -1),
      ArrowDown: () => hands.look(0, 1),
      ArrowLeft: () => (hands.isEnlarged ? hands.look(-1, 0) : go(steps.before)),
      ArrowRight: () => (hands.isEnlarged ? hands.look(1, 0) : go(steps.after)),
    };
    return acts[key];
  }
}

function go(address: string | undefined): void {
  if (address !== undefined) location.replace(address + openMark);
}

function button(name: string, act: () => void): HTMLButtonElement {
  const made = element("button", { type: "button", class: "plain" }, name);
  made.addEventListener("click", act);
  return made;
}
