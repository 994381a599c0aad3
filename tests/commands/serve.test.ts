/** `serve` as a person has it: a browser that is open while records are written. */
import { once } from "node:events";
import { appendFile, cp, mkdir, readFile, rename, rm, writeFile } from "node:fs/promises";
import { createServer } from "node:net";
import { join } from "node:path";
import { expect, onTestFinished, test, vi } from "vitest";
import { siteTest } from "../support/browser.ts";
import { archiveWith, folderWith } from "./archives.ts";
import { spawnTilebook } from "./tilebook.ts";

async function freePort(): Promise<number> {
  const holder = createServer().listen(0, "localhost");
  await once(holder, "listening");
  const address = holder.address();
  holder.close();
  return typeof address === "object" && address ? address.port : 0;
}

/** Serves an archive until the test is over, and gives what its page at a path holds. */
async function serveArchive(archive: string) {
  const port = await freePort();
  let stop: (() => void) | undefined;
  const ended = spawnTilebook(["serve", "--archive", archive, "--port", String(port)], {
    onSaid: (_, child) => {
      stop = () => child.kill("SIGINT");
    },
  });
  onTestFinished(async () => {
    stop?.();
    expect((await ended).code).toBe(0);
  });
  const pageAt = async (path: string) => {
    const response = await fetch(`http://localhost:${port}${path}`);
    return `${response.status} ${await response.text()}`;
  };
  const untilPage = (path: string, words: string) =>
    vi.waitFor(async () => expect(await pageAt(path)).toContain(words), {
      timeout: 40_000,
      interval: 200,
    });
  return { port, pageAt, untilPage };
}

/** Until something holds, on a machine that may have much else to do. */
const patience = { timeout: 40_000, interval: 100 };

const sound = "---\nlayers: [{glaze: soot}]\n---\n";
const faulty = "---\nlayers: [{glaze: sooot}]\n---\n";
const told = "There is no glaze “sooot”";

test("a first build that fails is shown, and mended records are the site", async () => {
  const archive = await archiveWith({ "tiles/evening/EV-9.md": faulty });
  const { pageAt, untilPage } = await serveArchive(archive);
  await untilPage("/", told);
  expect(await pageAt("/")).toMatch(/^503 .*<h1>1 error in the records\.<\/h1>/su);
  await writeFile(join(archive, "tiles/evening/EV-9.md"), sound);
  await untilPage("/tiles/ev-9.html", "200 ");
  await writeFile(join(archive, "tiles/evening/EV-9.md"), faulty);
  await untilPage("/tiles/ev-9.html", told);
  // As editors save: another file takes the place of the one that was there.
  await writeFile(join(archive, "tiles/evening/EV-9.tmp"), sound);
  await rename(join(archive, "tiles/evening/EV-9.tmp"), join(archive, "tiles/evening/EV-9.md"));
  await vi.waitFor(async () => expect(await pageAt("/tiles/ev-9.html")).not.toContain(told), {
    timeout: 40_000,
    interval: 200,
  });
}, 90_000);

test("an archive that begins while it is served is seen", async () => {
  const archive = await folderWith({ "README.md": "" });
  const { untilPage } = await serveArchive(archive);
  await untilPage("/", "There is no studio.yaml");
  await writeFile(join(archive, "studio.yaml"), "format: 1\nstudio: Eelgate Pottery\n");
  await untilPage("/", "The archive is empty");
  await mkdir(join(archive, "recipes/glazes"), { recursive: true });
  await mkdir(join(archive, "tiles"));
  await writeFile(
    join(archive, "recipes/glazes/soot.md"),
    "---\nname: Soot\nkind: glaze\nbought: {maker: Oxbow}\n---\n",
  );
  await writeFile(join(archive, "tiles/TB-1.md"), sound);
  await untilPage("/tiles/tb-1.html", "200 ");
  await rm(join(archive, "studio.yaml"));
  await untilPage("/", "There is no studio.yaml");
}, 90_000);

siteTest(
  "whoever looks at a page sees it change, break and mend, and loads nothing by hand",
  {
    timeout: 90_000,
  },
  async ({ open }) => {
    const archive = await archiveWith({ "tiles/evening/EV-9.md": sound });
    const { port, untilPage } = await serveArchive(archive);
    await untilPage("/tiles/ev-9.html", "200 ");
    const page = await open(`http://localhost:${port}/tiles/ev-9.html`);
    const seen = (words: string) =>
      vi.waitFor(async () => expect(await page.content()).toContain(words), patience);
    const save = (text: string) => writeFile(join(archive, "tiles/evening/EV-9.md"), text);
    await save(`${sound}Ran a little at the rim.\n`);
    await seen("Ran a little at the rim.");
    await save(faulty);
    await seen("tiles/evening/EV-9.md, line 2");
    const strip = page.locator(".trouble-strip");
    expect(await strip.textContent()).toContain("There is no glaze “sooot”");
    expect(await strip.textContent()).toContain("Did you mean “soot”?");
    expect(await page.textContent("main")).toContain("Ran a little at the rim.");
    await save(`${sound}Mended.\n`);
    await seen("Mended.");
    expect(await strip.count()).toBe(0);
  },
);

test("files and folders that come, go, change names or are written in two steps are shown as they are", async () => {
  const archive = await archiveWith({ "tiles/evening/EV-9.md": sound });
  const at = (path: string) => join(archive, path);
  const { untilPage, pageAt } = await serveArchive(archive);
  await untilPage("/tiles/ev-9.html", "200 ");
  await writeFile(at("tiles/evening/EV-10.md"), sound);
  await untilPage("/tiles/ev-10.html", "200 ");
  await rename(at("tiles/evening/EV-10.md"), at("tiles/evening/ev-10.md"));
  await untilPage("/tiles/ev-10.html", ">ev-10<");
  await rm(at("tiles/evening/ev-10.md"));
  await untilPage("/tiles/ev-10.html", "404 ");
  await rename(at("tiles/evening"), at("tiles/late"));
  await untilPage("/sets/late.html", "200 ");
  await appendFile(at("tiles/late/EV-9.md"), "In its new folder.\n");
  await untilPage("/tiles/ev-9.html", "In its new folder.");
  const pictured = /pictures\/[\w-]+/u;
  const before = pictured.exec(await pageAt("/tiles/ev-1.html"))?.[0] ?? "none";
  await cp(at("tiles/late/EV-2.jpg"), at("tiles/late/EV-1.jpg"));
  await vi.waitFor(async () => {
    const page = await pageAt("/tiles/ev-1.html");
    expect(page).toMatch(pictured);
    expect(page).not.toContain(before);
  }, patience);
  const studio = await readFile(at("studio.yaml"), "utf8");
  await writeFile(at("studio.yaml"), "studio: [");
  await untilPage("/", "studio.yaml, line 1");
  await writeFile(at("studio.yaml"), "");
  await writeFile(at("studio.yaml"), studio.replace("Eelgate Pottery", "Eelgate Two"));
  await untilPage("/", "Eelgate Two");
  for (let i = 0; i < 100; i += 1) {
    await writeFile(at(`tiles/late/MANY-${i}.md.tmp`), sound);
    await rename(at(`tiles/late/MANY-${i}.md.tmp`), at(`tiles/late/MANY-${i}.md`));
  }
  await untilPage("/tiles/many-99.html", "200 ");
  await untilPage("/tiles/many-0.html", "200 ");
}, 90_000);
