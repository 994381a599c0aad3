import { describe, expect, it } from "vitest";
import {
  filePages,
  newFileAddress,
  reportAddress,
  requestsAddress,
} from "../../src/terms/forges.ts";

describe("the address of a new file", () => {
  const record = "---\nlayers:\n  - {glaze: soot & ash}\n---\n";

  it("is that of the forge's own page, with name and record filled in", () => {
    const address = newFileAddress("https://github.com/eelgate/tests", "tiles/a/EV-1.md", record);
    expect(address).toMatch(/^https:\/\/github\.com\/eelgate\/tests\/new\/HEAD\?/u);
    const { searchParams } = new URL(String(address));
    expect([...searchParams]).toEqual([
      ["filename", "tiles/a/EV-1.md"],
      ["value", record],
    ]);
    expect(newFileAddress("https://codeberg.org/eelgate/tests.git/", "x.md", "")).toBe(
      "https://codeberg.org/eelgate/tests/_new/main?filename=x.md&value=",
    );
  });

  it("is not made for a forge whose pages cannot be filled in, or no forge at all", () => {
    for (const other of [
      undefined,
      "https://git.example/eelgate/tests",
      "http://github.com/eelgate/tests",
      "https://github.com/eelgate",
      "https://github.com.evil.example/eelgate/tests",
      "javascript:alert(1)",
    ])
      expect(newFileAddress(other, "x.md", record)).toBeUndefined();
  });

  it("is told to be too long where a forge would refuse it", () => {
    const long = "ä".repeat(1400);
    expect(newFileAddress("https://github.com/e/t", "x.md", long)).toBe("too-long");
  });
});

describe("the list of requests", () => {
  it("is the forge's, for a repository whose new files can be filled in", () => {
    expect(requestsAddress("https://github.com/eelgate/tests.git")).toBe(
      "https://github.com/eelgate/tests/pulls",
    );
    expect(requestsAddress("https://gitlab.com/eelgate/tests")).toBeUndefined();
    expect(requestsAddress(undefined)).toBeUndefined();
  });
});

describe("the pages of a file", () => {
  it("are those of the forge, every sign of its name in them", () => {
    const file = "studio one/tiles/Ü #1?%.md";
    const written = "studio%20one/tiles/%C3%9C%20%231%3F%25.md";
    expect(filePages("https://github.com/eelgate/tests/", file)).toEqual({
      edit: `https://github.com/eelgate/tests/edit/HEAD/${written}`,
      commits: `https://github.com/eelgate/tests/commits/HEAD/${written}`,
    });
    expect(filePages("https://gitlab.com/eelgate/kiln/tests.git", file)).toEqual({
      edit: `https://gitlab.com/eelgate/kiln/tests/-/edit/HEAD/${written}`,
      commits: `https://gitlab.com/eelgate/kiln/tests/-/commits/HEAD/${written}`,
    });
    expect(filePages("https://codeberg.org/eelgate/tests", file)).toEqual({
      edit: `https://codeberg.org/eelgate/tests/_edit/main/${written}`,
      commits: `https://codeberg.org/eelgate/tests/commits/branch/main/${written}`,
    });
  });

  it("are not made up where the forge is not known, or no repository is named", () => {
    for (const other of [
      "https://git.example/eelgate/tests",
      "http://gitlab.com/eelgate/tests",
      "https://gitlab.com/eelgate",
      "https://gitlab.com/eelgate/tests/-/tree/main",
      "https://github.com/eelgate/tests/tree/main",
      "https://github.com//tests",
    ])
      expect(filePages(other, "tiles/a.md")).toBeUndefined();
  });
});

describe("the page for a report that something is wrong", () => {
  const told = { title: "Something is wrong with EV-1", about: "EV-1 & co" };

  it("opens the archive's form for it, with title and code filled in", () => {
    const filledIn = (repository: string) => {
      const { origin, pathname, searchParams } = new URL(String(reportAddress(repository, told)));
      return [origin + pathname, Object.fromEntries(searchParams)];
    };
    expect(filledIn("https://github.com/eelgate/tests")).toEqual([
      "https://github.com/eelgate/tests/issues/new",
      { template: "wrong-tile.yml", title: told.title, tile: told.about },
    ]);
    expect(filledIn("https://gitlab.com/eelgate/tests")).toEqual([
      "https://gitlab.com/eelgate/tests/-/issues/new",
      { "issue[title]": told.title, "issue[description]": "EV-1 & co: " },
    ]);
    expect(filledIn("https://codeberg.org/eelgate/tests")).toEqual([
      "https://codeberg.org/eelgate/tests/issues/new",
      {
        template: ".github/ISSUE_TEMPLATE/wrong-tile.yml",
        title: told.title,
        "field:tile": told.about,
      },
    ]);
  });

  it("is none where the forge is not known", () => {
    expect(reportAddress("https://git.example/eelgate/tests", told)).toBeUndefined();
  });
});
