/** What pages say of their records' history, from archives in repositories of their own. */
import { appendFile, readFile, rm, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { linkSites } from "../../src/commands/build/build.ts";
import { askGit, whyNoDates } from "../../src/commands/build/git-said.ts";
import { dataOf } from "../../src/publish/data-of-site.ts";
import { keyOfPage } from "../../src/publish/page-key.ts";
import { pagesOf, type SiteRequest } from "../../src/publish/site-request.ts";
import type { RecordFootProps } from "../../templates/parts/record-foot.tsx";
import { changedSentence } from "../../templates/words/site/record.ts";
import { tileHistory } from "../../templates/words/tile/history.ts";
import { commitAll, git } from "../git/git.ts";
import {
  type Files,
  photograph,
  soundFiles,
  writeFolder,
  writeInto,
} from "../support/archive-folder.ts";
import { removeFolder } from "../support/remove-folder.ts";
import { filesThatHold } from "./site-files.ts";
import { tilebook } from "./tilebook.ts";

let top: string;
let archive: string;
let whole: Files;

const makers = [
  "makers:",
  "  m01: {name: Wren Ashdown, shown: yes, commits-as: wren-at-the-wheel}",
  "  m02: {name: Bram Tolliver, shown: initials}",
  "  m03: {name: Hesper Lund, shown: no}",
  "  m04: {name: Quill Underhill, shown: yes}",
].join("\n");

const later = ["tiles/evening/EV-3.md", "tiles/evening/EV-1.jpg"];

beforeAll(async () => {
  const files = await soundFiles();
  const studio = String(files["studio.yaml"]).replace(/makers:[\s\S]*/u, makers);
  const hidden = String(files["tiles/hidden/HID-1.md"]).replace("layers", "maker: m04\nlayers");
  whole = {
    ...files,
    "studio.yaml": `${studio}\nrepository: https://github.com/eelgate/tests\n`,
    "tiles/hidden/HID-1.md": hidden,
  };
  top = await writeFolder({});
  archive = join(top, "our studio");
  git(top, "init", "--quiet", "--initial-branch=main");
  const first = Object.entries(whole).filter(([name]) => !later.includes(name));
  await writeInto(archive, {
    ...Object.fromEntries(first),
    "tiles/evening/EV-1.jpg": await photograph("#333333"),
    ".gitignore": "site/\n.cache/\n",
  });
  commitAll(top, "Begin", "2026-10-06");
  await writeInto(archive, { "tiles/evening/EV-1.jpg": whole["tiles/evening/EV-1.jpg"] ?? "" });
  commitAll(top, "Photograph EV-1 anew", "2026-10-14");
  await writeInto(archive, { "tiles/evening/EV-3.md": whole["tiles/evening/EV-3.md"] ?? "" });
  commitAll(top, "Write down EV-3", "2026-10-20");
});

afterAll(() => removeFolder(top));

/** The sites as a build would write them. */
async function sitesOf(dir = archive): Promise<readonly SiteRequest[]> {
  const { sites } = await linkSites({ archive: dir, quiet: true });
  if (!sites) throw new Error("the archive has errors");
  return sites;
}

/** The foot of a record's page. */
function footOn(site: SiteRequest | undefined, path: string) {
  const props = site && pagesOf(site).find(path)?.props();
  if (!props || !("foot" in props)) throw new Error(`no foot on ${path}`);
  const foot = props.foot as RecordFootProps | null;
  return foot && { said: foot.dates && changedSentence(foot.dates), ways: foot.ways };
}

describe("the page of a record", () => {
  test("says when it and its photographs changed, and leads to its file on the forge", async () => {
    const [site] = await sitesOf();
    expect(footOn(site, "tiles/ev-1.html")).toEqual({
      said: "This record last changed on 14 October 2026. It was first written on 6 October 2026.",
      ways: {
        edit: "https://github.com/eelgate/tests/edit/HEAD/our%20studio/tiles/evening/EV-1.md",
        commits: "https://github.com/eelgate/tests/commits/HEAD/our%20studio/tiles/evening/EV-1.md",
        report:
          "https://github.com/eelgate/tests/issues/new?template=wrong-tile.yml&title=Something+is+wrong+with+EV-1&tile=EV-1",
      },
    });
    expect(footOn(site, "tiles/ev-3.html")).toMatchObject({
      said: "This record was written on 20 October 2026 and has not changed since.",
    });
    for (const path of ["glazes/liner", "clays/buff", "firings/g-1", "sets/evening"])
      expect(footOn(site, `${path}.html`)).toMatchObject({
        said: "This record was written on 6 October 2026 and has not changed since.",
        ways: { edit: expect.stringContaining("/edit/HEAD/our%20studio/") },
      });
    expect(footOn(site, "materials/silica.html")).toEqual({
      said: null,
      ways: { report: expect.stringContaining("tile=Silica") },
    });
  });

  test("of a tile that changed says what was known when, from its older versions", async () => {
    const [site] = await sitesOf();
    const { story } = site?.catalogue.records.get("tiles/ev-1.html") ?? {};
    expect(tileHistory(story ?? null)?.lines).toEqual([
      {
        day: "6 October 2026",
        words: "written down, with 3 layers and a result; a photograph was added.",
      },
      { day: "14 October 2026", words: "a photograph was changed." },
    ]);
    expect(site?.catalogue.records.get("tiles/ev-3.html")).toMatchObject({ story: null });
  });

  test("of a set that is reached by its link alone says nothing of its file", async () => {
    const [, hidden] = await sitesOf();
    for (const path of ["tiles/hid-1", "glazes/liner", "firings/g-1", "sets/hidden"])
      expect(footOn(hidden, `${path}.html`)).toBeNull();
  });

  test("is the same after a commit that changed another file", async () => {
    const keys = (sites: readonly SiteRequest[]) =>
      sites.flatMap((site) =>
        pagesOf(site)
          .all()
          .map((page) => keyOfPage(page, "")),
      );
    const before = keys(await sitesOf());
    await writeInto(top, { README: "more" });
    commitAll(top, "Tell more", "2026-11-01");
    expect(keys(await sitesOf())).toEqual(before);
  });

  test("says that a record is changed or not committed, and gives no old date for it", async () => {
    await writeInto(archive, {
      "tiles/evening/EV-1.jpg": await photograph("#444444", 1201),
      "tiles/evening/EV-2.md": `${whole["tiles/evening/EV-2.md"]}\nIt ran.\n`,
      "tiles/evening/EV-9.md": "---\nlayers: [{glaze: soot}]\n---\n",
    });
    const [site] = await sitesOf();
    const changed = "This record has changes that are not committed yet.";
    expect(footOn(site, "tiles/ev-1.html")).toMatchObject({ said: changed });
    expect(footOn(site, "tiles/ev-2.html")).toMatchObject({ said: changed });
    expect(footOn(site, "tiles/ev-9.html")).toEqual({
      said: "This record is not committed yet.",
      ways: { report: expect.anything() },
    });
    await rm(join(archive, "tiles/evening/EV-9.md"));
    git(top, "checkout", "--quiet", "--", ".");
  });

  test("says no date in a shallow clone, and the build says once why", async () => {
    const clone = join(top, "clone");
    git(top, "clone", "--quiet", "--depth", "1", `file://${top}`, clone);
    const dir = join(clone, "our studio");
    const [site] = await sitesOf(dir);
    expect(footOn(site, "tiles/ev-1.html")).toMatchObject({
      said: null,
      ways: { edit: expect.anything() },
    });
    expect(whyNoDates(await askGit(dir))).toBe(
      "Pages do not say when a record changed: this copy of the repository was fetched without its history (a shallow clone), and a date taken from it would be wrong. Fetch all of it: “git fetch --unshallow”; in a workflow “fetch-depth: 0”, or “GIT_DEPTH: 0” on GitLab.",
    );
    await removeFolder(clone);
  });
});

describe("whoever committed a record", () => {
  test("is named where studio.yaml lets it be told, and in no file of a site otherwise", async () => {
    const people = [
      "wren-at-the-wheel",
      "Bram Tolliver",
      "Hesper Lund",
      "Zed Marker",
      "Quill Underhill",
    ];
    for (const [i, name] of people.entries()) {
      await appendFile(join(archive, "recipes/glazes/liner.md"), `\nStirred ${i} times.\n`);
      git(top, "add", "--all");
      git(
        top,
        "commit",
        "--quiet",
        `--author=${name} <${i}-marker@mail.example>`,
        "-m",
        `By ${name}`,
      );
    }
    const taken = "A word that was taken out: QuincePaste, of m03.";
    const file = join(archive, "tiles/evening/EV-3.md");
    await writeInto(archive, {
      "tiles/evening/EV-3.md": `---\nmaker: m03\nlayers: [{glaze: soot, coats: 1, detail: QuincePaste}]\n---\n${taken}\n`,
    });
    commitAll(top, taken, "2026-11-02");
    await writeFile(file, "---\nlayers: [{glaze: soot, coats: 2}]\n---\n");
    commitAll(top, taken, "2026-11-03");
    const recipe = join(archive, "recipes/glazes/liner.md");
    await writeFile(
      recipe,
      (await readFile(recipe, "utf8")).replace("silica, parts: 30", "silica, parts: 28"),
    );
    commitAll(top, taken, "2026-11-03");
    const { code, err } = await tilebook("build", "--archive", archive);
    expect(code, err).toBe(0);
    const site = join(archive, "site");
    const page = await readFile(join(site, "glazes/liner.html"), "utf8");
    expect(page).toContain("Written down by B. T. and Wren Ashdown, among others.</p>");
    const tile = await readFile(join(site, "tiles/ev-3.html"), "utf8");
    expect(tile).toContain(
      "corrected: Soot, 1 coat → 2 coats; words beside the layers were changed; the notes were changed; something was changed that pages do not show.",
    );
    const since = "</a> was changed after this tile was glazed";
    expect(await readFile(join(site, "tiles/ev-1.html"), "utf8")).toContain(
      `${since} (on 3 November 2026): what is written there may not be what is on this tile.`,
    );
    expect(page).toMatch(/<b>3 November 2026:<\/b> Silica[^.]*, 30 → 28 parts\./u);
    const hidden = join(site, "s/k7wq2mzt4hx3vb5nrd6yfp2cja/tiles/hid-1.html");
    expect(await readFile(hidden, "utf8")).toContain(`${since}: what is written there`);
    const secrets = [
      "QuincePaste",
      "m03",
      "wren-at-the-wheel",
      "Bram Tolliver",
      "Hesper Lund",
      "Zed Marker",
      "marker@",
      "robin@example.org",
      "Robin Clay",
    ];
    for (const secret of secrets) expect(await filesThatHold(site, secret), secret).toEqual([]);
    const elsewhere = (await filesThatHold(site, "Quill Underhill")).filter(
      (file) => !file.startsWith("s/"),
    );
    expect(elsewhere).toEqual([]);
  });
});

test("data files are the same with a history and without", async () => {
  const liner = await readFile(join(archive, "recipes/glazes/liner.md"));
  const tile = await readFile(join(archive, "tiles/evening/EV-3.md"));
  const without = await writeFolder({
    ...whole,
    "recipes/glazes/liner.md": liner,
    "tiles/evening/EV-3.md": tile,
  });
  const dataFiles = async (dir: string) =>
    (await sitesOf(dir)).map((site) => dataOf(site.catalogue, pagesOf(site).all()));
  const bare = await dataFiles(without);
  expect(bare[0]?.length).toBeGreaterThan(8);
  expect(await dataFiles(archive)).toEqual(bare);
  const [site] = await sitesOf(without);
  expect(footOn(site, "tiles/ev-1.html")).toEqual({
    said: null,
    ways: { report: expect.anything() },
  });
  await removeFolder(without);
});

test("a tile that has another code now, and says so, is the same record", async () => {
  const folder = join(archive, "tiles/evening");
  const text = await readFile(join(folder, "EV-3.md"), "utf8");
  await rm(join(folder, "EV-3.md"));
  await writeInto(folder, {
    "EV-4.md": text.replace("layers", "formerly: [EV-3]\nlayers"),
    "EV-5.md": text.replace("coats: 2", "coats: 4"),
  });
  commitAll(top, "Give EV-3 another code", "2026-11-09");
  const [site] = await sitesOf();
  expect(site?.catalogue.records.get("tiles/ev-4.html")).toMatchObject({
    first: "2026-10-20",
    last: "2026-11-09",
  });
  expect(site?.catalogue.records.get("tiles/ev-5.html")).toMatchObject({ first: "2026-11-09" });
});
