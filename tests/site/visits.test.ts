/** A visit to every kind of page: nothing is asked of anywhere else, and nothing is refused or missing. */
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { expect } from "vitest";
import { fileAddress, siteTest } from "../support/browser.ts";
import { demoSite, pageOfEachKind, smallSite } from "./built-sites.ts";

const small = smallSite();
const demo = demoSite();

/** What a browser was asked for and what it complained of, page after page. */
interface Watched {
  readonly requests: string[];
  readonly complaints: string[];
}

function watch(page: Page): Watched {
  const watched: Watched = { requests: [], complaints: [] };
  const complain = (words: string) => watched.complaints.push(`${page.url()}: ${words}`);
  page.on("request", (request) => watched.requests.push(request.url()));
  page.on("response", (response) => {
    if (response.status() >= 400) complain(`${response.status()}: ${response.url()}`);
  });
  page.on("console", (message) => {
    if (["error", "warning"].includes(message.type())) complain(message.text());
  });
  page.on("pageerror", (error) => complain(error.message));
  return watched;
}

/** Goes to pages one after the other, each to its end, and gives what was seen. */
async function visit(page: Page, root: string, paths: readonly string[]): Promise<Watched> {
  const watched = watch(page);
  for (const path of paths) {
    await page.goto(root + path);
    await page.evaluate(loadPictures);
  }
  return watched;
}

/** Runs in a page: asks for every picture, those far below too. */
function loadPictures(): Promise<unknown> {
  const waited = [...document.images].map((picture) => {
    picture.loading = "eager";
    if (picture.complete) return undefined;
    return new Promise((done) => {
      picture.onload = done;
      picture.onerror = done;
    });
  });
  return Promise.all(waited);
}

const places = [
  ["at a root", demo, "/"],
  ["under a path", small, "/studio/tests/"],
  ["opened from a folder", demo, undefined],
] as const;

siteTest.for(places)(
  "a site %s asks for nothing elsewhere and has all it asks for",
  { timeout: 120_000 },
  async ([, site, under], { open, serve }) => {
    const root = under ? await serve(site.folder, under) : fileAddress(site.folder, "/");
    // The page for what is not there names whole paths: it is visited where the site is published.
    const pages = (await pageOfEachKind(site)).filter((page) => page !== "404.html");
    const page = await open(`${root}about.html`);
    const { requests, complaints } = await visit(page, root, pages);
    expect(requests.length).toBeGreaterThan(pages.length * 2);
    expect(requests.filter((url) => !url.startsWith(root) && !url.startsWith("data:"))).toEqual([]);
    expect(complaints).toEqual([]);
  },
);

siteTest("what a page's policy forbids is seen by these tests", async ({ open, serve }) => {
  const root = await serve(small.folder);
  const page = await open(`${root}about.html`);
  const { complaints } = watch(page);
  await page.evaluate(() => {
    const picture = document.createElement("img");
    picture.src = "https://elsewhere.example/x.png";
    document.body.append(picture);
  });
  await expect.poll(() => complaints.join()).toContain("Content Security Policy");
});

siteTest("linked data is in a page's head, and no browser runs it", async ({ open, serve }) => {
  const root = await serve(small.folder, "/tests/");
  const page = await open(`${root}about.html`);
  const { complaints } = watch(page);
  await page.goto(`${root}tiles/ev-1.html`);
  const block = page.locator('head script[type="application/ld+json"]');
  expect(JSON.parse((await block.textContent()) ?? "")["@graph"][0].identifier).toBe("EV-1");
  expect(complaints).toEqual([]);
  // The same element as a script is refused: that it is data is what lets it stand.
  await page.evaluate(() => {
    const script = document.createElement("script");
    script.textContent = "window.wasRun = true";
    document.head.append(script);
  });
  await expect.poll(() => complaints.join()).toContain("Content Security Policy");
  expect(await page.evaluate(() => "wasRun" in window)).toBe(false);
});

siteTest("every tile is there without JavaScript, with its photograph", async ({ open, serve }) => {
  const root = await serve(demo.folder);
  const page = await open(root, { javaScriptEnabled: false });
  const linked: string[] = [];
  for (let pages = 1; ; pages += 1) {
    const links = page.locator("#wall a");
    linked.push(
      ...(await links.evaluateAll((all) => all.map((a) => (a as HTMLAnchorElement).href))),
    );
    const next = page.locator('nav.pages [rel="next"]');
    if ((await next.count()) === 0) break;
    await next.click();
    await page.waitForURL(`${root}wall-${pages + 1}.html`);
  }
  const tiles = JSON.parse(await readFile(join(demo.folder, "data/tiles.json"), "utf8")) as {
    readonly url: string;
  }[];
  expect(tiles.length).toBeGreaterThan(100);
  expect(linked.sort()).toEqual(tiles.map(({ url }) => root + url).sort());
  await page.goto(`${root}wall-2.html`);
  await page.locator("#wall a", { hasText: "EV-101" }).click();
  await page.waitForURL(`${root}tiles/ev-101.html`);
  expect(await page.locator("#code").textContent()).toBe("EV-101");
  expect(await page.locator("main img").first().isVisible()).toBe(true);
});

siteTest(
  "a code from before leads on by itself, without JavaScript too",
  async ({ open, serve }) => {
    const root = await serve(small.folder, "/tests/");
    const page = await open(`${root}tiles/old-1.html`, { javaScriptEnabled: false });
    await page.waitForURL(`${root}tiles/ev-1.html`);
    expect(await page.locator("#code").textContent()).toBe("EV-1");
  },
);

