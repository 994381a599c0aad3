import { renderToString } from "preact-render-to-string";
import { expect, test } from "vitest";
import { ColoursAlone } from "../../templates/parts/glaze-colours.tsx";
import { alone, type Coloured, grey, sootOf } from "../catalogue/colours/colour-support.ts";

const render = (...tiles: readonly Coloured[]) =>
  renderToString(<ColoursAlone root="../" glaze={sootOf(...tiles)} trust={null} />);

test("a table has cones across, coats down, and the clays one under another", () => {
  const html = render(
    [alone("A-1", { cone: "4" }), grey(20)],
    [alone("A-2", { cone: "6", coats: 1 }), grey(30)],
    [alone("A-3", { cone: "6", coats: 1, clay: "red" }), grey(40)],
    [alone("A-4", { cone: "6", coats: 1, clay: "red" }), grey(60)],
    [alone("A-5", { cone: "6", coats: null, clay: "red" }), grey(60)],
  );
  const heads = [...html.matchAll(/<th scope="(\w+)"[^>]*>(.*?)<\/th>/gu)].map(
    ([, scope, words = ""]) => [scope, words.replace(/<[^>]*>/gu, "")],
  );
  expect(heads).toEqual([
    ["col", "Cone"],
    ["col", "4"],
    ["col", "6"],
    ["rowgroup", "Buff, in oxidation"],
    ["row", "1 coat"],
    ["row", "2 coats"],
    ["rowgroup", "Red, in oxidation"],
    ["row", "1 coat"],
    ["row", "not counted"],
  ]);
  const cells = [...html.matchAll(/<td>(.*?)<\/td>|<td\s*\/>/gu)].map(([, cell = ""]) =>
    [...cell.matchAll(/href="([^"]*)"/gu)].map(([, link]) => link),
  );
  const [one, two, three, four, five] = [1, 2, 3, 4, 5].map((n) => `../tiles/a-${n}.html`);
  expect(cells).toEqual([[], [two], [one], [], [], [three, four], [], [five]]);
});

test("every swatch has its colour's name and its tile's code in words", () => {
  const html = render([alone("A-1"), grey(5)], [alone("A-2"), [45, 0, -40]]);
  for (const words of ["A-1", "Black", "A-2", "Blue"]) expect(html).toContain(`>${words}</span>`);
});

test("of many tiles made alike some stand for all, and it says how many there are", () => {
  const html = render(
    ...Array.from({ length: 30 }, (_, i): Coloured => [alone(`C-${i}`), grey(40)]),
  );
  expect([...html.matchAll(/class="measured-tile"/gu)]).toHaveLength(12);
  expect(html).toContain("12 of 30 shown");
  expect(html).toContain(">C-0</span>");
  expect(html).toContain(">C-29</span>");
});

test("where nothing is measured it says what would fill the place", () => {
  const html = render([alone("A-1"), null]);
  expect(html).not.toContain("<table");
  expect(html).toContain(
    "Not measured yet. A tile that has soot and no other glaze, with a photograph of it, shows its colour here.",
  );
});
