/**
 * Which SVG drawings may be published as a mark. What is not known to be harmless is refused, piece by
 * piece: a page shows the drawing as a picture, where no script of it would run, but anybody can open
 * its file by itself.
 */
import type { MarkFault, MarkSize } from "./judged.ts";

/** Every element that draws and can lead nowhere. */
const elements: ReadonlySet<string> = new Set([
  ...["svg", "g", "defs", "title", "desc", "style", "clipPath"],
  ...["path", "rect", "circle", "ellipse", "line", "polyline", "polygon"],
  ...["linearGradient", "radialGradient", "stop"],
]);

/** What is told of those that people use. */
const because: ReadonlyMap<string, string> = new Map([
  ["script", "A script could do anything on a visitor's computer."],
  ["foreignObject", "It holds a piece of a web page."],
  ["image", "It shows another picture."],
  ["text", "Letters look otherwise on every computer: turn them into outlines (paths)."],
  ["use", "It shows a part again; save the drawing without symbols."],
  ["a", "It is a link, and the mark is one already."],
]);

/** The pieces of a drawing: a comment, the first line, a tag, or words between tags. */
const piece =
  /<!--(?:[^-]|-(?!-))*-->|<\?xml [^<>?]*\?>|<\/([\w:.-]+)\s*>|<([\w:.-]+)((?:\s+[\w:.-]+\s*=\s*(?:"[^"<]*"|'[^'<]*'))*)\s*(\/?)>|([^<]+)/uy;

const attribute = /([\w:.-]+)\s*=\s*(?:"([^"]*)"|'([^']*)')/gu;

/** Reads a drawing piece by piece, and says how large it is or what keeps it off the pages. */
export function judgeSvg(text: string): MarkSize | MarkFault {
  const whole = text.replace(/^\ufeff/u, "").trim();
  const open: string[] = [];
  const outermost: Tag[] = [];
  for (const { written, closed, element, attributes = "", end, words = "" } of piecesOf(whole)) {
    const fault = faultOfWords(words, open.at(-1)) ?? faultOfTag(element, attributes);
    if (fault) return fault;
    if (closed !== undefined && open.pop() !== closed) return notUnderstood(written);
    if (element !== undefined && open.length === 0) outermost.push({ element, attributes });
    if (element !== undefined && end === "") open.push(element);
  }
  const [first, second] = outermost;
  return first && !second && open.length === 0 ? sizeOf(first) : notUnderstood(whole.slice(-30));
}

interface Piece {
  readonly written: string;
  readonly closed?: string;
  readonly element?: string;
  readonly attributes?: string;
  /** `/` of an element without anything in it. */
  readonly end?: string;
  readonly words?: string;
}

/** A drawing's pieces; the first that is none is given as words, which belong nowhere. */
function* piecesOf(whole: string): Generator<Piece> {
  for (let at = 0; at < whole.length; ) {
    piece.lastIndex = at;
    const found = piece.exec(whole);
    if (!found) return yield { written: whole, words: `<${whole.slice(at + 1)}` };
    const [written, ...groups] = found;
    const [closed, element, attributes, end, words] = groups as (string | undefined)[];
    at += written.length;
    yield { written, closed, element, attributes, end, words } as Piece;
  }
}

interface Tag {
  readonly element: string;
  readonly attributes: string;
}

function faultOfTag(element: string | undefined, attributes: string): MarkFault | undefined {
  return element === undefined
    ? undefined
    : (faultOfElement(element) ?? faultOfAttributes(attributes));
}

function faultOfElement(name: string): MarkFault | undefined {
  if (elements.has(name)) return undefined;
  return {
    message: `The mark holds “<${name}>”, which is not taken into pages`,
    hint: `${because.get(name) ?? "Save it as plain SVG, with shapes and paths alone."} Or save the mark as PNG.`,
  };
}

function faultOfAttributes(attributes: string): MarkFault | undefined {
  for (const [, name = "", one, other] of attributes.matchAll(attribute)) {
    const value = one ?? other ?? "";
    if (/^on/iu.test(name)) return refuse(name, "it would run when something happens");
    if (/^xmlns(?::|$)/u.test(name)) continue;
    if (/(?:^|:)(?:href|base|src)$/iu.test(name) && !/^#[\w-]+$/u.test(value))
      return refuse(name, "it leads out of the drawing");
    if (!isOfTheDrawing(value))
      return refuse(name, `“${value.slice(0, 40)}” may lead out of the drawing`);
  }
  return undefined;
}

function refuse(name: string, why: string): MarkFault {
  return {
    message: `The mark has “${name}” in it: ${why}`,
    hint: "Save it as plain SVG, with shapes and paths alone, or as PNG.",
  };
}

/** Whether a value names nothing but parts of the same drawing, and hides no letter. */
function isOfTheDrawing(value: string): boolean {
  if (/[&\\@]|\/\*|(?:java|vb)script|data:|image-set/iu.test(value)) return false;
  return !/url\s*\(/iu.test(value.replace(/url\(#[\w-]+\)/gu, ""));
}

function faultOfWords(words: string, within: string | undefined): MarkFault | undefined {
  if (words.trim() === "") return undefined;
  if (within === "title" || within === "desc")
    return /&(?!(?:amp|lt|gt|quot|apos);)/u.test(words) ? notUnderstood(words) : undefined;
  if (within === "style")
    return isOfTheDrawing(words)
      ? undefined
      : refuse("style", "its rules may lead out of the drawing");
  return notUnderstood(words);
}

function notUnderstood(near: string): MarkFault {
  return {
    message: `The mark cannot be read as a drawing, near “${near.trim().slice(0, 30)}”`,
    hint: "Save it as plain SVG again, or as PNG.",
  };
}

function sizeOf({ element, attributes }: Tag): MarkSize | MarkFault {
  const values = new Map(
    Array.from(attributes.matchAll(attribute), ([, name = "", one, other]) => [
      name,
      one ?? other ?? "",
    ]),
  );
  const box = (values.get("viewBox") ?? "")
    .trim()
    .split(/[\s,]+/u)
    .map(Number);
  const [width, height] =
    box.length === 4
      ? box.slice(2)
      : ["width", "height"].map((side) => Number.parseFloat(values.get(side) ?? ""));
  const isSized = (side: number | undefined): side is number =>
    side !== undefined && side > 0 && side < 1e6;
  if (
    element === "svg" &&
    values.get("xmlns") === "http://www.w3.org/2000/svg" &&
    isSized(width) &&
    isSized(height)
  )
    return { width, height };
  return {
    message: "The mark does not say how large it is, or that it is an SVG",
    hint: "Save it as plain SVG again: its first tag has “xmlns” and “viewBox”.",
  };
}
