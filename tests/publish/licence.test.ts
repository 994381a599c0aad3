/** Every page of every site says what others may do with the records and the photographs, or that nobody has said. */
import { describe, expect, it } from "vitest";
import { examine, sharedSiteOf, sitesOf } from "../support/site-in-memory.ts";

const record = (...fields: readonly string[]) => ["---", ...fields, "---", ""].join("\n");

/** The pages of the site for everyone, of an unlisted set and of one that is shared, by their paths. */
function pagesWith(licence: string): readonly (readonly [path: string, html: string])[] {
  const { read, problems } = examine({
    "studio.yaml": `format: 1\nstudio: Eelgate\naddress: https://eelgate.example/\n${licence}`,
    "recipes/glazes/soot.md": record("name: Soot", "kind: glaze", "bought: {maker: Oxbow}"),
    "tiles/open/set.md": record("name: Open"),
    "tiles/open/OP-1.md": record("layers: [{glaze: soot}]", "formerly: [OP-0]"),
    "tiles/hidden/set.md": record("name: Hidden", "listed: no", "link: q7m2xk4v9t3bnw6hcz5p8r"),
    "tiles/hidden/HI-1.md": record("layers: [{glaze: soot}]"),
  });
  if (!read.archive) throw new Error(JSON.stringify(problems));
  const { open, hidden } = sitesOf(read.archive, problems);
  const shared = sharedSiteOf(read.archive, problems, "open", "families");
  return [open, ...hidden.values(), shared].flatMap((site) =>
    [...site].filter(([path]) => path.endsWith(".html") && !path.startsWith("search/")),
  );
}

function linesOf(licence: string): readonly string[] {
  const pages = pagesWith(licence);
  expect(pages.length).toBeGreaterThan(60);
  return [
    ...new Set(
      pages.map(([path, html]) => {
        const [, foot = ""] = /<footer class="site-foot">(.*)<\/footer>/su.exec(html) ?? [];
        const [, line = `nothing on ${path}`] = /<p class="quiet">(.*?)<\/p>/su.exec(foot) ?? [];
        return line;
      }),
    ),
  ];
}

describe("the foot of every page, those of unlisted and of shared sets among them", () => {
  it("leads to a licence that is known", () => {
    expect(linesOf("licence: CC-BY-SA-4.0\n")).toEqual([
      'You may use the records and the photographs as this licence says: <a rel="license" href="https://creativecommons.org/licenses/by-sa/4.0/">Creative Commons Attribution Share Alike 4.0 International</a>.',
    ]);
  });

  it("says a studio's own words as they are, and makes no licence of them", () => {
    expect(linesOf("licence: CC BY, but <ask> us first.\n")).toEqual([
      "What you may do with the records and the photographs: CC BY, but &lt;ask> us first.",
    ]);
  });

  it("says that nobody has said so yet where studio.yaml is silent", () => {
    expect(linesOf("")).toEqual([
      "Eelgate has not said yet what you may do with its records and photographs: ask before you use them.",
    ]);
  });
});
