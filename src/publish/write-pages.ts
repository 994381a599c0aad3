/** Pages to disk, by way of Eleventy: only those that changed since the last site are rendered, each once. */
import { mkdir } from "node:fs/promises";
import { relative } from "node:path";
import { h } from "preact";
import { renderToString } from "preact-render-to-string";
import { carryUnchanged, type Place } from "./carry.ts";
import type { FiledPage } from "./filed-page.ts";
import type { Page } from "./page.ts";
import { sumOf } from "./sum.ts";
import { inTurns } from "./turns.ts";

/** A page as HTML, the whole document. */
export function renderPage({ component, props }: Page): string {
  return `<!doctype html>\n${showTurningSigns(renderToString(h(component, props() as never)))}\n`;
}

/** Signs that turn letters around are shown by their codes, so that what is read is what was written. */
function showTurningSigns(html: string): string {
  return html.replace(
    /[\u202a-\u202e\u2066-\u2069]/gu,
    (sign) => `⟨U+${sign.charCodeAt(0).toString(16).toUpperCase()}⟩`,
  );
}

export interface PageCounts {
  readonly written: number;
  readonly carriedOver: number;
}

/** Eleventy holds all pages that it is given at once in memory, until it has written the last. */
const mostAtOnce = 1000;

/**
 * Writes pages into the folder of a new site.
 *
 * @param emptyFolder an empty folder, for Eleventy to find nothing in
 * @throws what Eleventy throws
 */
export async function writePages(
  pages: readonly FiledPage[],
  place: Place,
  emptyFolder: string,
): Promise<PageCounts> {
  const changed: FiledPage[] = [];
  await inTurns(pages, (filed) => {
    if (!carryUnchanged(place, filed.file, filed.key)) changed.push(filed);
  });
  for (let done = 0; done < changed.length; done += mostAtOnce)
    await writeWithEleventy(changed.slice(done, done + mostAtOnce), place, emptyFolder);
  return { written: changed.length, carriedOver: pages.length - changed.length };
}

/**
 * Eleventy is given pages as data and an input folder that is empty: nothing that a contributor wrote
 * is ever a template to it.
 *
 * @throws what went wrong itself, a full disk say, and not what Eleventy wraps it in
 */
async function writeWithEleventy(
  pages: readonly FiledPage[],
  place: Place,
  input: string,
): Promise<void> {
  try {
    // Where nothing changed it is not even loaded, which takes longer than many a build.
    const { default: Eleventy } = await import("@11ty/eleventy");
    await mkdir(place.folder, { recursive: true });
    const eleventy = new Eleventy(relative(process.cwd(), input), place.folder, {
      configPath: null,
      quietMode: true,
      config: (config) => {
        config.setUseGitIgnore(false);
        // Neither quiet mode nor a logger that is off keeps Eleventy from telling of slow parts.
        config.benchmarkManager.get("Configuration").setMinimumThresholdMs(0);
        config.addTemplate("pages.11ty.js", pageTemplate(pages, place));
      },
    });
    eleventy.disableLogger();
    await eleventy.init();
    await eleventy.write();
  } catch (error) {
    throw unwrapError(error);
  }
}

function unwrapError(error: unknown): unknown {
  const { originalError } = error as { originalError?: unknown };
  return originalError === undefined ? error : unwrapError(originalError);
}

/** Eleventy goes through all data that it is given: it gets the paths alone. */
function pageTemplate(pages: readonly FiledPage[], { ledger }: Place) {
  const byFile = new Map(pages.map((filed) => [filed.file, filed]));
  return class {
    data() {
      return {
        files: [...byFile.keys()],
        pagination: { data: "files", size: 1, alias: "file" },
        permalink: ({ file }: { file: string }) => file,
        eleventyExcludeFromCollections: true,
      };
    }
    render({ file }: { file: string }) {
      const filed = byFile.get(file);
      if (!filed) throw new Error(`There is no page ${file}`);
      const { page, key, words } = filed;
      const html = renderPage(page);
      ledger.note(file, { key, sum: sumOf(html), words });
      return html;
    }
  };
}
