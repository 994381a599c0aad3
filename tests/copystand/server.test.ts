/** Who is answered at the copy stand, and what nobody can make it do. */
import { readFile } from "node:fs/promises";
import { connect } from "node:net";
import { networkInterfaces } from "node:os";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { sumsOf } from "../commands/site-files.ts";
import { openStand } from "./stand.ts";

const frames = { crop: [20, 14, 80, 68], grey: [6, 90, 15, 95.5] };
const writing = { tile: "EV-1", scope: "tile", frames };

describe("the server", () => {
  test("shows the page, its parts and the photographs, and lets no other page frame or read them", async () => {
    const { ask } = await openStand();
    const page = await ask("GET", "/");
    expect(page.status).toBe(200);
    expect(page.headers).toMatchObject({
      "content-security-policy": expect.stringContaining("frame-ancestors 'none'"),
      "cross-origin-resource-policy": "same-origin",
      "x-content-type-options": "nosniff",
    });
    for (const path of ["/assets/copystand.js", "/assets/copystand.css", "/assets/icon.svg"])
      expect((await ask("GET", path)).status, path).toBe(200);
    for (const path of ["/assets/fonts/vollkorn.woff2", "/large/EV-1", "/small/ev-1"])
      expect((await ask("GET", path)).status, path).toBe(200);
    expect((await ask("GET", "/large/EV-1")).headers["content-type"]).toBe("image/webp");
  });

  test("listens to this computer alone", async () => {
    const { port } = await openStand();
    const outside = Object.values(networkInterfaces())
      .flatMap((addresses) => addresses ?? [])
      .filter(({ internal, family }) => !internal && family === "IPv4");
    for (const { address } of outside) {
      const reached = await new Promise((resolve) => {
        const socket = connect(port, address, () => resolve(true));
        socket.once("error", () => resolve(false));
        socket.once("close", () => socket.destroy());
      });
      expect(reached, address).toBe(false);
    }
    expect(port).toBeGreaterThan(0);
  });

  test("answers nothing that was asked for under another name than this computer's", async () => {
    const { ask, port } = await openStand();
    for (const host of ["evil.example", `evil.example:${port}`, "localhost", "localhost:1"]) {
      for (const path of ["/", "/stand.json", "/large/EV-1"])
        expect((await ask("GET", path, { headers: { host } })).status, host + path).toBe(403);
      const posted = await ask("POST", "/write", { headers: { host }, body: writing });
      expect(posted.status).toBe(403);
    }
    const byNumber = { headers: { host: `127.0.0.1:${port}` } };
    expect((await ask("GET", "/stand.json", byNumber)).status).toBe(200);
  });

  test("writes for no page but its own", async () => {
    const { ask, archive } = await openStand();
    const before = await sumsOf(archive);
    const wrong: readonly Record<string, string>[] = [
      { origin: "https://evil.example" },
      { origin: "null" },
      { origin: "http://localhost:1" },
      { "x-tilebook-token": "" },
      { "x-tilebook-token": "x".repeat(32) },
    ];
    for (const headers of wrong) {
      const { status } = await ask("POST", "/write", { headers, body: writing });
      expect(status, JSON.stringify(headers)).toBe(403);
    }
    const asForm = { "content-type": "text/plain" };
    expect((await ask("POST", "/write", { headers: asForm, body: writing })).status).toBe(415);
    for (const method of ["PUT", "DELETE", "OPTIONS"])
      expect((await ask(method, "/write")).status).toBe(405);
    expect(await sumsOf(archive)).toEqual(before);
  });

  test("gives no file by its path, however it is written", async () => {
    const { ask } = await openStand();
    const paths = [
      "/../studio.yaml",
      "/assets/../studio.yaml",
      "/assets/..%2f..%2fstudio.yaml",
      "/assets/fonts/../../../package.json",
      "/assets/fonts/..%2f..%2f..%2fpackage.json",
      "/large/..%2f..%2fstudio.yaml",
      "/large/tiles%2fevening%2fEV-1.jpg",
      "/large/%2e%2e%2fEV-1",
      "/large/%ff",
      "/large/EV-3",
      "/large/__proto__",
      "/small/",
      "/studio.yaml",
      "/tiles/evening/EV-1.jpg",
    ];
    for (const path of paths) expect((await ask("GET", path)).status, path).toBe(404);
  });

  test("writes into no record but those of the tiles that it shows", async () => {
    const { ask, archive } = await openStand({}, ["evening"]);
    const before = await sumsOf(archive);
    for (const tile of ["HID-1", "../../studio.yaml", "tiles/evening/EV-1.md", "EV-3", "", "set"]) {
      const { status } = await ask("POST", "/write", { body: { ...writing, tile } });
      expect([404], tile).toContain(status);
    }
    expect(await sumsOf(archive)).toEqual(before);
  });

  test("understands nothing but frames", async () => {
    const { ask, archive } = await openStand();
    const before = await sumsOf(archive);
    const bodies: readonly unknown[] = [
      "{",
      "null",
      [],
      { ...writing, scope: "archive" },
      { ...writing, scope: ["tile"] },
      { ...writing, tile: 7 },
      { ...writing, frames: null },
      { ...writing, frames: { crop: [20, 14, 80], grey: null } },
      { ...writing, frames: { crop: [80, 14, 20, 68], grey: null } },
      { ...writing, frames: { crop: [-1, 0, 50, 101], grey: null } },
      { ...writing, frames: { crop: ["1]\nstudio: x", 0, 50, 60], grey: null } },
      { ...writing, frames: { crop: [20, 14, 80, 68] } },
    ];
    for (const body of bodies)
      expect((await ask("POST", "/write", { body })).status, JSON.stringify(body)).toBe(400);
    const long = { ...writing, more: "x".repeat(20_000) };
    expect((await ask("POST", "/write", { body: long })).status).toBe(413);
    expect((await ask("POST", "/elsewhere", { body: writing })).status).toBe(404);
    expect(await sumsOf(archive)).toEqual(before);
  });

  test("rounds what is written to one decimal", async () => {
    const { ask, archive } = await openStand();
    const body = { ...writing, frames: { crop: [20.04, 14.06, 80, 67.999], grey: null } };
    expect((await ask("POST", "/write", { body })).status).toBe(200);
    const text = await readFile(join(archive, "tiles/evening/EV-1.md"), "utf8");
    expect(text).toContain("photo: {crop: [20, 14.1, 80, 68]}\n---\n");
  });
});
