/** A tile that somebody is writing down: plain values, as they are kept and as a record holds them. */
import type { FormSet, FormSite, WrittenField, WrittenStep } from "../../publish/add-file.ts";
import { freeCodes } from "../../records/next-code.ts";
import { findCodes, findIdFault, idKey } from "../../terms/ids.ts";
import { type DraftStep, readStep, writeStep } from "./steps.ts";

/** The fields of a tile that are texts; empty where its set says it, or nobody. */
const texts = [
  ...(["code", "maker", "glazed", "clay", "texture", "shape", "notes"] as const),
  // What was done with it when it was handed in; empty before.
  "handed",
] as const;
export type DraftText = (typeof texts)[number];

export interface Draft extends Readonly<Record<DraftText, string>> {
  /** The id of its set, empty for none; null as long as nobody chose. */
  readonly set: string | null;
  /** The name of its files as long as it has no code; empty where it has one. */
  readonly noCode: string;
  readonly layers: readonly DraftStep[];
  /** When it was begun, as milliseconds. */
  readonly begun: number;
}

export function emptyDraft(begun: number): Draft {
  return {
    ...(Object.fromEntries(texts.map((name) => [name, ""])) as Record<DraftText, string>),
    set: null,
    noCode: "",
    layers: [],
    begun,
  };
}

/** Whether there is nothing in it that anybody would miss. */
export function isUntouched({ layers, maker, notes }: Draft): boolean {
  return layers.length === 0 && maker === "" && notes === "";
}

/** Codes that nobody may give again: those of tiles, and those handed in from this device. */
export function takenCodes(site: FormSite, handedIn: readonly string[]): ReadonlySet<string> {
  return new Set([...spelledOut(site.taken), ...handedIn].map(idKey));
}

/** The first code of a set's block that is free; undefined where none is. */
export function nextCode(set: FormSet | undefined, taken: ReadonlySet<string>): string | undefined {
  const whyNot = (code: string) => (taken.has(idKey(code)) ? "it is taken" : undefined);
  const { codes = [], control } = set ?? {};
  return freeCodes({ codes: [spelledOut(codes)], control }, whyNot)[0];
}

function spelledOut(ranges: readonly string[]): readonly string[] {
  return ranges.flatMap((range) => findCodes(range) ?? []);
}

/** What is wrong with a code, for whoever typed it; undefined where nothing is. */
export function faultOfCode(
  { code, noCode, set }: Draft,
  site: FormSite,
  taken: ReadonlySet<string>,
): string | undefined {
  const typed = code.trim();
  if (typed === "")
    return noCode === "" ? "Type the code on its back, or say that it has none." : undefined;
  const fault = findIdFault(typed);
  if (fault !== undefined) return `This cannot be a code: ${fault}.`;
  if (taken.has(idKey(typed))) return `There is a tile ${typed} already. Take another code.`;
  const owner = site.sets.find(
    ({ id, codes }) => id !== set && spelledOut(codes).some((each) => idKey(each) === idKey(typed)),
  );
  return owner && `${typed} is kept for ${owner.name}. Take another code.`;
}

const letters = "23456789abcdefghjkmnpqrstuvwxyz";

/** A name for the files of a tile that has no code yet: `no-code-` and eight letters and digits. */
export function nameWithoutCode(random: (count: number) => Uint8Array): string {
  return `no-code-${Array.from(random(8), (n) => letters[n % letters.length]).join("")}`;
}

/** The stem of its files. */
export function stemOf({ code, noCode }: Draft): string {
  return code.trim() || noCode;
}

/** Where its files lie in an archive: `tiles/evening/EV-131`, to which an ending is added. */
export function placeOf(draft: Draft): string {
  return ["tiles", draft.set, stemOf(draft)].filter(Boolean).join("/");
}

/** The fields of its record; a step that names no glaze yet is told by the reader. */
export function fieldsOf(
  draft: Draft,
): Readonly<Record<string, WrittenField | readonly WrittenStep[]>> {
  const { glazed, maker, clay, texture, shape, layers } = draft;
  const fields = { glazed, maker, clay, texture, shape };
  const said = Object.entries(fields).map(([name, value]) => [name, value.trim()] as const);
  return {
    ...Object.fromEntries(said.filter(([, value]) => value !== "")),
    ...(layers.length > 0 && { layers: layers.map(writeStep) }),
  };
}

/** A draft as it is kept: its steps as a record holds them. */
export function keepable(draft: Draft): string {
  return JSON.stringify({ ...draft, layers: draft.layers.map(writeStep) });
}

/** The draft that was kept; undefined where what is kept is none. */
export function readDraft(kept: string): Draft | undefined {
  const found = parse(kept);
  if (typeof found !== "object" || found === null) return undefined;
  const fields = found as Readonly<Record<string, unknown>>;
  const text = (name: string) => (typeof fields[name] === "string" ? fields[name] : "");
  if (typeof fields.begun !== "number" || !Array.isArray(fields.layers)) return undefined;
  const layers = fields.layers.map((step, key) => isMap(step) && readStep(step, key));
  if (layers.some((step) => !step)) return undefined;
  return {
    ...(Object.fromEntries(texts.map((name) => [name, text(name)])) as Record<DraftText, string>),
    set: typeof fields.set === "string" ? fields.set : null,
    noCode: text("noCode"),
    layers: layers as DraftStep[],
    begun: fields.begun,
  };
}

function isMap(value: unknown): value is WrittenStep {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function parse(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
