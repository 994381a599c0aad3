/** One photograph of the contact sheet: its code, what it shows, and which way up it lies. */
import type { PhotographView, WriteRequest } from "../../../desk/photographs/types.ts";
import { must } from "../../parts/element.ts";

export class Frame {
  readonly item: HTMLLIElement;
  private turning: WriteRequest["turning"] = 0;
  private isChanged = false;

  /** @param template the list's item as the page brings it */
  constructor(
    private view: PhotographView,
    template: HTMLTemplateElement,
    told: { readonly changed: () => void; readonly leftOut: (frame: Frame) => void },
  ) {
    const made = document.importNode(template.content, true);
    this.item = must(made.querySelector<HTMLLIElement>("li"));
    const image = this.find<HTMLImageElement>("img");
    image.src = `/desk/photographs/small/${view.id}`;
    image.alt = view.name;
    this.find(".name").textContent = view.name;
    this.find(".turn").setAttribute("aria-label", `Turn ${view.name} to the right`);
    this.find(".leave-out").setAttribute("aria-label", `Leave out ${view.name}`);
    this.find(".turn").addEventListener("click", () => this.turn());
    this.find(".leave-out").addEventListener("click", () => told.leftOut(this));
    this.item.addEventListener("input", (event) => {
      if (event.target === this.field) this.isChanged = true;
      this.trouble("");
      told.changed();
    });
    this.propose(view);
  }

  get id(): string {
    return this.view.id;
  }

  get name(): string {
    return this.view.name;
  }

  /** What is to be written of it; undefined where it has no code. */
  get request(): WriteRequest | undefined {
    const code = this.field.value.trim();
    if (code === "") return undefined;
    const role = this.find<HTMLSelectElement>("select").value as WriteRequest["role"];
    return { id: this.id, code, role, turning: this.turning };
  }

  /** What is proposed now; a code that somebody typed stays. */
  propose(view: PhotographView): void {
    this.view = view;
    if (!this.isChanged) this.field.value = view.code ?? "";
    this.find(".words").textContent = view.words;
  }

  trouble(words: string): void {
    this.find(".fault").textContent = words;
  }

  focus(): void {
    this.field.focus();
  }

  private turn(): void {
    this.turning = ((this.turning + 90) % 360) as WriteRequest["turning"];
    this.item.dataset.turned = String(this.turning);
  }

  private get field(): HTMLInputElement {
    return this.find<HTMLInputElement>('[name="code"]');
  }

  private find<T extends HTMLElement = HTMLElement>(selector: string): T {
    return must(this.item.querySelector<T>(selector));
  }
}
