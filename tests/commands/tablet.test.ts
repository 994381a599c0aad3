/** `serve --tablet`: a second door, its words, and that without the option there is none. */
import { once } from "node:events";
import { existsSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { networkInterfaces } from "node:os";
import { join } from "node:path";
import { expect, onTestFinished, test, vi } from "vitest";
import { openServers } from "../../src/commands/serve/open-servers.ts";
import { tabletPlace } from "../../src/commands/serve/tablet.ts";
import { tellDoor } from "../../src/desk/tablet/words.ts";
import { listenAt } from "../../src/local-server/local-server.ts";
import { soundFiles, writeFolder } from "../support/archive-folder.ts";
import { type Answer, askServer, asPage } from "../support/ask-server.ts";
import { removeFolder } from "../support/remove-folder.ts";

/** A port that is free on this computer, and the one behind it as well. */
async function freePort(): Promise<number> {
  for (;;) {
    const [one, next] = [createServer(), createServer()];
    await once(one.listen(0, "127.0.0.1"), "listening");
    const { port } = one.address() as AddressInfo;
    const isFree = await listenAt(next, "127.0.0.1", port + 1).then(
      () => true,
      () => false,
    );
    one.close();
    next.close();
    if (isFree) return port;
  }
}

/** Opens the servers over a small archive whose site is not built, until the test is over. */
async function open(tablet: boolean) {
  const archive = await writeFolder(await soundFiles());
  const said: string[] = [];
  const spy = vi.spyOn(console, "error").mockImplementation((words) => void said.push(words));
  const port = await freePort();
  const need = { archive, site: join(archive, "no-site"), port, tablet };
  const opened = await openServers(need, ["127.0.0.1"]);
  onTestFinished(async () => {
    spy.mockRestore();
    opened.server.close();
    await removeFolder(archive);
  });
  return { ...opened, archive, port, said };
}

/** Asks at the tablet's door, whose port is the next, each time on a new line, since a new code cuts old ones off. */
function atDoor(port: number) {
  const own = {
    host: `127.0.0.1:${port + 1}`,
    origin: `http://127.0.0.1:${port + 1}`,
    connection: "close",
  };
  return (method: string, path: string, headers: Record<string, string> = {}, body?: unknown) =>
    askServer(port + 1, method, path, { ...own, ...headers }, body);
}

async function comeIn(port: number, code: string): Promise<string> {
  const type = { "content-type": "application/x-www-form-urlencoded" };
  const { headers } = await atDoor(port)("POST", "/let-in", type, `code=${code}`);
  return String(headers["set-cookie"] ?? "").split(";")[0] ?? "";
}

const codeOn = ({ text }: Answer) =>
  (/<p class="code">(\d{3} \d{3})<\/p>/u.exec(text)?.[1] ?? "none").replace(" ", "");

const tokenOf = ({ text }: Answer) => /name="tilebook-token" content="([^"]+)"/u.exec(text)?.[1];

test("without the option nothing listens but on this computer, and the desk speaks of no tablet", async () => {
  const { port, door } = await open(false);
  expect(door).toBeUndefined();
  await expect(askServer(port + 1, "GET", "/", {})).rejects.toMatchObject({ code: "ECONNREFUSED" });
  const others = Object.values(networkInterfaces())
    .flatMap((each) => each ?? [])
    .filter(({ internal, family }) => !internal && family === "IPv4");
  for (const { address } of others) {
    const asked = fetch(`http://${address}:${port}/`).then(
      () => "answered",
      () => "refused",
    );
    expect(await asked, address).toBe("refused");
  }
  const first = await askServer(port, "GET", "/desk/", {});
  expect(first.text).not.toContain("tablet");
  const post = await asPage(port, first)("POST", "/desk/tablet/new-code", { body: {} });
  expect(post.status).toBe(404);
});

test("the desk on this computer shows the code and the address; the tablet's door shows no name", async () => {
  const { port, door, said } = await open(true);
  const first = await askServer(port, "GET", "/desk/", {});
  const code = codeOn(first);
  expect(code).toMatch(/^\d{6}$/u);
  expect(first.text).toContain(`<code>http://127.0.0.1:${port + 1}/</code>`);
  expect(first.text).toContain("Whoever is in the same network and listens can read along");
  const words = door ? tellDoor(door) : [];
  expect(words).toEqual([
    `A tablet in the same network may come in at http://127.0.0.1:${port + 1}/`,
    expect.stringMatching(
      new RegExp(
        `^Its code is ${code.slice(0, 3)} ${code.slice(3)}\\. It lets one tablet in, until \\d\\d:\\d\\d\\. The desk on this computer shows it, and makes a new one\\.$`,
        "u",
      ),
    ),
    "Whoever is in the same network and listens can read along, and could then write here as the tablet can. Use it in a network you trust, and stop the command when you are done.",
  ]);
  for (const path of ["/", "/desk/", "/desk/unload", "/nothing"]) {
    const { text, headers } = await atDoor(port)("GET", path);
    expect(text).toContain("<h1>Type the code.</h1>");
    expect(text).toContain("Whoever is in the same network and listens can read along");
    expect(text).not.toMatch(/Eelgate|Evening|Tilebook|<script|<link|src=/u);
    expect(text).not.toContain(code);
    expect(headers["content-security-policy"]).toMatch(
      /^default-src 'none'; style-src 'sha256-[\w+/]+='; base-uri 'none'; form-action 'self'; frame-ancestors 'none'$/u,
    );
  }
  expect(said).toEqual([]);
});

