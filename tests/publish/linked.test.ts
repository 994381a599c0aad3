/** What pages say of themselves in their heads: linked data, and the card that is shown where one shares an address. */
import { describe, expect, it } from "vitest";
import { examine, sharedSiteOf, sitesOf } from "../support/site-in-memory.ts";

const record = (...fields: readonly string[]) => ["---", ...fields, "---", ""].join("\n");

const makers =
  "makers:\n  m1: {name: Ann Pike, shown: yes}\n  m2: {name: Bo Lark, shown: initials}\n  m3: {name: Cy Moor, shown: no}\n";

function sitesWith(studio: string) {
  const { read, problems } = examine({
    "studio.yaml": `format: 1\nstudio: Eelgate\n${studio}${makers}`,
    "recipes/clays/buff.md": record("name: Buff"),
    "recipes/glazes/soot.md": record(
      "name: Soot </script>",
      "kind: glaze",
      "bought: {maker: Oxbow}",
    ),
    "recipes/glazes/chalk.md": record("name: Chalk", "kind: glaze", "bought: {maker: Oxbow}"),
    "tiles/open/set.md": record("name: Open", "kind: class"),
    "tiles/open/OP-1.md": record(
      "maker: m1",
      "clay: buff",
      "layers: [{glaze: soot}, {glaze: chalk}, {fired: g-1}]",
      "result: {again: yes}",
      "fate: broken",
    ),
    "tiles/open/OP-2.md": record("maker: m2", "layers: [{fired: bisque-1}, {glaze: soot}]"),
    "tiles/open/OP-3.md": record(
      "maker: m3",
      "layers: [{fired: bisque-1}, {glaze: soot}, {fired: glaze}]",
      "result: {again: no}",
      "fate: lost",
    ),
    "tiles/open/OP-4.md": record(
      "layers: [{glaze: soot}, {remove: all}, {glaze: chalk, coats: 2}, {glaze: chalk}]",
    ),
    "tiles/firings/g-1.md": record("on: 2026-10-20", "kind: glaze", "kiln: Big", "cone: 6"),
    "tiles/firings/bisque-1.md": record("on: 2026-10-02", "kind: bisque", "kiln: Big"),
    "tiles/hidden/set.md": record("name: Hidden", "listed: no", "link: q7m2xk4v9t3bnw6hcz5p8r"),
    "tiles/hidden/HI-1.md": record("layers: [{glaze: soot}]"),
  });
  if (!read.archive) throw new Error(JSON.stringify(problems));
  const sites = sitesOf(read.archive, problems);
  return { ...sites, shared: sharedSiteOf(read.archive, problems, "open") };
}

const withAddress = sitesWith(
  "address: https://eelgate.example/tests\nwebsite: https://eelgate.example/\nlicence: CC0\n",
);
const withoutAddress = sitesWith("");

function graphOf(html = ""): readonly Readonly<Record<string, unknown>>[] {
  const [, text] = /<script type="application\/ld\+json">(.*?)<\/script>/su.exec(html) ?? [];
  return text === undefined ? [] : JSON.parse(text)["@graph"];
}

/** The card of a page by its properties. */
function cardOf(html = ""): Readonly<Record<string, string>> {
  const metas = html.matchAll(
    /<meta (?:property="(og:[^"]+)"|name="(twitter:[^"]+)") content="([^"]*)"/gu,
  );
  return Object.fromEntries([...metas].map(([, og, twitter, said = ""]) => [og ?? twitter, said]));
}

const inHead = ({ open }: typeof withAddress, path: string) => graphOf(open.get(path));

