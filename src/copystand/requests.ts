/** What the page may ask for: what it sends is doubted here. */
import { fieldsOf, unreadable } from "../local-server/body.ts";
import { box } from "../records/fields.ts";
import type { Edges, Frames, FramesOnTile, Scope, WriteRequest } from "./types.ts";

/** @throws Refused where it is no such request */
export function parseFramesOnTile(body: unknown): FramesOnTile {
  const { tile, frames } = fieldsOf(body);
  if (typeof tile !== "string") throw unreadable();
  return { tile, frames: parseFrames(frames) };
}

/** @throws Refused where it is no such request */
export function parseWriteRequest(body: unknown): WriteRequest {
  const { scope } = fieldsOf(body);
  const scopes: readonly Scope[] = ["studio", "set", "tile"];
  const known = scopes.find((each) => each === scope);
  if (!known) throw unreadable();
  return { ...parseFramesOnTile(body), scope: known };
}

function parseFrames(value: unknown): Frames {
  const { crop, grey } = fieldsOf(value);
  return { crop: parseEdges(crop), grey: grey === null ? null : parseEdges(grey) };
}

/** Whole per cents or one decimal, as they are written down; and what a record would accept. */
function parseEdges(value: unknown): Edges {
  if (!Array.isArray(value) || !value.every((edge) => Number.isFinite(edge))) throw unreadable();
  const rounded = value.map((edge: number) => String(Math.round(edge * 10) / 10 + 0));
  const reading = box().safeParse(rounded);
  if (!reading.success) throw unreadable();
  const { left, top, right, bottom } = reading.data;
  return [left, top, right, bottom];
}
