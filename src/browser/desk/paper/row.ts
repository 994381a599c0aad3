/** A row: one tile as it is typed, what was understood of it, and whether it is written. */
import type { TypedField } from "../../../desk/paper/typed-tile.ts";
import type { LayersLike, LookedAt, RowWritten } from "../../../desk/paper/types.ts";
import { post } from "../../parts/ask.ts";
import { element } from "../../parts/element.ts";
import { showLooked, showTrouble, showWritten } from "./words.ts";

/** The fields of a row, in the order in which Enter goes through them. */
export const fieldsOfRow = ["code", "maker", "layers", "notes"] as const;
export type FieldOfRow = (typeof fieldsOfRow)[number];

const labels: Readonly<Record<FieldOfRow, string>> = {
  code: "Code",
  maker: "Maker",
  layers: "Layers",
  notes: "Notes",
};

/** What holds for all rows of the page. */
export interface Sheet {
  readonly set: string | null;
  readonly glazed: () => string;
}

/** How long nothing may have been typed before it is looked at, in milliseconds. */
const quietMs = 120;

export class Row {
  readonly element = element("li");
  isWritten = false;
  private readonly inputs = Object.fromEntries(
    fieldsOfRow.map((field) => [field, makeInput(field)]),
  ) as Record<FieldOfRow, HTMLInputElement>;
  private readonly name = element("span", { class: "quiet maker-name" });
  private readonly below = element("div", { class: "below", "aria-live": "polite" });
  private looks = 0;
  private timer = 0;
  private undone: Readonly<Record<FieldOfRow, string>> | undefined;
  private isWriting = false;

  constructor(
    private readonly sheet: Sheet,
    private readonly begin: { readonly code: string; readonly maker: string },
  ) {
    for (const field of fieldsOfRow)
      this.element.append(
        element(
          "label",
          { class: `of-${field}` },
          element("span", {}, labels[field]),
          this.inputs[field],
        ),
      );
    this.inputs.maker.after(this.name);
    this.element.append(this.below);
    this.inputs.maker.placeholder = begin.maker;
    this.inputs.code.value = begin.code;
    this.element.addEventListener("input", () => this.lookSoon());
  }

  get maker(): string {
    return this.inputs.maker.value.trim() || this.begin.maker;
  }

  get code(): string {
    return this.inputs.code.value.trim();
  }

  /** Whether anything was typed that would be lost. */
  get isOpen(): boolean {
    return (
      !this.isWritten &&
      fieldsOfRow.some((field) => field !== "code" && this.inputs[field].value !== "")
    );
  }

  fieldAt(target: EventTarget | null): FieldOfRow | undefined {
    return fieldsOfRow.find((field) => this.inputs[field] === target);
  }

  focus(field: FieldOfRow): void {
    this.inputs[field].focus();
    if (field === "code") this.inputs.code.select();
  }

  /** Empties a row that is not written; asked once more, brings back what it held. */
  undo(): void {
    if (this.isWritten) return;
    const held = this.isOpen ? this.values() : undefined;
    const now = held ? { ...emptyRow, code: this.begin.code } : this.undone;
    this.undone = held;
    if (now) for (const field of fieldsOfRow) this.inputs[field].value = now[field];
    this.below.replaceChildren();
    this.lookSoon();
    this.focus("code");
  }

  /** Takes an empty maker for the one of the row above. */
  repeatMaker(): void {
    if (this.inputs.maker.value.trim() === "") this.inputs.maker.value = this.begin.maker;
    this.lookSoon();
  }

  /** Puts another tile's layers in the place of `like CODE`. */
  async takeOver(): Promise<void> {
    const code = /^\s*like\s+(\S+)\s*$/iu.exec(this.inputs.layers.value)?.[1];
    if (code === undefined) return;
    const found = await this.ask<LayersLike>("like", { code, set: this.sheet.set });
    if (found && "line" in found) this.inputs.layers.value = found.line;
    if (found && "fault" in found) showTrouble(this.below, found.fault);
    else await this.look();
  }

  /**
   * Writes the tile.
   *
   * @returns where to go on: to the first field that has a fault, or nowhere where it is written
   */
  async write(): Promise<TypedField | "written" | "busy"> {
    if (this.isWriting || this.isWritten) return this.isWritten ? "written" : "busy";
    this.isWriting = true;
    this.looks += 1;
    clearTimeout(this.timer);
    const answer = await this.ask<RowWritten>("write", this.typed());
    this.isWriting = false;
    if (!answer) return "notes";
    this.show(answer);
    if (answer.written) showWritten(this.below, answer.written);
    if (!answer.written?.written) return answer.faults[0]?.field ?? "code";
    this.isWritten = true;
    this.element.classList.add("written");
    for (const field of fieldsOfRow) this.inputs[field].readOnly = true;
    return "written";
  }

  private typed() {
    const { set, glazed } = this.sheet;
    return { set, glazed: glazed(), ...this.values() };
  }

  private values() {
    const values = fieldsOfRow.map((field) => [field, this.inputs[field].value]);
    return Object.fromEntries(values) as Record<FieldOfRow, string>;
  }

  private lookSoon(): void {
    clearTimeout(this.timer);
    if (!this.isWritten) this.timer = window.setTimeout(() => void this.look(), quietMs);
  }

  private async look(): Promise<void> {
    this.looks += 1;
    const mine = this.looks;
    if (this.inputs.layers.value.trim() === "") return this.below.replaceChildren();
    const looked = await this.ask<LookedAt>("look", this.typed());
    // What was asked before is answered after now and then: only the last answer counts.
    if (looked && mine === this.looks) this.show(looked);
  }

  private show(looked: LookedAt): void {
    showLooked(this.below, this.inputs.layers.value, looked);
    this.name.textContent = looked.makerName;
    for (const field of fieldsOfRow) {
      const isFaulty = looked.faults.some((fault) => fault.field === field);
      this.inputs[field].setAttribute("aria-invalid", String(isFaulty));
    }
  }

  private async ask<T>(action: string, body: object): Promise<T | undefined> {
    try {
      return await post<T>(`/desk/paper/${action}`, body);
    } catch (error) {
      showTrouble(this.below, error instanceof Error ? error.message : String(error));
      return undefined;
    }
  }
}

const emptyRow: Readonly<Record<FieldOfRow, string>> = {
  code: "",
  maker: "",
  layers: "",
  notes: "",
};

function makeInput(name: FieldOfRow): HTMLInputElement {
  const words = { autocomplete: "off", autocapitalize: "off", spellcheck: "false" };
  return element("input", { type: "text", name, ...words });
}
