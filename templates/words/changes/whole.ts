/** The summary of a request: what a teacher wants to know before she takes it in. */
import type { Changes } from "../../../src/changes/types.ts";
import { capital, count, listed } from "../english/numbers.ts";
import { checkBlocks, checkInShort, claimBlocks } from "./check.ts";
import { glazeItem } from "./glaze.ts";
import { exposedBlocks, goneBlocks, recordItem, runningBlocks, untoldBlocks } from "./records.ts";
import {
  type Block,
  type Item,
  paragraph,
  type Section,
  type Summary,
  shortList,
} from "./summary.ts";
import { tileItem } from "./tile.ts";
import { allCodes, fileLine } from "./values.ts";

export function sayChanges(changes: Changes): Summary {
  const { outside, exposed, rest, claimed, gone, untold, tiles, glazes, records, besides } =
    changes;
  const running = outside.filter(({ mayRun }) => mayRun);
  const others = outside.filter(({ mayRun }) => !mayRun);
  const sections = [
    ofBlocks(null, "what it does in one line", [
      paragraph(countsLine(changes)),
      ...tileCodes(changes),
    ]),
    readFirst([...(running.length > 0 ? runningBlocks(running) : []), ...exposedBlocks(exposed)]),
    ofBlocks("The check", "what the check says", checkBlocks(changes), checkInShort(changes)),
    ofBlocks("Codes that another request has", "codes claimed twice", claimBlocks(claimed)),
    ofBlocks("Not told here until they are mended", "faulty records", untoldBlocks(untold)),
    ofBlocks("Gone", "what is gone", goneBlocks(gone)),
    { heading: "Tiles", items: tiles.map(tileItem) },
    ofBlocks(null, "tiles that change with others", besidesBlocks(besides)),
    { heading: "Glazes", items: glazes.map(glazeItem) },
    { heading: "Other records", items: records.map(recordItem) },
    ofBlocks(
      "Files of the archive that are not told above",
      "other files of the archive",
      shortList(rest.map(fileLine), "they are among the files of the request"),
    ),
    ofBlocks(
      "Other files",
      "other files",
      shortList(others.map(fileLine), "they are among the files of the request"),
    ),
  ];
  return {
    title: "What this request changes",
    sections: sections.filter(({ items }) => items.length > 0),
    foot: "Told from the records alone. Figures and notes are a help, and no promise: the tiles, labels, the kiln’s manual, local rules and a laboratory decide.",
  };
}

function readFirst(blocks: readonly Block[]): Section {
  return ofBlocks("Read this first", "what to read first", blocks);
}

/** A section of one item. */
function ofBlocks(
  heading: string | null,
  name: string,
  blocks: readonly Block[],
  least: readonly Block[] = blocks,
): Section {
  const item: Item = { name, heading: null, blocks, least };
  return { heading, items: blocks.length === 0 ? [] : [item] };
}

/** `2 tiles are new and 1 is changed; 1 glaze is changed; 1 record is gone.` */
function countsLine({ tiles, glazes, records, gone, untold, outside }: Changes): string {
  const told = [
    countWhat(tiles, "tile"),
    countWhat(glazes, "glaze", "glazes"),
    countWhat(records, "other record"),
    gone.length > 0 && `${count(gone.length, "record")} gone`,
    untold.length > 0 && `${count(untold.length, "record")} to be mended first`,
    outside.length > 0 && `${count(outside.length, "file")} outside the archive`,
  ].filter((words) => typeof words === "string" && words !== "") as string[];
  return told.length === 0 ? "Nothing of the archive." : `${capital(listed(told))}.`;
}

/** Which tiles those are, for who reads no further. */
function tileCodes({ tiles }: Changes): readonly Block[] {
  const codesOf = (what: "added" | "changed") =>
    tiles.filter((each) => each.what === what).map(({ tile }) => tile.id);
  const told = [
    codesOf("added").length > 0 && `New: ${allCodes(codesOf("added"))}.`,
    codesOf("changed").length > 0 && `Changed: ${allCodes(codesOf("changed"))}.`,
  ].filter((words) => typeof words === "string");
  return tiles.length < 2 ? [] : [paragraph(told.join(" "))];
}

function countWhat(
  all: readonly { readonly what: "added" | "changed" }[],
  one: string,
  many = `${one}s`,
): string {
  const added = all.filter(({ what }) => what === "added").length;
  const changed = all.length - added;
  const parts = [
    added > 0 && `${count(added, one, many)} new`,
    changed > 0 && `${count(changed, one, many)} changed`,
  ];
  return parts.filter(Boolean).join(", ");
}

function besidesBlocks(besides: readonly string[]): readonly Block[] {
  if (besides.length === 0) return [];
  const [is, its] = besides.length === 1 ? ["is", "its"] : ["are", "their"];
  return [
    paragraph(
      `${count(besides.length, "more tile")} ${is} otherwise by what ${its} set, firing or studio.yaml says: ${allCodes(besides)}.`,
    ),
  ];
}
