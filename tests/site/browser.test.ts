import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { fileAddress, launchBrowser, siteTest } from "../support/browser.ts";
import { findBrowser, unpackBrowser } from "../support/find-browser.ts";
import { removeFolderNow } from "../support/remove-folder.ts";

const page = (script: string) =>
  `<!doctype html><title>Tiles</title><p>as written</p><script>${script}</script>`;

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "tilebook-browser-"));
  writeFileSync(
    join(folder, "index.html"),
    page("document.querySelector('p').textContent = location.protocol"),
  );
  writeFileSync(join(folder, "404.html"), "<!doctype html><title>Not here</title>");
});
afterAll(() => removeFolderNow(folder));

siteTest("a page served under a path runs its scripts", async ({ open, serve }) => {
  const site = await serve(folder, "/glazes/");
  const opened = await open(site);
  expect(await opened.textContent("p")).toBe("http:");
});

siteTest("a page opened from a folder runs its scripts", async ({ open }) => {
  const opened = await open(fileAddress(folder, "index.html"));
  expect(await opened.textContent("p")).toBe("file:");
});

siteTest("a page opened without JavaScript stays as written", async ({ open }) => {
  const opened = await open(fileAddress(folder, "index.html"), { javaScriptEnabled: false });
  expect(await opened.textContent("p")).toBe("as written");
});

siteTest("what is not in the folder is answered by its 404 page", async ({ open, serve }) => {
  const site = await serve(folder, "/glazes/");
  for (const address of [`${site}tb-999.html`, new URL("/", site).href]) {
    const opened = await open(address);
    expect(await opened.title()).toBe("Not here");
    expect((await opened.reload())?.status()).toBe(404);
  }
});

test("a browser that CHROME_PATH names and that is not there is an error", () => {
  const missing = join(folder, "no-such-browser");
  expect(() => findBrowser({ CHROME_PATH: missing })).toThrow(
    `CHROME_PATH names ${missing}, and there is no such file. Mend it or unset it.`,
  );
});

if (process.platform === "linux" && process.arch === "x64") {
  test("where the system has no browser, the one from the packages shows a page", async () => {
    const found = findBrowser({ PATH: folder });
    expect(found).toEqual({ path: unpackBrowser(), from: "the development packages" });
    const browser = await launchBrowser(found.path);
    try {
      const opened = await browser.newPage();
      await opened.goto(fileAddress(folder, "index.html"));
      expect(await opened.textContent("p")).toBe("file:");
    } finally {
      await browser.close();
    }
  });
}
