/** What is wrong with the studio's own words: its welcome, and its pages. */
import type { UnusableInWords } from "../../../templates/parts/own-words.ts";
import { namesOfWays } from "../../../templates/parts/sections.ts";
import type { Archive, Filed } from "../../records/archive.ts";
import type { PageRecord } from "../../records/page.ts";
import type { FieldPath, Problem, WordPlace } from "../../records/problem.ts";
import { idKey } from "../../terms/ids.ts";
import { wordPattern } from "../../terms/words.ts";

/** Finds links that lead nowhere, pictures, and pages that could be taken for others. */
export async function checkOwnWords(archive: Archive): Promise<readonly Problem[]> {
  const { studio, pageKeys } = archive;
  const pages = [...archive.pages.values()];
  // What reads Markdown is slow to load, and most archives have no words of this kind.
  if (studio.welcome === undefined && pages.length === 0) return [];
  const { findUnusable } = await import("../../../templates/parts/own-words.ts");
  const inWords = (file: string, path: FieldPath, words: string) =>
    findUnusable(words, (key) => pageKeys.has(key)).map(
      (found): Problem => ({
        ...{ file, path, severity: "error" },
        ...tell(found),
        ...placed(words, found.address),
      }),
    );
  return [
    ...inWords("studio.yaml", ["welcome"], studio.welcome ?? ""),
    ...pages.flatMap((page) => [...inWords(page.file, [], page.notes), ...emptyPage(page)]),
    ...clashes(pages),
  ];
}

function tell({ what, address }: UnusableInWords): Pick<Problem, "code" | "message" | "hint"> {
  if (what === "picture")
    return {
      code: "picture-in-words",
      message: `The picture “${address}” is not shown: the studio's own words hold no pictures`,
      hint: "Take it out, or lead to it with a link that begins with https://.",
    };
  return {
    code: "link-leads-nowhere",
    message: `The link “${address}” leads nowhere`,
    hint: "Write a whole address that begins with https:// or mailto:, or the file of another page in pages/, such as opening-hours.md.",
  };
}

/** Where an address is written, by its first word. */
function placed(words: string, address: string): { readonly word?: WordPlace } {
  const at = words.indexOf(address);
  const [text] = address.match(wordPattern) ?? [];
  if (at < 0 || text === undefined) return {};
  const before = words.slice(0, at).match(wordPattern) ?? [];
  return { word: { text, nth: before.filter((word) => word === text).length } };
}

function emptyPage({ file, notes }: Filed<PageRecord>): readonly Problem[] {
  if (notes.trim() !== "") return [];
  return [
    {
      ...{ file, path: [], severity: "error", code: "page-empty" },
      message: "The page says nothing below its title",
      hint: "Write its words below the second “---”, or take the file out.",
    },
  ];
}

/** Titles that the masthead or the foot of every page has already. */
function clashes(pages: readonly Filed<PageRecord>[]): readonly Problem[] {
  const taken = new Map(namesOfWays.map((name) => [idKey(name), "a page that Tilebook writes"]));
  return pages.flatMap(({ file, record: { title } }): readonly Problem[] => {
    const by = taken.get(idKey(title));
    taken.set(idKey(title), by ?? file);
    if (by === undefined) return [];
    return [
      {
        ...{ file, path: ["title"], severity: "error", code: "page-title-taken" },
        message: `“${title}” is the name of ${by} as well, and nobody could tell the two apart`,
        hint: "Give this page another title.",
      },
    ];
  });
}
