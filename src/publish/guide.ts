/**
 * The guide: how tiles are made, written down, fired and shared, for those who have never seen a
 * terminal. It is `docs/guide/` of Tilebook itself, so that the repository and every site say the same.
 */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { GuideEntry } from "../../templates/pages/guide-page.tsx";
import { packageFolder } from "../compiled/own-files.ts";

/** The pages of the guide, in the order in which they are read, by whom they are for. */
const pages = {
  makers: ["write-a-tile", "photograph-a-tile", "codes-on-clay", "hand-in-by-the-forge"],
  teachers: ["run-a-class", "unload", "keep-names-private", "end-a-term"],
} as const;

let read: readonly GuideEntry[] | undefined;

/**
 * Every page of the guide, in order.
 *
 * @throws what the system says where Tilebook's own files cannot be read
 */
export function readGuide(): readonly GuideEntry[] {
  read ??= Object.freeze([
    ...pages.makers.map((stem) => readEntry(stem, "makers")),
    ...pages.teachers.map((stem) => readEntry(stem, "teachers")),
  ]);
  return read;
}

function readEntry(stem: string, audience: GuideEntry["audience"]): GuideEntry {
  const text = readFileSync(join(packageFolder, "docs/guide", `${stem}.md`), "utf8");
  const [heading = "", ...rest] = text.split("\n");
  const title = heading.replace(/^# /u, "");
  return Object.freeze({ stem, audience, title, words: rest.join("\n").trim() });
}
