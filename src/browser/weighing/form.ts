/** The form above the sheet: how much, by grams or by the bucket, and what the bucket weighs. */
import { element } from "../parts/element.ts";
import type { Wanted } from "./reckon.ts";

export interface SheetForm {
  readonly node: HTMLFieldSetElement;
  /** What is asked for at the moment; fields left empty are not a number. */
  readonly wanted: () => Wanted;
  /** Grams that the scale shows with the empty bucket on it. */
  readonly bucket: () => number;
  /** What is in the fields, to be put back after the page was loaded again. */
  readonly kept: () => readonly string[];
  readonly putBack: (kept: readonly string[]) => void;
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
  const fields = makeFields(usual);
  const { by, grams, litres, gravity, density, loss, empty } = fields;
  const { node, showFields } = layOut(fields);
  node.addEventListener("input", () => {
    showFields();
    changed();
  });
  const all = [by, grams, litres, gravity, density, loss, empty];
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
    bucket: () => empty.valueAsNumber,
    kept: () => all.map(({ value }) => value),
    putBack: (kept) => {
      for (const [i, field] of all.entries()) field.value = kept[i] ?? field.value;
      showFields();
    },
  };
}

function makeFields({ likely, lossPerCent }: Usual) {
  return {
    by: element(
      "select",
      {},
      element("option", { value: "weight" }, "by weight"),
      element("option", { value: "bucket" }, "by the bucket"),
    ),
    grams: numberField("1000"),
    litres: numberField("5"),
    gravity: numberField("1.45"),
    density: numberField(String(likely)),
    loss: numberField(String(lossPerCent)),
    empty: numberField("0"),
  };
}

function layOut({
  by,
  grams,
  litres,
  gravity,
  density,
  loss,
  empty,
}: ReturnType<typeof makeFields>) {
  const weightFields = element("p", { class: "sheet-fields" }, label("grams", grams));
  const bucketFields = element(
    "p",
    { class: "sheet-fields" },
    label("litres", litres),
    label("specific gravity", gravity),
    label("dry density, g/cm³", density),
    label("more for loss, %", loss),
  );
  const node = element(
    "fieldset",
    { class: "sheet-form" },
    element("legend", { class: "unseen" }, "How much"),
    element("p", {}, label("A batch", by)),
    weightFields,
    bucketFields,
    element("p", {}, label("the empty bucket reads, g", empty)),
  );
  const showFields = () => {
    weightFields.hidden = by.value !== "weight";
    bucketFields.hidden = by.value === "weight";
  };
  showFields();
  return { node, showFields };
}

function numberField(value: string): HTMLInputElement {
  return element("input", { type: "number", min: "0", step: "any", value, inputmode: "decimal" });
}

function label(words: string, field: HTMLElement): HTMLLabelElement {
  return element("label", {}, `${words} `, field);
}
