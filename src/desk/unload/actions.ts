/** Writes down what came out of the kiln, and takes it back. */
import { outcomeFields, outcomeOf } from "../../loads/outcome.ts";
import { placeOfResult } from "../../loads/result-place.ts";
import { tilesOut } from "../../loads/unloading.ts";
import { fieldsOf, unreadable } from "../../local-server/body.ts";
import { type Firing, findById, type Tile } from "../../records/archive.ts";
import { isDay } from "../../records/fields/days.ts";
import { idKey } from "../../terms/ids.ts";
import type { DeskArchive, Written } from "../types.ts";
import type { DeskWork } from "../work.ts";
import { parseLitRequest, parseOutcomeRequest } from "./request.ts";
import type { OutcomeRequest, OutcomeWritten, TileOutView } from "./types.ts";
import { viewTile } from "./view.ts";

/** Writes the day the kiln was lit into the firing's record. */
export async function litAction(body: unknown, work: DeskWork): Promise<Written> {
  const { firing, seen, on } = parseLitRequest(body);
  if (!isDay(on))
    return nothing(`“${on}” is no day. Write it as year-month-day, such as 2026-11-30.`);
  const found = findById((await work.read()).archive.firings, firing);
  if (!found) return nothing(`There is no firing “${firing}” that can be read any more.`);
  const record = { file: found.file, kind: "firing", seen } as const;
  return work.writeFields(record, [{ path: ["on"], value: on }]);
}

/** Writes what came of one tile into its record, field by field, and nothing else. */
export async function outcomeAction(body: unknown, work: DeskWork): Promise<OutcomeWritten> {
  const request = parseOutcomeRequest(body);
  const desk = await work.read();
  const found = findTile(desk, request);
  if ("refused" in found) return { ...nothing(found.refused), tile: null };
  const { firing, tile } = found;
  const fields = fieldsFor(tile, firing, request);
  if ("refused" in fields) return { ...nothing(fields.refused), tile: null };
  if (fields.changes.length === 0) {
    const words = `${tile.file} says so already: nothing was written.`;
    return { ...nothing(words), tile: viewOf(desk, firing.id, tile.id) };
  }
  const record = { file: tile.file, kind: "tile", seen: request.seen } as const;
  const written = await work.writeFields(record, fields.changes);
  return { ...written, tile: viewOf(await work.read(), firing.id, tile.id) };
}

/** Takes the last thing written of a tile back. */
export async function undoAction(body: unknown, work: DeskWork): Promise<OutcomeWritten> {
  const { firing, code } = fieldsOf(body);
  if (typeof firing !== "string" || typeof code !== "string") throw unreadable();
  const tile = findById((await work.read()).archive.tiles, code);
  if (!tile)
    return { ...nothing(`There is no tile “${code}” that can be read any more.`), tile: null };
  const back = await work.takeBack(tile.file);
  return { ...back, tile: viewOf(await work.read(), firing, code) };
}

function nothing(words: string): Written {
  return { written: false, words, files: [] };
}

type Refused = { readonly refused: string };

function findTile(
  { archive }: DeskArchive,
  { firing, code }: OutcomeRequest,
): { readonly firing: Firing; readonly tile: Tile } | Refused {
  const found = findById(archive.firings, firing);
  if (!found) return { refused: `There is no firing “${firing}” that can be read any more.` };
  const out = tilesOut(archive, found).find((each) => idKey(each.code) === idKey(code));
  if (!out) return { refused: `${code} is not in ${found.id} any more. Load this page again.` };
  if (!out.tile)
    return { refused: `${code} has no record that can be read. Write its record first.` };
  return { firing: found, tile: out.tile };
}

function fieldsFor(tile: Tile, { id, record }: Firing, { outcome, said }: OutcomeRequest) {
  const { surface, effects, faults, run, again, nextTime } = outcome;
  const tellsMore = ([surface, effects, faults].flat().length > 0 || run) ?? again ?? nextTime;
  if (record.on === undefined)
    return { refused: `Nobody wrote down when ${id} was lit: write its day first.` };
  if (record.kind === "bisque" && tellsMore)
    return {
      refused: "A bisque has no result: only what did not come back whole is written down.",
    };
  if (faults.includes("none") && faults.length > 1)
    return { refused: "There are faults, or none: not both." };
  if (run !== null && !/^\d{1,4}(?:\.\d{1,2})?$/u.test(run))
    return { refused: `“${run}” is no length: write millimetres, as in 12 or 2.5.` };
  const place = placeOfResult(tile, id, said);
  if (place.unclear.length > 0 && tellsMore)
    return { refused: `${tile.id} has a result that names no firing: say of which one it is.` };
  const before = outcomeOf(place.unclear.length > 0 ? undefined : place.known, tile.record.fate);
  return { changes: outcomeFields(outcome, before, place) };
}

function viewOf(desk: DeskArchive, firing: string, code: string): TileOutView | null {
  const found = findById(desk.archive.firings, firing);
  const out =
    found && tilesOut(desk.archive, found).find((each) => idKey(each.code) === idKey(code));
  return found && out ? viewTile(desk, found, out) : null;
}
