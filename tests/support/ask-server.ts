/** Asks a server of a command as a program would: any header, and a path that nothing tidies up. */
import { request } from "node:http";

export interface Answer {
  readonly status: number;
  readonly headers: Readonly<Record<string, string | string[] | undefined>>;
  readonly text: string;
}

export type AskServer = (
  method: string,
  path: string,
  more?: { readonly headers?: Record<string, string>; readonly body?: unknown },
) => Promise<Answer>;

/** As the script of a page asks that this server sent: with its token, unless headers say otherwise. */
export function asPage(port: number, page: Answer): AskServer {
  const token = /name="tilebook-token" content="([^"]+)"/u.exec(page.text)?.[1] ?? "";
  const own = {
    origin: `http://localhost:${port}`,
    "x-tilebook-token": token,
    "content-type": "application/json",
  };
  return (method, path, { headers = {}, body } = {}) =>
    askServer(port, method, path, { ...(method === "POST" && own), ...headers }, body);
}

export function askServer(
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
      for await (const part of response.setEncoding("utf8")) text += part;
      resolve({ status: response.statusCode ?? 0, headers: response.headers, text });
    });
    asked.once("error", reject);
    asked.end(isSentAsIs(body) ? body : JSON.stringify(body));
  });
}

function isSentAsIs(body: unknown): body is string | Uint8Array | undefined {
  return body === undefined || typeof body === "string" || body instanceof Uint8Array;
}
