/** The form above the sheet: how much, by grams or by the bucket. */
import { element } from "../parts/element.ts";
import type { Wanted } from "./reckon.ts";

export interface SheetForm {
  readonly node: HTMLElement;
  /** What is asked for at the moment; fields left empty are not a number. */
  readonly wanted: () => Wanted;
}

/** What the fields hold at first. */
export interface Usual {
  /** The dry density of this glaze and its range, in g/cm³. */
  readonly likely: number;
  readonly low: number;
  readonly high: number;
  /** What of a slop is commonly lost. */
  readonly lossPerCent: number;
}

export function makeForm(usual: Usual, changed: () => void): SheetForm {
  const by = element(
    "select",
    {},
    element("option", { value: "weight" }, "by weight"),
    element("option", { value: "bucket" }, "by the bucket"),
  );
  const grams = numberField("1000");
  const litres = numberField("5");
  const gravity = numberField("1.45");
  const density = numberField(String(usual.likely));
  const loss = numberField(String(usual.lossPerCent));
  const weightFields = element("p", { class: "sheet-fields" }, label("grams", grams));
  const bucketFields = element(
    "p",
    { class: "sheet-fields" },
    label("litres", litres),
    label("specific gravity", gravity),
    label("dry density, g/cm³", density),
    label("more for loss, %", loss),
  );
  bucketFields.hidden = true;
  const node = element(
    "div",
    { class: "sheet-form", role: "group", "aria-label": "How much" },
    element("p", {}, label("A batch", by)),
    weightFields,
    bucketFields,
  );
  node.addEventListener("input", () => {
    weightFields.hidden = by.value !== "weight";
    bucketFields.hidden = by.value === "weight";
    changed();
  });
  return {
    node,
    wanted: () =>
      by.value === "weight"
        ? { by: "weight", grams: grams.valueAsNumber }
        : {
            by: "bucket",
            litres: litres.valueAsNumber,
            specificGravity: gravity.valueAsNumber,
            dryDensity: density.valueAsNumber,
            lossPerCent: loss.valueAsNumber,
          },
  };
}

function numberField(value: string): HTMLInputElement {
  return element("input", { type: "number", min: "0", step: "any", value, inputmode: "decimal" });
}

function label(words: string, field: HTMLElement): HTMLLabelElement {
  return element("label", {}, `${words} `, field);
}
