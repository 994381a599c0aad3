/** The colours of the layer drawing that no photograph was measured for. */

/** Fired clays by the words that potters describe them with; the first word found counts. */
const clays: readonly (readonly [word: string, colour: string])[] = [
  ["off-white", "#e9e4d8"],
  ["white", "#efece6"],
  ["cream", "#e8dfc8"],
  ["buff", "#d3bd98"],
  ["orange", "#c27a4e"],
  ["red", "#a85d3f"],
  ["grey", "#a9a59e"],
  ["gray", "#a9a59e"],
  ["brown", "#7d5a43"],
  ["black", "#3a3633"],
  ["tan", "#c6a57d"],
  ["pink", "#d9b3a2"],
];

/** A clay's colour by what its studio calls it; null where no word of it is known. */
export function clayColour(words: string | null): string | null {
  const lower = words?.toLowerCase() ?? "";
  const places = clays
    .map(([word, colour]) => ({ at: lower.indexOf(word), colour }))
    .filter(({ at }) => at >= 0)
    .sort((a, b) => a.at - b.at);
  return places[0]?.colour ?? null;
}

/** Black or white, whichever is easier to see on a colour. */
export function readableOn(hex: string): "black" | "white" {
  const channel = (at: number) => Number.parseInt(hex.slice(at, at + 2), 16);
  const light = 0.299 * channel(1) + 0.587 * channel(3) + 0.114 * channel(5);
  return light > 140 ? "black" : "white";
}
