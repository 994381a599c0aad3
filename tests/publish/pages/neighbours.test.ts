/** From each tile to the one before it and the next. */
import { expect, test } from "vitest";
import { makeCatalogue } from "../../../src/catalogue/make.ts";
import { renderPage } from "../../../src/publish/write-pages.ts";
import { archive, set, tile } from "../../checks/support.ts";
import { listPages } from "../../support/list-pages.ts";

const catalogue = makeCatalogue(
  archive({
    sets: [set("first"), set("second")],
    tiles: [
      tile("A-1", [], {}, { set: "first" }),
      tile("A-2", [], {}, { set: "first" }),
      tile("B", []),
      tile("C-1", [], {}, { set: "second" }),
    ],
  }),
  {
    ...{ pictures: new Map(), chemistry: new Map(), heats: new Map(), notes: new Map() },
    builtInMaterials: [],
  },
);

test("tiles lead on by their codes, out of one set, through a tile of none and into the next", () => {
  const ways = listPages(catalogue)
    .filter(({ path }) => path.startsWith("tiles/"))
    .map((page) => {
      const html = renderPage(page);
      const to = (rel: string) => new RegExp(`rel="${rel}" href="([^"]+)"`, "u").exec(html)?.[1];
      return [page.path, to("prev"), to("next")];
    });
  expect(ways).toEqual([
    ["tiles/a-1.html", undefined, "../tiles/a-2.html"],
    ["tiles/a-2.html", "../tiles/a-1.html", "../tiles/b.html"],
    ["tiles/b.html", "../tiles/a-2.html", "../tiles/c-1.html"],
    ["tiles/c-1.html", "../tiles/b.html", undefined],
  ]);
});
