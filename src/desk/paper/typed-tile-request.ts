/** What the page for typing up paper may send: what it sends is doubted here. */
import { fieldsOf, unreadable } from "../../local-server/body.ts";
import { findById } from "../../records/archive.ts";
import type { DeskArchive } from "../types.ts";
import type { TypedTile } from "./typed-tile.ts";

/** @throws Refused where it is no row of the page, or of no set of the archive */
export function parseTypedTile(body: unknown, { archive }: DeskArchive): TypedTile {
  const { set, glazed, code, maker, layers, notes } = fieldsOf(body);
  if (set !== null && (typeof set !== "string" || !findById(archive.sets, set))) throw unreadable();
  return {
    set,
    glazed: textOf(glazed),
    code: textOf(code).trim(),
    maker: textOf(maker),
    layers: textOf(layers),
    notes: textOf(notes),
  };
}

export function textOf(value: unknown): string {
  if (typeof value !== "string") throw unreadable();
  return value;
}
