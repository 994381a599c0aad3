import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { firstWords, renderNotes } from "../../templates/parts/markdown.ts";

describe("renderNotes", () => {
  test("shows a template and a script as the words they are", () => {
    expect(renderNotes("{{ tiles }} <script>steal()</script>")).toBe(
      "<p>{{ tiles }} &lt;script&gt;steal()&lt;/script&gt;</p>\n",
    );
  });

  test.each([
    ["a script", "[a](javascript:alert(1))"],
    ["another host without a scheme", "[a](//host/x)"],
    ["data", "[a](data:text/html,x)"],
    ["a file of the machine", "[a](file:///etc/passwd)"],
    ["a path out of the archive", "[a](../../x)"],
  ])("makes no link of %s", (_, markdown) => {
    expect(renderNotes(markdown)).not.toContain("<a");
  });

  test("loads no picture", () => {
    expect(renderNotes("![x](../../x.png) ![y](https://example.org/y.png)")).not.toContain("<img");
  });

  test("links to the web and to mail, and passes on no good name", () => {
    expect(renderNotes("[a](https://example.org/a)")).toBe(
      '<p><a href="https://example.org/a" rel="nofollow noopener">a</a></p>\n',
    );
    expect(renderNotes("[b](mailto:a@example.org)")).toContain('href="mailto:a@example.org"');
  });

  test("sets a note's headings below those of the page", () => {
    expect(renderNotes("# One\n\n##### Five")).toBe("<h3>One</h3>\n<h6>Five</h6>\n");
  });

  test("keeps a mistake that was crossed out", () => {
    expect(renderNotes("two ~~three~~ coats")).toBe("<p>two <s>three</s> coats</p>\n");
  });

  test("never lets a tag of a contributor's through", () => {
    fc.assert(
      fc.property(fc.constantFrom("script", "img", "iframe", "svg"), fc.string(), (tag, words) => {
        expect(renderNotes(`${words}<${tag} onload=x>`)).not.toContain(`<${tag}`);
      }),
    );
  });
});

test("a note begins with its first words, without its marks, and is cut between two of them", () => {
  expect(firstWords("# The *blue* one\n\nRan to the `foot`.", 40)).toBe("The blue one");
  expect(firstWords("It ran\nto the **foot**, and [on](https://a.example).", 40)).toBe(
    "It ran to the foot, and on.",
  );
  expect(firstWords("It ran to the foot and on to the shelf.", 24)).toBe("It ran to the foot and…");
  expect(firstWords("Rrrrrrrrrr", 4)).toBe("Rrrr…");
  expect(firstWords("  \n", 40)).toBe("");
});
