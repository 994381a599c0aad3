/** What a map says of its marks, and of the published boundaries. */
import type { MapMark } from "../../../src/catalogue/mixing/maps.ts";
import { type RatioRegion, ratioLines } from "../../../src/chemistry/stull.ts";
import type { Surface } from "../../../src/terms/choices.ts";
import { count, listed, listedInShort, spoken } from "../english/numbers.ts";
import { fixed, formatMoles } from "./chemistry.ts";
import { regionWords } from "./second-opinion.ts";

type Told = Pick<
  MapMark,
  "disagrees" | "glass" | "glaze" | "isIncomplete" | "ratio" | "region" | "surface"
>;

/** `3, Eider: silica to alumina 6.5, glass formers 2.39; matte and satin`. */
export function markWords(mark: Told & { readonly number: number; readonly loud: string | null }) {
  const figures = `silica to alumina ${ratioWords(mark.ratio)}, glass formers ${formatMoles(mark.glass)}`;
  const rest = [
    surfaceWords(mark.surface),
    mark.isIncomplete && "analysis incomplete",
    mark.loud,
  ].filter(Boolean);
  return [`${mark.number}, ${mark.glaze.name}: ${figures}`, ...rest].join("; ");
}

/** To one decimal; a dash without alumina. */
export function ratioWords(ratio: number | null): string {
  return ratio === null ? "–" : fixed(ratio, 1);
}

function surfaceWords(surface: readonly Surface[]): string {
  return listed(surface.map(spoken)) || "surface not recorded";
}

/** What came out on each side of the published lines, and which glazes came out otherwise. */
export function boundarySentences(marks: readonly Told[]): readonly string[] {
  const told = marks.filter(({ region, surface }) => region !== null && surface.length > 0);
  if (told.length === 0) return ["No surface is recorded yet to compare with them."];
  const against = told.filter(({ disagrees }) => disagrees);
  return [
    ...sides.flatMap(([region, where]) => {
      const here = told.filter((mark) => mark.region === region);
      return here.length === 0 ? [] : [sideSentence(region, where, here)];
    }),
    against.length === 0
      ? `All ${count(told.length, "glaze")} came out as the lines say.`
      : `${against.length} of ${count(told.length, "glaze")} came out otherwise than the lines say, at least once: ${listedInShort(
          against.map(({ glaze }) => glaze.name),
          8,
        )}. Trust the tiles.`,
  ];
}

const [low = 0, high = 0] = ratioLines.map(({ silicaToAlumina }) => silicaToAlumina);

const sides: readonly (readonly [RatioRegion, string])[] = [
  ["matte", `Below ${low}`],
  ["semi-matte", `From ${low} to ${high}`],
  ["bright", `From ${high} up`],
];

/** `From 6 up the lines say gloss; here: 14 gloss, 2 satin, 1 matte and satin.` */
function sideSentence(region: RatioRegion, where: string, here: readonly Told[]): string {
  const counts = new Map<string, number>();
  for (const { surface } of here) {
    const words = surfaceWords(surface);
    counts.set(words, (counts.get(words) ?? 0) + 1);
  }
  const seen = [...counts]
    .sort(([, a], [, b]) => b - a)
    .map(([words, number]) => `${number} ${words}`);
  return `${where} the lines say ${regionWords[region]}; here: ${seen.join(", ")}.`;
}

/** `Seen here: gloss from 7.7 to 9.3, satin from 6.5 to 9.3, matte at 6.5.` */
export function seenSentence(marks: readonly Told[]): string {
  const order: readonly Surface[] = ["gloss", "satin", "matte", "dry"];
  const seen = order.flatMap((surface) => {
    const ratios = marks.flatMap((mark) =>
      mark.ratio !== null && mark.surface.includes(surface) ? [mark.ratio] : [],
    );
    if (ratios.length === 0) return [];
    const [from, to] = [ratioWords(Math.min(...ratios)), ratioWords(Math.max(...ratios))];
    return [from === to ? `${surface} at ${from}` : `${surface} from ${from} to ${to}`];
  });
  return seen.length === 0 ? "" : `Seen here: ${seen.join(", ")}.`;
}

/** How a mark is to be read: only what this map has. */
export function markKey(marks: readonly (Told & Pick<MapMark, "colour">)[]): string {
  const bare = marks.filter(({ ratio }) => ratio === null).map(({ glaze }) => glaze.name);
  return [
    "Each mark has a glaze’s number and the colour measured on its tile; its right half is hatched by the surface that came out, as in the rows below the map.",
    marks.some(({ colour }) => colour === null) && "A mark without colour was not measured.",
    marks.some(({ isIncomplete }) => isIncomplete) &&
      "A dashed outline: an analysis that it rests on does not add up, or leaves something out.",
    bare.length > 0 &&
      `Without alumina there is no ratio: ${listedInShort(bare)} ${bare.length === 1 ? "is" : "are"} only in the table.`,
  ]
    .filter(Boolean)
    .join(" ");
}
