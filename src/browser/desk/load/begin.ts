/** The fields of a firing that is begun. */
import type { Habit, LoadView, NewFiring } from "../../../desk/load/types.ts";
import { idKey } from "../../../terms/ids.ts";
import { must } from "../../parts/element.ts";

const names = ["id", "on", "kind", "kiln", "heatedBy", "atmosphere", "cone"] as const;

export class Begin {
  private isIdTyped = false;

  constructor(
    private readonly section: HTMLElement,
    private readonly view: LoadView,
    changed: () => void,
  ) {
    this.field("id").value = view.ids[this.kind] ?? "";
    section.addEventListener("input", ({ target }) => {
      if (target === this.field("id")) this.isIdTyped = true;
      else if (target === this.field("kind") && !this.isIdTyped)
        this.field("id").value = view.ids[this.kind] ?? "";
      this.offer();
      changed();
    });
    must(section.querySelector(".last-time button")).addEventListener("click", () => {
      this.takeLast();
      changed();
    });
    this.offer();
  }

  get kind(): string {
    return this.field("kind").value;
  }

  get firing(): NewFiring {
    return Object.fromEntries(
      names.map((name) => [name, this.field(name).value]),
    ) as unknown as NewFiring;
  }

  /** The shelves of the last load in this kiln. */
  get shelves(): readonly string[] {
    return this.last?.shelves ?? [];
  }

  /** Of the kiln that is named, or of any where none is. */
  private get last(): Habit | undefined {
    const kiln = idKey(this.field("kiln").value.trim());
    return this.view.habits.find((habit) => habit.kind === this.kind && idKey(habit.kiln) === kiln);
  }

  private field(name: (typeof names)[number]): HTMLInputElement {
    return must(this.section.querySelector<HTMLInputElement>(`[name="${name}"]`));
  }

  private offer(): void {
    const { last } = this;
    const place = must(this.section.querySelector<HTMLElement>(".last-time"));
    place.hidden = !last;
    must(place.querySelector("span")).textContent = last ? `Last time: ${last.words}` : "";
  }

  private takeLast(): void {
    const { last } = this;
    if (!last) return;
    this.field("cone").value = last.cone;
    this.field("atmosphere").value = last.atmosphere;
    this.field("heatedBy").value = last.heatedBy;
    if (this.field("kiln").value.trim() === "") this.field("kiln").value = last.ofKiln;
    this.offer();
  }
}