describe("the linked data of a page", () => {
  it("tells of a tile what its page tells: who made it as she asked to be named, of what, when, where it belongs", () => {
    expect(inHead(withAddress, "tiles/op-1.html")).toMatchInlineSnapshot(`
      [
        {
          "@type": "CreativeWork",
          "creator": {
            "@type": "Person",
            "name": "Ann Pike",
            "url": "https://eelgate.example/tests/makers/ann-pike.html",
          },
          "dateCreated": "2026-10-20",
          "identifier": "OP-1",
          "isPartOf": {
            "@type": "Collection",
            "name": "Open",
            "url": "https://eelgate.example/tests/sets/open.html",
          },
          "material": [
            "Buff",
            "Soot </script>",
            "Chalk",
          ],
          "name": "OP-1: Chalk over Soot </script>",
          "url": "https://eelgate.example/tests/tiles/op-1.html",
        },
        {
          "@type": "BreadcrumbList",
          "itemListElement": [
            {
              "@type": "ListItem",
              "item": "https://eelgate.example/tests/index.html",
              "name": "Eelgate",
              "position": 1,
            },
            {
              "@type": "ListItem",
              "item": "https://eelgate.example/tests/sets/open.html",
              "name": "Open",
              "position": 2,
            },
            {
              "@type": "ListItem",
              "item": "https://eelgate.example/tests/tiles/op-1.html",
              "name": "OP-1",
              "position": 3,
            },
          ],
        },
      ]
    `);
  });

  it("names nobody who asked not to be named, and says of a maker with initials no more than these", () => {
    expect(inHead(withAddress, "tiles/op-2.html")[0]?.creator).toEqual({
      "@type": "Person",
      name: "B. L.",
    });
    expect(inHead(withAddress, "tiles/op-3.html")[0]).not.toHaveProperty("creator");
  });

  it("names no glaze that was taken off again, and each of the others once", () => {
    expect(inHead(withAddress, "tiles/op-4.html")[0]?.material).toEqual(["Chalk"]);
  });

  it("says no day on which a tile was made where its last firing has none, or is to come", () => {
    expect(inHead(withAddress, "tiles/op-2.html")[0]).not.toHaveProperty("dateCreated");
    expect(inHead(withAddress, "tiles/op-3.html")[0]).not.toHaveProperty("dateCreated");
  });

  it("has relative addresses where the studio says none of its own, as a page's own base makes them whole", () => {
    const [tile, trail] = inHead(withoutAddress, "tiles/op-1.html");
    expect(tile).toMatchObject({
      url: "../tiles/op-1.html",
      isPartOf: { url: "../sets/open.html" },
    });
    expect(JSON.stringify(trail)).toContain('"item":"../index.html"');
    for (const [path, html] of withoutAddress.open) {
      if (!path.endsWith(".html") || path.startsWith("search/")) continue;
      expect(JSON.stringify(graphOf(html)), path).not.toContain("://");
      expect(cardOf(html), path).toEqual({});
    }
  });

  it("tells of a glaze, a set, a pair, a firing and the site itself", () => {
    const paths = [
      "glazes/soot.html",
      "sets/open.html",
      "pairs/chalk--over--soot.html",
      "firings/g-1.html",
      "index.html",
    ];
    expect(paths.map((path) => inHead(withAddress, path))).toMatchInlineSnapshot(`
      [
        [
          {
            "@type": "Thing",
            "description": "A glaze, bought: Oxbow.",
            "name": "Soot </script>",
            "url": "https://eelgate.example/tests/glazes/soot.html",
          },
          {
            "@type": "BreadcrumbList",
            "itemListElement": [
              {
                "@type": "ListItem",
                "item": "https://eelgate.example/tests/index.html",
                "name": "Eelgate",
                "position": 1,
              },
              {
                "@type": "ListItem",
                "item": "https://eelgate.example/tests/glazes/index.html",
                "name": "Glazes",
                "position": 2,
              },
              {
                "@type": "ListItem",
                "item": "https://eelgate.example/tests/glazes/soot.html",
                "name": "Soot </script>",
                "position": 3,
              },
            ],
          },
        ],
        [
          {
            "@type": "Collection",
            "collectionSize": 4,
            "description": "A class, 4 tiles.",
            "name": "Open",
            "url": "https://eelgate.example/tests/sets/open.html",
          },
          {
            "@type": "BreadcrumbList",
            "itemListElement": [
              {
                "@type": "ListItem",
                "item": "https://eelgate.example/tests/index.html",
                "name": "Eelgate",
                "position": 1,
              },
              {
                "@type": "ListItem",
                "item": "https://eelgate.example/tests/sets/index.html",
                "name": "Sets",
                "position": 2,
              },
              {
                "@type": "ListItem",
                "item": "https://eelgate.example/tests/sets/open.html",
                "name": "Open",
                "position": 3,
              },
            ],
          },
        ],
        [
          {
            "@type": "BreadcrumbList",
            "itemListElement": [
              {
                "@type": "ListItem",
                "item": "https://eelgate.example/tests/index.html",
                "name": "Eelgate",
                "position": 1,
              },
              {
                "@type": "ListItem",
                "item": "https://eelgate.example/tests/glazes/index.html",
                "name": "Glazes",
                "position": 2,
              },
              {
                "@type": "ListItem",
                "item": "https://eelgate.example/tests/glazes/chalk.html",
                "name": "Chalk",
                "position": 3,
              },
              {
                "@type": "ListItem",
                "item": "https://eelgate.example/tests/pairs/chalk--over--soot.html",
                "name": "Chalk over Soot </script>",
                "position": 4,
              },
            ],
          },
        ],
        [
          {
            "@type": "BreadcrumbList",
            "itemListElement": [
              {
                "@type": "ListItem",
                "item": "https://eelgate.example/tests/index.html",
                "name": "Eelgate",
                "position": 1,
              },
              {
                "@type": "ListItem",
                "item": "https://eelgate.example/tests/firings/index.html",
                "name": "Firings",
                "position": 2,
              },
              {
                "@type": "ListItem",
                "item": "https://eelgate.example/tests/kilns/big.html",
                "name": "Big",
                "position": 3,
              },
              {
                "@type": "ListItem",
                "item": "https://eelgate.example/tests/firings/g-1.html",
                "name": "Firing g-1",
                "position": 4,
              },
            ],
          },
        ],
        [
          {
            "@type": "WebSite",
            "description": "4 glaze tests: what went on each tile, in which order, how it was fired, and what came out.",
            "name": "Eelgate",
            "publisher": {
              "@type": "Organization",
              "name": "Eelgate",
              "url": "https://eelgate.example/",
            },
            "url": "https://eelgate.example/tests/index.html",
          },
        ],
      ]
    `);
  });

  it("tells of the data with its files, its licence and whom to credit, and home and that page lead to what tells of all files", () => {
    const [data] = inHead(withAddress, "data.html");
    const { distribution, ...told } = data ?? {};
    expect(told).toMatchInlineSnapshot(`
      {
        "@type": "Dataset",
        "creator": {
          "@type": "Organization",
          "name": "Eelgate",
          "url": "https://eelgate.example/",
        },
        "creditText": "Eelgate: Glaze tests of Eelgate. https://eelgate.example/tests/",
        "description": "The tests of this catalogue as tables to take away: 4 tiles, 2 glazes and 2 firings. For a spreadsheet, for SQL, for a program of your own.",
        "license": "https://creativecommons.org/publicdomain/zero/1.0/",
        "name": "Glaze tests of Eelgate",
        "url": "https://eelgate.example/tests/data.html",
      }
    `);
    const files = distribution as readonly { readonly contentUrl: string }[];
    expect(files[0]).toEqual({
      "@type": "DataDownload",
      name: "tilebook.sqlite",
      contentUrl: "https://eelgate.example/tests/data/tilebook.sqlite",
      encodingFormat: "application/vnd.sqlite3",
    });
    const paths = files.map(({ contentUrl }) =>
      contentUrl.slice("https://eelgate.example/tests/".length),
    );
    expect(paths.filter((path) => !withAddress.open.has(path))).toEqual([
      "data/tilebook.sqlite",
      "data/archive.json",
    ]);
    const leading = [...withAddress.open].filter(([, html]) => html.includes('rel="describedby"'));
    expect(leading.map(([path]) => path).sort()).toEqual(["data.html", "index.html"]);
    for (const [, html] of leading)
      expect(html).toContain(
        '<link rel="describedby" type="application/json" href="data/archive.json"/>',
      );
  });

  it("rates nothing, sells nothing and calls nothing safe", () => {
    const types = [...withAddress.open.values()].flatMap(graphOf).map((thing) => thing["@type"]);
    expect([...new Set(types)].sort()).toEqual([
      "BreadcrumbList",
      "Collection",
      "CreativeWork",
      "Dataset",
      "Thing",
      "WebSite",
    ]);
  });
});

