/** Who is answered by the server for a guest's device, and what strangers learn from it. */
import type { ServerResponse } from "node:http";
import { connect } from "node:net";
import { expect, onTestFinished, test } from "vitest";
import { type GuestPass, guestPass } from "../../src/local-server/guest-pass.ts";
import { guestServer } from "../../src/local-server/guest-server.ts";
import { type LocalWork, localServer } from "../../src/local-server/local-server.ts";
import { askServer } from "../support/ask-server.ts";

const token = "t".repeat(32);

/** A guest's server in front of work that tells what it was asked. */
async function open() {
  const clock = { now: 0 };
  const pass = guestPass(() => clock.now);
  const asked: string[] = [];
  const changed: string[] = [];
  const reply = async (path: string, response: ServerResponse) => {
    asked.push(path);
    response.end(`secret of ${path}`);
  };
  const work: LocalWork = {
    get: (path, _, response) => reply(path, response),
    post: (path, _, response) => reply(path, response),
    pictures: { largest: 100, take: (path, _, response) => reply(path, response) },
    failed: (error) => asked.push(String(error)),
  };
  const server = guestServer(work, {
    ...{ pass, addresses: ["127.0.0.1"], token, home: "/desk/" },
    codePage: { html: (became) => `page ${JSON.stringify(became)}`, policy: "default-src 'none'" },
    changed: ({ is }, device) => changed.push(`${is} ${device}`),
  });
  onTestFinished(() => server.close());
  const port = await server.listen(0);
  const origin = `http://127.0.0.1:${port}`;
  // Each time on a new line, since a new code cuts old ones off.
  const own = { host: `127.0.0.1:${port}`, connection: "close" };
  const ask = (method: string, path: string, headers: Record<string, string> = {}, body?: string) =>
    askServer(port, method, path, { ...own, ...headers }, body);
  const form = { origin, "content-type": "application/x-www-form-urlencoded" };
  const type = (code: string, headers: Record<string, string> = form) =>
    ask("POST", "/let-in", headers, `code=${encodeURIComponent(code)}`);
  return { ask, type, form, pass, clock, asked, changed, port, origin, work };
}

const codeOf = (pass: GuestPass) => {
  const state = pass.look();
  return state.is === "open" ? state.code : "none";
};
const wrongFor = (pass: GuestPass) => (codeOf(pass) === "000000" ? "000001" : "000000");

/** Lets a device in, and gives what its browser sends from then on. */
async function comeIn({ type, pass }: Awaited<ReturnType<typeof open>>) {
  const { headers } = await type(codeOf(pass));
  return { cookie: String(headers["set-cookie"]).split(";")[0] ?? "" };
}

test("a stranger gets the page for the code, and nothing else, whatever is asked for", async () => {
  const { ask, asked } = await open();
  for (const path of ["/", "/desk/", "/tiles/tb-1.html", "/desk/assets/desk.css", "/let-in"]) {
    const { status, text, headers } = await ask("GET", path);
    expect({ path, text, status }).toEqual({
      ...{ path, text: "page undefined" },
      status: path === "/" ? 200 : 403,
    });
    expect(headers["set-cookie"]).toBeUndefined();
  }
  expect((await ask("HEAD", "/desk/")).status).toBe(403);
  for (const cookie of ["tilebook-guest=", "tilebook-guest", `tilebook-guest=${"x".repeat(32)}`])
    expect((await ask("GET", "/desk/", { cookie })).text).toBe("page undefined");
  for (const path of ["/desk/paper/write", "/", "/desk/unload/photograph/TB-1"])
    for (const type of ["application/json", "application/octet-stream", "text/plain"]) {
      const headers = { "content-type": type, "x-tilebook-token": token };
      expect((await ask("POST", path, headers, "{}")).status).toBe(403);
    }
  expect(asked).toEqual([]);
});

