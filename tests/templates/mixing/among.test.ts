/** A glaze's page: its figures among those of the other glazes here. */
import { describe, expect, test } from "vitest";
import { renderPage } from "../../../src/publish/write-pages.ts";
import type { Result } from "../../../src/records/tile.ts";
import { catalogueOf, clear, mixed } from "../../catalogue/mixing/mixing-support.ts";
import { coat, cone, fired, firing, glaze, result, tile } from "../../checks/support.ts";
import { listPages } from "../../support/list-pages.ts";

const came = (surface: Result["surface"], faults?: Result["faults"]) => ({
  result: [{ ...result(), surface, faults } as Result],
});

function pagesOf(catalogue: ReturnType<typeof catalogueOf>) {
  return (id: string) => {
    const page = listPages(catalogue).find(({ path }) => path === `glazes/${id}.html`);
    const html = page ? renderPage(page) : "";
    const from = html.indexOf('<section class="among"');
    const section = from < 0 ? "" : html.slice(from, html.indexOf("</section>", from));
    return {
      html: section,
      words: section
        .replace(/<[^>]+>/gu, " ")
        .replace(/\s+/gu, " ")
        .trim(),
    };
  };
}

const fen = mixed("fen", { "potash-feldspar": 45, kaolin: 25, whiting: 30 });
const kiln = firing("g-1", { cone: cone("6") });

describe("a glaze among the others here", () => {
  const page = pagesOf(
    catalogueOf({
      glazes: [
        clear,
        fen,
        mixed("new", { "potash-feldspar": 40, silica: 25, whiting: 35 }),
        glaze("jar"),
      ],
      firings: [kiln],
      tiles: [
        tile("A", [coat("clear"), fired("g-1")], came(["satin"])),
        tile("B", [coat("clear"), fired("g-1")], came(["satin"], ["crazing"])),
        tile("C", [coat("fen"), fired("g-1")], came(["matte"])),
        tile("D", [coat("jar"), fired("g-1")], came(["gloss"])),
      ],
    }),
  );
  const { html, words } = page("clear");

  test("says first what its own tiles are, and by how many tiles all of it is told", () => {
    expect(words).toContain(
      "On the tiles here clear came out satin (A, B) and crazed (B) at cone 6, cooling not recorded.",
    );
    expect(words).toContain(
      "From 3 tiles of 2 mixed glazes, each alone on its tile, at cone 6, cooling not recorded.",
    );
  });

  test("tells each figure, where it is among those of every outcome, and the nearest with its tiles", () => {
    expect(words).toContain("Silica to alumina: 9.1");
    expect(words).toContain("Matte: 1 other glaze (1 tile) at 3.8; this one is above.");
    expect(words).toContain("Nearest: fen, 3.8: matte (C).");
    expect(words).toContain("Boric oxide to one of flux: none No glaze here has any.");
  });

  test("gives the published lines as a second opinion, and yields to the tiles against them", () => {
    expect(words).toContain("(R. T. Stull 1912, from memory; he says “bright”)");
    expect(words).toContain(
      "By Stull’s lines this one would be gloss. On the tiles here it is satin (A, B): believe the tiles.",
    );
    expect(page("fen").words).not.toContain("believe the tiles");
    expect(words).not.toMatch(/\b(pass|fail|safe|outside the limits?)\b/u);
  });

  test("draws what the words and the table say, hidden from those who are read to", () => {
    expect(html).toContain('<div class="company-line" aria-hidden="true">');
    expect(html).toContain('fill="url(#hatch)"');
    expect(words).toMatch(/2 clear 9\.1 0\.\d\d : 0\.\d\d none satin \(A, B\) and crazed \(B\)/u);
  });

  test("without a tile of its own is shown among the others of its cones, and says so", () => {
    expect(page("new").words).toContain("No tile here shows how new comes out at cone 6");
  });

  test("that was bought has no figures and no section", () => {
    expect(page("jar").html).toBe("");
  });
});

test("a glaze with nobody to compare it with says what would fill the place, and gives its figures", () => {
  const { words } = pagesOf(catalogueOf({ glazes: [clear] }))("clear");
  expect(words).toContain(
    "A tile with one mixed glaze alone, and surface: in its result, puts that glaze here with its figures.",
  );
  expect(words).toContain("Silica to alumina: 9.1 .");
});
