/** What differs, in words: for the sentence above all, and beside a colour. */
import { differenceCiede2000, roundDifference } from "../../colour/difference.ts";
import type { Aspect } from "../../likeness/make-up.ts";
import type { Subject } from "../../publish/beside-file.ts";
import type { JoinedTable, StepRow } from "./differences.ts";

const aspects: Readonly<Record<Aspect, string>> = {
  clay: "the clay",
  texture: "the texture",
  shape: "the shape",
  what: "what was used",
  coats: "how many coats",
  way: "how it was put on",
  thickness: "how thick it is",
  dipping: "how long it was dipped",
  dried: "how dry it was underneath",
  area: "where it is",
  bisque: "the bisque firing",
  cone: "the cone",
  atmosphere: "the atmosphere",
  fire: "ash or salt in the kiln",
  cooling: "how the kiln cooled",
};

/** `how many coats, how it was put on` */
export function aspectWords(of: readonly Aspect[]): string {
  return of.map((aspect) => aspects[aspect]).join(", ");
}

/** The tables of a tile in which a difference is one of its make-up. */
const madeOf = "The piece";

/** What was done to them that is not the same, one thing after the other. */
export function tellDifferences(
  ids: readonly string[],
  rows: readonly StepRow[],
  tables: readonly JoinedTable[],
): { readonly differ: readonly string[]; readonly open: readonly string[] } {
  const piece = tables.find(({ title }) => title === madeOf)?.rows ?? [];
  const named = (which: "maybe" | "yes") =>
    piece
      .filter(({ differs }) => differs === which)
      .map(({ label }) => `the ${label.toLowerCase()}`);
  return {
    differ: [...named("yes"), ...rows.flatMap((row, i) => tellStep(ids, row, i + 1))],
    open: [
      ...named("maybe"),
      ...rows.flatMap(({ open }, i) =>
        open.length > 0 ? [`${aspectWords(open)} (step ${i + 1})`] : [],
      ),
    ],
  };
}

/** Each aspect is a difference of its own; a step that some lack is one besides. */
function tellStep(ids: readonly string[], of: StepRow, step: number): readonly string[] {
  const { row, isMissing, differing } = of;
  const without = ids.filter((_, i) => row[i] === null || row[i] === undefined);
  return [
    ...(isMissing ? [`step ${step}, which is not on ${listed(without)}`] : []),
    ...differing.map((aspect) => `${aspects[aspect]} (step ${step})`),
  ];
}

function listed(words: readonly string[]): string {
  const last = words.at(-1) ?? "";
  return words.length < 2 ? last : `${words.slice(0, -1).join(", ")} and ${last}`;
}

/** So many are told one by one; more are only counted, and found in the rows below. */
const mostTold = 6;

/** `They differ in one thing: how many coats (step 2).` */
export function differenceSentences(
  ids: readonly string[],
  rows: readonly StepRow[],
  tables: readonly JoinedTable[],
): readonly string[] {
  const { differ, open } = tellDifferences(ids, rows, tables);
  const things = differ.length === 1 ? "one thing" : `${differ.length} things`;
  const told = differ.length > mostTold ? ", each marked below" : `: ${differ.join("; ")}`;
  const first =
    differ.length === 0
      ? "Nothing that was written down of how they were made differs."
      : `They differ in ${things}${told}.`;
  if (open.length === 0) return [first];
  return [
    first,
    `This may differ too: it is written down of some and not of others. ${capital(open.join("; "))}.`,
  ];
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** How far a colour is from the first, and whether that is more than like tiles differ here. */
export function tellColour(
  subject: Pick<Subject, "colour">,
  first: Pick<Subject, "colour"> & { readonly called: string },
  scatter: number | null,
): string {
  if (!subject.colour || !first.colour) return "";
  const apart = differenceCiede2000(first.colour.lab, subject.colour.lab);
  const told = `${roundDifference(apart)} apart from ${first.called}`;
  if (scatter === null) return `${told}; how far tiles made alike differ here is not known yet.`;
  const usual = `(up to ${roundDifference(scatter)})`;
  return apart > scatter
    ? `${told}: more than tiles made alike differ here ${usual}.`
    : `${told}: tiles made alike differ as much here ${usual}.`;
}