test("the right code leads to the desk, with a cookie that no script reads and no other page sends", async () => {
  const { ask, type, pass, asked, changed } = await open();
  const { status, headers, text } = await type(codeOf(pass));
  const { location } = headers;
  expect({ status, text, location }).toEqual({
    ...{ status: 303, text: "", location: "/desk/" },
  });
  expect(headers["set-cookie"]).toEqual([
    expect.stringMatching(/^tilebook-guest=[\w-]{32}; Path=\/; HttpOnly; SameSite=Strict$/u),
  ]);
  const cookie = String(headers["set-cookie"]).split(";")[0] ?? "";
  expect((await ask("GET", "/desk/", { cookie })).text).toBe("secret of /desk/");
  expect((await ask("GET", "/desk/", { cookie: `other=1; ${cookie}` })).text).toContain("secret");
  expect((await ask("GET", "/desk/", { cookie: `${cookie}x` })).text).toBe("page undefined");
  expect(asked).toEqual(["/desk/", "/desk/"]);
  expect(changed).toEqual(["spent 127.0.0.1"]);
});

test("a code with a blank in it is that code, and one that has not six digits is no try", async () => {
  const { type, pass } = await open();
  for (const slip of ["", "12345", "1234567", "abcdef", "١٢٣٤٥٦"])
    expect(await type(slip)).toMatchObject({ status: 403, text: 'page "no-code"' });
  const code = codeOf(pass);
  expect((await type(`${code.slice(0, 3)} ${code.slice(3)}`)).status).toBe(303);
});

test("a second device with the same code stays outside", async () => {
  const opened = await open();
  const code = codeOf(opened.pass);
  const { cookie } = await comeIn(opened);
  expect(await opened.type(code)).toMatchObject({
    ...{ status: 403, text: 'page {"isIn":false,"left":0}' },
  });
  expect(opened.changed).toEqual(["spent 127.0.0.1"]);
  expect((await opened.ask("GET", "/", { cookie })).text).toBe("secret of /");
});

test("five wrong codes end the code, and the terminal is told once", async () => {
  const { type, pass, changed } = await open();
  const code = codeOf(pass);
  const wrong = wrongFor(pass);
  for (let i = 0; i < 7; i += 1) await type(wrong);
  expect(await type(code)).toMatchObject({ status: 403, text: 'page {"isIn":false,"left":0}' });
  expect(changed).toEqual(["guessed-at 127.0.0.1"]);
});

test("of many tries at the same moment no more than five are counted in", async () => {
  const { type, pass } = await open();
  const wrong = wrongFor(pass);
  const all = await Promise.all(Array.from({ length: 30 }, () => type(wrong)));
  const left = all.map(({ text }) => Number(/"left":(\d)/u.exec(text)?.[1]));
  expect(left.filter((each) => each > 0).sort()).toEqual([1, 2, 3, 4]);
});

test("a code is too old after ten minutes", async () => {
  const { type, pass, clock } = await open();
  const code = codeOf(pass);
  clock.now += 600_000;
  expect((await type(code)).status).toBe(403);
});

test("a page from elsewhere can type no code, and uses up no try", async () => {
  const { type, form, ask, pass, port } = await open();
  const { "content-type": contentType } = form;
  const code = codeOf(pass);
  for (const origin of [
    "https://evil.example",
    "null",
    `http://localhost:${port}`,
    "http://127.0.0.1",
  ])
    for (let i = 0; i < 2; i += 1) expect((await type(code, { ...form, origin })).status).toBe(403);
  expect((await type(code, { "content-type": contentType })).status).toBe(403);
  expect((await type(code, { ...form, "content-type": "text/plain" })).status).toBe(415);
  expect((await ask("POST", "/let-in", form, "x".repeat(1000))).status).toBe(413);
  expect(pass.look()).toMatchObject({ is: "open", code });
  expect((await type(wrongFor(pass))).text).toBe('page {"isIn":false,"left":4}');
});

test("only the very address that it listens at is answered, whatever name was made to lead there", async () => {
  const opened = await open();
  const { ask, port } = opened;
  const { cookie } = await comeIn(opened);
  for (const host of [
    ...[`evil.example:${port}`, `localhost:${port}`, `[::1]:${port}`, `192.168.1.20:${port}`],
    ...["127.0.0.1", "127.0.0.1:1", `127.0.0.1.evil.example:${port}`, ""],
  ]) {
    expect((await ask("GET", "/desk/", { host, cookie })).status, host).toBe(403);
    expect((await ask("GET", "/", { host })).text).not.toContain("page");
  }
  expect(opened.asked).toEqual([]);
});

