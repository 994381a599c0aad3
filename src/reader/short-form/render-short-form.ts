/** Writes layers in short form, as `readShortForm` reads them again. */
import type { Source, SourceMap } from "../../records/read.ts";
import { idKey } from "../../terms/ids.ts";
import { headWords, isWord } from "./words.ts";

/**
 * Renders the layers of a tile on one line.
 *
 * @param layers as a record has them, every value as text
 */
export function renderShortForm(layers: readonly SourceMap[]): string {
  return layers.map(renderStep).join("; ");
}

function renderStep(layer: SourceMap): string {
  const { glaze, fade, resist, remove, fired, ...said } = layer;
  const { from, to, along } = isMap(fade) ? fade : {};
  const head = [
    ...(glaze === undefined ? [] : [nameOf(glaze)]),
    ...(fade === undefined ? [] : [nameOf(from), "to", quotedName(text(to))]),
    ...(resist === undefined ? [] : ["resist", text(resist)]),
    ...(remove === undefined ? [] : ["remove", text(remove)]),
    ...(fired === undefined ? [] : ["fired", text(fired)]),
  ];
  const rest = Object.entries({ ...said, ...(along === undefined ? {} : { along }) });
  return [...head, ...rest.map(([field, value]) => renderSaid(field, value))].join(" ");
}

function isMap(value: Source | undefined): value is SourceMap {
  return typeof value === "object" && !Array.isArray(value);
}

function text(value: Source | undefined): string {
  return typeof value === "string" ? value : "";
}

function listOf(value: Source): readonly string[] {
  return (Array.isArray(value) ? value : [value]).map(text);
}

function renderSaid(field: string, value: Source): string {
  switch (field) {
    case "coats":
      return `x${text(value)}`;
    case "seconds":
      return `${text(value)}s`;
    case "gravity":
      return `sg ${text(value)}`;
    case "by":
      return `by ${text(value)}`;
    case "where":
      return `on ${listOf(value).join(" and ")}`;
    case "over":
      return `over ${listOf(value).map(quotedName).join(" and ")}`;
    case "touch-up":
      return text(value) === "yes" ? "touch-up" : "";
    case "along":
      return `along ${quoted(text(value))}`;
    case "shelf":
      return `shelf ${quoted(text(value))}`;
    case "detail":
      return quoted(text(value));
    default:
      return text(value);
  }
}

/** A glaze at the beginning, where a word of the short form would be read as that. */
function nameOf(value: Source | undefined): string {
  const name = text(value);
  const isTaken = isWord(name) || headWords.some((word) => word === idKey(name));
  return isTaken && !/^\d+$/u.test(name) ? `glaze ${quotedName(name)}` : quotedName(name);
}

function quotedName(name: string): string {
  return /[\s,;"]/u.test(name) ? quoted(name) : name;
}

function quoted(words: string): string {
  return `"${words.replaceAll('"', '""')}"`;
}
