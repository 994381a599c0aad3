import { mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { request } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { type SiteServer, siteServer } from "../../src/publish/site-server.ts";

let base: string;
let server: SiteServer;
let port: number;

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
  server = siteServer(join(base, "site"));
  port = 12_000 + (process.pid % 6_000);
  await server.listen(port);
});

afterEach(async () => {
  server.close();
  await rm(base, { recursive: true, force: true });
});

/** Asks for a path just as it is written; `fetch` would tidy it. */
function ask(path: string): Promise<{ status: number; body: string }> {
  return new Promise((resolve, reject) => {
    request({ host: "localhost", port, path }, (response) => {
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
      expect(body).toContain('<script src="/.tilebook/reload.js" defer></script></head>');
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
    "/%00.html",
    "/%E0%A4%A.html",
  ])("shows nothing that lies outside it: %s", async (path) => {
    const { status, body } = await ask(path);
    expect(status).toBe(404);
    expect(body).not.toContain("secret");
  });

  test("is loaded again by every open page when it was built anew", async () => {
    const heard = new Promise<string>((resolve) => {
      request({ host: "localhost", port, path: "/.tilebook/events" }, (response) => {
        response.on("data", (part) => {
          if (String(part).includes("data:")) resolve(String(part));
        });
        setTimeout(() => server.reload(), 20);
      }).end();
    });
    expect(await heard).toBe("data: reload\n\n");
  });

  test("does not take a port that is taken", async () => {
    const second = siteServer(join(base, "site"));
    await expect(second.listen(port)).rejects.toThrow("EADDRINUSE");
  });
});
