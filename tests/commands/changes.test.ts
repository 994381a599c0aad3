import { rmSync } from "node:fs";
import { join } from "node:path";
import MarkdownIt from "markdown-it";
import { afterEach, describe, expect, test } from "vitest";
import { commitAll, git } from "../git/git.ts";
import {
  type Files,
  photograph,
  soundFiles,
  writeFolder,
  writeInto,
} from "../support/archive-folder.ts";
import { removeFolder } from "../support/remove-folder.ts";
import { tilebook } from "./tilebook.ts";

const made: string[] = [];
afterEach(async () => {
  for (const dir of made.splice(0)) await removeFolder(dir);
});

/** A repository whose main branch has an archive, with a branch for the request checked out. */
async function studio(under = "", more: Files = {}): Promise<string> {
  const files = Object.entries({ ...(await soundFiles()), ...more });
  const dir = await writeFolder(
    Object.fromEntries(files.map(([file, text]) => [join(under, file), text])),
  );
  made.push(dir);
  git(dir, "init", "--quiet");
  commitAll(dir, "one");
  git(dir, "switch", "--quiet", "-c", "request");
  return join(dir, under);
}

async function changes(archive: string, ...options: readonly string[]) {
  const { code, out, err } = await tilebook(
    ...["changes", "--archive", archive, "--cache", join(archive, ".cache")],
    ...["--since", "main", ...options],
  );
  return { code, out: out.replace(/[\u200a\u200b]/gu, ""), err };
}

