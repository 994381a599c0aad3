/** One slip does not stop the class: what is sound is published, and what waits is told. */
import { existsSync } from "node:fs";
import { readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import type { Files } from "../support/archive-folder.ts";
import { archiveWith } from "./archives.ts";
import { filesThatHold } from "./site-files.ts";
import { tilebook } from "./tilebook.ts";

const faulty = "---\nlayers: [{glaze: sooot}]\n---\n";

async function publish(files: Files) {
  const archive = await archiveWith(files);
  const site = join(archive, "site");
  const ended = await tilebook("build", "--archive", archive, "--leave-out-faulty", "--quiet");
  const read = async (page: string) => {
    const text = (await readFile(join(site, page), "utf8")).replace(/<[^>]+>/gu, " ");
    return text.replace(/\s+/gu, " ");
  };
  return { ...ended, archive, site, read };
}

describe("a build that leaves out what is faulty", () => {
  test("says on the home page how many records wait, and lists them with line and message", async () => {
    const { code, err, site, read } = await publish({ "tiles/evening/EV-9.md": faulty });
    expect(code).toBe(0);
    expect(err).toBe("The site was published without 1 of 11 records.");
    expect(await read("index.html")).toContain(
      "1 record waits to be mended. Which, and what is wrong with them",
    );
    const list = await read("waiting.html");
    expect(list).toContain(
      "Mend these Tile EV-9 tiles/evening/EV-9.md Line 2: There is no glaze “sooot”",
    );
    expect(await read("sets/evening.html")).toContain(
      "1 record that belongs on this page waits to be mended. What is listed and counted here is without it.",
    );
    expect(await read("tiles/ev-1.html")).toContain(
      "Some records wait to be mended : lists and counts are without them.",
    );
    expect(existsSync(join(site, "tiles/ev-9.html"))).toBe(false);
    expect(await filesThatHold(site, "waiting.html")).not.toContain("sitemap.xml");
  });

  test("leaves out with a firing whatever stood in it, though its load list cannot be read", async () => {
    const { code, err, read } = await publish({
      "tiles/firings/g-1.md":
        "---\non: 2026-10-20\nkind: glaze\ntiles: {top: [EV-1, bottom: [ev-2]}\n---\n",
    });
    expect(code).toBe(0);
    expect(err).toBe(
      [
        "The site was published without 3 of 10 records.",
        "Without faults of their own, they wait for what they rest on:",
        "  tiles/evening/EV-1.md waits for the firing g-1",
        "  tiles/evening/EV-2.md waits for the firing g-1",
      ].join("\n"),
    );
    expect(await read("waiting.html")).toContain(
      "These come back by themselves Tile EV-1 tiles/evening/EV-1.md It was in the firing g-1, which waits to be mended.",
    );
  });

  test("leaves out a tile whose photograph turns out to be damaged", async () => {
    const { code, site, archive, read } = await publish({});
    expect({ code, waits: existsSync(join(site, "waiting.html")) }).toEqual({
      code: 0,
      waits: false,
    });
    const picture = join(archive, "tiles/evening/EV-1.jpg");
    await writeFile(picture, (await readFile(picture)).subarray(0, 1500));
    const again = await tilebook("build", "--archive", archive, "--leave-out-faulty", "--quiet");
    expect(again.code).toBe(0);
    expect(await read("waiting.html")).toContain("Tile EV-1");
    expect(existsSync(join(site, "tiles/ev-1.html"))).toBe(false);
  });

  test("writes nothing where studio.yaml is faulty, and says why", async () => {
    const { code, err, site } = await publish({ "studio.yaml": "format: 1\nstudoi: Eelgate\n" });
    expect(code).toBe(1);
    expect(err).toBe(
      "Nothing was written: every page rests on what is faulty there, so it cannot be left out: mend it first. The last good site stands as it was.",
    );
    expect(existsSync(join(site, "index.html"))).toBe(false);
  });

  test("without the option an error stops all, as it did", async () => {
    const archive = await archiveWith({ "tiles/evening/EV-9.md": faulty });
    const { code, err } = await tilebook("build", "--archive", archive, "--quiet");
    expect({ code, err }).toEqual({
      code: 1,
      err: "Nothing was written: mend the errors first. The last good site stands as it was.",
    });
  });

  test("says so where the one set that is asked for has to wait itself", async () => {
    const archive = await archiveWith({ "tiles/evening/set.md": "---\nnmae: Evening\n---\n" });
    const { code, err } = await tilebook(
      ...["build", "--archive", archive, "--leave-out-faulty", "--quiet", "--set", "evening"],
    );
    expect({ code, err }).toEqual({
      code: 2,
      err: "The set “evening” cannot be published alone: its own record has to be mended first.",
    });
  });
});

describe("what a public page says of what waits", () => {
  test("is nothing of an unlisted set, whose own site tells it", async () => {
    const { code, site, read } = await publish({ "tiles/hidden/HID-2.md": faulty });
    expect(code).toBe(0);
    expect(existsSync(join(site, "waiting.html"))).toBe(false);
    expect(await read("index.html")).not.toContain("mended");
    expect(await read("s/k7wq2mzt4hx3vb5nrd6yfp2cja/index.html")).toContain(
      "1 record waits to be mended.",
    );
    expect(await read("s/k7wq2mzt4hx3vb5nrd6yfp2cja/waiting.html")).toContain("Tile HID-2");
  });

  test.each([
    ["broken", "---\nname: Quiet class\nlisted: no\n link: x\n---\n"],
    ["misspelt", "---\nname: Quiet class\nlsited: no\n---\n"],
    ["without its colon", "---\nname: Quiet class\nlisted no\n---\n"],
    ["empty", ""],
  ])("is nothing of a set that may be unlisted, its record %s", async (_, record) => {
    const { code, site } = await publish({ "tiles/hidden/set.md": record });
    expect(code).toBe(0);
    for (const words of ["HID-1", "hid-1", "tiles/hidden", "Quiet class"])
      expect(await filesThatHold(site, words), words).toEqual([]);
    expect(existsSync(join(site, "s"))).toBe(false);
  });

  test("is told of a set that surely is listed, with its tiles", async () => {
    const { read } = await publish({
      "tiles/evening/set.md": "---\nname: Evening class\nkind: clas\n---\n",
    });
    expect(await read("index.html")).toContain("4 records wait to be mended.");
    expect(await read("waiting.html")).toContain(
      "It is in the set evening, which waits to be mended.",
    );
  });

  test("names no maker and no code of one, nor what another site alone may show", async () => {
    const { site, read } = await publish({
      "tiles/evening/EV-8.md": "---\nmaker: m77\nlayers: [{glaze: soot}]\n---\n",
      "tiles/evening/EV-9.md": "---\nlayers: [{glaze: Hesper}]\n---\n",
      "tiles/evening/HID-1.md": "---\nlayers: [{glaze: soot}]\n---\n",
    });
    for (const words of ["m77", "Hesper", "tiles/hidden"]) {
      const pages = await filesThatHold(site, words);
      // Whoever has the link of the quiet class may know where its own tiles lie.
      expect(
        pages.filter((page) => words !== "tiles/hidden" || !page.startsWith("s/")),
        words,
      ).toEqual([]);
    }
    expect(await read("waiting.html")).toContain(
      "Tile EV-8 tiles/evening/EV-8.md Line 2: What is wrong here is told by “tilebook check” alone: it speaks of people, or of what is not shown on this site.",
    );
  });
});
