/** The page for typing up paper: rows that the keyboard alone goes through. */
import { must } from "../parts/element.ts";
import { type FieldOfRow, fieldsOfRow, Row } from "./paper/row.ts";

class Rows {
  private readonly rows: Row[] = [];
  private readonly list: Element;
  private readonly codes: readonly string[];

  constructor(private readonly form: HTMLFormElement) {
    this.list = must(form.querySelector(".rows"));
    this.codes = JSON.parse(form.dataset.codes ?? "[]");
    form.addEventListener("submit", (event) => event.preventDefault());
    form.addEventListener("keydown", (event) => void this.onKey(event));
    window.addEventListener("beforeunload", (event) => {
      if (this.rows.some((row) => row.isOpen)) event.preventDefault();
    });
    this.begin().focus("code");
  }

  /** A new row beneath the last, with the next free code. */
  private begin(): Row {
    const taken = new Set(this.rows.map(({ code }) => code.toLowerCase()));
    const code = this.codes.find((each) => !taken.has(each.toLowerCase())) ?? "";
    const row = new Row(this.sheet(), { code, maker: this.rows.at(-1)?.maker ?? "" });
    this.rows.push(row);
    this.list.append(row.element);
    return row;
  }

  private sheet() {
    const glazed = must(this.form.querySelector<HTMLInputElement>('[name="glazed"]'));
    return { set: this.form.dataset.set || null, glazed: () => glazed.value };
  }

  private async onKey(event: KeyboardEvent): Promise<void> {
    const { key, target, isComposing } = event;
    const at = this.rows.findIndex((row) => row.fieldAt(target) !== undefined);
    const row = this.rows[at];
    const field = row?.fieldAt(target);
    if (!row || !field || isComposing) {
      if (key === "Enter" && target instanceof HTMLInputElement) this.rows.at(-1)?.focus("code");
      return;
    }
    const other = { ArrowUp: this.rows[at - 1], ArrowDown: this.rows[at + 1] }[key];
    if (other || ["Enter", "Escape"].includes(key)) event.preventDefault();
    if (other) other.focus(field);
    if (key === "Escape") row.undo();
    if (key === "Enter") await this.goOn(row, field);
  }

  private async goOn(row: Row, field: FieldOfRow): Promise<void> {
    if (field === "maker") row.repeatMaker();
    if (field === "layers") await row.takeOver();
    const next = fieldsOfRow[fieldsOfRow.indexOf(field) + 1];
    if (next) return row.focus(next);
    const told = await row.write();
    if (told === "busy") return;
    if (told !== "written") return row.focus(told === "glazed" ? "code" : told);
    const after = this.rows[this.rows.indexOf(row) + 1] ?? this.begin();
    after.focus("code");
    after.element.scrollIntoView({ block: "nearest" });
  }
}

const form = document.querySelector<HTMLFormElement>(".typing");
if (form) {
  form.hidden = false;
  new Rows(form);
}
