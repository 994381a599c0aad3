import { renderToString } from "preact-render-to-string";
import { expect, test } from "vitest";
import type { TileFiring } from "../../src/catalogue/kilns/tile-firings.ts";
import { TileFiringWords } from "../../templates/parts/tile-firing.tsx";

test("a firing of which only its kind is known is told without a gap before the full stop", () => {
  const unknown = { cone: null, atmosphere: null, heatedBy: null, kiln: null, shelf: null };
  const firing = { ...unknown, kind: "bisque", on: null, page: null } as TileFiring;
  const words = renderToString(<TileFiringWords root="" firing={firing} unit="celsius" />);
  expect(words).toBe("<p>Bisque fired.</p>");
});
