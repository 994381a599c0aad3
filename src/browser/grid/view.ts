/** What was chosen above the grid, as the part of an address after `?`, so that a view can be sent. */
import type { GridIndex } from "../../publish/grid-file.ts";
import { idKey, idSlug } from "../../terms/ids.ts";

/** What rows and columns are in the order of. */
export const orders = ["tried", "name", "colour", "range", "movement"] as const;
export type Order = (typeof orders)[number];

/** Two glazes by their places in the index: what lies on top, and what underneath. */
export interface Pair {
  readonly over: number;
  readonly under: number;
}

export interface View {
  /** Places among the choices of the index; undefined for any. */
  readonly cone: number;
  readonly clay: number | undefined;
  readonly atmosphere: number | undefined;
  readonly order: Order;
  /** All glazes, or those alone that belong at this cone. */
  readonly all: boolean;
  /** The square that one is at. */
  readonly at: Pair | undefined;
}

/** What stands in an address for what nobody wrote down; no id and no cone is written so. */
const unwritten = "~";

/** Reads a view; what the archive does not know any more is left out. */
export function parseView(search: string, index: GridIndex): View {
  const parameters = new URLSearchParams(search);
  const choice = (name: string, keys: readonly string[]) => {
    const asked = parameters.get(name);
    if (asked === null) return undefined;
    const place = keys.findIndex((key) => addressOf(key) === addressOf(asked));
    return place < 0 ? undefined : place;
  };
  const glaze = (name: string) =>
    choice(
      name,
      index.glazes.map(({ id }) => id),
    );
  const [over, under] = [glaze("over"), glaze("under")];
  const order = parameters.get("by");
  return {
    cone: choice("cone", index.cones.keys) ?? index.first,
    clay: choice("clay", index.clays.keys),
    atmosphere: choice("atmosphere", index.atmospheres.keys),
    order: orders.find((each) => each === order) ?? "tried",
    all: parameters.get("glazes") === "all",
    at: pairOf(over, under),
  };
}

/** One glaze alone, where only one is named. */
function pairOf(over: number | undefined, under: number | undefined): Pair | undefined {
  const [top, beneath] = [over ?? under, under ?? over];
  return top === undefined || beneath === undefined ? undefined : { over: top, under: beneath };
}

/** The address of a view: what is not as it is at first. */
export function formatView(view: View, { cones, clays, atmospheres, glazes, first }: GridIndex) {
  const parameters = new URLSearchParams();
  const set = (name: string, key: string | undefined) => {
    if (key !== undefined) parameters.set(name, addressOf(key));
  };
  if (view.cone !== first) set("cone", cones.keys[view.cone]);
  if (view.clay !== undefined) set("clay", clays.keys[view.clay]);
  if (view.atmosphere !== undefined) set("atmosphere", atmospheres.keys[view.atmosphere]);
  if (view.order !== "tried") parameters.set("by", view.order);
  if (view.all) parameters.set("glazes", "all");
  set("over", view.at && glazes[view.at.over]?.id);
  set("under", view.at && glazes[view.at.under]?.id);
  const text = parameters.toString();
  return text === "" ? "" : `?${text}`;
}

function addressOf(key: string): string {
  return key === "" || key === unwritten ? unwritten : idSlug(idKey(key));
}
