/** Whether the check passes, and what a request is warned of. */
import type { Changes, ClaimedCode, ToldProblem } from "../../../src/changes/types.ts";
import { count } from "../english/numbers.ts";
import { type Block, code, type Line, paragraph, sentence, shortList, strong } from "./summary.ts";

export function checkBlocks({ check, tiles }: Changes): readonly Block[] {
  const { errors, warnings, olderErrors, olderWarnings } = check;
  const withTiles = new Set(
    tiles.flatMap(({ tile, source }) => tile.cautions.map((each) => `${source.file} ${each.code}`)),
  );
  const own = warnings.filter(({ file, code: name }) => !withTiles.has(`${file} ${name}`));
  const shown = warnings.length - own.length;
  return [
    paragraph(...passes(errors.length, olderErrors)),
    ...shortList(errors.map(problemLine), theCheck),
    ...(own.length > 0
      ? [paragraph(strong(`${count(own.length, "warning")} of this request`))]
      : []),
    ...shortList(own.map(problemLine), theCheck),
    ...notes(shown, olderWarnings),
  ];
}

const theCheck = "the check tells them";

/** Whether the check passes, and no more: what may never be left out. */
export function checkInShort({ check: { errors, olderErrors } }: Changes): readonly Block[] {
  return [paragraph(...passes(errors.length, olderErrors))];
}

function passes(errors: number, older: number): Line {
  if (errors === 0) return [strong("The check passes"), ": no errors."];
  const before =
    older === 0
      ? ""
      : older === errors
        ? ` ${older === 1 ? "It was" : "All were"} there before this request.`
        : ` ${older} of them ${older === 1 ? "was" : "were"} there before this request.`;
  return [
    strong(`The check finds ${count(errors, "error")}`),
    `.${before} What is faulty is not published before it is mended.`,
  ];
}

function notes(shown: number, older: number): readonly Block[] {
  const words = [
    shown > 0 &&
      `${count(shown, "practice note")} ${shown === 1 ? "is" : "are"} told with the tiles below.`,
    older > 0 &&
      `${count(older, "warning")} ${older === 1 ? "was" : "were"} there before, in files that this request does not change.`,
  ].filter((each) => typeof each === "string");
  return words.length > 0 ? [paragraph(words.join(" "))] : [];
}

function problemLine({ file, line, message, hint }: ToldProblem): Line {
  const words =
    message === null
      ? "the message names somebody, so it is not repeated here; the check tells it."
      : [message, hint].filter(Boolean).map(sentence).join(" ");
  return [code(file), `, line ${line}: ${words}`];
}

export function claimBlocks(claimed: readonly ClaimedCode[]): readonly Block[] {
  return shortList(
    claimed.map(({ code: id, request, next }): Line => {
      const free =
        next === null
          ? " No next code is free in its set: ask whoever hands out the codes."
          : ` The next free code is ${next}: rename the record and its photographs, and change the code on the back of the tile.`;
      return [strong(id), ` is in request ${request} as well, which came first.${free}`];
    }),
    "mend these first",
  );
}
