/** A site of the studio's own: its mark, its colour, its welcome and its pages. */
import { readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type Files, soundFiles, writeFolder, writeInto } from "../support/archive-folder.ts";
import { removeFolder } from "../support/remove-folder.ts";
import { inodesOf } from "./site-files.ts";
import { tilebook } from "./tilebook.ts";

const page = (title: string, words: string) => `---\ntitle: ${title}\n---\n${words}\n`;

const own: Files = {
  "mark.svg": '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 6"><path d="M0 0h9"/></svg>',
  "pages/hours.md": page("Opening hours", "Saturdays. See [how we teach](teaching.md)."),
  "pages/teaching.md": page("How we teach", "Slowly."),
};

const studioLines = [
  'welcome: "Come *in*: [hours](hours.md)."',
  "website: https://eelgate.example/",
  "mark: {file: mark.svg, alt: A bent eel}",
  'accent: "#2f7d6d"',
].join("\n");

let archive: string;
let studio: string;

beforeAll(async () => {
  const files = { ...(await soundFiles()), ...own };
  studio = `${files["studio.yaml"]}\n${studioLines}\n`;
  archive = await writeFolder({ ...files, "studio.yaml": studio });
  expect((await tilebook("build", "--archive", archive)).code).toBe(0);
});

afterAll(() => removeFolder(archive));

const read = (file: string) => readFile(join(archive, "site", file), "utf8");

