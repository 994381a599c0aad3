/** Turns the sheet of three batches into a sheet for any batch. */

import { asPrice, readOnScale, roughly } from "../../terms/figures.ts";
import { element } from "../parts/element.ts";
import { makeForm, type Usual } from "./form.ts";
import { type Line, type Reckoned, reckon, type Wanted } from "./reckon.ts";

/** @param section the page's section that holds the table */
export function startSheet(section: HTMLElement): void {
  const table = section.querySelector<HTMLTableElement>(".sheet-table");
  const bucket = section.querySelector<HTMLElement>(".bucket");
  const usual = bucket && readUsual(bucket);
  if (!table || !usual) return;
  const rows = [...table.tBodies].flatMap((body) => [...body.rows]);
  const lines = rows.map(readLine);
  const columns = addColumns(table, rows);
  const told = element("p", { class: "sheet-told", "aria-live": "polite" });
  const form = makeForm(usual, () => show());
  const show = () => {
    const reckoned = reckon(lines, form.wanted());
    columns.fill(reckoned);
    told.textContent = tell(reckoned) + tellRange(reckoned, form.wanted(), usual, lines);
  };
  section.classList.add("reckoned");
  table.before(form.node);
  table.after(told, printButton(), whoAndWhen());
  show();
}

/** What the page says of this glaze; undefined where nothing of the kind can be. */
function readUsual({ dataset }: HTMLElement): Usual | undefined {
  const { dryDensity, dryDensityLow, dryDensityHigh, loss } = dataset;
  const [likely, low, high] = [dryDensity, dryDensityLow, dryDensityHigh].map(Number);
  if (!likely || !low || !high || likely <= 1) return undefined;
  return { likely, low, high, lossPerCent: Number(loss) };
}

/** How far the dry glaze of a bucket can be off, while nobody wrote a density of their own. */
function tellRange(
  reckoned: Reckoned | undefined,
  wanted: Wanted,
  { low, likely, high }: Usual,
  lines: readonly Line[],
): string {
  if (!reckoned || wanted.by === "weight" || wanted.dryDensity !== likely) return "";
  const [most, least] = [low, high].map((dryDensity) =>
    roughly(reckon(lines, { ...wanted, dryDensity })?.total ?? 0),
  );
  if (least === most || least === "0" || most === "0") return "";
  return ` Going by its density, that is between ${least} and ${most} g dry: go by the gravity of the mixed bucket.`;
}

function readLine({ dataset }: HTMLTableRowElement): Line {
  return {
    parts: Number(dataset.parts),
    isAddition: dataset.addition !== undefined,
    price: dataset.price === undefined ? null : Number(dataset.price),
  };
}

interface Columns {
  readonly fill: (reckoned: Reckoned | undefined) => void;
}

function addColumns(table: HTMLTableElement, rows: readonly HTMLTableRowElement[]): Columns {
  const head = table.tHead?.rows[0];
  head?.append(
    element("th", { scope: "col" }, "Grams"),
    element("th", { scope: "col" }, "Together"),
  );
  const cells = rows.map((row) => [row.insertCell(), row.insertCell()] as const);
  const foot = table.tFoot?.rows[0];
  const total = foot?.insertCell();
  foot?.insertCell();
  return {
    fill: (reckoned) => {
      for (const [i, [grams, running]] of cells.entries()) {
        grams.textContent = formatGrams(reckoned?.grams[i]);
        running.textContent = formatGrams(reckoned?.running[i]);
      }
      if (total) total.textContent = formatGrams(reckoned?.total);
    },
  };
}

function formatGrams(grams: number | undefined): string {
  return grams === undefined ? "–" : readOnScale(grams);
}

function tell(reckoned: Reckoned | undefined): string {
  if (!reckoned)
    return "No such batch can be weighed: amounts are above 0, and a slop is heavier than water and lighter than the dry glaze.";
  const water =
    reckoned.water === null
      ? ""
      : `With ${roughly(reckoned.water)} ml of water: keep a little back, sieve, and bring it to its gravity with the rest. `;
  return water + tellCost(reckoned);
}

/** What is not known stays so: no batch costs nothing because its prices are missing. */
function tellCost({ cost, isPartCost }: Reckoned): string {
  if (cost === null) return "";
  const amount = asPrice(cost);
  if (!isPartCost) return `It costs ${amount}.`;
  return amount === "0.00"
    ? "What it costs is not known."
    : `Part of its cost is ${amount}; some of its prices are not known.`;
}

/** Prints the sheet and nothing else of the page. */
function printButton(): HTMLButtonElement {
  const button = element("button", { type: "button", class: "print-sheet" }, "Print this sheet");
  button.addEventListener("click", () => {
    document.documentElement.classList.add("sheet-only");
    window.addEventListener(
      "afterprint",
      () => document.documentElement.classList.remove("sheet-only"),
      { once: true },
    );
    window.print();
  });
  return button;
}

/** Lines to fill in on paper. */
function whoAndWhen(): HTMLElement {
  return element("p", { class: "on-paper" }, "Weighed by ", blank(), " on ", blank());
}

function blank(): HTMLElement {
  return element("span", { class: "blank" });
}
