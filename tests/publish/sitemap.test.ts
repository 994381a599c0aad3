import { h } from "preact";
import { describe, expect, test } from "vitest";
import type { Page } from "../../src/publish/page.ts";
import { makeSitemap } from "../../src/publish/sitemap.ts";

const studio = {
  name: "Eelgate Pottery",
  address: "https://eelgate.example/tests",
  repository: null,
  licence: null,
  temperature: "celsius",
  handingIn: null,
  handsInBy: "download",
  unlisted: false,
  alone: null,
} as const;

const search = { title: "TB-1", kind: "Tile", words: "", picture: null };
const page = (path: string, found = true): Page => ({
  path,
  component: () => h("p", null),
  props: () => ({}),
  search: found ? () => search : null,
});

describe("the sitemap", () => {
  test("names each page that may be found by its whole address", () => {
    const [file] = makeSitemap(studio, [
      page("index.html"),
      page("tiles/tb-1.html"),
      page("404.html", false),
    ]);
    expect(file?.path).toBe("sitemap.xml");
    expect(file?.content.match(/<loc>.*?<\/loc>/gu)).toEqual([
      "<loc>https://eelgate.example/tests/index.html</loc>",
      "<loc>https://eelgate.example/tests/tiles/tb-1.html</loc>",
    ]);
  });

  test("writes addresses that other alphabets and signs of XML cannot break", () => {
    const [file] = makeSitemap(studio, [page("tiles/blå & 'co'.html")]);
    expect(file?.content).toContain(
      "<loc>https://eelgate.example/tests/tiles/bl%C3%A5%20&#38;%20&#39;co&#39;.html</loc>",
    );
  });

  test("is not written for a studio without an address", () => {
    expect(makeSitemap({ ...studio, address: null }, [page("index.html")])).toEqual([]);
  });
});