test("the tablet writes with its own token, and neither token is worth anything at the other door", async () => {
  const { port, archive, said } = await open(true);
  const first = await askServer(port, "GET", "/desk/", {});
  const cookie = await comeIn(port, codeOn(first));
  expect(said).toEqual(["A tablet was let in (127.0.0.1)."]);
  const ask = atDoor(port);
  const page = await ask("GET", "/desk/", { cookie });
  expect(page.text).toContain("The desk is shown on this tablet until the command is stopped.");
  expect(page.text).toContain("Whoever is in the same network and listens can read along");
  expect(page.text).not.toContain('class="for-a-tablet"');
  const [own, other] = [tokenOf(page) ?? "", tokenOf(first) ?? ""];
  expect(own).not.toBe(other);
  const json = (token: string) => ({
    ...{ cookie, "x-tilebook-token": token, "content-type": "application/json" },
  });
  const write = (token: string) => ask("POST", "/desk/paper/write", json(token), {});
  expect((await write(other)).status).toBe(403);
  expect((await write(own)).status).toBe(400);
  expect((await ask("POST", "/desk/tablet/new-code", json(own), {})).status).toBe(404);
  const local = { ...json(own), origin: `http://localhost:${port}` };
  expect((await askServer(port, "POST", "/desk/paper/write", local, {})).status).toBe(403);
  expect((await ask("GET", "/", { cookie })).status).toBe(503);
  expect(existsSync(join(archive, "no-site"))).toBe(false);
});

test("a new code from the desk puts the tablet out; after five wrong ones the desk and the terminal say so", async () => {
  const { port, said } = await open(true);
  const first = await askServer(port, "GET", "/desk/", {});
  const askDesk = asPage(port, first);
  const cookie = await comeIn(port, codeOn(first));
  const after = await askServer(port, "GET", "/desk/", {});
  expect(after.text).toMatch(/A tablet was let in at \d\d:\d\d, and the code is used up\./u);
  expect(codeOn(after)).toBe("none");
  expect((await askDesk("POST", "/desk/tablet/new-code", { body: {} })).status).toBe(200);
  expect((await atDoor(port)("GET", "/desk/", { cookie })).text).toContain("Type the code.");
  const code = codeOn(await askServer(port, "GET", "/desk/", {}));
  const wrong = code === "000000" ? "000001" : "000000";
  for (let i = 0; i < 5; i += 1) await comeIn(port, wrong);
  expect(await comeIn(port, code)).toBe("");
  const told =
    "A wrong code was typed five times, so the last code lets nobody in any more. If that was not you, somebody else in the network tries to come in.";
  expect((await askServer(port, "GET", "/desk/", {})).text).toContain(told);
  expect(said).toEqual([
    "A tablet was let in (127.0.0.1).",
    `${told} The last try came from 127.0.0.1.`,
  ]);
});

test("where the next port is taken, neither door is opened", async () => {
  const archive = await writeFolder(await soundFiles());
  onTestFinished(() => removeFolder(archive));
  const port = await freePort();
  const holder = createServer().listen(port + 1, "127.0.0.1");
  await once(holder, "listening");
  onTestFinished(() => void holder.close());
  const opening = openServers({ archive, site: archive, port, tablet: true }, ["127.0.0.1"]);
  await expect(opening).rejects.toThrow(
    `Port ${port + 1} is taken by another program. Name another with --port, such as --port ${port + 2}.`,
  );
  await expect(askServer(port, "GET", "/", {})).rejects.toMatchObject({ code: "ECONNREFUSED" });
});

test("a computer in no local network is told so; the last port has the one before it as its next", () => {
  expect(() => tabletPlace(8080, [])).toThrow(
    "This computer is in no local network, so no tablet can reach it. Join the network that the tablet is in, and start again. An address that the whole internet can reach is never used.",
  );
  expect(tabletPlace(65_535, ["10.0.0.1"])).toMatchObject({
    ...{ port: 65_534, door: { addresses: ["http://10.0.0.1:65534/"] } },
  });
});
