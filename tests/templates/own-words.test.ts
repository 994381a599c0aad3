import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { findUnusable, renderOwnWords } from "../../templates/parts/own-words.ts";

const pages = ["opening-hours", "how-we"].map((name) => ({
  title: name,
  url: `pages/${name}.html`,
}));
const render = (markdown: string, root = "") => renderOwnWords(markdown, { root, pages });

describe("the studio's own words", () => {
  it("show a template and a script as the words they are", () => {
    expect(render("{{ tiles }} <script>steal()</script>")).toBe(
      "<p>{{ tiles }} &lt;script&gt;steal()&lt;/script&gt;</p>\n",
    );
  });

  it("lead to a page of the studio by its file, from whatever depth", () => {
    expect(render("[a](opening-hours.md) [b](<How%20we.md>)", "../")).toBe(
      '<p><a href="../pages/opening-hours.html">a</a> <a href="../pages/how-we.html">b</a></p>\n',
    );
  });

  it("are words alone where a page that they lead to waits to be mended", () => {
    expect(render("See [*our* hours](gone.md), [this](how-we.md).")).toBe(
      '<p>See <em>our</em> hours, <a href="pages/how-we.html">this</a>.</p>\n',
    );
  });

  it("lead to the web and to mail", () => {
    expect(render("[a](https://example.org/a) [b](mailto:a@example.org)")).toBe(
      '<p><a href="https://example.org/a" rel="noopener">a</a> <a href="mailto:a@example.org" rel="noopener">b</a></p>\n',
    );
  });

  it.each([
    "[a](javascript:alert(1))",
    "[a](//host/x.md)",
    "[a](data:text/html,x)",
    "[a](../../x.md)",
    "[a](file:///etc/passwd.md)",
    "![x](https://example.org/y.png)",
  ])("neither lead nor load where %s says", (markdown) => {
    expect(render(markdown)).not.toMatch(/<a href="(?!https:\/\/example)|<img/u);
  });

  it("have headings below the page's own", () => {
    expect(render("# One\n\n###### Six")).toBe("<h2>One</h2>\n<h6>Six</h6>\n");
  });

  it("let no tag through", () => {
    fc.assert(
      fc.property(fc.constantFrom("script", "img", "iframe", "svg"), fc.string(), (tag, words) => {
        expect(render(`${words}<${tag} onload=x>`)).not.toContain(`<${tag}`);
      }),
    );
  });
});

describe("what would not work in them", () => {
  const found = (markdown: string) =>
    findUnusable(markdown, (key) => key === "opening-hours").map(
      ({ what, address }) => `${what} ${address}`,
    );

  it("are links to nowhere and all pictures, wherever they are written", () => {
    expect(
      found(
        "[a](Opening-Hours.md) [b](https://example.org)\n\n> - [c](gone.md) ![d](map.png)\n\n[e]: /x\n[e]",
      ),
    ).toEqual(["link gone.md", "picture map.png", "link /x"]);
    expect(found("[a](javascript:steal%28%29)")).toEqual(["link javascript:steal%28%29"]);
  });

  it("are not what is shown as it was typed", () => {
    expect(found("`[a](gone.md)`\n\n    ![d](map.png)")).toEqual([]);
  });
});
