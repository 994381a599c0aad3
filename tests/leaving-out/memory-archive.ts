/** Archives that lie in memory, read and judged as a build does, and their pages. */
import { textParser } from "../../src/archive/parse-text.ts";
import { makeCatalogue } from "../../src/catalogue/make.ts";
import { withoutUnlistedSets } from "../../src/catalogue/select.ts";
import { notesByFile } from "../../src/checks/notes.ts";
import { carriedMaterials, carriedWords } from "../../src/chemistry/minerals/minerals.ts";
import { asTypedFor } from "../../src/commands/as-typed.ts";
import { type SoundPart, wholeArchive } from "../../src/commands/build/sound-part.ts";
import { waitingLister } from "../../src/commands/build/waiting.ts";
import { type Examined, judgeArchive } from "../../src/commands/examine/examine.ts";
import { renderPage } from "../../src/publish/write-pages.ts";
import type { ArchiveFiles } from "../../src/reader/archive-files.ts";
import { readArchiveFiles } from "../../src/reader/read-archive-files.ts";
import { listPages } from "../support/list-pages.ts";

/** How a command is typed in these archives. */
export const asTyped = asTypedFor(".");

export type TextFiles = ReadonlyMap<string, string>;

function inMemory(files: TextFiles): ArchiveFiles {
  return {
    list(folder) {
      const prefix = folder === "" ? "" : `${folder}/`;
      const below = [...files.keys()].filter((file) => file.startsWith(prefix));
      if (below.length === 0) return null;
      const names = below.map((file) => file.slice(prefix.length));
      const folders = names.filter((name) => name.includes("/")).map((name) => name.split("/")[0]);
      return {
        files: names.filter((name) => !name.includes("/")).sort(),
        folders: [...new Set(folders as string[])].sort(),
        problems: [],
      };
    },
    read: (file) => ({ bytes: new TextEncoder().encode(files.get(file) ?? "") }),
  };
}

/** Reads and checks an archive, of whose pictures nothing is known but that they are there. */
export function examine(files: TextFiles): Examined {
  const read = readArchiveFiles(inMemory(files), {
    builtInMaterials: carriedWords,
    texts: textParser,
  });
  const pictures = new Map(read.pictures.map((file) => [file, { facts: { traces: [] } }] as const));
  if (!read.archive)
    return {
      ...{ read, pictures, problems: read.problems },
      ...{ chemistry: new Map(), heats: new Map() },
    };
  const judged = judgeArchive(read.archive, pictures, asTyped);
  return { ...judged, read, pictures, problems: [...read.problems, ...judged.problems] };
}

/** The pages of the whole site by their addresses, and what they say waits. */
export function pagesOf({ read }: Examined, sound: SoundPart): ReadonlyMap<string, string> {
  const catalogue = makeCatalogue(withoutUnlistedSets(sound.archive), {
    pictures: new Map(),
    chemistry: sound.chemistry,
    heats: sound.heats,
    notes: notesByFile(sound.problems),
    builtInMaterials: carriedMaterials,
  });
  const whole = read.archive ? wholeArchive(read, read.archive) : undefined;
  const waiting = whole ? waitingLister(whole, sound.leftOut, read.locate)(null) : [];
  return new Map(
    listPages(catalogue, { under: "", waiting }).map((page) => [page.path, renderPage(page)]),
  );
}

/** A page without what it says of records that wait. */
export function withoutNotice(page: string): string {
  return page
    .replace(/<p class="(?:missing|waiting-home)" role="note">.*?<\/p>/su, "")
    .replace(/<p class="waiting-note">.*?<\/p>/su, "");
}
