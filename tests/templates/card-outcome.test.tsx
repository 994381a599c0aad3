/** What came out stands where people look: on the card of a wall, and at the head of a printed card. */
import { renderToString } from "preact-render-to-string";
import { describe, expect, test } from "vitest";
import { makeCatalogue } from "../../src/catalogue/make.ts";
import type { Result } from "../../src/records/tile.ts";
import { CardOutcome } from "../../templates/parts/card-outcome.tsx";
import { type CardOutcomeFacts, outcomeLine } from "../../templates/words/tile/card.ts";
import { archive, coat, glaze, tile } from "../checks/support.ts";
import { listPages } from "../support/list-pages.ts";

const nothing: CardOutcomeFacts = { surface: [], run: null, faults: [], again: null, fate: null };

const words = (markup: string) => markup.replace(/<[^>]*>/gu, "").replace(/&nbsp;|\u00a0/gu, " ");

/** On a card that was built, and on one that the wall's script makes. */
const line = (facts: Partial<CardOutcomeFacts>) => {
  const all = { ...nothing, ...facts };
  const built = words(renderToString(<CardOutcome of={all} />));
  expect(words(outcomeLine(all))).toBe(built);
  return built;
};

describe("a card says what came out", () => {
  test("surface, how far it ran, faults and the verdict, in words", () => {
    expect(
      line({ surface: ["gloss"], run: 12, faults: ["crawling", "too-thick"], again: "no" }),
    ).toBe("gloss, ran 12 mm, crawling and too thick, again: no");
    expect(line({ surface: ["matte", "satin"], run: 0, again: "yes" })).toBe(
      "matte and satin, again: yes",
    );
    expect(line({ fate: "stuck" })).toBe("stuck to the shelf");
    expect(line({})).toBe("");
  });

  test("with a drop that hangs the lower, the farther it ran", () => {
    const drop = (run: number) =>
      /class="(ran[^"]*)"/u.exec(renderToString(<CardOutcome of={{ ...nothing, run }} />))?.[1];
    expect([0, 1, 5, 40].map(drop)).toEqual([undefined, "ran", "ran far", "ran very-far"]);
  });
});

describe("the card of a tile", () => {
  const card = (about: Parameters<typeof tile>[2]) => {
    const catalogue = makeCatalogue(
      archive({ glazes: [glaze("soot")], tiles: [tile("A", [coat("soot", { coats: 1 })], about)] }),
      {
        pictures: new Map(),
        chemistry: new Map(),
        heats: new Map(),
        notes: new Map(),
        builtInMaterials: [],
      },
    );
    const page = listPages(catalogue).find(({ path }) => path === "tiles/a.html");
    const markup = page ? renderToString(page.component(page.props() as never)) : "";
    return words(markup.slice(markup.indexOf('class="again-card"')));
  };
  const found = (result: object) => card({ result: [result as Result] });

  test("that failed is no recipe: the verdict and the reason come first", () => {
    const failed = found({ faults: ["crawling"], again: "no" });
    expect(failed).toMatch(/How it was made.*Again: no\..*Found: crawling\..*Take/u);
    expect(failed).not.toContain("To do it again");
    expect(card({ fate: "stuck" })).toMatch(/How it was made.*It stuck to the kiln shelf\./u);
  });

  test("that is to be changed says so, and one to be repeated is read as it is", () => {
    expect(found({ faults: ["none"], again: "changed" })).toMatch(
      /To do it again.*Again: yes, but changed\./u,
    );
    const good = found({ faults: ["none"], again: "yes" });
    expect(good).toContain("To do it again");
    expect(good).not.toContain("Again: yes.");
  });
});