describe("the site", () => {
  test("welcomes at home, and nowhere else", async () => {
    expect(await read("index.html")).toContain(
      '<div class="welcome"><p>Come <em>in</em>: <a href="pages/hours.html">hours</a>.</p>\n</div>',
    );
    expect(await read("tiles/ev-1.html")).not.toContain("Come <em>");
  });

  test("shows the mark with its words before the studio's name, and publishes it", async () => {
    expect(await read("tiles/ev-1.html")).toContain(
      '<a class="studio" href="../index.html"><img src="../assets/mark.svg" alt="A bent eel" width="9" height="6"/><span>Eelgate Pottery</span></a>',
    );
    expect(await read("assets/mark.svg")).toBe(own["mark.svg"]);
  });

  test("has the studio's pages and its website at the foot of every page", async () => {
    expect(await read("tiles/ev-1.html")).toContain(
      '<li><a href="../pages/hours.html">Opening hours</a></li><li><a href="../pages/teaching.html">How we teach</a></li><li><a href="https://eelgate.example/">The website of Eelgate Pottery</a></li>',
    );
    expect(await read("pages/hours.html")).toContain(
      '<p>Saturdays. See <a href="../pages/teaching.html">how we teach</a>.</p>',
    );
    expect(await read("sitemap.xml")).toContain("/pages/hours.html");
  });

  test("knows the accent in every file of styles", async () => {
    for (const name of ["wall", "tile", "own"])
      expect(await read(`assets/${name}.css`)).toMatch(/^:root\{--accent:#2f7d6d;/u);
  });

  test("of an unlisted set has mark and pages too, and not the welcome", async () => {
    const set = await readFile(join(archive, "tiles/hidden/set.md"), "utf8");
    const link = /link: (\S+)/u.exec(set)?.[1] ?? "";
    const home = await read(`s/${link}/index.html`);
    expect(home).toContain('<img src="assets/mark.svg"');
    expect(home).not.toContain("Come <em>");
    expect(await read(`s/${link}/pages/hours.html`)).toContain("noindex");
  });
});

describe("a change", () => {
  async function buildWith(changed: Files): Promise<readonly string[]> {
    const site = join(archive, "site");
    const before = await inodesOf(site);
    await writeInto(archive, changed);
    expect((await tilebook("build", "--archive", archive)).code).toBe(0);
    const after = await inodesOf(site);
    await writeInto(archive, { ...own, "studio.yaml": studio });
    return Object.keys(after).filter((name) => after[name] !== before[name]);
  }
  const isPage = (file: string) => file.endsWith(".html");

  test("of the welcome writes home alone", async () => {
    const touched = await buildWith({ "studio.yaml": studio.replace("Come *in*", "Walk *in*") });
    expect(touched.filter(isPage)).toEqual(["index.html"]);
  });

  test("of the accent writes no page but home, which had another welcome, and all styles", async () => {
    const touched = await buildWith({ "studio.yaml": studio.replace("#2f7d6d", "#a0522d") });
    expect(touched.filter(isPage)).toEqual(["index.html"]);
    expect(touched).toContain("assets/wall.css");
  });

  test("of a page's words writes that page, on each site", async () => {
    await buildWith({});
    const touched = await buildWith({ "pages/teaching.md": page("How we teach", "Gladly.") });
    expect(touched.filter(isPage)).toHaveLength(2);
    expect(touched).toContain("pages/teaching.html");
  });
});

describe("check", () => {
  async function told(files: Files): Promise<string> {
    await writeInto(archive, files);
    const { out } = await tilebook("check", "--archive", archive);
    await writeInto(archive, { ...own, "studio.yaml": studio });
    return out.slice(0, out.indexOf("\nRead "));
  }

  test("tells of links and pictures, of a name that is taken and of an empty page", async () => {
    const out = await told({
      "pages/hours.md": page("About", "See [this](gone.md) and [that](tiles/ev-1.html)."),
      "pages/teaching.md": page("Care", "![the room](room.jpg)"),
      "studio.yaml": studio.replace("hours.md", "ours.md"),
    });
    expect(out).toMatchInlineSnapshot(`
      "pages/hours.md:2:8 error: “About” is the name of a page that Tilebook writes as well, and nobody could tell the two apart [page-title-taken]
        2 | title: About
          |        ^
        Give this page another title.

      pages/hours.md:4:12 error: The link “gone.md” leads nowhere [link-leads-nowhere]
        4 | See [this](gone.md) and [that](tiles/ev-1.html).
          |            ^
        Write a whole address that begins with https:// or mailto:, or the file of another page in pages/, such as opening-hours.md.

      pages/hours.md:4:32 error: The link “tiles/ev-1.html” leads nowhere [link-leads-nowhere]
        4 | See [this](gone.md) and [that](tiles/ev-1.html).
          |                                ^
        Write a whole address that begins with https:// or mailto:, or the file of another page in pages/, such as opening-hours.md.

      pages/teaching.md:2:8 error: “Care” is the name of a page that Tilebook writes as well, and nobody could tell the two apart [page-title-taken]
        2 | title: Care
          |        ^
        Give this page another title.

      pages/teaching.md:4:13 error: The picture “room.jpg” is not shown: the studio's own words hold no pictures [picture-in-words]
        4 | ![the room](room.jpg)
          |             ^
        Take it out, or lead to it with a link that begins with https://.

      studio.yaml:8:30 error: The link “ours.md” leads nowhere [link-leads-nowhere]
        8 | welcome: "Come *in*: [hours](ours.md)."
          |                              ^
        Write a whole address that begins with https:// or mailto:, or the file of another page in pages/, such as opening-hours.md.

      tiles/hidden/HID-1.md:2:43 warning: Liner, light and opaque, is over Soot, which is dark [light-over-dark]
        2 | layers: [{glaze: soot, coats: 1}, {glaze: liner, coats: 3}]
          |                                           ^
        The dark one often bleeds through and muddies the light one; try them the other way round, dark over light. (Common practice, no published source.)
      "
    `);
    expect(await told({ "pages/hours.md": page("How we teach", "") })).toMatchInlineSnapshot(`
      "pages/hours.md:1:1 error: The page says nothing below its title [page-empty]
        1 | ---
          | ^
        Write its words below the second “---”, or take the file out.

      pages/teaching.md:2:8 error: “How we teach” is the name of pages/hours.md as well, and nobody could tell the two apart [page-title-taken]
        2 | title: How we teach
          |        ^
        Give this page another title.

      tiles/hidden/HID-1.md:2:43 warning: Liner, light and opaque, is over Soot, which is dark [light-over-dark]
        2 | layers: [{glaze: soot, coats: 1}, {glaze: liner, coats: 3}]
          |                                           ^
        The dark one often bleeds through and muddies the light one; try them the other way round, dark over light. (Common practice, no published source.)
      "
    `);
  });

  test("tells of a mark that cannot be published, and of an accent that is not seen", async () => {
    const out = await told({
      "mark.svg": '<svg xmlns="http://www.w3.org/2000/svg"><script/></svg>',
      "studio.yaml": studio.replace("#2f7d6d", "#ffe08a"),
    });
    expect(out).toMatchInlineSnapshot(`
      "studio.yaml:10:14 error: The mark holds “<script>”, which is not taken into pages [mark-unusable]
        10 | mark: {file: mark.svg, alt: A bent eel}
           |              ^
        A script could do anything on a visitor's computer. Or save the mark as PNG.

      studio.yaml:11:9 error: The accent #ffe08a is hard to see on the light pages: its contrast there is 1.1 to 1, and lines need 3 to 1 [accent-unseen]
        11 | accent: "#ffe08a"
           |         ^
        Take one nearer the middle between light and dark: “accent: "#a88b33"” is the nearest shade that is seen on both.

      tiles/hidden/HID-1.md:2:43 warning: Liner, light and opaque, is over Soot, which is dark [light-over-dark]
        2 | layers: [{glaze: soot, coats: 1}, {glaze: liner, coats: 3}]
          |                                           ^
        The dark one often bleeds through and muddies the light one; try them the other way round, dark over light. (Common practice, no published source.)
      "
    `);
  });

  test("tells of a hidden maker who is named in the studio's own words", async () => {
    expect(await told({ "pages/teaching.md": page("Us", "Ask Hesper Lund.") })).toContain(
      "name-in-words",
    );
  });

  test("leaves out a faulty page where that is asked for, and what leads to it is words", async () => {
    await writeFile(join(archive, "pages/teaching.md"), page("Care", "Slowly."));
    const { code, err } = await tilebook("build", "--archive", archive, "--leave-out-faulty");
    await writeInto(archive, own);
    expect(code, err).toBe(0);
    expect(await read("pages/hours.html")).toContain("<p>Saturdays. See how we teach.</p>");
    expect(await read("waiting.html")).toContain("pages/teaching.md");
    expect(await read("about.html")).not.toContain("teaching");
  });
});
