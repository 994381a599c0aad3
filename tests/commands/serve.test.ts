/** `serve` as a person has it: a browser that is open while records are written. */
import { once } from "node:events";
import { mkdir, rename, rm, writeFile } from "node:fs/promises";
import { createServer } from "node:net";
import { join } from "node:path";
import { expect, onTestFinished, test, vi } from "vitest";
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
  return { pageAt, untilPage };
}

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
