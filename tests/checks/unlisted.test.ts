import { describe, expect, it } from "vitest";
import { coat, codesIn, glaze, set, tell, tile } from "./support.ts";

const link = "k7wq2mzt4hx3vb5nrd6yfp2cja";

describe("an unlisted set", () => {
  it("with a random link is sound", () => {
    expect(codesIn({ sets: [set("evening", { listed: false, link })] })).toEqual([]);
  });

  it("without a link is an error that says what becomes of the old address", () => {
    expect(tell({ sets: [set("evening", { listed: false })] })).toMatchInlineSnapshot(`
      "error unlisted-without-link tiles/evening/set.md › listed
      This set is to be reached only by its link, and has none
      Write a random “link:” into it. Its address changes this once: up to now it was worked out from names that anyone may know."
    `);
  });

  it("has no link that holds a word of its own name or the studio's", () => {
    const near = [`${link.slice(0, 9)}evening${link.slice(9)}`, `eelgate${link}`, `${link}Cafe7`];
    const sets = near.map((each, i) =>
      set(`evening-${i}`, { listed: false, link: each, name: "Trials for the Café" }),
    );
    expect(tell({ sets })).toMatchInlineSnapshot(`
      "error link-guessable tiles/evening-0/set.md › link
      The link holds “evening”, which anyone who knows the set or the studio may think of
      Write a random link instead, and send the new address round.

      error link-guessable tiles/evening-1/set.md › link
      The link holds “eelgate”, which anyone who knows the set or the studio may think of
      Write a random link instead, and send the new address round.

      error link-guessable tiles/evening-2/set.md › link
      The link holds “cafe”, which anyone who knows the set or the studio may think of
      Write a random link instead, and send the new address round."
    `);
  });

  it("alone has a link: a listed one that has is told, since everyone sees it", () => {
    expect(
      tell({ sets: [set("open", { link }), set("other", { link, listed: true })] }),
    ).toMatchInlineSnapshot(`
      "error link-of-listed-set tiles/open/set.md › link
      This set has a link of its own, and yet everyone would see it on the site
      Write “listed: no” if only those with the link may see it, or take “link:” out.

      error link-of-listed-set tiles/other/set.md › link
      This set has a link of its own, and yet everyone would see it on the site
      Write “listed: no” if only those with the link may see it, or take “link:” out."
    `);
  });
});

describe("a glaze that is held back", () => {
  const glazes = [
    glaze("secret", { name: "Secret", listed: false }),
    glaze("half", { blend: [{ glaze: "secret", parts: 1 }] }),
  ];
  const hidden = set("hidden", { listed: false, link });

  it("may be on the tiles of unlisted sets", () => {
    const tiles = [tile("A", [coat("half")], {}, { set: "hidden" })];
    expect(codesIn({ glazes, tiles, sets: [hidden] })).toEqual([]);
  });

  it("is told where a tile that everyone sees has it in a blend", () => {
    const tiles = [tile("A", [coat("half")], {}, { set: "hidden" }), tile("B", [coat("half")])];
    expect(tell({ glazes, tiles, sets: [hidden] })).toMatchInlineSnapshot(`
      "error glaze-listed-anyway recipes/glazes/secret.md › listed
      Secret is not to be listed, and yet a tile or a jar of a listed set holds it, by itself or in a blend
      Take “listed: no” out, or use the glaze in unlisted sets alone."
    `);
  });

  it("is told where it is in a jar of a listed set", () => {
    const sets = [hidden, set("open", { jars: { 1: "SECRET" } })];
    expect(codesIn({ glazes, sets })).toEqual(["glaze-listed-anyway"]);
  });
});
