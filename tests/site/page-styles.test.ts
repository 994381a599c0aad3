/** A page's styles hold every rule that takes hold on it, and far less than the whole. */
import { readFile, stat } from "node:fs/promises";
import { join } from "node:path";
import { build } from "esbuild";
import { expect } from "vitest";
import { project } from "../house/files.ts";
import { siteTest } from "../support/browser.ts";
import {
  type BuiltSite,
  demoSite,
  leadsOn,
  pageOfEachKind,
  pagesOf,
  smallSite,
} from "./built-sites.ts";

const small = smallSite();
const demo = demoSite();

async function wholeStyles(): Promise<string> {
  const { outputFiles } = await build({
    entryPoints: [join(project, "templates/styles/site.css")],
    bundle: true,
    write: false,
    external: ["*.woff2"],
  });
  return outputFiles[0]?.text ?? "";
}

/**
 * Runs in a page: the selectors of the whole styles that find something on it and are not among its
 * own. What a reader does to a page, as hovering, is taken as done.
 */
function findMissing(whole: string): string[] {
  const selectorsOf = (rules: CSSRuleList, within: string): [string, string][] =>
    [...rules].flatMap((rule): [string, string][] => {
      if (rule instanceof CSSStyleRule)
        return rule.selectorText
          .split(/,(?![^(]*\))/u)
          .map((one) => [`${within} ${one.trim()}`, one.trim()]);
      return rule instanceof CSSMediaRule
        ? selectorsOf(rule.cssRules, `${within} ${rule.conditionText}`)
        : [];
    });
  const all = new CSSStyleSheet();
  all.replaceSync(whole.replaceAll(/@font-face[^}]*\}/gu, ""));
  const own = [...document.styleSheets].flatMap((sheet) => selectorsOf(sheet.cssRules, ""));
  const kept = new Set(own.map(([place]) => place));
  const doing = "(?:hover|focus-visible|focus-within|focus|checked|open)(?![\\w-])";
  const done = new RegExp(`:not\\(:${doing}\\)|::[\\w-]+|:${doing}`, "gu");
  return selectorsOf(all.cssRules, "")
    .filter(([place]) => !kept.has(place))
    .filter(([, selector]) => document.querySelector(selector.replaceAll(done, "") || "*"))
    .map(([place]) => place);
}

for (const [name, site, pages] of [
  ["page of the small site", small, async () => pagesOf(small)],
  ["kind of page of the demonstration", demo, () => pageOfEachKind(demo)],
] as [string, BuiltSite, () => Promise<readonly string[]>][])
  siteTest(
    `no ${name} lacks a rule that would take hold on it`,
    { timeout: 240_000 },
    async ({ open, serve }) => {
      const root = await serve(site.folder);
      const page = await open("about:blank");
      await page.route(/\.(?:webp|jpe?g|woff2)$/u, (route) => route.abort());
      const whole = await wholeStyles();
      const missing: string[] = [];
      for (const path of await pages()) {
        // The page for an address that leads nowhere names its styles by the address it is published at.
        if (path.endsWith("404.html") || (await leadsOn(site, path))) continue;
        await page.goto(root + path);
        for (const rule of await page.evaluate(findMissing, whole))
          missing.push(`${path}: ${rule}`);
      }
      expect(missing).toEqual([]);
    },
  );

siteTest("a page loads one file of styles, of half the whole at most", async () => {
  const whole = (await wholeStyles()).length;
  for (const path of ["index.html", "tiles/bl-01.html", "glazes/chalk.html", "care.html"]) {
    const text = await readFile(join(demo.folder, path), "utf8");
    const [sheet, ...more] = [...text.matchAll(/rel="stylesheet" href="([^"]+)"/gu)];
    expect(more).toEqual([]);
    const file = join(demo.folder, path, "..", sheet?.[1] ?? "");
    expect((await stat(file)).size, path).toBeLessThan(whole / 2);
  }
});
