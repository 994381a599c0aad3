/** The edges of both frames as numbers, for those who would rather type or step than drag. */
import type { Edges, Frames } from "../../copystand/types.ts";
import { parseEdges } from "./edges.ts";

export class Numbers {
  private readonly crop: readonly HTMLInputElement[];
  private readonly grey: readonly HTMLInputElement[];
  private readonly cardButton: HTMLButtonElement;

  constructor(
    private readonly section: HTMLElement,
    private readonly acts: {
      readonly changed: (part: "crop" | "grey", edges: Edges) => void;
      readonly toggleCard: () => void;
    },
  ) {
    this.crop = inputsOf(section, "crop");
    this.grey = inputsOf(section, "grey");
    this.cardButton = section.querySelector("button.card") as HTMLButtonElement;
    this.cardButton.addEventListener("click", () => acts.toggleCard());
    for (const part of ["crop", "grey"] as const)
      for (const input of this[part]) input.addEventListener("input", () => this.read(part));
  }

  show({ crop, grey }: Frames): void {
    write(this.crop, crop);
    if (grey) write(this.grey, grey);
    const fields = this.section.querySelector<HTMLFieldSetElement>('fieldset[name="grey"]');
    if (fields) fields.hidden = grey === null;
    this.cardButton.textContent =
      grey === null ? "Add a frame for the grey card" : "There is no grey card";
  }

  private read(part: "crop" | "grey"): void {
    const inputs = this[part];
    const edges = parseEdges(inputs.map(({ value }) => value));
    for (const input of inputs) input.setAttribute("aria-invalid", String(edges === undefined));
    if (edges) this.acts.changed(part, edges);
  }
}

function inputsOf(section: HTMLElement, part: string): readonly HTMLInputElement[] {
  return [...section.querySelectorAll<HTMLInputElement>(`fieldset[name="${part}"] input`)];
}

/** A field that somebody is typing into is left alone. */
function write(inputs: readonly HTMLInputElement[], edges: Edges): void {
  for (const [i, input] of inputs.entries()) {
    input.setAttribute("aria-invalid", "false");
    if (document.activeElement !== input) input.value = String(edges[i]);
  }
}