siteTest(
  "what is not there is answered in words that lead back, however deep",
  async ({ open, serve }) => {
    const root = await serve(small.folder, "/tests/");
    for (const way of ["none.html", "tiles/none.html", "tiles/deep/er/none.html"]) {
      const page = await open(`${root}about.html`);
      const { complaints } = watch(page);
      await page.goto(root + way);
      // The server's own answer for the page itself is the one complaint there may be.
      expect(complaints.filter((words) => !words.includes("404"))).toEqual([]);
      const font = await page.evaluate(() => getComputedStyle(document.body).fontFamily);
      expect(font, way).not.toMatch(/^"?Times/u);
      await page.locator("main a").first().click();
      await page.waitForURL(`${root}index.html`);
    }
  },
);

siteTest("words in notes that look like a script do nothing", async ({ open, serve }) => {
  const page = await open(`${await serve(small.folder)}about.html`);
  const dialogs: string[] = [];
  page.on("dialog", async (dialog) => {
    dialogs.push(dialog.message());
    await dialog.dismiss();
  });
  await page.goto(new URL("tiles/ev-1.html", page.url()).href);
  expect(await page.locator("main").textContent()).toContain(
    "White over dark: {{ it }} shows <script>alert(1)</script>.",
  );
  expect(dialogs).toEqual([]);
});

siteTest(
  "from a glaze's page two clicks tell what happens when it and another swap places",
  async ({ open, serve }) => {
    const root = await serve(demo.folder);
    const page = await open(`${root}glazes/chalk.html`, { javaScriptEnabled: false });
    await page.locator("section.pairs", { hasText: "Chalk under" }).getByText("Oilskin").click();
    await page.waitForURL(`${root}pairs/oilskin--over--chalk.html`);
    const order = page.locator("#order");
    expect(await order.locator("li p").allTextContents()).toEqual([
      expect.stringMatching(/^GR-15 Oilskin on top: gloss;.* ran 24\u00a0mm\./u),
      expect.stringMatching(/^GR-51 Chalk on top: matte;.* ran 6\u00a0mm\. Again: no\.$/u),
      expect.stringMatching(/^Colours \d+ apart: .* Also different: the maker and the shelf\.$/u),
    ]);
    const cells = page.locator(".met-cell");
    expect(await cells.locator("h4").allTextContents()).toEqual([
      ...["Oilskin over Chalk", "Chalk over Oilskin", "Oilskin alone", "Chalk alone"],
    ]);
    expect(await cells.locator(".code").allTextContents()).toEqual([
      ...["GR-15", "GR-51", "GR-55", "GR-11"],
    ]);
    await page.getByText("Chalk over Oilskin", { exact: true }).first().click();
    await page.waitForURL(`${root}pairs/chalk--over--oilskin.html`);
  },
);

siteTest(
  "the page of what runs has the pairs that ran more than 20 mm at cone 6, as the data have them",
  async ({ open, serve }) => {
    interface Row {
      readonly id: string;
      readonly url: string;
      readonly cone: string | null;
      readonly run: number | null;
    }
    const read = async (name: string) =>
      JSON.parse(await readFile(join(demo.folder, "data", `${name}.json`), "utf8"));
    const tiles = new Map(((await read("tiles")) as Row[]).map((row) => [row.id, row]));
    const pairs = (await read("grid")) as { readonly url: string; readonly tiles: string[] }[];
    const expected = pairs.flatMap(({ url, tiles: codes }) =>
      codes.flatMap((code) => {
        const { cone, run } = tiles.get(code) ?? {};
        return cone === "6" && (run ?? 0) > 20 ? [`${url} ${code} ran ${run}`] : [];
      }),
    );
    expect(expected.length).toBeGreaterThan(2);
    const root = await serve(demo.folder);
    const page = await open(`${root}care.html`, { javaScriptEnabled: false });
    await page
      .locator(".masthead a", { hasText: "What runs" })
      .first()
      .evaluate((a) => (a as HTMLElement).click());
    await page.waitForURL(`${root}runs.html`);
    const found: string[] = [];
    for (let pages = 1; ; pages += 1) {
      const entries = page.locator(".test > ol > li");
      found.push(...(await entries.evaluateAll(toldOfPairs, root)));
      const next = page.locator('nav.pages [rel="next"]');
      if ((await next.count()) === 0) break;
      await next.click();
      await page.waitForURL(`${root}runs~${pages + 1}.html`);
    }
    expect(found.sort()).toEqual(expected.sort());
  },
);

/** Runs in a page: of the entries that lead to a pair, those of cone 6 that ran more than 20 mm. */
function toldOfPairs(entries: readonly Element[], root: string): string[] {
  return entries.flatMap((entry) => {
    const link = entry.querySelector<HTMLAnchorElement>("h3 a")?.href.replace(root, "") ?? "";
    const ran = Number(/\d+/u.exec(entry.querySelector(".length")?.textContent ?? "")?.[0]);
    const isAtSix = entry.querySelector(".told")?.textContent?.startsWith("Cone 6,");
    if (!link.startsWith("pairs/") || !isAtSix || ran <= 20) return [];
    return [`${link} ${entry.querySelector(".tested .code")?.textContent} ran ${ran}`];
  });
}
