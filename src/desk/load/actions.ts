/** Tries a load, and writes it down. */
import type { Caution } from "../../loads/caution.ts";
import { entriesOf } from "../../loads/entries.ts";
import { codesOn, shelvesField } from "../../loads/shelves.ts";
import { type TriedFiring, type TriedLoad, tryLoad } from "../../loads/try-load.ts";
import { renderRecord } from "../../reader/render-record.ts";
import { findById } from "../../records/archive.ts";
import { firingSchema } from "../../records/firing.ts";
import { readAs, type SourceMap } from "../../records/read.ts";
import { findIdFault, idKey } from "../../terms/ids.ts";
import type { DeskArchive } from "../types.ts";
import type { DeskWork } from "../work.ts";
import { changesOfTiles, fieldsOfNew, sourceOf } from "./fields.ts";
import { parseLoadRequest } from "./request.ts";
import type { LoadedFiring, LoadRequest, LoadWritten, TriedWords } from "./types.ts";
import { sumWords } from "./words.ts";

/** What would be wrong with a load; nothing is written. */
export async function tryAction(body: unknown, work: DeskWork): Promise<TriedWords> {
  const request = parseLoadRequest(body);
  const archive = await work.read();
  const found = findFiring(request.firing, archive);
  if ("refused" in found) return refusedTrial(found.refused);
  return tellTrial(tried(found.firing, request, work), request);
}

/** Writes the load into its firing's record, or a new record; nothing while something may melt. */
export async function writeAction(body: unknown, work: DeskWork): Promise<LoadWritten> {
  const request = parseLoadRequest(body);
  const archive = await work.read();
  const found = findFiring(request.firing, archive);
  if ("refused" in found) return nothing(found.refused);
  const trial = tellTrial(tried(found.firing, request, work), request);
  if (!trial.mayBeWritten) return nothing(`Nothing was written. ${trial.sum}`);
  const { firing } = request;
  const written =
    "known" in firing
      ? await writeList(firing.known.seen, found.firing, request, work, archive)
      : await work.writeNew([newRecord(found.firing, request)]);
  const address = written.written ? `/desk/load/${encodeURIComponent(found.firing.id)}` : "";
  return { ...written, address };
}

function nothing(words: string): LoadWritten {
  return { written: false, words, files: [], address: "" };
}

type Found = { readonly firing: Omit<TriedFiring, "shelves"> } | { readonly refused: string };

function findFiring(firing: LoadedFiring, { archive, texts }: DeskArchive): Found {
  if ("begun" in firing) return findNew(firing, archive);
  const known = findById(archive.firings, firing.known.id);
  if (!known)
    return {
      refused: `There is no firing “${firing.known.id}” that can be read any more. Load this page again.`,
    };
  const { tiles: _, ...fields } = sourceOf(texts.get(known.file));
  return { firing: { id: known.id, file: known.file, fields } };
}

function findNew(
  { begun }: Extract<LoadedFiring, { begun: unknown }>,
  archive: DeskArchive["archive"],
): Found {
  const { id } = begun;
  if (id === "") return { refused: "The firing needs an id: a short name for its file." };
  const fault = findIdFault(id);
  if (fault !== undefined) return { refused: `“${id}” cannot be the id of a firing: ${fault}.` };
  if (findById(archive.firings, id))
    return { refused: `There is a firing “${id}” already. Take another id, or open that one.` };
  const fields = fieldsOfNew(begun);
  const source = Object.fromEntries(
    Object.entries(fields).filter(([, value]) => value !== undefined),
  ) as SourceMap;
  const reading = readAs(firingSchema, source);
  if (reading.ok) return { firing: { id, file: `tiles/firings/${id}.md`, fields } };
  return { refused: reading.faults.map(({ message, hint }) => `${message}. ${hint}`).join(" ") };
}

function tried(
  firing: Omit<TriedFiring, "shelves">,
  { shelves }: LoadRequest,
  { trial }: DeskWork,
): TriedLoad | undefined {
  return tryLoad({ ...firing, shelves }, trial);
}

function tellTrial(load: TriedLoad | undefined, { shelves, isHistory }: LoadRequest): TriedWords {
  if (!load) return refusedTrial("studio.yaml has errors, so nothing can be checked.");
  const codes = [...new Map(codesOn(shelves).map((code) => [idKey(code), code])).values()];
  const tiles = codes.flatMap((code) => {
    const cautions = load.ofTiles.get(idKey(code));
    return cautions ? [{ code, cautions }] : [];
  });
  const errors = [...tiles.flatMap(({ cautions }) => cautions), ...load.ofLoad].filter(isError);
  const mayMelt = errors.filter(({ code }) => code === "may-melt");
  const mayBeHistory = mayMelt.length > 0 && mayMelt.length === errors.length;
  return {
    tiles,
    load: load.ofLoad,
    sum: sumWords(codes.length, tiles, load.ofLoad),
    mayBeWritten: errors.length === 0 || (mayBeHistory && isHistory),
    mayBeHistory,
  };
}

function isError({ severity }: Caution): boolean {
  return severity === "error";
}

function refusedTrial(sum: string): TriedWords {
  return { tiles: [], load: [], sum, mayBeWritten: false, mayBeHistory: false };
}

async function writeList(
  seen: string,
  { file }: Pick<TriedFiring, "file">,
  { shelves }: LoadRequest,
  work: DeskWork,
  { texts }: DeskArchive,
) {
  const changes = changesOfTiles(sourceOf(texts.get(file)), shelves);
  if (changes.length === 0)
    return { written: false, words: `${file} says so already: nothing was written.`, files: [] };
  return work.writeFields({ file, kind: "firing", seen }, changes);
}

function newRecord({ file, fields }: Omit<TriedFiring, "shelves">, { shelves }: LoadRequest) {
  const tiles = shelvesField(shelves, entriesOf);
  return { path: file, content: renderRecord({ ...fields, tiles }) };
}
