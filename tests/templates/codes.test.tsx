/** Codes that there is no room for are counted, never dropped. */
import { renderToString } from "preact-render-to-string";
import { expect, test } from "vitest";
import { Codes, nameCodes } from "../../templates/parts/codes.tsx";

const tiles = ["A", "B", "C", "D"].map((id) => ({ id, url: `tiles/${id.toLowerCase()}.html` }));

const words = (most: number) =>
  renderToString(<Codes root="../" of={nameCodes(tiles, most)} />).replace(/<[^>]*>/gu, "");

test("tiles are named up to a number, and the rest counted", () => {
  expect(words(4)).toBe("A, B, C, D");
  expect(words(3)).toBe("A, B, C and 1 more tile");
  expect(words(1)).toBe("A and 3 more tiles");
  expect(renderToString(<Codes root="../" of={nameCodes(tiles, 1)} />)).toContain(
    'href="../tiles/a.html"',
  );
});
