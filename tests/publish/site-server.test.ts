import { mkdir, mkdtemp, readFile, rm, symlink, writeFile } from "node:fs/promises";
import { request, type ServerResponse } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { type SiteServer, siteServer } from "../../src/publish/site-server.tsx";
import type { SiteFile } from "../../src/publish/unwritten-sites.ts";
import { removeFolder } from "../support/remove-folder.ts";

let base: string;
let server: SiteServer;
let port: number;
let failures: unknown[];

const makeServer = () =>
  siteServer(join(base, "site"), {
    assets: new Map([["trouble.css", Buffer.from("aside{}")]]),
    failed: (error) => failures.push(error),
  });

const allIsWell = { trouble: null };

beforeEach(async () => {
  base = await mkdtemp(join(tmpdir(), "tilebook-server-"));
  await mkdir(join(base, "site", "tiles"), { recursive: true });
  await mkdir(join(base, "site", "data"));
  const page = (words: string) => `<html><head><title>${words}</title></head></html>`;
  await writeFile(join(base, "site", "index.html"), page("wall"));
  await writeFile(join(base, "site", "404.html"), page("none"));
  await writeFile(join(base, "site", "tiles", "blå-1.html"), page("tile"));
  await writeFile(join(base, "site", "data", "tiles.json"), "[]");
  await writeFile(join(base, "secret.html"), page("secret"));
  await mkdir(join(base, "site", ".git"));
  await writeFile(join(base, "site", ".git", "secret.html"), page("secret"));
  await writeFile(join(base, "site", "tiles", ".secret.html"), page("secret"));
  await writeFile(join(base, "site", ".tilebook.json"), '{"holds": "secret"}');
  failures = [];
  server = makeServer();
  port = await server.listen(0);
});

afterEach(async () => {
  server.close();
  await removeFolder(base);
});

/** Asks for a path just as it is written; `fetch` would tidy it. */
function ask(path: string, options: object = {}): Promise<{ status: number; body: string }> {
  return new Promise((resolve, reject) => {
    request({ host: "localhost", port, path, ...options }, (response) => {
      let body = "";
      response.on("data", (part) => {
        body += part;
      });
      response.on("end", () => resolve({ status: response.statusCode ?? 0, body }));
    })
      .on("error", reject)
      .end();
  });
}

describe("the site on this computer", () => {
  test("is shown page by page, each with the script that loads it again", async () => {
    for (const path of ["/", "/index.html", "/tiles/bl%C3%A5-1.html"]) {
      const { status, body } = await ask(path);
      expect({ path, status }).toEqual({ path, status: 200 });
      expect(body).toMatch(
        /<script src="\/_tilebook\/reload\.js" data-shown="[\w-]+" defer><\/script><\/head>/u,
      );
    }
    expect(await ask("/data/tiles.json")).toEqual({ status: 200, body: "[]" });
  });

  test("answers what is not there by the site's own page for that", async () => {
    for (const path of ["/none.html", "/tiles/none.html", "/none.json", "/tiles/"]) {
      const { status, body } = await ask(path);
      expect({ path, status }).toEqual({ path, status: 404 });
      expect(body).toContain("<title>none</title>");
    }
  });

  test.each([
    "/../secret.html",
    "/tiles/../../secret.html",
    "/%2e%2e/secret.html",
    "/tiles/..%2f..%2fsecret.html",
    "/..%5csecret.html",
    "//../secret.html",
    "//",
    "/tiles//bl%C3%A5-1.html",
    "/.tilebook.json",
    "/.git/secret.html",
    "/tiles/.secret.html",
    "http://elsewhere.example/index.html",
    "*",
    "/%00.html",
    "/%E0%A4%A.html",
  ])("shows nothing that lies outside it: %s", async (path) => {
    const { status, body } = await ask(path);
    expect(status).toBe(404);
    expect(body).not.toContain("secret");
  });

  test("is loaded again by every open page when it is shown anew, those included that listen late", async () => {
    const markIn = async () => /data-shown="([^"]+)"/u.exec((await ask("/")).body)?.[1];
    const before = await markIn();
    const marks: string[] = [];
    await new Promise<void>((resolve) => {
      request({ host: "localhost", port, path: "/_tilebook/events" }, (response) => {
        response.on("data", (part) => {
          marks.push(...[...String(part).matchAll(/^data: (.+)$/gmu)].map(([, mark = ""]) => mark));
          if (marks.length === 1) server.show(allIsWell);
          else resolve();
        });
      }).end();
    });
    expect(marks).toEqual([before, await markIn()]);
    expect(marks[0]).not.toBe(marks[1]);
  });

  test("does not take a port that is taken", async () => {
    const second = makeServer();
    await expect(second.listen(port)).rejects.toThrow("EADDRINUSE");
  });
});

