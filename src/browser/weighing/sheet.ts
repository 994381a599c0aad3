/** Turns the sheet of three batches into a sheet for any batch. */
import { element } from "../parts/element.ts";
import { makeForm } from "./form.ts";
import { type Line, type Reckoned, reckon } from "./reckon.ts";

/** @param section the page's section that holds the table */
export function startSheet(section: HTMLElement): void {
  const table = section.querySelector<HTMLTableElement>(".sheet-table");
  const bucket = section.querySelector<HTMLElement>(".bucket");
  const density = Number(bucket?.dataset.dryDensity);
  if (!table || !(density > 1)) return;
  const rows = [...table.tBodies].flatMap((body) => [...body.rows]);
  const lines = rows.map(readLine);
  const columns = addColumns(table, rows);
  const told = element("p", { class: "sheet-told", "aria-live": "polite" });
  const form = makeForm(density, () => show());
  const show = () => {
    const reckoned = reckon(lines, form.wanted());
    columns.fill(reckoned);
    told.textContent = tell(reckoned);
  };
  section.classList.add("reckoned");
  table.before(form.node);
  table.after(told, printButton(), whoAndWhen());
  show();
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

/** To what scales can tell, as the printed columns are. */
function formatGrams(grams: number | undefined): string {
  if (grams === undefined) return "–";
  const digits = grams < 10 ? 2 : grams < 1000 ? 1 : 0;
  return grams.toLocaleString("en", {
    minimumFractionDigits: digits,
    maximumFractionDigits: digits,
  });
}

function tell(reckoned: Reckoned | undefined): string {
  if (!reckoned)
    return "No such batch can be weighed: amounts are above 0, and a slop is heavier than water and lighter than the dry glaze.";
  const water =
    reckoned.water === null
      ? ""
      : `With ${formatGrams(reckoned.water)} ml of water: keep a little back, sieve, and bring it to its gravity with the rest. `;
  return water + tellCost(reckoned);
}

/** What is not known stays so: no batch costs nothing because its prices are missing. */
function tellCost({ cost, isPartCost }: Reckoned): string {
  if (cost === null) return "";
  const amount = cost.toFixed(2);
  if (!isPartCost) return `It costs ${amount}.`;
  return Number(amount) === 0
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
