/** Every page of a catalogue, for tests that look at any of them. */
import type { Catalogue } from "../../src/catalogue/types.ts";
import type { Page } from "../../src/publish/page.ts";
import { openPages } from "../../src/publish/pages/all.ts";
import type { SitePlace } from "../../src/publish/pages/site.ts";

export function listPages(catalogue: Catalogue, place?: SitePlace): readonly Page[] {
  return openPages(catalogue, place).all();
}
