/** A tile of a request: what it is, what changed of it, what to mind, and what it can be compared with. */
import { differences } from "../../../src/catalogue/apart.ts";
import { groupBy } from "../../../src/catalogue/group-by.ts";
import { firingsOf } from "../../../src/catalogue/kilns/tile-firings.ts";
import type { PictureChange, TileApart, TileChange } from "../../../src/changes/types.ts";
import { capital, codesInShort, count } from "../english/numbers.ts";
import { besidesSentence, changeSentence, resultSentence } from "../tile/change.ts";
import { fateSentence, firingSentence, stageName, tileSentence } from "../tile/outcome.ts";
import { namesTopFirst } from "../tile/stack.ts";
import { cautionList } from "./cautions.ts";
import {
  type Block,
  code,
  type Item,
  type Line,
  list,
  paragraph,
  sentence,
  strong,
} from "./summary.ts";
import { resultsInWords, stepsInWords, tileFieldLines } from "./tile-fields.ts";

/** Notes that are longer are read in the file. */
const longestNotes = 1500;

/** So many outcomes one change apart are told in words; the others by their tiles' codes. */
const mostApart = 5;

export function tileItem(change: TileChange): Item {
  const { tile, source, was } = change;
  const least = cautionList(tile.cautions);
  return {
    name: tile.id,
    heading: headingOf(change),
    least,
    blocks: [
      ...change.pictures.flatMap((picture) => pictureBlocks(picture, change)),
      paragraph(`${tileSentence(tile)}${tile.set ? ` In the set ${sentence(tile.set.name)}` : ""}`),
      ...whatChanged(change),
      ...picturesThatWent(change),
      paragraph(strong("Layers, bottom first")),
      ...list(
        stepsInWords(tile).map((words) => [words]),
        true,
      ),
      ...fireAndResult(change),
      ...quotation(source.notes, source.file),
      ...(tile.leachTests.length > 0 ? [reports(tile.leachTests.length, source.file)] : []),
      ...least,
      ...(was || tile.results.length > 0 ? apartBlocks(change) : []),
    ],
  };
}

function headingOf({ what, tile, was, source }: TileChange): string {
  const title = `${tile.id}: ${namesTopFirst(tile) || "a tile without glaze"}`;
  if (what === "added") return `${title} (new)`;
  if (was === null) return `${title} (could not be read before)`;
  return was.source.id === source.id ? `${title} (changed)` : `${title} (was ${was.source.id})`;
}

const pictureNames: Readonly<Record<PictureChange["role"], string>> = {
  result: "the photograph",
  before: "before the last firing",
  detail: "a detail",
  back: "the back",
};

const becameOf = {
  added: "new",
  changed: "another picture than before",
  gone: "gone",
  renamed: "moved",
};

function pictureBlocks(picture: PictureChange, { tile, was }: TileChange): readonly Block[] {
  const { file, role, isShown, what } = picture;
  const alt = `${tile.id}, ${pictureNames[role]}`;
  const words = capital(pictureNames[role]);
  const state: Line = what === null || was === null ? [] : [`${words}: ${becameOf[what]}.`];
  const hidden: Line = isShown ? [] : [` Browsers do not show a file of this kind.`];
  return [
    { is: "picture", file, alt, isShown },
    ...(state.length + hidden.length === 0 ? [] : [paragraph(...state, ...hidden)]),
  ];
}

function picturesThatWent({ source, was }: TileChange): readonly Block[] {
  const now = new Set(source.pictures.map(({ role }) => role));
  const went = (was?.source.pictures ?? []).filter(({ role }) => !now.has(role));
  return went.map(({ file, role }) =>
    paragraph(`It has lost a picture, ${pictureNames[role]}: `, code(file)),
  );
}

function whatChanged(change: TileChange): readonly Block[] {
  const lines = tileFieldLines(change);
  const { was, keepsCode } = change;
  const lost: readonly Line[] =
    was && !keepsCode
      ? [
          [
            `Labels and links with ${was.source.id} lead nowhere now. The line `,
            code(`formerly: [${was.source.id}]`),
            " leads them on.",
          ],
        ]
      : [];
  const isSame = was && lines.length === 0 && change.pictures.every(({ what }) => what === null);
  const same: readonly Line[] = isSame
    ? [["nothing: its file is written otherwise, and reads as before"]]
    : [];
  const all = [...lines, ...lost, ...same];
  return all.length === 0 ? [] : [paragraph(strong("What changed")), ...list(all)];
}

function fireAndResult({ tile }: TileChange): readonly Block[] {
  const firings = firingsOf(tile.steps).map(firingSentence);
  const fired = firings.length > 0 ? firings.map(sentence).join(" ") : "It has not been fired yet.";
  const results = [...resultsInWords(tile), ...(tile.fate ? [fateSentence(tile.fate)] : [])];
  const came = results.length > 0 ? results.join(" ") : `${capital(stageName(tile.stage))}.`;
  return [paragraph(strong("Firing"), `: ${fired}`), paragraph(strong("Result"), `: ${came}`)];
}

function quotation(notes: string, file: string): readonly Block[] {
  const words = notes.trim();
  if (words === "") return [];
  if (words.length <= longestNotes) return [{ is: "quotation", words }];
  return [
    paragraph(`Its notes have ${count(words.length, "letter")}; read them in `, code(file), "."),
  ];
}

function reports(number: number, file: string): Block {
  return paragraph(
    `It has ${count(number, "report")} of a laboratory; read them in `,
    code(file),
    ".",
  );
}

function apartBlocks({ tile, apart }: TileChange): readonly Block[] {
  if (tile.results.length === 0) return [];
  if (apart.length === 0)
    return [paragraph("No other tile with a result is one change apart from it.")];
  const inOrder = apart.toSorted(
    (a, b) => differences.indexOf(a.difference) - differences.indexOf(b.difference),
  );
  const byWords = groupBy(inOrder, (each) => apartWords(tile, each));
  const shown = byWords.slice(0, mostApart);
  const others = byWords.slice(mostApart).flat();
  return [
    paragraph(strong("One change apart")),
    ...list(shown.map((alike) => apartLine(tile, alike))),
    ...(others.length > 0
      ? [paragraph(`One change apart too: ${codesInShort(idsOf(others))}.`)]
      : []),
  ];
}

/** Those that differ in the very same, and came out the same, are told together; never one for others. */
function apartLine(tile: TileChange["tile"], alike: readonly [TileApart, ...TileApart[]]): Line {
  return [strong(codesInShort(idsOf(alike))), `: ${apartWords(tile, alike[0])}`];
}

function idsOf(apart: readonly TileApart[]): readonly string[] {
  return apart.map((each) => each.tile.id);
}

function apartWords(tile: TileChange["tile"], apart: TileApart): string {
  const words = [changeSentence(tile, apart), resultSentence(apart.tile), besidesSentence(apart)];
  return words.filter(Boolean).join(" ");
}