test("with the cookie, writing asks for the origin, the token and the type as on the computer itself", async () => {
  const opened = await open();
  const { ask, origin, asked } = opened;
  const { cookie } = await comeIn(opened);
  const right = { cookie, origin, "x-tilebook-token": token, "content-type": "application/json" };
  const wrong: readonly (readonly [Record<string, string>, number])[] = [
    [{ origin: "https://evil.example" }, 403],
    [{ origin: "null" }, 403],
    [{ "x-tilebook-token": "" }, 403],
    [{ "x-tilebook-token": "x".repeat(32) }, 403],
    [{ "content-type": "text/plain" }, 415],
    [{ "content-type": "application/x-www-form-urlencoded" }, 415],
    [{ cookie: "" }, 403],
  ];
  for (const [headers, status] of wrong) {
    const answer = await ask("POST", "/desk/a/b", { ...right, ...headers }, "{}");
    expect({ headers, status: answer.status }).toEqual({ headers, status });
  }
  for (const method of ["PUT", "DELETE", "OPTIONS"])
    expect((await ask(method, "/desk/", right)).status).toBe(405);
  expect(asked).toEqual([]);
  expect((await ask("POST", "/desk/a/b", right, "{}")).text).toBe("secret of /desk/a/b");
});

test("a new code puts the device out, and cuts off what it had open", async () => {
  const opened = await open();
  const { cookie } = await comeIn(opened);
  const line = connect(opened.port, "127.0.0.1");
  await new Promise((resolve) => line.once("connect", resolve));
  line.write("POST /desk/a/b HTTP/1.1\r\n");
  const cut = new Promise((resolve) => line.once("close", resolve));
  line.on("error", () => undefined);
  await opened.ask("GET", "/desk/", { cookie });
  opened.pass.renew();
  await cut;
  expect((await opened.ask("GET", "/desk/", { cookie })).text).toBe("page undefined");
});

test("of a hundred lines that a stranger opens and leaves open, no more than 64 are kept", async () => {
  const { port } = await open();
  let cut = 0;
  const lines = Array.from({ length: 100 }, () => connect(port, "127.0.0.1"));
  onTestFinished(() => {
    for (const line of lines) line.destroy();
  });
  for (const line of lines) {
    line.on("error", () => undefined);
    line.once("close", () => {
      cut += 1;
    });
    line.resume();
  }
  await expect.poll(() => cut, { timeout: 5000 }).toBe(36);
});

test("answers have the headers of every server of a command; the page for the code is as closed, but sends its form", async () => {
  const opened = await open();
  const { cookie } = await comeIn(opened);
  const all = {
    "cache-control": "no-store",
    "cross-origin-opener-policy": "same-origin",
    "cross-origin-resource-policy": "same-origin",
    "x-content-type-options": "nosniff",
    "x-frame-options": "DENY",
  };
  expect((await opened.ask("GET", "/desk/", { cookie })).headers).toMatchObject({
    ...{ ...all, "referrer-policy": "no-referrer" },
  });
  expect((await opened.ask("GET", "/")).headers).toMatchObject({
    ...{ ...all, "referrer-policy": "same-origin" },
    "content-security-policy": "default-src 'none'",
  });
});

test("the server of this computer alone takes a guest's cookie for nothing", async () => {
  const opened = await open();
  const { cookie } = await comeIn(opened);
  const local = localServer(opened.work);
  onTestFinished(() => local.close());
  const port = await local.listen(0);
  const own = { origin: `http://localhost:${port}`, "content-type": "application/json", cookie };
  const post = (headers: Record<string, string>) => askServer(port, "POST", "/a", headers, "{}");
  expect((await post(own)).status).toBe(403);
  expect((await post({ ...own, "x-tilebook-token": token })).status).toBe(403);
  const host = `127.0.0.1:${opened.port}`;
  expect((await askServer(port, "GET", "/", { host, cookie })).status).toBe(403);
  expect(opened.asked).toEqual([]);
});

test("where one of its addresses cannot be had, it listens at none", async () => {
  const { work, pass } = await open();
  const holder = localServer(work);
  const port = await holder.listen(0);
  holder.close();
  const server = guestServer(work, {
    ...{ pass, token, home: "/", addresses: ["127.0.0.1", "203.0.113.7"] },
    codePage: { html: () => "", policy: "" },
    changed: () => undefined,
  });
  await expect(server.listen(port)).rejects.toMatchObject({ code: "EADDRNOTAVAIL" });
  await expect(askServer(port, "GET", "/", {})).rejects.toMatchObject({ code: "ECONNREFUSED" });
});
