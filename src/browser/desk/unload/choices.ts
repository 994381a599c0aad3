/** Groups of choices: buttons that are pressed or not, by touch or by the key that stands on them. */
import type { Outcome } from "../../../loads/outcome.ts";
import { must } from "../../parts/element.ts";

/** The fields that are chosen from lists. */
type Chosen = Pick<Outcome, "surface" | "effects" | "faults" | "again" | "fate">;

/** Of these, one at most. */
const single: readonly string[] = ["again", "fate"];

export class Choices {
  private readonly groups: readonly HTMLElement[];

  constructor(
    form: HTMLElement,
    private readonly changed: () => void,
  ) {
    this.groups = [...form.querySelectorAll<HTMLElement>(".choice-group")];
    for (const group of this.groups)
      group.addEventListener("click", ({ target }) => {
        const button = target instanceof Element ? target.closest("button") : null;
        if (button) this.press(group, button);
      });
  }

  get chosen(): Chosen {
    const [surface, effects, faults] = ["surface", "effects", "faults"].map((name) =>
      this.valuesOf(name),
    );
    const [again = null] = this.valuesOf("again");
    const [fate = null] = this.valuesOf("fate");
    return { surface, effects, faults, again, fate } as Chosen;
  }

  show(outcome: Chosen): void {
    for (const group of this.groups) {
      const value = outcome[group.dataset.field as keyof Chosen];
      const values: readonly string[] = value === null ? [] : [value].flat();
      for (const button of choicesIn(group))
        setPressed(button, values.includes(button.dataset.value ?? ""));
      open(
        group,
        values.some((each) => isInside(group, each)),
      );
    }
  }

  /**
   * Takes a key.
   *
   * @returns whether it meant a choice here
   */
  key(key: string): boolean {
    const opened = this.groups.find((group) => group.classList.contains("by-keys"));
    if (opened && (key === "Enter" || key === "Escape")) {
      opened.classList.remove("by-keys");
      return true;
    }
    const places = opened
      ? [must(opened.querySelector(".more"))]
      : this.groups.map((group) => must(group.querySelector(".choices")));
    const found = places
      .flatMap((place) => [...place.querySelectorAll<HTMLButtonElement>("button")])
      .find((button) => button.dataset.key === key && !button.closest("[hidden]"));
    const group = found?.closest<HTMLElement>(".choice-group");
    if (!found || !group) return false;
    this.press(group, found);
    if (found.classList.contains("opens")) group.classList.add("by-keys");
    return true;
  }

  private press(group: HTMLElement, button: HTMLButtonElement): void {
    if (button.classList.contains("opens")) {
      open(group, must(group.querySelector<HTMLElement>(".more")).hidden !== false);
      return;
    }
    const isOn = button.getAttribute("aria-pressed") !== "true";
    const isAlone = single.includes(group.dataset.field ?? "") || button.dataset.value === "none";
    for (const other of choicesIn(group))
      if (isAlone || other.dataset.value === "none") setPressed(other, false);
    setPressed(button, isOn);
    this.changed();
  }

  private valuesOf(name: string): readonly string[] {
    const group = this.groups.find(({ dataset }) => dataset.field === name);
    return choicesIn(must(group))
      .filter((button) => button.getAttribute("aria-pressed") === "true")
      .map(({ dataset }) => dataset.value ?? "");
  }
}

function choicesIn(group: HTMLElement): readonly HTMLButtonElement[] {
  return [...group.querySelectorAll<HTMLButtonElement>("button[data-value]")];
}

function setPressed(button: HTMLButtonElement, isPressed: boolean): void {
  button.setAttribute("aria-pressed", String(isPressed));
}

function isInside(group: HTMLElement, value: string): boolean {
  return group.querySelector(`.more [data-value="${value}"]`) !== null;
}

/** Opens or closes what a group has besides. */
function open(group: HTMLElement, isOpen: boolean): void {
  const more = group.querySelector<HTMLElement>(".more");
  if (!more) return;
  more.hidden = !isOpen;
  must(group.querySelector(".opens")).setAttribute("aria-expanded", String(isOpen));
  if (!isOpen) group.classList.remove("by-keys");
}
