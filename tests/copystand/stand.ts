/** A copy stand that listens, on a small archive of its own, until the test is over. */
import { request } from "node:http";
import { onTestFinished, vi } from "vitest";
import { openCopyStand } from "../../src/commands/crop.ts";
import { type Files, photograph, soundFiles, writeFolder } from "../support/archive-folder.ts";
import { removeFolder } from "../support/remove-folder.ts";

export interface Answer {
  readonly status: number;
  readonly headers: Readonly<Record<string, string | string[] | undefined>>;
  readonly text: string;
}

export interface Stand {
  readonly archive: string;
  readonly port: number;
  /** Asks with these headers, besides those that the page sends. */
  readonly ask: (
    method: string,
    path: string,
    more?: { readonly headers?: Record<string, string>; readonly body?: unknown },
  ) => Promise<Answer>;
}

/** Opens the copy stand of the small sound archive, with these files besides. */
export async function openStand(more: Files = {}, names: readonly string[] = []): Promise<Stand> {
  const archive = await writeFolder({
    ...(await soundFiles()),
    "tiles/evening/EV-2.jpg": await photograph("#4b4644", 800, 600),
    ...more,
  });
  const said = vi.spyOn(console, "error").mockImplementation(() => undefined);
  const stand = await openCopyStand(names, { archive });
  if (!stand) throw new Error("The archive has errors.");
  onTestFinished(async () => {
    await stand.close();
    await removeFolder(archive);
    said.mockRestore();
  });
  const port = await stand.server.listen(0);
  const page = await send(port, "GET", "/", {});
  const token = /name="tilebook-token" content="([^"]+)"/u.exec(page.text)?.[1] ?? "";
  return {
    archive,
    port,
    ask: (method, path, { headers = {}, body } = {}) =>
      send(
        port,
        method,
        path,
        { ...(method === "POST" && pageHeaders(port, token)), ...headers },
        body,
      ),
  };
}

function pageHeaders(port: number, token: string) {
  return {
    origin: `http://localhost:${port}`,
    "x-tilebook-token": token,
    "content-type": "application/json",
  };
}

/** As a program would: any header, and a path that nothing tidies up. */
function send(
  port: number,
  method: string,
  path: string,
  headers: Record<string, string>,
  body?: unknown,
): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const options = { host: "localhost", port, method, path, headers };
    const asked = request(options, async (response) => {
      let text = "";
      for await (const part of response.setEncoding("latin1")) text += part;
      resolve({ status: response.statusCode ?? 0, headers: response.headers, text });
    });
    asked.once("error", reject);
    asked.end(
      body === undefined ? undefined : typeof body === "string" ? body : JSON.stringify(body),
    );
  });
}
