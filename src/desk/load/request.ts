/** What the page of a load sends, doubted. */
import type { Shelf } from "../../loads/shelves.ts";
import { fieldsOf, unreadable } from "../../local-server/body.ts";
import { findCodes } from "../../terms/ids.ts";
import { longestList, longestRange } from "../../terms/limits.ts";
import type { LoadedFiring, LoadRequest, NewFiring } from "./types.ts";

/** More shelves than any kiln has. */
const mostShelves = 40;
const longestName = 200;

/** @throws Refused where it is no such request */
export function parseLoadRequest(body: unknown): LoadRequest {
  const { firing, shelves, isHistory } = fieldsOf(body);
  if (!Array.isArray(shelves) || shelves.length > mostShelves) throw unreadable();
  return {
    firing: parseFiring(firing),
    shelves: shelves.map(parseShelf),
    isHistory: isHistory === true,
  };
}

function parseFiring(value: unknown): LoadedFiring {
  const { known, begun } = fieldsOf(value);
  if (known !== undefined) {
    const { id, seen } = fieldsOf(known);
    return { known: { id: text(id), seen: text(seen) } };
  }
  const fields = fieldsOf(begun);
  const names = ["id", "on", "kind", "kiln", "heatedBy", "atmosphere", "cone"] as const;
  const typed = names.map((name) => [name, text(fields[name] ?? "").trim()]);
  return { begun: Object.fromEntries(typed) as unknown as NewFiring };
}

/** A range is spelt out here, so that every code that comes after is one. */
function parseShelf(value: unknown): Shelf {
  const { name, codes } = fieldsOf(value);
  if (!Array.isArray(codes) || codes.length > longestList) throw unreadable();
  const spelt = codes.flatMap((code) => findCodes(text(code)) ?? [text(code)]);
  if (spelt.length > longestRange) throw unreadable();
  const shelf = text(name).trim();
  if (shelf === "" || spelt.includes("")) throw unreadable();
  return { name: shelf, codes: spelt };
}

function text(value: unknown): string {
  if (typeof value !== "string" || value.length > longestName) throw unreadable();
  return value;
}