describe("a site that is not written yet", () => {
  const page = (words: string) => `<html><head><title>${words}</title></head></html>`;
  const files: Readonly<Record<string, SiteFile | "later">> = {
    "index.html": { content: page("new wall") },
    "404.html": { content: page("new none") },
    "data/tiles.json": { content: "[1]" },
    "pagefind/pagefind.js": "later",
  };
  const unwritten = { find: (path: string) => files[path] };

  test("is shown before the folder holds it, its pictures from where they lie", async () => {
    await writeFile(join(base, "made.webp"), "picture");
    const pictures = { find: (path: string) => files[path] ?? { at: join(base, "made.webp") } };
    server.show({ unwritten });
    expect((await ask("/")).body).toContain("<title>new wall</title>");
    expect(await ask("/data/tiles.json")).toEqual({ status: 200, body: "[1]" });
    const gone = await ask("/tiles/bl%C3%A5-1.html");
    expect(gone.status).toBe(404);
    expect(gone.body).toContain("<title>new none</title>");
    server.show({ unwritten: pictures });
    const picture = await fetch(`http://localhost:${port}/pictures/a.webp`);
    expect(picture.headers.get("content-type")).toBe("image/webp");
    expect(await picture.text()).toBe("picture");
    server.showWritten();
    expect((await ask("/")).body).toContain("<title>wall</title>");
  });

  test("is waited for where only the whole can be made", async () => {
    await mkdir(join(base, "site", "pagefind"));
    server.show({ unwritten });
    const asked = ask("/pagefind/pagefind.js");
    expect((await ask("/")).body).toContain("new wall");
    await writeFile(join(base, "site", "pagefind", "pagefind.js"), "index");
    server.showWritten();
    expect(await asked).toEqual({ status: 200, body: "index" });
  });

  test("is shown on where it cannot be written, and nothing waits for it any more", async () => {
    server.show({ unwritten });
    const asked = ask("/pagefind/pagefind.js");
    server.showUnwritable({ kind: "unwritten", words: "The disk is full." });
    expect((await asked).status).toBe(404);
    const { body } = await ask("/");
    expect(body).toContain("<title>new wall</title>");
    expect(body).toContain("<strong>The site could not be saved.</strong> This page shows the");
    expect(body).toContain("The disk is full.");
    expect((await ask("/pagefind/pagefind.js")).status).toBe(404);
    server.show({ trouble: null, unwritten: { find: () => ({ content: page("newest") }) } });
    expect((await ask("/")).body).toContain("<title>newest</title>");
    server.showWritten();
    expect((await ask("/")).body).toContain("<title>wall</title>");
  });

  test("stays while a later edit is faulty", async () => {
    server.show({ unwritten });
    server.show({ trouble: { kind: "failed", words: "The disk is full." } });
    const { body } = await ask("/");
    expect(body).toContain("<title>new wall</title>");
    expect(body).toContain("The disk is full.");
  });
});

describe("who is answered", () => {
  test.each([
    ["under another name", { headers: { host: "evil.example" } }, 403],
    ["under another name with this port", { headers: { host: "evil.example:{port}" } }, 403],
    ["by the name of another port", { headers: { host: "localhost:1" } }, 403],
    ["by a page from elsewhere", { headers: { origin: "https://evil.example" } }, 403],
    ["by a page opened from a folder", { headers: { origin: "null" } }, 403],
    ["to take something", { method: "POST" }, 405],
    ["to change something", { method: "PUT" }, 405],
    ["what it allows", { method: "OPTIONS" }, 405],
  ])("nobody who asks %s", async (_, options, status) => {
    const { headers } = options as { headers?: Record<string, string> };
    const host = headers?.host?.replace("{port}", String(port));
    const asked = { ...options, ...(host && { headers: { host } }) };
    for (const path of ["/", "/index.html", "/data/tiles.json", "/_tilebook/events"]) {
      const answer = await ask(path, asked);
      expect({ path, status: answer.status }).toEqual({ path, status });
      expect(answer.body).not.toMatch(/<title>|\[\]/u);
    }
  });

  test("no page from elsewhere may frame, read or run what is sent", async () => {
    for (const path of ["/", "/data/tiles.json", "/none.html"]) {
      const { headers } = await fetch(`http://localhost:${port}${path}`);
      expect(Object.fromEntries(headers)).toMatchObject({
        "cache-control": "no-store",
        "cross-origin-resource-policy": "same-origin",
        "x-content-type-options": "nosniff",
        "x-frame-options": "DENY",
      });
    }
  });
});