/** The part of a summary under a heading. */
function under(out: string, heading: string): string {
  const [, after = ""] = out.split(`### ${heading}\n`);
  return after.split(/\n#{3,4} |\n<sub>/u)[0]?.trim() ?? "";
}

const newTile = [
  "---",
  "glazed: 2026-10-15",
  "maker: m03",
  "layers:",
  "  - fired: bisque",
  "  - {glaze: soot, coats: 2, by: brush}",
  "  - {glaze: liner, coats: 2, by: dip}",
  "  - {fired: g-1, shelf: top}",
  "result: {surface: satin, effects: breaking, faults: none, again: yes}",
  "---",
  "As @maria said in #3.",
].join("\n");

describe("tilebook changes", () => {
  test("tells a new tile whole: picture, layers, firing, result, and what is one change apart", async () => {
    const archive = await studio();
    const picture = await photograph("#6b7f86");
    await writeInto(archive, {
      "tiles/evening/EV-4.md": newTile,
      "tiles/evening/EV-4.jpg": picture,
    });
    const { code, out } = await changes(archive, "--pictures", "https://forge.example/raw/");
    expect(code).toBe(0);
    expect(out).toMatchInlineSnapshot(`
      "## What this request changes

      1 tile new.

      ### The check

      **The check passes**: no errors.

      1 warning was there before, in files that this request does not change.

      ### Tiles

      #### EV-4: Liner over Soot (new)

      <a href="https://forge.example/raw/tiles/evening/EV-4.jpg"><img src="https://forge.example/raw/tiles/evening/EV-4.jpg" width="280" alt="EV-4, the photograph"></a>

      A smooth flat tile of Buff stoneware, glazed 15 October 2026. In the set Evening class.

      **Layers, bottom first**

      1. Bisque firing
      2. Soot: 2 coats, brushed
      3. Liner: 2 coats, dipped
      4. Glaze firing, g-1, top shelf

      **Firing**: Bisque fired. Glaze fired to cone 6 in oxidation in Big electric (electric), top shelf, 20 October 2026.

      **Result**: Satin; breaking; no fault found. Again: yes.

      > “As @maria said in \\#3.”

      **One change apart**

      - **EV-1**: The same, one coat fewer of Liner: 1, not 2. Satin; breaking; no fault found. Again: yes. Also different: the day it was glazed. Not recorded: how the bisque was fired and how long it was dipped.

      <sub>Told from the records alone. Figures and notes are a help, and no promise: the tiles, labels, the kiln’s manual, local rules and a laboratory decide.</sub>"
    `);
  });

  test("tells a changed recipe with its chemistry before and after, and the tiles that have it", async () => {
    const archive = await studio();
    const liner = (await soundFiles())["recipes/glazes/liner.md"] as string;
    await writeInto(archive, {
      "recipes/glazes/liner.md": liner
        .replace("whiting, parts: 20", "barium-carbonate, parts: 20")
        .replace("opaque", "milky"),
    });
    const { out } = await changes(archive);
    expect(out.slice(out.indexOf("### Glazes"))).toMatchInlineSnapshot(`
      "### Glazes

      #### Liner (changed)

      - **cover**: opaque → milky

      **Another recipe**

      | Made of | Before | Now |
      | :-- | --: | --: |
      | potash-feldspar | 40 | 40 |
      | silica | 30 | 30 |
      | barium-carbonate | – | 20 |
      | kaolin | 10 | 10 |
      | whiting | 20 | – |

      **Chemistry**, worked out from what the materials are said to hold. Where a tile contradicts a figure, the tile is right.

      | Unity, moles | Before | Now |
      | :-- | --: | --: |
      | SiO₂ | 3.71 | 5.82 |
      | Al₂O₃ | 0.407 | 0.639 |
      | K₂O | 0.264 | 0.415 |
      | CaO | 0.736 | – |
      | BaO | – | 0.585 |

      - **silica to alumina, by moles**: 9.1, as before
      - **expansion by Appen**, 10⁻⁶ per kelvin: 6.2 ± 0.8 → 5.8 ± 0.8
      - **expansion by English &amp; Turner**, 10⁻⁶ per kelvin: 5.5 ± 1.1 → 5.6 ± 1.1
      - **expansion by Winkelmann &amp; Schott**, 10⁻⁶ per kelvin: 8.1 ± 1.2 → 7.4 ± 1.2
      - **expansion by Mayer &amp; Havas**, 10⁻⁶ per kelvin: 8.1 ± 1.3 → 7.4 ± 1.3

      **Cautions that came with this**

      - **Caution**: This glaze holds much barium: 17 per cent of what is fired, as BaO. A glaze may not hold so much of it against acids: keep it from surfaces that touch food or drink unless a laboratory has tested the fired ware.
      - **Caution**: Barium (in Barium carbonate) is listed as highly toxic to breathe in as a raw material; it is poisonous to swallow where it dissolves in the stomach, as the carbonate does: it weakens the muscles and upsets the heart; it can leach from a fired glaze that has not bound it. Wear gloves and a fitted mask (FFP3 or P100, or what the safety sheet asks for) with the powder, clean up wet, and keep food and children away.
      - **Caution**: In the kiln this recipe gives off carbon dioxide (from Barium carbonate). Fire with the kiln’s extraction on and the room aired, as the kiln’s manual and local rules ask, and stay out of the fumes. A dust filter stops no gas.

      **Cautions that went**

      - **Caution**: In the kiln this recipe gives off carbon dioxide (from Whiting). Fire with the kiln’s extraction on and the room aired, as the kiln’s manual and local rules ask, and stay out of the fumes. A dust filter stops no gas.

      <details><summary>2 cautions, as before</summary>

      - **Caution**: Dust of silica is carcinogenic to breathe in where it is crystalline, as in quartz, and in clays and feldspars that hold some (group 1). Weigh where the air is drawn off, or wear a fitted mask (FFP3 or P100). Mix wet, wipe wet, and never sweep.
      - **Caution**: A computed formula, or a limit that it keeps, is no evidence for food: only a leach test on the fired ware is. Ask a laboratory where the ware is to hold food or drink. The usual tests are for lead and cadmium alone: name the other metals that the glaze holds.

      </details>

      **It is on 2 tiles**: EV-1, HID-1. They were glazed with the recipe as it was, unless somebody says otherwise. A new recipe under a name of its own keeps the two apart.

      <sub>Told from the records alone. Figures and notes are a help, and no promise: the tiles, labels, the kiln’s manual, local rules and a laboratory decide.</sub>"
    `);
  });

  test("tells a moved photograph, a renamed tile and a tile that went", async () => {
    const archive = await studio();
    git(archive, "mv", "tiles/evening/EV-1.md", "tiles/evening/EV-7.md");
    git(archive, "mv", "tiles/evening/EV-1.jpg", "tiles/evening/EV-7.jpg");
    git(archive, "rm", "--quiet", "tiles/evening/EV-3.md");
    const firing = (await soundFiles())["tiles/firings/g-1.md"] as string;
    await writeInto(archive, { "tiles/firings/g-1.md": firing.replace("EV-1", "EV-7") });
    const { out } = await changes(archive);
    expect(out).toContain("1 tile changed, 1 other record changed and 1 record gone.");
    expect(under(out, "Gone")).toBe(
      "- the tile **EV-3**, `tiles/evening/EV-3.md`\n\nLabels and links with the code of a tile that is gone lead nowhere.",
    );
    const tile = out.slice(out.indexOf("#### EV-7"));
    expect(tile).toContain("#### EV-7: Liner over Soot (was EV-1)\n");
    expect(tile).toContain("The photograph: moved.");
    expect(tile).toContain("- **code**: EV-1 → EV-7\n");
    expect(tile).toContain(
      "- Labels and links with EV-1 lead nowhere now. The line `formerly: [EV-1]` leads them on.",
    );
  });

  test("names what a request broke, what waits for that, and tells the rest", async () => {
    const archive = await studio();
    rmSync(join(archive, "recipes/glazes/liner.md"));
    await writeInto(archive, { "tiles/EV-8.md": "---\nlayers: [{glaze: soot}]\n---\n" });
    const { code, out } = await changes(archive);
    expect(code).toBe(0);
    expect(under(out, "The check")).toMatch(
      /^\*\*The check finds 2 errors\*\*\. What is faulty is not published before it is mended\.\n\n- `tiles\/evening\/EV-1\.md`, line 7: There is no glaze “liner”/u,
    );
    expect(under(out, "Gone")).toBe("- the glaze **liner**, `recipes/glazes/liner.md`");
    expect(under(out, "Not told here until they are mended")).toBe(
      "- `tiles/evening/EV-1.md` has errors\n- `tiles/hidden/HID-1.md` has errors",
    );
    expect(out).toContain("#### EV-8: Soot (new)");
  });

  test("tells first which files outside the archive may run, in an archive within its repository", async () => {
    const archive = await studio("studio");
    await writeInto(join(archive, ".."), {
      ".github/workflows/publish.yml": "on: push",
      "package.json": "{}",
      "README.md": "words",
      "studio/tiles/.npmrc": "x",
      "studio/tiles/ÉV-9.md": "---\nlayers: [{glaze: soot}]\n---\n",
    });
    git(archive, "add", "--all", "..");
    const { out } = await changes(archive);
    expect(under(out, "Read this first")).toBe(
      [
        "**This request also changes what runs when the site is published**:\n",
        "- `.github/workflows/publish.yml` (new)",
        "- `package.json` (new)",
        "- `studio/tiles/.npmrc` (new)\n",
        "Read these files before you merge. Once they are merged, they run.",
      ].join("\n"),
    );
    expect(out).toContain("#### ÉV-9: Soot (new)");
    expect(under(out, "Other files")).toBe("- `README.md` (new)");
  });

  test("names no maker who is not shown, no key and no link, whatever is changed of them", async () => {
    const archive = await studio();
    const files = await soundFiles();
    await writeInto(archive, {
      "studio.yaml": `${files["studio.yaml"]}\n  m04: {name: Ismay Dunnock, shown: no}`,
      "tiles/evening/EV-2.md": (files["tiles/evening/EV-2.md"] as string).replace("m02", "m04"),
      "tiles/evening/EV-3.md": (files["tiles/evening/EV-3.md"] as string).replace("m03", "m09"),
      "tiles/hidden/set.md": (files["tiles/hidden/set.md"] as string).replace("k7wq", "a7wq"),
    });
    for (const format of ["markdown", "json"]) {
      const { out } = await changes(archive, "--format", format);
      expect(out).not.toMatch(/m0\d|Dunnock|Lund|Tolliver|7wq2/u);
    }
    const { out } = await changes(archive);
    expect(out).not.toContain("Read this first");
    expect(out).toContain("- **maker**: B. T. → somebody who is not named");
    expect(under(out, "The check")).toContain(
      "- `tiles/evening/EV-3.md`, line 2: the message names somebody, so it is not repeated here; the check tells it.",
    );
    expect(out).toContain("- **link**: changed; not repeated here");
  });

  test("compares a tile of an unlisted set with its own set alone, and no other tile with it", async () => {
    const archive = await studio();
    const stack = "layers: [{glaze: soot, coats: 1}, {glaze: liner, coats: 3}]";
    const result = "result: {surface: dry, faults: none, again: yes}";
    const picture = await photograph("#6b7f86");
    await writeInto(archive, {
      "tiles/hidden/HID-2.md": `---\n${stack}\n${result}\n---\n`,
      "tiles/hidden/HID-2.jpg": picture,
      "tiles/evening/EV-5.md": `---\n${stack}\n${result}\n---\n`,
      "tiles/evening/EV-5.jpg": picture,
    });
    const { out } = await changes(archive);
    const [evening = "", hidden = ""] = out.slice(out.indexOf("#### EV-5")).split("#### HID-2");
    expect(evening).not.toMatch(/HID-\d/u);
    expect(hidden).not.toMatch(/EV-\d/u);
    expect(hidden).toContain("In the set Quiet class.");
  });

  test("tells first who would be named, and which set would be seen, that were not before", async () => {
    const archive = await studio();
    const files = await soundFiles();
    const yaml = files["studio.yaml"] as string;
    await writeInto(archive, {
      "studio.yaml": yaml.replace("shown: no", "shown: yes").replace("initials", "yes"),
      "tiles/hidden/set.md": "---\nname: Quiet class\ndefaults: {clay: buff}\n---\n",
    });
    const { out } = await changes(archive);
    expect(under(out, "Read this first")).toBe(
      [
        "**2 makers would be named, or named otherwise, by what this request writes into** `studio.yaml`. Ask them before you merge, and of children the parents.\n",
        "**Everybody would see the set Quiet class**: before, only its link led there.",
      ].join("\n"),
    );
  });

  test("tells a changed material by the glazes and tiles that hold it, and a firing and a clay by their tiles", async () => {
    const frit = (parts: string) => `---\nname: Frit\nfrit: yes\nanalysis: {${parts}}\n---\n`;
    const liner = (await soundFiles())["recipes/glazes/liner.md"] as string;
    const archive = await studio("", {
      "recipes/materials/frit.md": frit("SiO2: 60, Na2O: 20, CaO: 20"),
      "recipes/glazes/liner.md": liner.replace("whiting", "frit"),
    });
    const firing = (await soundFiles())["tiles/firings/g-1.md"] as string;
    await writeInto(archive, {
      "recipes/materials/frit.md": frit("SiO2: 55, Na2O: 25, CaO: 20"),
      "tiles/firings/g-1.md": firing
        .replace("cone: 6", "cone: 5")
        .replace("oxidation", "reduction"),
      "recipes/clays/buff.md": "---\nname: Buff stoneware\ncones: 5-8\n---\nNew bags.\n",
    });
    const { out } = await changes(archive);
    const glaze = out.slice(out.indexOf("#### Liner (changed)"), out.indexOf("### Other records"));
    expect(glaze).toContain("It is mixed from what changed: frit.");
    expect(glaze).toMatch(/\| Na₂O \| \d\.\d+ \| \d\.\d+ \|/u);
    expect(glaze).toContain(
      "**It is on 2 tiles**: EV-1, HID-1. They were glazed with what was in the bucket then, unless somebody says otherwise.",
    );
    expect(
      out.slice(out.indexOf("### Other records"), out.indexOf("<sub>")).trim(),
    ).toMatchInlineSnapshot(`
      "### Other records

      #### The firing g-1 (changed)

      - **atmosphere**: oxidation → reduction
      - **cone**: 6 → 5

      **3 tiles have it**: EV-1..EV-2, HID-1.

      #### The clay Buff stoneware, buff (changed)

      - **cones**: 5 to 9 → 5 to 8
      - **words below**: new

      **4 tiles have it**: EV-1..EV-3, HID-1.

      #### The material Frit, frit (changed)

      - **analysis**: SiO2 60, Na2O 20, CaO 20 → SiO2 55, Na2O 25, CaO 20

      It is in Liner. **2 tiles have it**: EV-1, HID-1. They were glazed with the material as it was, unless somebody says otherwise."
    `);
  });

  test("tells a code that an earlier request claims, with the next that is free everywhere", async () => {
    const archive = await studio("", {
      "tiles/evening/set.md":
        "---\nname: Evening class\nkind: class\ncodes: EV-1..EV-20\ndefaults: {clay: buff}\n---\n",
    });
    await writeInto(archive, {
      "tiles/evening/EV-4.md": newTile,
      "tiles/evening/EV-4.jpg": await photograph("#6b7f86"),
      "tiles/evening/EV-5.md": "---\nlayers: [{glaze: soot}]\n---\n",
    });
    const claimed = join(archive, "..", "claims.txt");
    await writeInto(join(archive, ".."), {
      "claims.txt":
        "12\ttiles/evening/ev-4.md\n9\ttiles/evening/EV-6.md\n12\ttiles/evening/EV-4.jpg\n",
    });
    const { out } = await changes(archive, "--claimed", claimed);
    rmSync(claimed);
    expect(under(out, "Codes that another request has")).toBe(
      "- **EV-4** is in request 12 as well, which came first. The next free code is EV-7: rename the record and its photographs, and change the code on the back of the tile.",
    );
  });

  test("links the photographs at the commit on a forge that it knows, those that are committed", async () => {
    const yaml = `${(await soundFiles())["studio.yaml"]}\nrepository: https://github.com/eelgate/tests`;
    const archive = await studio("studio", { "studio.yaml": yaml });
    const tile = "---\nlayers: [{glaze: soot}]\n---\n";
    const picture = await photograph("#123456");
    await writeInto(archive, { "tiles/É-4.md": tile, "tiles/É-4.jpg": picture });
    const head = commitAll(archive, "two");
    await writeInto(archive, { "tiles/EV-5.md": tile, "tiles/EV-5.jpg": picture });
    const { out } = await changes(archive);
    expect(out).toContain(
      `<img src="https://github.com/eelgate/tests/raw/${head}/studio/tiles/%C3%89-4.jpg" width="280" alt="É-4, the photograph">`,
    );
    expect(out).toContain("EV-5, the photograph: `tiles/EV-5.jpg`");
  });

  test("says how to mend what it was given, and makes no summary then", async () => {
    const archive = await studio();
    expect(
      await tilebook("changes", "--archive", join(archive, "no"), "--since", "main"),
    ).toMatchObject({
      code: 2,
      err: `There is no folder “${join(archive, "no")}”. Name the archive with --archive.`,
    });
    const slash = await changes(archive, "--pictures", "https://forge.example/raw");
    expect(slash).toMatchObject({ code: 2, out: "" });
    expect(slash.err).toContain(
      "--pictures is the web address of the repository's files, with “/” at its end; “https://forge.example/raw” is none.",
    );
    git(archive, "switch", "--quiet", "--orphan", "apart");
    commitAll(archive, "apart");
    expect(await changes(archive)).toMatchObject({
      code: 2,
      err: "“main” and what is checked out here have no history in common, so there is nothing to compare. Begin the branch anew from “main”, and copy the new files into it.",
    });
  });

  test("calls nobody and leads nowhere, whatever is written and however files are called", async () => {
    const archive = await studio();
    const words =
      "@maria #12 [x](https://evil.example) <img src=x> `code` | a | **b** www.evil.example";
    const quoted = JSON.stringify(words);
    await writeInto(archive, {
      "recipes/glazes/sly.md": `---\nname: ${quoted}\nkind: glaze\nbought: {maker: ${quoted}}\n---\n${words}\n`,
      "recipes/clays/sly.md": `---\nname: ${quoted}\ncolour: ${quoted}\n---\n`,
      "tiles/<b> `@maria` | [x](y).md": "---\nlayers: [{glaze: soot}]\n---\n",
      "tiles/EV-9.md": `---\nclay: sly\ntexture: ${quoted}\nlayers: [{glaze: sly, detail: ${quoted}}]\n---\n${words}\n`,
    });
    git(archive, "add", "--all");
    const { out } = await tilebook(
      ...["changes", "--archive", archive, "--cache", join(archive, ".cache"), "--since", "main"],
    );
    expect(out).toContain("#### @\u200amaria");
    const html = new MarkdownIt({ html: true, linkify: true }).render(out);
    expect(html).not.toMatch(/<(?:a|img|b)[\s>]/u);
    expect(html.replace(/<code>.*?<\/code>/gsu, "")).not.toMatch(/@maria|#12|www\.evil/u);
    expect(html.match(/<table>/gu)).toHaveLength(1);
  });

  test("passes over nothing: a file that reads as before, a log, a picture that is nobody's", async () => {
    const log = "minutes,temperature °C\n0,20\n60,600\n120,1200\n";
    const files = await soundFiles();
    const firing = (files["tiles/firings/g-1.md"] as string).replace(
      "kind: glaze",
      "kind: glaze\nlog: g-1.csv",
    );
    const archive = await studio("", {
      "tiles/firings/g-1.csv": log,
      "tiles/firings/g-1.md": firing,
    });
    await writeInto(archive, {
      "tiles/firings/g-1.csv": `${log}180,1220\n`,
      "tiles/evening/EV-2.md": (files["tiles/evening/EV-2.md"] as string).replace(
        "maker:",
        "# who\nmaker:",
      ),
      "recipes/clays/buff.md": (files["recipes/clays/buff.md"] as string).replace(
        "cones:",
        "# label\ncones:",
      ),
    });
    rmSync(join(archive, "tiles/evening/EV-3.md"));
    const { out } = await changes(archive);
    expect(out).toContain(
      "#### The firing g-1 (changed)\n\n- **what the log holds**: 5 lines → 6 lines\n",
    );
    expect(out).toContain(
      "**What changed**\n\n- nothing: its file is written otherwise, and reads as before\n",
    );
    expect(under(out, "Files of the archive that are not told above")).toBe(
      "- `recipes/clays/buff.md` (changed)",
    );
  });

  test("has nothing to tell where nothing of the archive is changed", async () => {
    const { code, out } = await changes(await studio());
    expect(code).toBe(0);
    expect(out).toContain(
      "Nothing of the archive.\n\n### The check\n\n**The check passes**: no errors.",
    );
  });

  test("tells an archive whose studio.yaml is broken by its errors alone", async () => {
    const archive = await studio();
    await writeInto(archive, {
      "studio.yaml": "format: 1\nstudio: Eelgate\nmakers: {m01: {nam: Wren}}\n",
    });
    const { code, out } = await changes(archive);
    expect(code).toBe(0);
    expect(under(out, "The check")).toContain("- `studio.yaml`, line 3:");
    expect(out).not.toContain("Wren");
  });
});
