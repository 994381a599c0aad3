/** The script that keeps the tile form for where there is no connection, told what to keep. */

import { formSitePath, makeFormScripts } from "./add.ts";
import type { DataFile } from "./data/entry.ts";
import { formPath } from "./pages/site.ts";
import type { SiteRequest } from "./site-request.ts";
import { pagesOf } from "./site-request.ts";
import { sumOf } from "./sum.ts";
import { renderPage } from "./write-pages.ts";

/** It can keep only what lies beneath it. */
export const formWorkerPath = "add-worker.js";

const scripts = ["add.js", "add-checks.js", "add-zip.js", "set-beside.js"];

/**
 * The worker of a site's form, another one as soon as anything that it keeps is another; none where the
 * site has no form.
 *
 * @param assets of this site, by their paths beneath `assets/`
 */
export function makeFormWorker(
  site: SiteRequest,
  assets: ReadonlyMap<string, string | Uint8Array>,
): readonly DataFile[] {
  const page = pagesOf(site).find(formPath);
  const worker = assets.get("add-worker.js");
  if (!page || worker === undefined) return [];
  const kept = [...assets].filter(([name]) => isKept(name, site));
  const data = makeFormScripts(site.catalogue).find(({ path }) => path === formSitePath);
  const sums = [renderPage(page), data?.content ?? "", ...kept.map(([, content]) => content)];
  const keeps = {
    sum: sumOf(sums.map(sumOf).join(" ")),
    files: [formPath, formSitePath, ...kept.map(([name]) => `assets/${name}`)],
  };
  const script = typeof worker === "string" ? worker : new TextDecoder().decode(worker);
  return [
    {
      path: formWorkerPath,
      content: `self.tilebookKeeps=${JSON.stringify(keeps)};\n${script}`,
    },
  ];
}

/** What the page asks for: its style with all fonts that one may name, its scripts, icon and mark. */
function isKept(name: string, { catalogue: { own } }: SiteRequest): boolean {
  return (
    scripts.includes(name) ||
    ["add.css", "icon.svg"].includes(name) ||
    name.endsWith(".woff2") ||
    `assets/${name}` === own.mark?.url
  );
}