describe("the card of a page", () => {
  it("has its title, what it is, and its whole address", () => {
    expect(cardOf(withAddress.open.get("tiles/op-1.html"))).toMatchInlineSnapshot(`
      {
        "og:description": "Test tile OP-1: Chalk over Soot &lt;/script>. A smooth flat tile of Buff by Ann Pike.",
        "og:site_name": "Eelgate",
        "og:title": "OP-1: Chalk over Soot &lt;/script>",
        "og:type": "article",
        "og:url": "https://eelgate.example/tests/tiles/op-1.html",
      }
    `);
  });

  it("calls the first page a web site", () => {
    expect(cardOf(withAddress.open.get("index.html"))["og:type"]).toBe("website");
  });

  it("is not on a page that only leads on, nor on the one for what is not there", () => {
    expect(cardOf(withAddress.open.get("404.html"))).toEqual({});
  });
});

it("an unlisted set, and a set that is handed on, say nothing of themselves in any head", () => {
  const sites = [
    ...withAddress.hidden.values(),
    ...withoutAddress.hidden.values(),
    withAddress.shared,
  ];
  const pages = sites.flatMap((site) =>
    [...site].filter(([path]) => path.endsWith(".html") && !path.startsWith("search/")),
  );
  expect(pages.length).toBeGreaterThan(40);
  for (const [path, html] of pages) {
    expect(graphOf(html), path).toEqual([]);
    expect(cardOf(html), path).toEqual({});
  }
});
