/** Turns the sheet of three batches into a sheet for any batch, one material at a time. */
import { type ScaleReading, scaleReadings } from "../../chemistry/scale-readings.ts";
import { element } from "../parts/element.ts";
import { makeForm, type Usual } from "./form.ts";
import { type Material, makeOneAtATime } from "./one-at-a-time.ts";
import { findPlace, keepPlace } from "./place.ts";
import { type Line, reckon } from "./reckon.ts";
import { tellBatch } from "./told.ts";

/** @param section the page's section that holds the table */
export function startSheet(section: HTMLElement): void {
  const table = section.querySelector<HTMLTableElement>(".sheet-table");
  const bucket = section.querySelector<HTMLElement>(".bucket");
  const usual = bucket && readUsual(bucket);
  if (!table || !usual) return;
  const rows = [...table.tBodies].flatMap((body) => [...body.rows]);
  const lines = rows.map(readLine);
  const fill = addReadings(table, rows);
  const told = element("p", { class: "sheet-told", "aria-live": "polite" });
  const form = makeForm(usual, () => show(0));
  const scale = makeOneAtATime(rows.map(readMaterial), (to) => show(to));
  const show = (at: number) => {
    const wanted = form.wanted();
    const reckoned = reckon(lines, wanted);
    const readings =
      form.bucket() >= 0 ? readingsOf(lines, reckoned?.grams, form.bucket()) : undefined;
    fill(readings, at);
    scale.show(at, readings);
    // Another batch in a bucket that is half full would be neither of the two.
    form.node.disabled = at > 0;
    told.textContent = tellBatch(readings && reckoned, wanted, usual, lines);
    keepPlace({ at, fields: form.kept() });
  };
  section.classList.add("reckoned");
  table.before(form.node, scale.node);
  table.after(told, whoAndWhen());
  const kept = findPlace();
  if (kept) form.putBack(kept.fields);
  show(kept && kept.at >= 0 && kept.at <= lines.length ? kept.at : 0);
}

/** What the page says of this glaze; undefined where nothing of the kind can be. */
function readUsual({ dataset }: HTMLElement): Usual | undefined {
  const { dryDensity, dryDensityLow, dryDensityHigh, loss } = dataset;
  const [likely, low, high] = [dryDensity, dryDensityLow, dryDensityHigh].map(Number);
  if (!likely || !low || !high || likely <= 1) return undefined;
  return { likely, low, high, lossPerCent: Number(loss) };
}

function readLine({ dataset }: HTMLTableRowElement): Line {
  return {
    parts: Number(dataset.parts),
    isAddition: dataset.addition !== undefined,
    price: dataset.price === undefined ? null : Number(dataset.price),
  };
}

function readMaterial(row: HTMLTableRowElement): Material {
  return {
    name: row.dataset.name ?? "",
    isAddition: row.dataset.addition !== undefined,
    drawing: row.querySelector<SVGElement>(".pail"),
  };
}

function readingsOf(
  lines: readonly Line[],
  grams: readonly number[] | undefined,
  bucket: number,
): readonly ScaleReading[] | undefined {
  return (
    grams &&
    scaleReadings(
      lines.map(({ isAddition }, i) => ({ grams: grams[i] ?? 0, isAddition })),
      bucket,
    )
  );
}

type Fill = (readings: readonly ScaleReading[] | undefined, at: number) => void;

/** The column of the batch that is asked for, before the three that the page has. */
function addReadings(table: HTMLTableElement, rows: readonly HTMLTableRowElement[]): Fill {
  table.tHead?.rows[0]?.prepend(element("th", { scope: "col" }, "The scale reads"));
  const cells = rows.map((row) => {
    const cell = row.insertCell(0);
    const [reading, adds] = [
      element("span", { class: "scale-reading" }),
      element("span", { class: "adds" }),
    ];
    cell.append(reading, " ", adds);
    return { row, reading, adds };
  });
  return (readings, at) => {
    for (const [i, { row, reading, adds }] of cells.entries()) {
      const of = readings?.[i];
      reading.textContent = of?.reading ?? "–";
      adds.textContent = of ? `+ ${of.amount}` : "";
      row.classList.toggle("is-in", i < at);
    }
  };
}

/** Lines to fill in on paper. */
function whoAndWhen(): HTMLElement {
  return element("p", { class: "on-paper" }, "Weighed by ", blank(), " on ", blank());
}

function blank(): HTMLElement {
  return element("span", { class: "blank" });
}
