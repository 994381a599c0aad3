/**
 * Reads the layers of a tile from one line in short form, as a maker writes them beside the tile:
 * `7 x2; 3 x1 top; wax motif; 5 thin by dip; fired bisque; wipe raised; 4 over 7`. Every word is either
 * used or told: nothing is passed over, and what could be two things is never guessed.
 */
import type { TileStep } from "../../records/archive.ts";
import { readAs, type Source, type SourceMap } from "../../records/read.ts";
import { step as stepSchema } from "../../records/steps.ts";
import { findNearest } from "../../records/suggest.ts";
import { idKey } from "../../terms/ids.ts";
import { longestShortForm, mostLayers } from "../../terms/limits.ts";
import { type Head, readHead } from "./heads.ts";
import { meantBy } from "./meant.ts";
import type { NameFault, ShortNames } from "./names.ts";
import { type Said, sayingsOf, shelf } from "./sayings.ts";
import { type Piece, readPieces, type Span, type Token } from "./tokens.ts";
import { wordsOfCoat, wordsOfPlace } from "./words.ts";

/** What is wrong with some words of the line, and what would be understood. */
export interface ShortFault extends Span {
  readonly message: string;
  readonly hint: string;
}

/** One step that was understood: its words, its fields as a record writes them, and what they mean. */
export interface ShortStep extends Span {
  readonly layer: SourceMap;
  readonly meant: TileStep;
}

export interface ShortForm {
  /** What was understood, bottom first; what is faulty is left out of it. */
  readonly steps: readonly ShortStep[];
  /** In the order of the line. Only where there is none may anything be written. */
  readonly faults: readonly ShortFault[];
}

/** Reads a line; none where nothing but spaces stands in it. */
export function readShortForm(line: string, names: ShortNames): ShortForm {
  if (line.length > longestShortForm)
    return refused(line, "This is longer than any line of layers");
  const pieces = readPieces(line);
  if (pieces.length > mostLayers)
    return refused(line, `There are more than ${mostLayers} steps here`);
  const steps: ShortStep[] = [];
  const faults: ShortFault[] = [];
  for (const piece of pieces) {
    const read = readPiece(piece, names, steps);
    if (read.step) steps.push(read.step);
    faults.push(...read.faults);
  }
  return { steps, faults: faults.toSorted((a, b) => a.from - b.from) };
}

function refused(line: string, message: string): ShortForm {
  const hint = "Check that nothing was pasted here twice.";
  return { steps: [], faults: [{ from: 0, to: line.length, message, hint }] };
}

interface PieceRead {
  readonly step?: ShortStep;
  readonly faults: readonly ShortFault[];
}

function readPiece(piece: Piece, names: ShortNames, before: readonly ShortStep[]): PieceRead {
  const head = readHead(piece, names);
  if ("message" in head) return { faults: [faultAt(piece.slice(0, head.used), head)] };
  const { said, faults } = readSayings(piece.slice(head.used), head, names);
  const layer = layerOf(head, said);
  const read = readAs(stepSchema, layer);
  const at = before.length;
  const whole = spanOf(piece);
  if (!read.ok) {
    const told = read.faults.map(({ message, hint }) => faultAt(piece, { message, hint }));
    return { faults: [...faults, ...told] };
  }
  const meant = meantBy(read.record, names, at);
  const beneath = missingBeneath(meant, before);
  const told = beneath ? [faultAt(piece, beneath)] : [];
  return { step: { ...whole, layer, meant }, faults: [...faults, ...told] };
}

function readSayings(rest: readonly Token[], head: Head, names: ShortNames) {
  const said = new Map<string, Source>();
  const faults: ShortFault[] = [];
  const sayings = head.kind === "fired" ? [shelf] : sayingsOf[head.kind];
  for (let at = 0; at < rest.length; ) {
    const tokens = rest.slice(at);
    const found = sayings.map((saying) => saying(tokens, names)).find((it) => it !== undefined);
    const used = found && !("message" in found) ? found.used : 1;
    const words = tokens.slice(0, used);
    const fault = faultOf(found, said, tokens, head);
    if (fault) faults.push(faultAt(words, fault));
    else if (found && !("message" in found)) said.set(found.field, found.value);
    at += used;
  }
  return { said, faults };
}

function faultOf(
  found: Said | NameFault | undefined,
  said: ReadonlyMap<string, Source>,
  [first]: readonly Token[],
  head: Head,
): NameFault | undefined {
  if (!found) return notUnderstood(first?.text ?? "", head);
  if ("message" in found) return found;
  if (!said.has(found.field)) return undefined;
  return {
    message: `${fieldWords[found.field] ?? "This"} is said twice`,
    hint: "Take one of them out.",
  };
}

const fieldWords: Readonly<Record<string, string>> = {
  along: "Which way it fades",
  by: "How it went on",
  coats: "The number of coats",
  cover: "How much is covered",
  detail: "What stands between quotes",
  dried: "How dry it was",
  gravity: "The specific gravity",
  over: "What it lies over",
  seconds: "How long it was dipped",
  shelf: "The shelf",
  thickness: "How thick it is",
  "touch-up": "That it is a touch-up",
  where: "Where it is",
};

/** What is understood in the place of a word that is not. */
const understood: Readonly<Record<Head["kind"], string>> = {
  glaze:
    "After a glaze come coats (x2), where (top), how (by dip), thin or thick, and own words between quotes. A semicolon begins the next layer.",
  fade: "After two glazes come coats (x2), where (top), how (by dip), and own words between quotes. A semicolon begins the next layer.",
  resist:
    "After a resist comes where it is (motif), and own words between quotes. A semicolon begins the next layer.",
  remove:
    "After it comes where it was (raised), and own words between quotes. A semicolon begins the next layer.",
  fired: "After a firing comes its shelf (top shelf). A semicolon begins the next layer.",
};

function notUnderstood(text: string, { kind }: Head): NameFault {
  const known = [
    ...(kind === "glaze" || kind === "fade" ? wordsOfCoat.keys() : []),
    ...wordsOfPlace.keys(),
  ];
  const near = kind === "fired" ? undefined : findNearest(text, known);
  return {
    message: `“${text}” is not understood here`,
    hint: near === undefined ? understood[kind] : `Did you mean “${near}”?`,
  };
}

/** The fields of the step, as a record has them. */
function layerOf({ kind, value }: Head, said: ReadonlyMap<string, Source>): SourceMap {
  const { along, ...rest } = Object.fromEntries(said);
  if (typeof value === "string" || along === undefined) return { [kind]: value, ...rest };
  return { [kind]: { ...value, along }, ...rest };
}

/** What a layer is said to lie over must have gone on before it. */
function missingBeneath(meant: TileStep, before: readonly ShortStep[]): NameFault | undefined {
  if (meant.step !== "coat") return undefined;
  const there = before.flatMap(({ meant: it }) => (it.step === "coat" ? it.glazes : [])).map(idKey);
  const missing = meant.over.find((glaze) => !there.includes(idKey(glaze)));
  if (missing === undefined) return undefined;
  return {
    message: `Nothing of ${missing} lies beneath this layer`,
    hint: "Write the layers in the order they went on, the lowest first, with a semicolon between them.",
  };
}

function faultAt(words: readonly Token[], { message, hint }: NameFault): ShortFault {
  return { ...spanOf(words), message, hint };
}

function spanOf(words: readonly Token[]): Span {
  return { from: words[0]?.from ?? 0, to: words.at(-1)?.to ?? 0 };
}
