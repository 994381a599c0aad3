/** What the sheet says below its readings: water, cost, and how far the dry weight can be off. */
import { asPrice, roughly } from "../../terms/figures.ts";
import type { Usual } from "./form.ts";
import { type Line, type Reckoned, reckon, type Wanted } from "./reckon.ts";

const noBatch =
  "No such batch can be weighed: amounts are above 0, and a slop is heavier than water and lighter than the dry glaze.";

export function tellBatch(
  reckoned: Reckoned | undefined,
  wanted: Wanted,
  usual: Usual,
  lines: readonly Line[],
): string {
  if (!reckoned) return noBatch;
  return [tellWater(reckoned), tellCost(reckoned), tellRange(wanted, usual, lines)]
    .filter(Boolean)
    .join(" ");
}

function tellWater({ water }: Reckoned): string {
  if (water === null) return "";
  return `With ${roughly(water)} ml of water: keep a little back, sieve, and bring it to its gravity with the rest.`;
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

/** How far the dry glaze of a bucket can be off, while nobody wrote a density of their own. */
function tellRange(wanted: Wanted, { low, likely, high }: Usual, lines: readonly Line[]): string {
  if (wanted.by === "weight" || wanted.dryDensity !== likely) return "";
  const [most, least] = [low, high].map((dryDensity) =>
    roughly(reckon(lines, { ...wanted, dryDensity })?.total ?? 0),
  );
  if (least === most || least === "0" || most === "0") return "";
  return `Going by its density, that is between ${least} and ${most} g dry: go by the gravity of the mixed bucket.`;
}
