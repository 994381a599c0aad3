/** What makes a site the studio's own: its mark, its colour, its words. */
import type { Archive } from "../records/archive.ts";
import { compareIds } from "../terms/ids.ts";
import { markUrl, pageUrl } from "./addresses.ts";
import type { PreparedMark } from "./findings.ts";

export interface StudioMark {
  readonly url: string;
  readonly alt: string;
  /** In any unit: how wide it is for its height. */
  readonly width: number;
  readonly height: number;
}

/** A page in the studio's own words. */
export interface StudioPage {
  readonly url: string;
  readonly title: string;
  /** Markdown. */
  readonly words: string;
}

export interface StudioOwn {
  /** Markdown; null on the site of an unlisted set, whose own notes welcome. */
  readonly welcome: string | null;
  readonly website: string | null;
  readonly mark: StudioMark | null;
  /** `#rrggbb`. */
  readonly accent: string | null;
  /** In the order of their files' names. */
  readonly pages: readonly StudioPage[];
}

export function describeOwn(
  { studio, pages }: Archive,
  mark: PreparedMark | undefined,
  unlisted: boolean,
): StudioOwn {
  return {
    welcome: unlisted ? null : (studio.welcome ?? null),
    website: studio.website ?? null,
    mark:
      mark && studio.mark
        ? {
            url: markUrl(mark.format),
            alt: studio.mark.alt,
            width: mark.width,
            height: mark.height,
          }
        : null,
    accent: studio.accent ?? null,
    pages: [...pages.values()]
      .sort((a, b) => compareIds(a.id, b.id))
      .map(({ id, record, notes }) => ({ url: pageUrl(id), title: record.title, words: notes })),
  };
}
