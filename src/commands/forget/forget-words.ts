/** What is forgotten, and what is not for a tool to forget, in plain words. */
import type { TypedCommand } from "../../terms/typed-command.ts";
import type { ForgetPlan, Forgotten, LeftInWords, LineToSee } from "./forget-plan.ts";

/** All that will be done, and what people must see to themselves. */
export function tellForgetting(
  forgotten: Forgotten,
  { edits, files, codes }: ForgetPlan,
  { names, mentions }: LeftInWords,
): readonly string[] {
  return [
    ...(edits.length + files.length === 0 ? [nothingToDo(forgotten)] : ["This will be done:"]),
    ...edits.map(({ file, told }) => `  in ${file}: ${told}`),
    ...files.map((file) => `  remove ${file}`),
    "  remove all pictures in the cache: the next build makes those that are left anew",
    "",
    ...tellLines(
      names,
      "The name, or a part of it, is in words that somebody wrote. See to these lines yourself:",
    ),
    ...tellLines(
      mentions,
      `These lines speak of ${codes.length === 1 ? codes[0] : "tiles that go"}, and what they say no longer leads to a tile. See to them yourself:`,
    ),
    ...(names.length === 0 && forgotten.what === "maker" && forgotten.name !== undefined
      ? ["The name is in no other record. A nickname or a misspelt name cannot be looked for.", ""]
      : []),
  ];
}

function nothingToDo(forgotten: Forgotten): string {
  return forgotten.what === "maker"
    ? `${forgotten.key} has no name in studio.yaml. To take the tiles out too, add --tiles. This will be done:`
    : "This will be done:";
}

function tellLines(lines: readonly LineToSee[], words: string): readonly string[] {
  if (lines.length === 0) return [];
  return [words, ...lines.map(({ file, line, text }) => `  ${file}, line ${line}: ${text}`), ""];
}

interface Surroundings {
  readonly isInRepository: boolean;
  readonly asTyped: TypedCommand;
}

/** What remains, and what to do about each. */
export function tellRemains(
  { codes }: ForgetPlan,
  { isInRepository, asTyped }: Surroundings,
): readonly string[] {
  return [
    "",
    "What a tool cannot reach, and what to do:",
    `- The site: run ${asTyped("build")} and publish it again. Until then it shows what it showed.`,
    ...(isInRepository
      ? [
          "- The history of this repository still has all of it. Rewrite it (docs/privacy.md says how), push it by force, and ask the forge to drop what it keeps of the old one.",
        ]
      : [
          "- If the archive is kept in a repository somewhere, its history still has all of it: docs/privacy.md says how to rewrite it.",
        ]),
    "- Forks and copies on other computers: ask everyone who has one to delete it and copy anew.",
    "- What was handed in: delete it from the downloads of the form, from mail and from shared folders.",
    "- Folders and zips that were shared: share them again, and ask whoever has the old ones to delete them.",
    "- Search engines and archives of the web: ask them to take the pages out, each by its own form.",
    "- Backups: see how long they are kept.",
    ...(codes.length > 0
      ? [
          `- Printed labels and sheets, and the ${codes.length === 1 ? "code" : "codes"} on the clay: take them off the wall. ${codes.length === 1 ? codes[0] : "Their codes"} can be given again now: do not, or an old label leads to another tile.`,
        ]
      : ["- Printed pages and books: take them off the wall."]),
    "Whatever was public may have been read and copied: nobody can call that back.",
  ];
}