describe("the pages beside the site", () => {
  const desk = {
    token: "x".repeat(32),
    longestBody: 100,
    pictures: { largest: 100, take: async () => undefined },
    get: async (path: string, response: ServerResponse) => void response.end(`desk: ${path}`),
    post: async (path: string, _: unknown, response: ServerResponse) => void response.end(path),
  };

  test("are reached by a line at the head of every page, which its file does not hold", async () => {
    const withDesk = siteServer(join(base, "site"), {
      assets: new Map(),
      desk,
      failed: (error) => failures.push(error),
    });
    const served = await withDesk.listen(0);
    const text = async (path: string) => (await fetch(`http://localhost:${served}${path}`)).text();
    const file = "<html><head></head><body>\n<p>wall</p></body></html>";
    await writeFile(join(base, "site", "index.html"), file);
    const page = await text("/");
    expect(page).toContain('<body><aside class="way-to-desk"');
    expect(page).toContain('<a href="/desk/">To the desk</a>');
    const added =
      /<script src="\/_tilebook[^>]+><\/script>|<link [^>]+way-to-desk.css">|<aside.+?<\/aside>/gu;
    expect(page.replaceAll(added, "")).toBe(file);
    expect(await readFile(join(base, "site", "index.html"), "utf8")).toBe(file);
    await writeFile(
      join(base, "site", "index.html"),
      '<html><head></head><body><a class="skip">Skip</a><header class="masthead"></header></body></html>',
    );
    expect(await text("/")).toContain('Skip</a><aside class="way-to-desk"');
    expect(await text("/data/tiles.json")).toBe("[]");
    expect(await text("/desk/paper")).toBe("desk: /desk/paper");
    withDesk.close();
    expect((await ask("/")).body).not.toContain("desk");
  });
});

describe("what goes wrong", () => {
  test("a page that cannot be read is told as that, and not as one that is not there", async () => {
    await mkdir(join(base, "site", "loop"));
    await symlink("loop.html", join(base, "site", "loop.html"));
    await symlink("loop.json", join(base, "site", "loop.json"));
    for (const path of ["/loop.html", "/loop.json"]) {
      const { status, body } = await ask(path);
      expect({ path, status }).toEqual({ path, status: 500 });
      expect(body).toBe("That failed. The window in which the command runs tells why.");
    }
    expect(failures).toMatchObject([{ code: "ELOOP" }, { code: "ELOOP" }]);
    expect((await ask("/")).status).toBe(200);
  });

  test("a name longer than a file can have leads nowhere", async () => {
    for (const end of ["html", "json"])
      expect((await ask(`/${"x".repeat(5000)}.${end}`)).status).toBe(404);
  });

  test("an address that goes on beneath the published site's is found at the root here", async () => {
    server.show({ trouble: null, under: "/tests/" });
    expect((await ask("/tests/data/tiles.json")).body).toBe("[]");
    expect((await ask("/tests/")).body).toContain("<title>wall</title>");
  });

  const faults = [
    {
      file: "tiles/TB-1.md",
      line: 3,
      message: "There is no glaze “<b>soot”",
      hint: "Did you mean “soot”?",
      lineText: "  - glaze: <b>soot",
    },
  ];

  test("faults are shown on every page until they are mended, and never in its file", async () => {
    server.show({ trouble: { kind: "faults", faults }, under: "/" });
    const { status, body } = await ask("/");
    expect(status).toBe(200);
    expect(body).toContain("<title>wall</title>");
    expect(body).toContain("<strong>1 error in the records.</strong> This page is from before.");
    expect(body).toContain("tiles/TB-1.md, line 3");
    expect(body).toContain("There is no glaze “&lt;b>soot”");
    expect(body).toContain("Did you mean “soot”?");
    expect(body).toContain('href="/_tilebook/trouble.css"');
    expect((await ask("/_tilebook/trouble.css")).body).toBe("aside{}");
    expect(await readFile(join(base, "site", "index.html"), "utf8")).not.toContain("trouble");
    server.show(allIsWell);
    expect((await ask("/")).body).not.toContain("trouble");
  });

  test("before there is a site, faults stand in its place; before they are known, that it is built", async () => {
    await rm(join(base, "site"), { recursive: true });
    const before = await ask("/");
    expect(before.status).toBe(503);
    expect(before.body).toContain("<h1>The site is being built.</h1>");
    expect(before.body).toContain('<script src="/_tilebook/reload.js" data-shown="');
    server.show({ trouble: { kind: "faults", faults }, under: "/" });
    const { body } = await ask("/");
    expect(body).toContain("<h1>1 error in the records.</h1>");
    expect(body).toContain("tiles/TB-1.md, line 3");
    server.show({ trouble: { kind: "failed", words: "The disk is full." }, under: "/" });
    expect((await ask("/tiles/none.html")).body).toContain("The disk is full.");
  });
});
