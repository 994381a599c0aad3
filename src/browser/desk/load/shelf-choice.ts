/** The shelf that is being filled: chosen by touch, or by its number on the keyboard. */
import { element, must } from "../../parts/element.ts";

export class ShelfChoice {
  current = "";

  constructor(
    private readonly place: HTMLElement,
    own: HTMLElement,
    private readonly added: (name: string) => void,
  ) {
    const field = must(own.querySelector("input"));
    const add = () => {
      const name = field.value.trim();
      field.value = "";
      if (name !== "") this.added(name);
    };
    must(own.querySelector("button")).addEventListener("click", add);
    field.addEventListener("keydown", (event) => {
      if (event.key !== "Enter") return;
      event.preventDefault();
      add();
    });
    document.addEventListener("keydown", (event) => this.byNumber(event));
  }

  /** Shows shelves and keeps the chosen one, or takes the first. */
  fill(names: readonly string[], current: string): void {
    this.current = names.includes(current) ? current : (names[0] ?? "");
    const legend = must(this.place.querySelector("legend"));
    const choices = names.map((name, at) => this.choice(name, at + 1));
    this.place.replaceChildren(legend, ...choices);
  }

  private choice(name: string, number: number): HTMLLabelElement {
    const input = element("input", { type: "radio", name: "shelf", value: name });
    input.checked = name === this.current;
    input.addEventListener("change", () => {
      this.current = name;
    });
    const key = element("kbd", {}, String(number));
    return element("label", {}, input, ` ${name} `, ...(number < 10 ? [key] : []));
  }

  private byNumber(event: KeyboardEvent): void {
    const { target, key } = event;
    const isTyped =
      target instanceof HTMLElement &&
      target.matches("input:not([type=radio]):not([type=checkbox]), select");
    if (isTyped || event.ctrlKey || event.metaKey || event.altKey || !/^[1-9]$/u.test(key)) return;
    this.place.querySelectorAll<HTMLInputElement>("input")[Number(key) - 1]?.click();
  }
}
