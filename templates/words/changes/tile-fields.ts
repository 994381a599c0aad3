/** What is otherwise on a tile, field by field. */

import type { CatalogueTile } from "../../../src/catalogue/tiles.ts";
import { isSame } from "../../../src/changes/fields.ts";
import type { TileChange } from "../../../src/changes/types.ts";
import type { Result } from "../../../src/records/tile.ts";
import { capital, formatDay, spoken } from "../english/numbers.ts";
import { againSentence, fateWords, lookWords, pieceName } from "../tile/outcome.ts";
import { stepWords } from "../tile/steps.ts";
import { type Line, strong } from "./summary.ts";
import { changeLine, fieldLine } from "./values.ts";

/** Fields that have words of their own here; any other is told as it is written. */
const told: ReadonlySet<string> = new Set([
  ...["angle", "clay", "clayBatch", "fate", "formed", "formerly", "glazed", "later", "layers"],
  ...["maker", "result", "shape", "texture"],
]);

/** What changed of a tile that was there before; nothing for a new one. */
export function tileFieldLines({ tile, source, was, fields }: TileChange): readonly Line[] {
  if (was === null) return [];
  const others = fields.filter(({ field }) => !told.has(field));
  return [
    ...facts.flatMap(([name, wordsOf]) => factLine(name, wordsOf(was.tile), wordsOf(tile))),
    ...makerLine(was, { tile, source }),
    ...orUntold("layers", source.steps, was.source.steps, layerLines(was.tile, tile)),
    ...orUntold("result", resultsOf(source), resultsOf(was.source), resultLines(was.tile, tile)),
    ...others.map(fieldLine),
  ];
}

function resultsOf({ record: { result, later } }: TileChange["source"]): unknown {
  return [result, later];
}

/** What differs and reads the same in words, such as what a layer laps over, is said to differ all the same. */
function orUntold(
  name: string,
  before: unknown,
  after: unknown,
  lines: readonly Line[],
): readonly Line[] {
  if (lines.length > 0 || isSame(before, after)) return lines;
  return [[strong(name), ": changed in a way that these words do not tell; see the file"]];
}

type Fact = readonly [name: string, wordsOf: (tile: CatalogueTile) => string];

const facts: readonly Fact[] = [
  ["code", ({ id }) => id],
  ["set", ({ set }) => set?.name ?? ""],
  ["clay", ({ clay }) => clay?.name ?? ""],
  ["clay batch", ({ clayBatch }) => clayBatch ?? ""],
  ["texture", ({ texture }) => spoken(texture)],
  ["piece", ({ shape, angle }) => pieceName(shape) + (angle === null ? "" : ` at ${angle}°`)],
  ["formed", ({ formed }) => (formed ? formatDay(formed) : "")],
  ["glazed", ({ glazed }) => (glazed ? formatDay(glazed) : "")],
  ["fate", ({ fate }) => (fate ? fateWords(fate) : "")],
  ["codes before", ({ formerly }) => formerly.join(", ")],
];

function factLine(name: string, before: string, after: string): readonly Line[] {
  if (before === after) return [];
  return [changeLine(strong(name), before || "nothing", after || "nothing")];
}

type Sides = Pick<TileChange, "source" | "tile">;

/** Names as they may be shown, and of the others no more than that it is another. */
function makerLine(was: Sides, now: Sides): readonly Line[] {
  if (was.source.maker === now.source.maker) return [];
  const [before, after] = [was, now].map(({ tile, source }) => {
    if (source.maker === null) return "nothing";
    return tile.maker?.name ?? "somebody who is not named";
  });
  if (before === after) return [[strong("maker"), ": another; neither is named"]];
  return [changeLine(strong("maker"), before ?? "nothing", after ?? "nothing")];
}

/** A layer that differs by itself where as many are there as before; else all of them. */
function layerLines(was: CatalogueTile, now: CatalogueTile): readonly Line[] {
  const [before, after] = [stepsInWords(was), stepsInWords(now)];
  if (isSame(before, after)) return [];
  if (before.length !== after.length) return [[strong("layers before"), `: ${numbered(before)}`]];
  return after.flatMap((words, i) => factLine(`layer ${i + 1}`, before[i] ?? "", words));
}

/** The layers of a tile, bottom first. */
export function stepsInWords({ steps, glazes }: CatalogueTile): readonly string[] {
  return steps.map((step) => stepWords(step, (id) => glazes[id]?.name ?? id));
}

function numbered(words: readonly string[]): string {
  return words.map((each, i) => `${i + 1}. ${each}`).join("; ");
}

function resultLines(was: CatalogueTile, now: CatalogueTile): readonly Line[] {
  const [before, after] = [resultsInWords(was), resultsInWords(now)];
  const own = after.filter((words) => !before.includes(words)).join(" ");
  const gone = before.filter((words) => !after.includes(words)).join(" ");
  if (own === "" && gone === "") return [];
  return [changeLine(strong("result"), gone || "nothing", own || "nothing")];
}

/** What came out of each firing, and what was seen later; a sentence or two for each. */
export function resultsInWords({ results, later }: CatalogueTile): readonly string[] {
  return [
    ...results.map((result) => resultWords(result, results.length > 1)),
    ...later.map((look) => `Looked at again on ${formatDay(look.on)}: ${lookWords(look)}.`),
  ];
}

function resultWords(result: Result, isOneOfMany: boolean): string {
  const look = lookWords(result);
  const words = [
    isOneOfMany && result.after && `After ${result.after}:`,
    look ? `${capital(look)}.` : "No look of it recorded.",
    result.again && againSentence(result.again),
    result.nextTime && `Next time: ${result.nextTime}.`,
  ];
  return words.filter(Boolean).join(" ");
}
