/** Pages to disk, by way of Eleventy: only those that changed since the last site. */
import { mkdir } from "node:fs/promises";
import { relative } from "node:path";
import Eleventy from "@11ty/eleventy";
import { h } from "preact";
import { renderToString } from "preact-render-to-string";
import { carryOver } from "./carry.ts";
import type { Page } from "./page.ts";
import type { Target } from "./staging.ts";

/** A page as HTML, the whole document. */
export function renderPage(page: Page): string {
  return `<!doctype html>\n${showTurningSigns(renderToString(h(page.component, page.props as never)))}\n`;
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

/**
 * Writes all pages of a site into a folder of it.
 *
 * @param emptyFolder an empty folder, for Eleventy to find nothing in
 * @throws what Eleventy throws, and where two pages have one address
 */
export async function writePages(
  pages: readonly Page[],
  target: Target,
  emptyFolder: string,
): Promise<PageCounts> {
  refuseSameAddress(pages);
  const changed: Page[] = [];
  for (const page of pages) {
    if (!(await carryOver(target, page.path, renderPage(page)))) changed.push(page);
  }
  if (changed.length > 0) await writeWithEleventy(changed, target.folder, emptyFolder);
  return { written: changed.length, carriedOver: pages.length - changed.length };
}

function refuseSameAddress(pages: readonly Page[]): void {
  const seen = new Set<string>();
  for (const { path } of pages) {
    if (seen.has(path)) throw new Error(`Two pages have the address ${path}`);
    seen.add(path);
  }
}

/**
 * Eleventy is given finished pages as data and an input folder that is empty: nothing that a
 * contributor wrote is ever a template to it.
 *
 * @throws what went wrong itself, a full disk say, and not what Eleventy wraps it in
 */
async function writeWithEleventy(
  pages: readonly Page[],
  output: string,
  input: string,
): Promise<void> {
  try {
    await mkdir(output, { recursive: true });
    const eleventy = new Eleventy(relative(process.cwd(), input), output, {
      configPath: null,
      quietMode: true,
      config: (config) => {
        config.setUseGitIgnore(false);
        // Neither quiet mode nor a logger that is off keeps Eleventy from telling of slow parts.
        config.benchmarkManager.get("Configuration").setMinimumThresholdMs(0);
        config.addTemplate("pages.11ty.js", pageTemplate(pages));
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

function pageTemplate(pages: readonly Page[]) {
  return class {
    data() {
      return {
        pages,
        pagination: { data: "pages", size: 1, alias: "sheet" },
        permalink: ({ sheet }: { sheet: Page }) => sheet.path,
        eleventyExcludeFromCollections: true,
      };
    }
    render({ sheet }: { sheet: Page }) {
      return renderPage(sheet);
    }
  };
}
